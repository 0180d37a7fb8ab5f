/**
 * Which columns answer for which reflex, by their names (common practice, no source), in the sheet and in a
 * mapping that is kept.
 */
import { describe, expect, test } from 'vitest';
import { newMappings, placesFor, withMapping } from '../../../src/lib/exchange/mappings.ts';
import { guessAnswers, guessShape } from '../../../src/lib/exchange/sheet/answers.ts';
import { MAX_SHEET_COLUMNS } from '../../../src/lib/exchange/sheet/read.ts';
import { columnName } from '../../../src/lib/words/en/sheets.ts';
import { find, placesOf, sheetOf } from '../../support/sheets.ts';

describe('which columns answer', () => {
  test.each([
    ['Moro', 'moro', undefined],
    ['Moro L', 'moro', 'left'],
    ['Moro_r', 'moro', 'right'],
    ['MoroR', 'moro', 'right'],
    ['L. Moro', 'moro', 'left'],
    ['Right Moro reflex', 'moro', 'right'],
    ['ATNR left', 'atnr', 'left'],
    ['ATNR (rt)', 'atnr', 'right'],
    ['ATNR [Lt]', 'atnr', 'left'],
    ['Palmar grasp reflex, left side', 'palmar-grasp', 'left'],
    ['Palmar grasp L reflex', 'palmar-grasp', 'left'],
    ['Galant L/R', 'galant', 'both'],
    ['Galant left and right', 'galant', 'both'],
    ['Galant bilateral', 'galant', 'both'],
    ['Landau', 'landau', undefined],
    ["Doll's eye", 'dolls-eye', undefined],
  ])('%s', (name, reflex, side) => {
    expect(guessAnswers(['Date', name], find)).toEqual([{ column: 1, reflex, side }]);
  });

  test.each([
    'L',
    'left',
    '',
    'Weight',
    'Mooro L',
    'Moro left midline',
    'righting L',
    '__proto__',
    'constructor',
  ])('%j is no reflex for sure', (name) => {
    expect(guessAnswers(['Date', name], find)).toEqual([]);
  });

  test('the shape is that of the names: a column for the reflex and one for its response, or reflexes', () => {
    expect(guessShape(['Child', 'Date', 'Reflex', 'Side', 'Result'], find)).toBe('finding');
    expect(guessShape(['Child', 'Date', 'Moro L', 'Moro R', 'Plantar response'], find)).toBe(
      'visit',
    );
    expect(guessShape(['Date', 'Reflex', 'Result', 'Moro'], find)).toBe('finding');
    expect(guessShape(['Date', 'Test', 'Moro'], find)).toBe('visit');
    expect(guessShape(['Date', 'A', 'B'], find)).toBe('finding');
  });

  test('no column is both a field and an answer, though its name has a word of a field', () => {
    const { columns, answers } = placesOf(
      sheetOf('Date,Birth date,Plantar response L,Moro sign\n1,2,3,4'),
    );
    expect(columns).toEqual({ date: 0, born: 1 });
    expect(answers?.map(({ column }) => column)).toEqual([2, 3]);
  });

  test('columns that share a name, or have none, are told by their letters', () => {
    // A, Z, AA and the last that is read, as spreadsheets count columns: common practice, no source
    const header = [
      'Moro',
      ...Array.from({ length: MAX_SHEET_COLUMNS - 1 }, (_, n) =>
        n === 24 || n === 158 ? '' : n === 25 ? 'Moro' : `c${n}`,
      ),
    ];
    expect([0, 1, 25, 26, 159].map((column) => columnName(header, column))).toEqual([
      'Moro (column A)',
      'c0',
      'column Z',
      'Moro (column AA)',
      'column FD',
    ]);
  });
});

describe('a kept mapping', () => {
  const shelfWith = (text: string | null) => {
    const held = new Map([['tidemark-sheets', text]]);
    return {
      getItem: (key: string) => held.get(key) ?? null,
      setItem: (key: string, value: string) => void held.set(key, value),
    };
  };
  const values = { reflex: {}, side: {}, response: { '+': 'elicited' }, state: {} };

  test('holds the columns that answer, by name and by their turn among those of one name', () => {
    const sheet = sheetOf('Date,Moro,Moro,Weight\n1,2,3,4');
    const answers = [
      { column: 1, reflex: 'moro', side: 'left' as const },
      { column: 2, reflex: 'moro', side: undefined },
    ];
    const shelf = shelfWith(null);
    const mappings = newMappings(shelf);
    const mapping = { columns: { date: 0 }, answers, values, order: 'year-month-day' as const };
    mappings.become(withMapping([], 'Ward 3', mapping, sheet.header), 'kept');
    const [kept] = newMappings(shelf).now;
    expect(placesFor(kept!, sheet.header)).toEqual({ columns: { date: 0 }, answers });
    expect(placesFor(kept!, ['x', 'Moro', 'Date', 'y', 'Moro'])).toEqual({
      columns: { date: 2 },
      answers: [
        { column: 1, reflex: 'moro', side: 'left' },
        { column: 4, reflex: 'moro', side: undefined },
      ],
    });
    expect(placesFor(kept!, ['Moro', 'Date'])).toBeUndefined();
  });

  test('that was kept before there were such columns is read, and is one of findings', () => {
    const older = [
      { name: 'Old', columns: { reflex: 'R', date: 'D' }, values, order: 'day-month-year' },
    ];
    const [kept] = newMappings(shelfWith(JSON.stringify(older))).now;
    expect(kept).toEqual(older[0]);
    expect(placesFor(kept!, ['D', 'R'])).toEqual({
      columns: { reflex: 1, date: 0 },
      answers: undefined,
    });
  });

  test.each([-1, 0.5, 1e9])('whose turn is %d fits no sheet', (nth) => {
    const answers = [{ name: 'Moro', nth, reflex: 'moro' }];
    const bad = [{ name: 'Bad', columns: {}, answers, values, order: 'day-month-year' }];
    const [kept] = newMappings(shelfWith(JSON.stringify(bad))).now;
    expect(placesFor(kept!, ['Moro', 'Moro'])).toBeUndefined();
  });
});
