/** The page of constants: each is there once, with words, and its basis as its file says it. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { GROUPS, SHOWN } from '../../../src/lib/judge/reading/shown.ts';
import { constantWhat, number, unitWords } from '../../../src/lib/words/en/howRead.ts';

/** Exported constants of a file, each with the comment above it; one comment may serve several. */
function declared(file: string): Map<string, { value: string; comment: string }> {
  const found = new Map<string, { value: string; comment: string }>();
  const text = readFileSync(new URL(`../../../src/lib/judge/${file}`, import.meta.url), 'utf8');
  let comment = '';
  for (const part of text.split(/(\/\*\*[\s\S]*?\*\/)/)) {
    if (part.startsWith('/**')) comment = part;
    else
      for (const [, name, value] of part.matchAll(/export const (\w+)(?:: \w+)? = ([^;]+);/g))
        found.set(name!, { value: value!, comment });
  }
  return found;
}

const inFiles = new Map([...declared('reading/constants.ts'), ...declared('thresholds.ts')]);

test('every constant of both files is shown once, with what it is for', () => {
  expect(inFiles.size).toBeGreaterThan(40);
  const names = SHOWN.map(({ name }) => name as string);
  expect(new Set(names).size).toBe(names.length);
  expect([...inFiles.keys()].filter((name) => !names.includes(name))).toEqual([]);
  for (const { name, group } of SHOWN) {
    expect(constantWhat[name]).not.toBe('');
    expect(GROUPS).toContain(group);
  }
});

test('what is printed as a number in a file is what is shown', () => {
  const plain = SHOWN.filter(({ name }) => /^[\d.]+$/.test(inFiles.get(name)?.value ?? ''));
  expect(plain.length).toBeGreaterThan(30);
  for (const { name, value } of plain) expect(value).toBe(Number(inFiles.get(name)!.value));
});

test('the basis shown is that of the comment', () => {
  for (const { name, basis } of SHOWN) {
    const comment = inFiles.get(name)?.comment;
    if (!comment?.match(/Ours:|published/)) continue; // thresholds say it once for all
    expect(/Ours:/.test(comment), name).toBe(basis === 'ours');
  }
});

test('values and days in words', () => {
  expect([1e-9, 1 / 3, 1010, 0.02].map(number)).toEqual(['0.000000001', '0.3333', '1010', '0.02']);
  const words = (value: number) => unitWords({ unit: 'axis-day', value });
  expect(words(280)).toBe('day on the axis: term');
  expect(words(259)).toBe('day on the axis: 37w0d of gestation');
  expect(words(1010)).toBe('day on the axis: 24 months after term');
});
