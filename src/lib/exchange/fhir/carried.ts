/** Text and fields that FHIR cannot hold as they are, carried beside what it can. */
import type { Extension } from 'fhir/r4';
import { FIELD, PLACE } from './codes.ts';

/**
 * The text as a FHIR string may hold it: only blanks, tabs and line ends part its words, none at
 * either end; undefined when nothing is left.
 */
export const plainText = (text: string): string | undefined =>
  text.replaceAll(/[^\S \t\r\n]/g, ' ').trim() || undefined;

/** JSON in which a blank that a FHIR string may not hold is written by its number. */
const json = (value: unknown): string =>
  JSON.stringify(value).replaceAll(
    /[^\S \t\r\n]/g,
    (blank) => `\\u${blank.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

/** A field as an extension: its name, and its value as JSON. */
const field = (name: string, value: unknown): Extension => ({
  url: FIELD,
  extension: [
    { url: 'name', valueString: name },
    { url: 'value', valueString: json(value) },
  ],
});

/**
 * Every field of an object that has no place of its own in FHIR, whatever it is, so that a field
 * added to the record later travels without a change here; and texts that were made plain, as they are.
 */
export function carried(
  raw: object,
  placed: readonly string[],
  texts: Readonly<Record<string, string>> = {},
  prefix = '',
): { extension?: Extension[] } {
  const fields = Object.entries(raw)
    .filter(([name, value]) => !placed.includes(name) && value !== undefined)
    .map(([name, value]) => field(prefix + name, value));
  const exact = Object.entries(texts)
    .filter(([, text]) => text !== '' && plainText(text) !== text)
    .map(([name, text]) => field(prefix + name, text));
  const extension = [...fields, ...exact];
  return extension.length > 0 ? { extension } : {};
}

/** What is carried, and the place of the part among its like, from 0. */
export const placed = (
  place: number,
  { extension = [] }: { extension?: Extension[] },
): { extension: Extension[] } => ({
  extension: [...extension, { url: PLACE, valueInteger: place }],
});
