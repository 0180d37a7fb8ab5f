/**
 * What is typed must not be left in the browser's own files: a browser keeps the text of fields in its
 * record of the session and offers it again later, unless the field says autocomplete="off" (HTML
 * standard, 4.10.18.7; seen in Chromium's session files).
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const NOT_TYPED = /type="(?:radio|checkbox|file|range|color|number)"/;

const componentsIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.svelte'))
    .map((name) => join(folder, name));

/** The tag of every field that text is typed into, with its attributes. */
const fieldsOf = (source: string): string[] =>
  (source.match(/<(?:input|textarea)\b(?:[^>{]|\{(?:[^{}]|\{[^{}]*\})*\})*>/g) ?? []).filter(
    (tag) => !NOT_TYPED.test(tag),
  );

it('every field that text is typed into asks the browser not to keep it', () => {
  const all = componentsIn('src').flatMap((path) =>
    fieldsOf(readFileSync(path, 'utf8')).map((tag) => ({ path, tag })),
  );
  expect(all.length).toBeGreaterThan(30);
  const kept = all.filter(({ tag }) => !tag.includes('autocomplete="off"'));
  expect(kept.map(({ path, tag }) => `${path}: ${tag.replaceAll(/\s+/g, ' ')}`)).toEqual([]);
});
