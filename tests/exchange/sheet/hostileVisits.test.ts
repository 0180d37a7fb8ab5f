/** Sheets with a column for each reflex as they should not be, and as large as they can be. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MAX_SHEET_COLUMNS, textOf } from '../../../src/lib/exchange/sheet/read.ts';
import { hostileBytes, hostileText } from '../../support/hostile.ts';
import { bytesOf, runs, written } from '../../support/runs.ts';
import { holds } from '../../support/sheets.ts';

const [CUT, CODED] = [runs(4000), runs(1500)];

describe('hostile sheets', () => {
  const name = fc.constantFrom(
    'Moro L',
    'Moro R',
    'Moro',
    'ATNR (rt)',
    'Landau',
    'Galant L/R',
    '__proto__',
    'constructor',
    '',
    '=1+1',
  );
  const cell = fc.constantFrom('present', 'weak', 'absent', '+', 'toString', '__proto__', '@x', '');
  const rows = fc
    .array(name, { minLength: 1, maxLength: 30 })
    .chain((names) =>
      fc.tuple(
        fc.constant(names),
        fc.array(
          fc.tuple(
            fc.constantFrom('Kestrel', 'Plover', '', '"a;b"'),
            fc.constantFrom('2026-05-18', '18.05.2026', '05/06/2026', ''),
            fc.constantFrom('2026-01-05', '1.2.2026', ''),
            fc.constantFrom('33w1d', '36', '36,5', ''),
            fc.array(cell, { minLength: names.length, maxLength: names.length + 2 }),
          ),
          { maxLength: 12 },
        ),
      ),
    )
    .map(([names, lines]) =>
      [['Child', 'Date', 'DOB', 'Gestation', ...names], ...lines.map((line) => line.flat())]
        .map((line) => line.join(';'))
        .join('\r\n'),
    );

  test(`${written(CUT)} sheets with their text cut, flipped and swollen`, () => {
    let read = 0;
    fc.assert(
      fc.property(hostileText(rows), (text) => {
        read += Number(holds(text, 'sheet of visits', 'visit'));
      }),
      { numRuns: CUT },
    );
    expect(read).toBeGreaterThan(0);
    expect(read).toBeLessThan(CUT);
  });

  test(`${written(CODED)} sheets in wrong encodings`, () => {
    let read = 0;
    fc.assert(
      fc.property(hostileBytes(rows), (bytes) => {
        read += Number(holds(textOf(bytes), 'sheet of visits', 'visit'));
      }),
      { numRuns: CODED },
    );
    expect(read).toBeGreaterThan(0);
    expect(read).toBeLessThan(CODED);
  });

  test.each([
    ['every cell the same word that is not decided', 'Moro L', '+'],
    ['every cell an answer for the same reflex', 'Moro L', 'no'],
    ['every column the name of an object', '__proto__', 'x'],
  ])('the widest there can be, and in a thorough run the largest: %s', (_, header, word) => {
    const wide = MAX_SHEET_COLUMNS - 2;
    const row = `\n,1.2.26${`,${word}`.repeat(wide)}`;
    const rowCount = Math.min(5000, Math.floor(bytesOf(1_990_000) / row.length));
    holds(
      `Child,Date${`,${header}`.repeat(wide)}${row.repeat(rowCount)}`,
      'sheet of visits',
      'visit',
    );
  });
});
