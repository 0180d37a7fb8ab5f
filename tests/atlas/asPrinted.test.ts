import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readEnd, readStart } from '../../src/lib/atlas/asPrinted.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { PROSE } from '../../src/lib/atlas/prose.ts';
import { nameIndex, reflexNamed } from '../../src/lib/atlas/search.ts';

describe('ages as a textbook prints them', () => {
  test.each([
    ['28 wk', 'wkPMA', 28, 28],
    ['28 weeks gestation', 'wkPMA', 28, 28],
    ['25-30 weeks', 'wkPMA', 25, 30],
    ['6 weeks', 'wk', 6, 6],
    ['6 weeks after birth', 'wk', 6, 6],
    ['4-6 mo', 'mo', 4, 6],
    ['4 to 6 months', 'mo', 4, 6],
    ['4 – 6 months', 'mo', 4, 6],
    ['about 2,5 months', 'mo', 2.5, 2.5],
    ['birth', 'mo', 0, 0],
    ['around birth', 'mo', 0, 0],
    ['2 months after birth', 'mo', 2, 2],
    ['4-6 m', 'mo', 4, 6],
    ['3 days', 'd', 3, 3],
  ])('start %j', (cell, unit, low, high) => {
    expect(readStart(cell)).toEqual({
      status: 'given',
      printed: { asPrinted: cell, unit, low, high },
    });
  });

  test.each([
    [
      '3 months',
      { status: 'given', printed: { asPrinted: '3 months', unit: 'mo', low: 3, high: 3 } },
    ],
    [
      '12 weeks',
      { status: 'given', printed: { asPrinted: '12 weeks', unit: 'wk', low: 12, high: 12 } },
    ],
    [
      'by 5 years',
      {
        status: 'given',
        printed: { asPrinted: 'by 5 years', unit: 'y', low: 5, high: 5, atLatest: true },
      },
    ],
    [
      '> 12 mo',
      { status: 'later-than', printed: { asPrinted: '> 12 mo', unit: 'mo', low: 12, high: null } },
    ],
    [
      'by 6 mo',
      {
        status: 'given',
        printed: { asPrinted: 'by 6 mo', unit: 'mo', low: 6, high: 6, atLatest: true },
      },
    ],
    [
      'up to 4 months',
      {
        status: 'given',
        printed: { asPrinted: 'up to 4 months', unit: 'mo', low: 4, high: 4, atLatest: true },
      },
    ],
    ['4-6 m', { status: 'given', printed: { asPrinted: '4-6 m', unit: 'mo', low: 4, high: 6 } }],
    [
      'by 4-6 months',
      { status: 'given', printed: { asPrinted: 'by 4-6 months', unit: 'mo', low: 4, high: 6 } },
    ],
    ['never integrates', { status: 'persists' }],
    ['persists', { status: 'persists' }],
    ['For life', { status: 'persists' }],
    ['', { status: 'not-stated' }],
    ['not stated', { status: 'not-stated' }],
  ])('end %j', (cell, read) => {
    expect(readEnd(cell)).toEqual(read);
  });

  test.each([
    ['6', 'no-unit'],
    ['4-6', 'no-unit'],
    ['soon', 'not-understood'],
    ['6 moons', 'not-understood'],
    ['=2+3 mo', 'not-understood'],
    ['<script>', 'not-understood'],
    ['6-4 mo', 'low-above-high'],
    ['4 wk to 6 mo', 'two-units'],
    ['400 mo', 'out-of-range'],
  ])('%j is refused: %s', (cell, problem) => {
    expect(readEnd(cell)).toEqual({ problem });
  });

  const PROBLEMS = ['no-unit', 'not-understood', 'low-above-high', 'two-units', 'out-of-range'];
  /** Any text, and words of ages thrown together, of which some say an age. */
  const cells = fc.oneof(
    fc.string(),
    fc
      .array(
        fc.constantFrom('2', '6', '12', '28', '400', '-', ' to ', ' ', 'mo', 'wk', 'y', '>', 'by '),
        { maxLength: 6 },
      )
      .map((parts) => parts.join('')),
  );

  test('any text gets an answer, never an exception', () => {
    fc.assert(
      fc.property(cells, (cell) => {
        for (const read of [readStart(cell), readEnd(cell)]) {
          if ('problem' in read) expect(PROBLEMS).toContain(read.problem);
          else if (read.status === 'given' || read.status === 'later-than') {
            expect(read.printed.asPrinted).toBe(cell.trim());
            expect(read.printed.low).toBeLessThanOrEqual(read.printed.high ?? Infinity);
          } else expect(['not-stated', 'persists']).toContain(read.status);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('a range written with its unit is read back', () => {
    const unit = fc.constantFrom('mo', 'months', 'y', 'weeks after birth');
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 0, max: 4 }),
        unit,
        (low, more, word) => {
          const read = readEnd(`${low}-${low + more} ${word}`);
          expect(read).toMatchObject({ status: 'given', printed: { low, high: low + more } });
        },
      ),
    );
  });
});

describe('finding a reflex by name', () => {
  const reflexes = [...ATLAS.reflexes.values()];
  const index = nameIndex(reflexes, PROSE);

  test.each([
    ['moro', 'moro'],
    ['Morro', 'moro'],
    ['palmer grasp', 'palmar-grasp'],
    ['babinski', 'plantar-response'],
    ['tonic neck asymetrical', 'atnr'],
    ['ATNR', 'atnr'],
    ['parachute', 'protective-forward'],
    ['trunk incurvation', 'galant'],
    ['landau', 'landau'],
  ])('%j finds %s', (text, id) => {
    expect(index.find(text).slice(0, 2)).toContain(id);
  });

  test('every name, short name and synonym of the atlas finds its own reflex', () => {
    for (const reflex of reflexes)
      for (const name of [
        reflex.name,
        reflex.short,
        reflex.id,
        ...(PROSE[reflex.id]?.synonyms ?? []),
      ]) {
        const named = reflexNamed(name, reflexes, PROSE, index);
        expect(named?.exact, name).toBe(true);
      }
  });

  test('an unknown name offers the nearest, and nonsense offers none', () => {
    expect(reflexNamed('galantt', reflexes, PROSE, index)).toEqual({ exact: false, id: 'galant' });
    expect(reflexNamed('zzzzzz', reflexes, PROSE, index)).toBeUndefined();
    expect(index.find('')).toHaveLength(reflexes.length);
  });
});

describe('words people search by', () => {
  const index = nameIndex([...ATLAS.reflexes.values()], PROSE);
  test.each([
    ['crawling reflex', ['crawling', 'stnr']],
    ['suckle', ['sucking']],
    ['parachute', ['protective-forward', 'protective-downward']],
    ['fencing', ['atnr']],
    ['startle', ['acoustic-startle', 'moro']],
  ])('%s offers %j', (text, offered) => {
    expect(index.find(text)).toEqual(expect.arrayContaining(offered));
    expect(index.find(text)[0]).toBe(offered[0]);
  });
});
