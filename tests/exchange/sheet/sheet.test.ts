/** A clinic's own sheet: cells, dates, words, and what it would add. Dates are checked against luxon. */
import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, test } from 'vitest';
import type { Case } from '../../../src/lib/case/case.ts';
import { caseText } from '../../../src/lib/case/raw.ts';
import { addedTo } from '../../../src/lib/exchange/differences.ts';
import {
  newMappings,
  placesFor,
  withMapping,
  withoutMapping,
} from '../../../src/lib/exchange/mappings.ts';
import {
  doubtOf,
  ordersOf,
  readDate,
  sureOrder,
  type DateOrder,
} from '../../../src/lib/exchange/sheet/dates.ts';
import { looksLikeTable, readSheet, textOf } from '../../../src/lib/exchange/sheet/read.ts';
import { sheet as sheetWords, sheetSentence } from '../../../src/lib/words/en/sheets.ts';
import { hostileBytes, hostileText } from '../../support/hostile.ts';
import { runs, written } from '../../support/runs.ts';
import { holds, KESTREL, plan, SHELF, sheetOf } from '../../support/sheets.ts';

describe('cells', () => {
  const HEAD = 'Child;Date;Reflex;Side;Result;Note';
  test.each([
    ['semicolons', `${HEAD}\nKestrel;18.05.2026;Moro;r;present;"a; b"`],
    ['commas', `${HEAD}\nKestrel;18.05.2026;Moro;r;present;"a; b"`.replaceAll(';', ',')],
    ['tabs', `${HEAD}\nKestrel;18.05.2026;Moro;r;present;"a\tb"`.replaceAll(';', '\t')],
    ['a mark before', `\uFEFF${HEAD}\r\nKestrel;18.05.2026;Moro;r;present;x`],
    [
      'a line that names the separator',
      `sep=;\r\n${HEAD}\nKestrel;18.05.2026;Moro;r;present;"a,,,, b"`,
    ],
    [
      'a line that names the separator, after a mark and in quotation marks',
      `\uFEFF"sep=|"\n${HEAD}\nKestrel;18.05.2026;Moro;r;present;x`.replaceAll(';', '|'),
    ],
    ['empty rows', `\n\n${HEAD}\n\nKestrel;18.05.2026;Moro;r;present;x\n;;;;;\n`],
  ])('%s', (_, text) => {
    const [child] = plan(text).children;
    expect(child?.visits[0]).toMatchObject({ on: '2026-05-18', added: [{ reflex: 'moro' }] });
  });

  test('letters as Windows-1252 and UTF-16 write them', () => {
    // 0xE9 is é (Encoding Standard, index windows-1252); the browser's own test has the euro sign
    expect(textOf(Uint8Array.of(0x61, 0xe9))).toBe('aé');
    expect(textOf(Uint8Array.from(Buffer.from('\uFEFFaé', 'utf16le')))).toBe('aé');
    expect(textOf(Uint8Array.from(Buffer.from('aé', 'utf8')))).toBe('aé');
  });

  test.each(['utf-16le', 'utf-16be'])('a sheet in %s with its mark is read', (encoding) => {
    const bytes = Buffer.from(`\uFEFF${HEAD}\nKestrel;18.05.2026;Moro;r;weak;é`, 'utf16le');
    const text = textOf(Uint8Array.from(encoding === 'utf-16be' ? bytes.swap16() : bytes));
    expect(looksLikeTable(text)).toBe(true);
    expect(sheetOf(text).rows[0]?.cells.at(-1)).toBe('é');
  });

  test('a line that names the separator is no row and does not hide what is too heavy', () => {
    // spreadsheets do not show that line: common practice, no source
    const text = 'sep=,\nDate,Moro L\n2026-05-18,weak';
    expect(looksLikeTable(text)).toBe(true);
    expect(sheetOf(text)).toMatchObject({ header: ['Date', 'Moro L'], rows: [{ number: 2 }] });
    const heavy = `a,b${' '.repeat(120_000)}\n1,2`;
    expect(readSheet(heavy)).toMatchObject({ ok: false, problem: { code: 'no-table' } });
    expect(readSheet(`sep=,\n${heavy}`)).toEqual(readSheet(heavy));
  });

  test('rows are counted as a spreadsheet counts them, also after an empty one', () => {
    const { rows } = sheetOf('a,b\n1,2\n\n3,4\n"5\n6",7\n8,9');
    expect(rows.map(({ number }) => number)).toEqual([2, 4, 5, 6]);
  });

  test.each([
    ['', /not a table/],
    ['only one name\nx', /not a table/],
    ['sep=;', /not a table/],
    // UTF-16 without its mark
    ['C\0,\0D\0\n\0', /Save it from the spreadsheet as CSV in UTF-8/],
    ['a,b', /no row below/],
    [`a,b\n${'1,2\n'.repeat(5001)}`, /more than 5000 rows/],
    [`${'a,'.repeat(161)}\n1,2`, /more than 160 columns/],
    [`a,b\n1,"${'x'.repeat(6000)}`, /Row 2: a cell holds more/],
    [`a,b\n${'x'.repeat(2_000_001)}`, /at most 2 MB/],
  ])('%# is refused with a sentence', (text, sentence) => {
    const read = readSheet(text);
    expect(read.ok ? '' : sheetSentence(read.problem)).toMatch(sentence);
  });
});

describe('dates', () => {
  const FORMS: Readonly<Record<DateOrder, string[]>> = {
    'day-month-year': ['dd.MM.yyyy', 'd/M/yyyy', 'dd-MM-yy'],
    'month-day-year': ['MM/dd/yyyy', 'M/d/yyyy'],
    'year-month-day': ['yyyy-MM-dd', 'yyyy/M/d'],
  };
  test('a date is read as luxon writes it, in every form', () => {
    const order = fc.constantFrom(...(Object.keys(FORMS) as DateOrder[]));
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), order, fc.nat(), (days, one, form) => {
        const date = DateTime.utc(2001, 1, 1).plus({ days });
        const written = date.toFormat(FORMS[one][form % FORMS[one].length]!);
        expect(readDate(written, one)).toBe(date.toISODate());
      }),
    );
  });

  test('the order is known where only one can be, and asked where two could', () => {
    expect(sureOrder(['18.05.2026', '03.04.2026'])).toBe('day-month-year');
    expect(sureOrder(['05/18/2026'])).toBe('month-day-year');
    expect(sureOrder(['03/04/2026', '05/06/2026'])).toBeUndefined();
    expect(ordersOf(['03/04/2026'])).toEqual(['day-month-year', 'month-day-year']);
    // one slip does not settle how the others are written
    expect(sureOrder(['18.05.2026', '05.13.2026'])).toBeUndefined();
    expect(sureOrder(['04/04/2026'])).toBe('day-month-year');
    // a cell that is no date at all leaves the order of the others sure
    expect(sureOrder(['18.05.2026', 'soon', ''])).toBe('day-month-year');
    expect(sureOrder(['soon'])).toBeUndefined();
    expect(ordersOf(['soon'])).toEqual([]);
    expect(sureOrder(['04/04/2026', 'soon'])).toBe('day-month-year');
    expect(readDate('30.02.2026', 'day-month-year')).toBeUndefined();
  });
});

test.each([
  // one that is another day in another order
  [['18/05/2026', '04/03/2026', '05/13/2026'], '"04/03/2026" could be read in more than one way.'],
  [['04/04/2026', '06.05.26', 'soon'], '"06.05.26" could be read in more than one way.'],
  // none is: then two that no order reads both
  [
    ['soon', '18/05/2026', '05/13/2026'],
    '"18/05/2026" and "05/13/2026" are not written in the same order.',
  ],
  [
    ['04/04/2026', '2026-05-18'],
    '"04/04/2026" and "2026-05-18" are not written in the same order.',
  ],
])('why the order of %j is asked is said by dates that show it', (dates, sentence) => {
  expect(sureOrder(dates)).toBeUndefined();
  expect(sheetWords.orderAsked(doubtOf(dates))).toContain(sentence);
});

test('where the order is asked there are dates that show why', () => {
  const two = fc.constantFrom('03', '04', '13', '18');
  const date = fc.oneof(
    fc.tuple(two, two, fc.constantFrom('2026', '26')).map((parts) => parts.join('/')),
    fc.tuple(fc.constant('2026'), two, two).map((parts) => parts.join('/')),
    fc.constantFrom('soon', ''),
  );
  fc.assert(
    fc.property(fc.array(date, { minLength: 1, maxLength: 6 }), (dates) => {
      fc.pre(sureOrder(dates) === undefined && ordersOf(dates).length > 0);
      const shown = doubtOf(dates);
      const readings = shown.map((text) => ordersOf([text]));
      if (shown.length === 1)
        expect(
          new Set(readings[0]?.map((order) => readDate(shown[0]!, order))).size,
        ).toBeGreaterThan(1);
      else {
        expect(shown).toHaveLength(2);
        expect(readings[0]?.filter((order) => readings[1]?.includes(order))).toEqual([]);
        expect(readings.every(({ length }) => length > 0)).toBe(true);
      }
    }),
  );
});

describe('what would be added', () => {
  test('to a visit that is here, to a new one, and to a new child', () => {
    const { children, problems, same } = plan(
      [
        'Patient,Date of visit,Therapist,Reflex,Side,Result,DOB,Gestation',
        'Kestrel,2026-05-18,PT 1,Moro reflex,L,weak,,',
        'Kestrel,2026-05-18,PT 1,Moro reflex,R,absent,,',
        'kestrel,2026-06-01,PT 1,Moro,both,present,2026-01-05,',
        'Plover,2026-06-01,PT 2,Sucking,,present,2026-02-01,"36,0"',
      ].join('\n'),
    );
    expect(problems).toEqual([]);
    expect(same).toBe(1);
    expect(children.map(({ label, here }) => [label, here?.id])).toEqual([
      ['Kestrel', 'k1'],
      ['Plover', undefined],
    ]);
    const [kestrel, plover] = addedTo(children).map(({ record }): Case => record);
    expect(kestrel?.visits.map(({ on, findings }) => [on, findings.length])).toEqual([
      ['2026-05-18', 2],
      ['2026-06-01', 2],
    ]);
    expect(plover?.child.birth.gestationalDays).toBe(252);
    expect(caseText(KESTREL)).toBe(caseText(SHELF[0]!.record));
  });

  test.each([
    ['Kestrel,soon,Moro,l,weak', /^Row 2, "Date": "soon" is not a date/],
    ['Kestrel,2025-12-01,Moro,l,weak', /^Row 2, "Date": .*is before the birth/],
    ['Kestrel,2026-05-18,,l,weak', /^Row 2, "Reflex": is empty/],
    ['Kestrel,2026-05-18,Mooro,l,weak', /^Row 2, "Reflex": "Mooro" is not decided/],
    ['Kestrel,2026-05-18,Moro,l,++', /^Row 2, "Result": "\+\+" is not decided/],
    [
      'Kestrel,2026-05-18,Moro,,weak',
      /^Row 2, "Side": the Moro reflex is recorded on left or right/,
    ],
    ['Kestrel,2026-05-18,Moro,mid,weak', /^Row 2, "Side": the Moro reflex is recorded on/],
    ['Nobody,2026-05-18,Moro,l,weak', /^Row 2, "Child": nobody here is called "Nobody"/],
  ])('%s is told by its cell', (row, sentence) => {
    const result = plan(`Child,Date,Reflex,Side,Result\n${row}`, { order: 'year-month-day' });
    expect(result.said.join('\n')).toMatch(sentence);
    expect(result.children).toEqual([]);
  });

  test('what the record says otherwise stays, and what stands twice is told', () => {
    const result = plan(
      [
        'Child,Date,By,Reflex,Side,Result',
        'Kestrel,2026-05-18,PT 1,Moro,l,brisk',
        'Kestrel,2026-05-18,PT 1,Galant,l,present',
        'Kestrel,2026-05-18,PT 1,Galant,l,present',
      ].join('\n'),
    );
    expect(result.said).toEqual([
      'Row 2, "Result": says brisk, and the record says weak; the record stays as it is.',
      'Row 4, "Reflex": the same reflex, side and visit are already in row 3; keep one.',
    ]);
  });

  test('a birth date of another child is not that child', () => {
    const result = plan(
      'Child,Date,Reflex,Side,Result,DOB\nKestrel,2026-05-18,Moro,r,weak,2026-01-06',
    );
    expect(result.said[0]).toMatch(/2026-01-06 is not the birth date of the child here/);
  });
});

test('a mapping is kept by name and fits a sheet whose columns stand in another order', () => {
  const held = new Map<string, string>();
  const shelf = {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => void held.set(key, value),
  };
  const values = { reflex: { M: 'moro' }, side: {}, response: { '+': 'elicited' }, state: {} };
  const mapping = { columns: { reflex: 0, response: 2 }, values, order: 'day-month-year' as const };
  const mappings = newMappings(shelf);
  mappings.become(withMapping(mappings.now, 'Ward 3', mapping, ['R', 'x', 'Res']), 'kept');
  expect(mappings.isKept).toBe(true);
  const [kept] = newMappings(shelf).now;
  expect(kept).toMatchObject({ name: 'Ward 3', values, order: 'day-month-year' });
  expect(placesFor(kept!, ['Res', 'R'])?.columns).toEqual({ reflex: 1, response: 0 });
  expect(placesFor(kept!, ['R'])).toBeUndefined();
  mappings.become(withoutMapping(mappings.now, 'Ward 3'), 'forgotten');
  expect(newMappings(shelf).now).toEqual([]);
  mappings.undo();
  expect(newMappings(shelf).now).toEqual([kept]);
  held.set('tidemark-sheets', '[{"name":3}]');
  expect(newMappings(shelf).now).toEqual([]);
});

test('a row far below many empty ones is read, or the sheet is refused; none is left out unsaid', () => {
  const sheet = (blank: number): string =>
    `reflex,response\nmoro,elicited\n${'\n'.repeat(blank)}atnr,weak`;
  for (const blank of [0, 100, 6000]) {
    const read = readSheet(sheet(blank));
    expect(read.ok && read.sheet.rows.map(({ cells }) => cells[0])).toEqual(['moro', 'atnr']);
  }
  expect(readSheet(sheet(20_000))).toMatchObject({ ok: false, problem: { code: 'too-many-rows' } });
});

const [CUT, CODED] = [runs(8000), runs(2500)];

describe('hostile sheets', () => {
  const rows = fc
    .array(
      fc.tuple(
        fc.constantFrom('Kestrel', 'Plover', '', '=1+1', '"a;b"'),
        fc.constantFrom('2026-05-18', '18.05.2026', '05/06/2026', ''),
        fc.constantFrom('Moro', 'atnr', 'Babkin', '@x', 'constructor', '__proto__'),
        fc.constantFrom('l', 'r', 'both', 'mid', ''),
        fc.constantFrom('present', 'weak', '+', 'toString', ''),
        fc.constantFrom('2026-01-05', '1.2.2026', ''),
        fc.constantFrom('33w1d', '36', '36,5', ''),
      ),
      { maxLength: 12 },
    )
    .map((cells) =>
      ['Child;Date;Reflex;Side;Result;DOB;Gestation', ...cells.map((row) => row.join(';'))].join(
        '\r\n',
      ),
    );

  test(`${written(CUT)} sheets with their text cut, flipped and swollen`, () => {
    let read = 0;
    fc.assert(
      fc.property(hostileText(rows), (text) => {
        read += Number(holds(text, "clinic's sheet"));
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
        read += Number(holds(textOf(bytes), "clinic's sheet"));
      }),
      { numRuns: CODED },
    );
    expect(read).toBeGreaterThan(0);
    expect(read).toBeLessThan(CODED);
  });
});
