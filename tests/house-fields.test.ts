/**
 * What is typed must not be left in the browser's own files: a browser keeps the text of fields in its
 * record of the session and offers it again later, unless the field says autocomplete="off" (HTML
 * standard, 4.10.18.7; seen in Chromium's session files).
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { editableIn, typedFields } from './support/typedFields.ts';

const COMPONENTS = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.svelte'))
  .map((name) => [name.replaceAll('\\', '/'), readFileSync(`src/${name}`, 'utf8')] as const);

describe('every field that text is typed into asks the browser not to keep it', () => {
  const found = COMPONENTS.flatMap(([path, source]) =>
    typedFields(source).map(({ tag, line, fault }) => ({ tag, where: `${path}:${line}`, fault })),
  );

  it('in every component', () => {
    expect(found.filter(({ fault }) => fault)).toEqual([]);
  });

  test.each(['input', 'textarea', 'Combobox.Input'])('%s is among them', (tag) => {
    expect(found.map((one) => one.tag)).toContain(tag);
  });

  it('of which there are dozens', () => {
    expect(found.length).toBeGreaterThan(30);
  });

  it('and what is typed elsewhere is typed into the family’s page alone', () => {
    expect(COMPONENTS.filter(([, source]) => editableIn(source)).map(([path]) => path)).toEqual([
      'routes/(child)/family/Said.svelte',
    ]);
  });
});

describe('the check bites', () => {
  test.each([
    ['<input bind:value={typed} />', 'no autocomplete'],
    ['<input type="search" class="a" />', 'no autocomplete'],
    ['<input type="number" />', 'no autocomplete'],
    ['<input type={shown ? "text" : "password"} />', 'no autocomplete'],
    ['<textarea rows="3"></textarea>', 'no autocomplete'],
    ['<input autocomplete="on" />', '"on"'],
    ['<input autocomplete />', 'computed'],
    ['<input autocomplete={way} />', 'computed'],
    ['<input placeholder=\'autocomplete="off"\' />', 'no autocomplete'],
    ['<input autocomplete="off" {...rest} />', 'spread'],
    ['<input oninput={() => (a > b ? c : d)} value="x" />', 'no autocomplete'],
    ['{#if a}{#each b as c}<label>d <input /></label>{/each}{/if}', 'no autocomplete'],
    ['<Field>{#snippet children(tied)}<input {...tied} />{/snippet}</Field>', 'no autocomplete'],
    ['<Combobox.Input class="a" />', 'no autocomplete'],
    ['<svelte:element this={tag} />', 'may be a field'],
    ['{@html text}', 'may hold a field'],
  ])('on %s', (source, fault) => {
    expect(typedFields(source)).toEqual([
      expect.objectContaining({ fault: expect.stringContaining(fault) as string }),
    ]);
  });

  test.each([
    '<input {...tied} autocomplete="off" bind:value={typed} />',
    '<textarea autocomplete="off"></textarea>',
    '<Combobox.Input autocomplete="off" />',
  ])('and not on %s', (source) => {
    expect(typedFields(source)).toEqual([expect.objectContaining({ fault: undefined })]);
  });

  test.each(['<input type="radio" name="a" />', '<input type="file" />', '<p>input</p>'])(
    'nor on what nothing is typed into: %s',
    (source) => {
      expect(typedFields(source)).toEqual([]);
    },
  );

  test('on what is typed into an element that is no field', () => {
    expect(editableIn('<span contenteditable="plaintext-only"></span>')).toBe(true);
    expect(editableIn('<span>contenteditable</span>')).toBe(false);
  });
});
