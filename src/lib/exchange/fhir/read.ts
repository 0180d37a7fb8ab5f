/** FHIR R4 resources as raw case files. Nothing is believed: what comes out passes the parser like any file. */
import { OLDER_VERSION } from '../../case/older.ts';
import { FORMAT } from '../../case/shape.ts';
import * as codes from './codes.ts';
import {
  carriedBy,
  exact,
  isOwnCodes,
  isWrong,
  nameOf,
  QUOTED,
  Faults,
  type Entry,
  type EntryProblem,
  type FoundChild,
  type LeftOut,
  type ReadBundle,
} from './entry.ts';
import { addressOf } from './names.ts';
import { readDating } from './readDating.ts';
import { readPlans } from './readPlans.ts';
import { readVisits } from './readVisits.ts';
import { at, codeIn, fieldsOf, listAt, textAt, wordsOf, type Fields } from './value.ts';

/** What a child can be kept under. */
const KEPT_ID = /^[\w-]{1,64}$/;

class BundleReader {
  readonly faults = new Faults();
  readonly leftOut: LeftOut[] = [];
  readonly #byAddress = new Map<string, Entry>();
  readonly #entries: readonly Entry[];

  constructor(entries: readonly Entry[]) {
    this.#entries = entries;
    for (const entry of entries)
      for (const address of entry.addresses)
        if (!this.#byAddress.has(address)) this.#byAddress.set(address, entry);
  }

  read(): FoundChild[] {
    const patients = this.#entries.filter(({ type }) => type === 'Patient');
    const parts = new Map<Entry, Entry[]>(patients.map((one) => [one, []]));
    for (const entry of this.#entries) {
      if (entry.type === 'Patient' || isOwnCodes(entry)) continue;
      const what = this.#what(entry);
      if (what) {
        this.leftOut.push({ entry: entry.number, type: entry.type, ...what });
        continue;
      }
      const subject = this.#target(entry.resource, entry.type === 'Task' ? 'for' : 'subject');
      const mine = subject && parts.get(subject);
      if (mine) mine.push(entry);
      else this.leftOut.push({ entry: entry.number, type: entry.type, why: 'no-child' });
    }
    return patients.map((one) => this.#child(one, parts.get(one) ?? []));
  }

  /** Why an entry is left out, if it is. */
  #what({ type, resource }: Entry): Pick<LeftOut, 'why' | 'what'> | undefined {
    if (isWrong(resource)) return { why: 'entered-in-error' };
    if (type === 'Encounter') return undefined;
    const code = at(resource, 'code');
    const known = ((): boolean => {
      switch (type) {
        case 'Observation':
          return (
            codeIn(code, codes.LOINC) === codes.GESTATION.code ||
            codeIn(code, codes.LOINC) === codes.DUE.code ||
            codeIn(code, codes.OWN_SYSTEMS.reflex) !== undefined ||
            codeIn(code, codes.OWN_SYSTEMS.milestone) !== undefined ||
            codeIn(code, codes.OWN_SYSTEMS.record) === 'visit-note'
          );
        case 'Task':
          return ['question', 'decision'].includes(codeIn(code, codes.OWN_SYSTEMS.record) ?? '');
        case 'CarePlan':
          return listAt(resource, 'category').some(
            (one) => codeIn(one, codes.OWN_SYSTEMS.record) === 'sheet',
          );
        default:
          return false;
      }
    })();
    if (known) return undefined;
    const words = wordsOf(code)?.slice(0, QUOTED);
    const ours = ['Observation', 'Task', 'CarePlan'].includes(type);
    return { why: ours ? 'unknown-code' : 'not-used', ...(words ? { what: words } : {}) };
  }

  #target(resource: Fields, name: string): Entry | undefined {
    const reference = textAt(at(resource, name), 'reference');
    return reference === undefined ? undefined : this.#byAddress.get(reference);
  }

  /** The id that a child is kept under where the bundle was made, if it says so. */
  #idOf({ resource, addresses }: Entry): string | undefined {
    return listAt(resource, 'identifier')
      .filter((one) => textAt(one, 'system') === codes.CHILD)
      .flatMap((one) => textAt(one, 'value') ?? [])
      .find((id) => KEPT_ID.test(id) && addresses.includes(addressOf(id)));
  }

  #child(patient: Entry, parts: readonly Entry[]): FoundChild {
    const { resource } = patient;
    const id = this.#idOf(patient);
    const carried = carriedBy(resource);
    const isOfChild = (name: string): boolean => name.startsWith(codes.OF_CHILD);
    const ofRecord = Object.entries(carried).filter(([name]) => !isOfChild(name));
    const { label, ...ofChild } = Object.fromEntries(
      Object.entries(carried)
        .filter(([name]) => isOfChild(name))
        .map(([name, value]) => [name.slice(codes.OF_CHILD.length), value]),
    );
    const tags = listAt(at(resource, 'meta'), 'tag')
      .filter((tag) => textAt(tag, 'system') === codes.TAGS)
      .flatMap((tag) => textAt(tag, 'display') ?? textAt(tag, 'code') ?? []);
    return {
      addresses: patient.addresses,
      id,
      raw: {
        format: FORMAT,
        // an id that an entry carries is kept; one that another system made has none, as in older files
        version: OLDER_VERSION,
        child: {
          ...ofChild,
          label: exact(nameOf(resource), label),
          born: this.faults.needed(patient, 'birthDate', textAt(resource, 'birthDate')),
          ...readDating(parts, this.faults),
          invented: listAt(at(resource, 'meta'), 'security').some(
            (one) =>
              textAt(one, 'system') === codes.TEST_DATA.system &&
              textAt(one, 'code') === codes.TEST_DATA.code,
          ),
        },
        visits: readVisits(parts, (resource, name) => this.#target(resource, name), this.faults),
        ...(tags.length > 0 ? { tags } : {}),
        ...(at(resource, 'active') === false ? { archived: true } : {}),
        ...readPlans(parts),
        ...Object.fromEntries(ofRecord),
      },
    };
  }
}

/** The entries of a bundle that hold a resource, with every address each can be referred to by. */
export function readEntries(bundle: Fields): ReadBundle {
  const problems: EntryProblem[] = [];
  const entries = listAt(bundle, 'entry').flatMap((one, index): Entry[] => {
    const resource = fieldsOf(at(one, 'resource'));
    const type = textAt(resource, 'resourceType');
    if (!resource || type === undefined) {
      problems.push({ entry: index + 1, type: 'entry', fault: 'missing', field: 'resource' });
      return [];
    }
    const id = textAt(resource, 'id');
    const identifiers = listAt(resource, 'identifier')
      .filter((identifier) => textAt(identifier, 'system') === codes.IS_ADDRESS)
      .flatMap((identifier) => textAt(identifier, 'value') ?? []);
    const fullUrl = textAt(one, 'fullUrl');
    const addresses = [
      ...(fullUrl ? [fullUrl] : []),
      ...(id ? [`${type}/${id}`] : []),
      ...identifiers,
    ];
    return [{ number: index + 1, type: type.slice(0, QUOTED), resource, addresses }];
  });
  const reader = new BundleReader(entries);
  const children = reader.read();
  return {
    children,
    leftOut: reader.leftOut,
    problems: [...problems, ...reader.faults.problems],
  };
}
