/** Which child each row of a sheet is of, and that a faulty row alone is left out, told by its cell. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MAX_VISITS } from '../../../src/lib/case/shape.ts';
import { addedTo } from '../../../src/lib/exchange/differences.ts';
import { childCase } from '../../support/kestrel.ts';
import { plan, SHELF, type Planned, textWithoutIds } from '../../support/sheets.ts';

/** What would be added, as `label date findings`. */
const added = ({ children }: Planned): string[] =>
  children.flatMap(({ label, visits }) =>
    visits.map(({ on, added: findings }) => `${label} ${on} ${findings.length}`),
  );

/** The records as they would be, in whatever order the children were met. */
const texts = ({ children }: Planned): string[] =>
  addedTo(children)
    .map(({ record }) => textWithoutIds(record))
    .sort();

/** A child here by the label Kestrel. */
const called = (id: string, born: string) => ({
  id,
  record: childCase({ born, gestation: '38w0d' }, []),
});

describe('the child of a row', () => {
  const WIDE = 'Child,Birth,GA,Date,Moro L,Moro R';
  const FIRST = 'Q-1,2026-01-04,40,2026-05-01,elicited,weak';

  test('is never the open one where a column names it and the cell is empty', () => {
    const result = plan(`${WIDE}\n${FIRST}\n,,,2026-06-01,elicited,weak`);
    expect(result.said).toEqual(['Row 3, "Child": is empty; write the child in every row.']);
    expect(added(result)).toEqual(['Q-1 2026-05-01 2']);
  });

  test('is the open one where no column names it', () => {
    const result = plan('Date,Moro L,Moro R\n2026-06-01,elicited,weak');
    expect([result.said, added(result)]).toEqual([[], ['Kestrel 2026-06-01 2']]);
    expect(plan('Date,Moro L\n2026-06-01,weak', { shelf: [] }).said).toEqual([
      'Row 2, child: no child is named and none is open; choose the column of the child, or open the child first.',
    ]);
  });

  const TWO = [...SHELF, called('k2', '2026-02-01')];
  const LONG = 'Child,Date,Reflex,Side,Result';

  test('is told by the birth date where two have one label', () => {
    const result = plan(`${LONG},DOB\nKestrel,2026-06-01,Moro,l,weak,2026-02-01`, { shelf: TWO });
    expect(result.said).toEqual([]);
    expect(result.children.map(({ here }) => here?.id)).toEqual(['k2']);
  });

  test.each([
    [
      'no birth date',
      TWO,
      '',
      'Row 2, "Child": 2 children here are called "Kestrel"; give the birth date in this row, or give them different names or codes.',
    ],
    [
      'a birth date of neither',
      TWO,
      '2026-03-01',
      'Row 2, "DOB": 2 children here are called "Kestrel", and none was born on 2026-03-01; check the date, or give a new child another name or code.',
    ],
    [
      'a birth date of both',
      [...TWO, called('k3', '2026-02-01')],
      '2026-02-01',
      'Row 2, "Child": 2 children here are called "Kestrel" and were born on 2026-02-01; give them different names or codes.',
    ],
  ])('is not guessed among those of one label: %s', (_, shelf, born, sentence) => {
    const result = plan(`${LONG},DOB\nKestrel,2026-06-01,Moro,l,weak,${born}`, { shelf });
    expect([result.said, result.children]).toEqual([[sentence], []]);
  });

  test('is not another one because an earlier row left the birth date out', () => {
    const rows = ['Kestrel,2026-06-01,Moro,l,weak,', 'Kestrel,2026-06-02,Moro,l,weak,2026-01-06'];
    const result = plan(`${LONG},DOB\n${rows.join('\n')}`);
    expect(result.said).toEqual([
      'Row 3, "DOB": 2026-01-06 is not the birth date of the child here (2026-01-05); check the date, or give another child another name or code.',
    ]);
    expect(added(result)).toEqual(['Kestrel 2026-06-01 1']);
  });
});

describe('rows of a new child', () => {
  const HEAD = 'Child,Birth,GA,Due,Date,Moro L';
  const row = (born: string, weeks: string, due: string, on: string): string =>
    ['New', born, weeks, due, on, 'weak'].join(',');

  test.each([
    [
      row('2026-01-04', '33', '', '2026-05-01'),
      row('2025-09-09', '40', '', '2026-05-02'),
      'Row 3, "Birth": says 2025-09-09, and row 2 gives the birth date 2026-01-04 for the same child; correct one, or give two children different names or codes.',
    ],
    [
      row('2026-01-04', '33', '', '2026-05-01'),
      row('', '34w1d', '', '2026-05-02'),
      'Row 3, "GA": says 34w1d, and row 2 gives the gestation at birth 33 for the same child; correct one, or give two children different names or codes.',
    ],
    [
      // born on the due date is born at 40w0d
      row('2026-01-04', '', '2026-01-04', '2026-05-01'),
      row('2026-01-04', '33', '', '2026-05-02'),
      'Row 3, "GA": says 33, and row 2 gives the due date 2026-01-04 for the same child; correct one, or give two children different names or codes.',
    ],
  ])('that contradict each other: the later one is told', (first, later, sentence) => {
    const result = plan([HEAD, first, later].join('\n'));
    expect(result.said).toEqual([sentence]);
    expect(added(result)).toEqual(['New 2026-05-01 1']);
  });

  test('may say the same in other words, or leave it to the first', () => {
    const rows = [
      row('2026-01-04', '33', '', '2026-05-01'),
      row('2026-01-04', '33w0d', '', '2026-05-02'),
      row('', '', '', '2026-05-03'),
      // 33w0d is seven weeks before the due date
      row('', '', '2026-02-22', '2026-05-04'),
    ];
    const result = plan([HEAD, ...rows].join('\n'));
    expect([result.said, added(result).length]).toEqual([[], 4]);
  });

  test('that cannot be one are told by the cell, and a later one that can be is taken', () => {
    const rows = [
      row('2026-01-04', '55', '', '2026-05-01'),
      row('2026-01-04', '40', '', '2026-05-02'),
    ];
    const result = plan([HEAD, ...rows].join('\n'));
    expect(result.said).toEqual([
      'Row 2, "GA": 55w0d is outside 22w0d to 44w6d; check weeks and days.',
    ]);
    expect(added(result)).toEqual(['New 2026-05-02 1']);
  });
});

describe('a faulty row', () => {
  const LONG = 'Child,Birth,GA,Date,Reflex,Side,Result,By,Note';
  const long = (child: string, on: string, side: string, by = '', note = ''): string =>
    `${child},${on},Moro,${side},elicited,${by},${note}`;
  const NEW = 'Q-1,2026-01-04,40';
  const OLD = 'Kestrel,,';
  const MARKUP = 'holds markup or script ("<b>"); take it out, only plain text is kept.';

  test.each([
    [NEW, '2020-06-01', '', '', '"Date": 2020-06-01 is before the birth on 2026-01-04'],
    [OLD, '2020-06-01', '', '', '"Date": 2020-06-01 is before the birth on 2026-01-05'],
    [NEW, '2201-01-01', '', '', '"Date": 2201-01-01 is outside the years'],
    [NEW, '2026-05-02', '', 'a <b>tag</b>', `"Note": ${MARKUP}`],
    [OLD, '2026-05-02', '', 'a <b>tag</b>', `"Note": ${MARKUP}`],
    [OLD, '2026-05-02', '', 'x'.repeat(4001), '"Note": is too long'],
    [OLD, '2026-05-02', '', `<b>${'x'.repeat(4001)}`, `"Note": ${MARKUP}`],
    [OLD, '2026-05-02', 'PT <b>', '', `"By": ${MARKUP}`],
  ])('of %s on %s is left out alone', (child, on, by, note, sentence) => {
    const rows = [
      long(child, '2026-05-01', 'left'),
      long(child, on, 'both', by, note),
      long(child, '2026-05-01', 'right'),
    ];
    const result = plan([LONG, ...rows].join('\n'));
    expect(result.said.map((one) => one.slice(0, 7 + sentence.length))).toEqual([
      `Row 3, ${sentence}`,
    ]);
    expect(result.wrong).toBe(1);
    expect(added(result)).toEqual([`${child.split(',')[0]} 2026-05-01 2`]);
  });

  test('of a visit takes its answers and its note along, and is told once', () => {
    const rows = [
      'Kestrel,2026-06-01,weak,weak,x <b>y</b>',
      'Kestrel,2025-06-01,weak,weak,',
      'Kestrel,2026-06-02,weak,weak,fine',
    ];
    const result = plan(`Child,Date,Moro L,Moro R,Note\n${rows.join('\n')}`);
    expect(result.said).toEqual([
      `Row 2, "Note": ${MARKUP}`,
      'Row 3, "Date": 2025-06-01 is before the birth on 2026-01-05; check both dates.',
    ]);
    expect(added(result)).toEqual(['Kestrel 2026-06-02 2']);
  });

  test('of more visits than a record takes is told, and those before it are added', () => {
    const years = Array.from({ length: MAX_VISITS }, (_, n) => 2027 + (n % 100));
    const rows = years.map((year, n) => `Kestrel,${year}-06-0${1 + Math.floor(n / 100)},weak`);
    const result = plan(`Child,Date,Moro L\n${rows.join('\n')}`);
    expect(result.said).toEqual([
      `Row ${MAX_VISITS + 1}, "Date": the child has ${MAX_VISITS} visits with those above, and no more are kept; take rows out.`,
    ]);
    expect(addedTo(result.children)[0]?.record.visits).toHaveLength(MAX_VISITS);
  });

  test('changes nothing of what the other rows add', () => {
    const good = fc.uniqueArray(
      fc.tuple(
        fc.constantFrom(NEW, OLD, 'R-2,2026-02-01,36w0d'),
        fc.integer({ min: 1, max: 28 }),
        fc.constantFrom('left', 'right'),
      ),
      { minLength: 1, maxLength: 8, selector: (one) => one.join() },
    );
    const bad = fc.constantFrom(
      long(NEW, '2020-06-01', 'left'),
      long(OLD, '2020-06-01', 'left'),
      long(OLD, '2026-06-01', 'left', '', '<i>x</i>'),
      long('R-2,2026-02-02,36w0d', '2026-06-01', 'left'),
      long(',,', '2026-06-01', 'left'),
    );
    fc.assert(
      fc.property(good, bad, fc.nat(), (made, fault, place) => {
        const rows = made.map(([child, day, side]) =>
          long(child, `2026-04-${String(day).padStart(2, '0')}`, side),
        );
        // the first row of a child says when it was born
        const first = long('R-2,2026-02-01,36w0d', '2026-03-01', 'left');
        const all = [first, ...rows];
        const alone = plan([LONG, ...all].join('\n'));
        const at = 1 + (place % all.length);
        const within = plan([LONG, ...all.toSpliced(at, 0, fault)].join('\n'));
        expect(within.wrong).toBe(alone.wrong + 1);
        expect(within.said[0]).toMatch(new RegExp(`^Row ${at + 2}, `));
        expect(within.said.join(' ')).not.toMatch(/\bVisit \d|\bfinding \d/);
        expect(texts(within)).toEqual(texts(alone));
      }),
    );
  });
});

test('a new visit ahead of today is marked, one of today or one that is here is not', () => {
  const rows = ['2026-05-18', '2026-05-17', '2026-05-10'].map((on) => `Kestrel,${on},PT 1,weak`);
  const result = plan(`Child,Date,By,Moro R\n${rows.join('\n')}`, { today: '2026-05-10' });
  expect(result.children[0]?.visits.map(({ on, isAhead }) => [on, isAhead])).toEqual([
    ['2026-05-18', false],
    ['2026-05-17', true],
    ['2026-05-10', false],
  ]);
});
