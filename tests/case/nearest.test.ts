/** The known name that a mistyped one was meant to be, and how heavy a text is before it is read. */
import { describe, expect, test } from 'vitest';
import { editDistance, nearestName } from '../../src/lib/case/nearest.ts';
import { isTooHeavy, weightOf } from '../../src/lib/case/weight.ts';

describe('edits between two words', () => {
  // Damerau 1964, "A technique for computer detection and correction of spelling errors": one letter wrong,
  // missing, too many, or two neighbours in each other's place (from memory)
  test.each([
    ['moro', 'moro', 0],
    ['mora', 'moro', 1],
    ['mor', 'moro', 1],
    ['mooro', 'moro', 1],
    ['mroo', 'moro', 1],
    ['', 'moro', 4],
    ['moro', '', 4],
    ['kitten', 'sitting', 3],
    ['stnr', 'atnr', 1],
    ['abcd', 'badc', 2],
  ])('from %j to %j are %i', (a, b, edits) => {
    expect(editDistance(a, b)).toBe(edits);
    expect(editDistance(b, a)).toBe(edits);
  });
});

describe('the nearest name', () => {
  const known = ['moro', 'atnr', 'stnr', 'palmar-grasp', 'plantar-grasp', 'protective-forward'];
  test.each([
    ['morro', 'moro'],
    ['MORO', 'moro'],
    ['palmar grasp', 'palmar-grasp'],
    ['palmar_grsap', 'palmar-grasp'],
    ['protective  forwrad', 'protective-forward'],
    ['atn', 'atnr'],
  ])('%j was meant to be %s', (text, name) => {
    expect(nearestName(text, known)).toBe(name);
  });

  test.each(['mxxo', 'grasp', '', 'x'.repeat(100_000)])('%.20s is too far from any', (text) => {
    expect(nearestName(text, known)).toBeUndefined();
  });

  test('of none known is none', () => {
    expect(nearestName('moro', [])).toBeUndefined();
  });
});

describe('the weight of a text', () => {
  test.each([
    ['{}', { deepest: 1, open: 0, parts: 1 }],
    ['[1,2,3]', { deepest: 1, open: 0, parts: 3 }],
    ['{"a":[{"b":1}]}', { deepest: 3, open: 0, parts: 3 }],
    ['[[],[]]', { deepest: 2, open: 0, parts: 4 }],
    // what stands in a string is no bracket, also behind an escaped quotation mark
    ['["[[[,,,"]', { deepest: 1, open: 0, parts: 1 }],
    [String.raw`["\"[[","a"]`, { deepest: 1, open: 0, parts: 2 }],
    [String.raw`["\\","[["]`, { deepest: 1, open: 0, parts: 2 }],
    ['[{"a":1', { deepest: 2, open: 2, parts: 2 }],
    ['no brackets', { deepest: 0, open: 0, parts: 0 }],
  ])('%s', (text, weight) => {
    expect(weightOf(text, 100)).toEqual(weight);
  });

  test('is too much just above either limit', () => {
    expect(isTooHeavy('[[1,2]]', 2, 3)).toBe(false);
    expect(isTooHeavy('[[1,2]]', 1, 3)).toBe(true);
    expect(isTooHeavy('[[1,2]]', 2, 2)).toBe(true);
  });

  test('is not counted beyond the limit of depth', () => {
    expect(weightOf('['.repeat(1000), 10)).toEqual({ deepest: 11, open: 11, parts: 11 });
  });
});
