/** An entry of a FHIR bundle, and what can be read off it alone. */
import { plainText } from './carried.ts';
import * as codes from './codes.ts';
import { at, listAt, textAt, type Fields } from './value.ts';

/** An entry that is wrong, counted from 1, with what kind of resource it is and what is wrong in it. */
export interface EntryProblem {
  entry: number;
  type: string;
  fault: 'missing' | 'no-gestation';
  field: string;
  text?: string;
}

/** An entry that is left out, and why. */
export interface LeftOut {
  entry: number;
  type: string;
  why: 'not-used' | 'unknown-code' | 'entered-in-error' | 'no-child';
  what?: string;
}

/** A child as it was found in a bundle. */
export interface FoundChild {
  /** Addresses the child is known by. */
  addresses: readonly string[];
  /** The name it is kept under elsewhere, where it says so and its address agrees. */
  id: string | undefined;
  /** A case file's object, not yet parsed. */
  raw: unknown;
}

export interface ReadBundle {
  children: FoundChild[];
  leftOut: LeftOut[];
  problems: EntryProblem[];
}

export interface Entry {
  number: number;
  type: string;
  resource: Fields;
  addresses: readonly string[];
}

/** How much of a wrong word is said back. */
export const QUOTED = 60;

/** What is found wrong in entries while they are read. */
export class Faults {
  readonly problems: EntryProblem[] = [];

  refuse(entry: Entry, fault: EntryProblem['fault'], field: string, text?: string): void {
    this.problems.push({
      entry: entry.number,
      type: entry.type,
      fault,
      field,
      ...(text === undefined ? {} : { text: text.slice(0, QUOTED) }),
    });
  }

  /** A text that must be there. */
  needed(entry: Entry, field: string, text: string | undefined): string {
    if (text === undefined) this.refuse(entry, 'missing', field);
    return text ?? '';
  }
}

/** Fields that a carried one never stands for: they are read from the resources themselves. */
const NEVER = new Set(['format', 'version', 'visits', 'findings', 'milestones', 'child']);
const FIELD_NAME = /^(?:child\.)?[a-z][A-Za-z0-9]{0,40}$/;
const DATE = /^\d{4}-\d{2}-\d{2}/;

/** What a resource carries beside what FHIR can hold: fields of its part of the record, by name. */
export function carriedBy(resource: unknown): Record<string, unknown> {
  const found: Record<string, unknown> = {};
  for (const extension of listAt(resource, 'extension')) {
    if (textAt(extension, 'url') !== codes.FIELD) continue;
    const inner = (url: string): string | undefined =>
      listAt(extension, 'extension')
        .filter((one) => textAt(one, 'url') === url)
        .map((one) => textAt(one, 'valueString'))[0];
    const name = inner('name');
    if (name === undefined || !FIELD_NAME.test(name) || NEVER.has(name) || name in {}) continue;
    try {
      found[name] = JSON.parse(inner('value') ?? '');
    } catch {
      continue; // a value that is no JSON says nothing
    }
  }
  return found;
}

/** At which place among its like a part stood; one that says nothing comes after those that do. */
function placeOf({ resource }: Entry): number {
  const said = listAt(resource, 'extension').find((one) => textAt(one, 'url') === codes.PLACE);
  const place = at(said, 'valueInteger');
  return typeof place === 'number' ? place : Infinity;
}

/** In the order they were written in; those without a place stay as they came. */
export const inOrder = (entries: readonly Entry[]): Entry[] =>
  entries.toSorted((a, b) => {
    const [one, other] = [placeOf(a), placeOf(b)];
    return one === other ? 0 : one - other;
  });

/** A text as it was, when what stands in the resource is the same text made plain; else what stands there. */
export function exact(shown: string | undefined, carried: unknown): string {
  if (typeof carried === 'string' && plainText(carried) === plainText(shown ?? '')) return carried;
  return shown ?? '';
}

export const day = (text: string | undefined): string | undefined =>
  text !== undefined && DATE.test(text) ? text.slice(0, 10) : text;

export const isWrong = (resource: Fields): boolean =>
  ['entered-in-error', 'cancelled'].includes(textAt(resource, 'status') ?? '');

/** The name a child goes by: as text, else put together from its parts. */
export function nameOf(resource: Fields): string | undefined {
  const name = listAt(resource, 'name')[0];
  const parts = [...listAt(name, 'given'), at(name, 'family')].filter(
    (one) => typeof one === 'string',
  );
  return textAt(name, 'text') ?? (parts.length > 0 ? parts.join(' ') : undefined);
}

/** A code system of ours: it came along to be read by others, and says nothing new here. */
export const isOwnCodes = ({ type, resource }: Entry): boolean =>
  type === 'CodeSystem' &&
  (Object.values(codes.OWN_SYSTEMS) as string[]).includes(textAt(resource, 'url') ?? '');
