/** A sheet with a row for each visit and a column for each reflex says what one with a row for each finding does. */
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../../src/lib/atlas/atlas.ts';
import { RESPONSES, STATES } from '../../../src/lib/case/finding.ts';
import { addedTo } from '../../../src/lib/exchange/differences.ts';
import { guessShape } from '../../../src/lib/exchange/sheet/answers.ts';
import { MAX_SHEET_COLUMNS } from '../../../src/lib/exchange/sheet/read.ts';
import { find, plan, type Planned, textWithoutIds } from '../../support/sheets.ts';

/** What would be added, as `label date reflex side response`. */
const added = ({ children }: Planned): string[] =>
  children.flatMap(({ label, visits }) =>
    visits.flatMap(({ on, added: findings }) =>
      findings.map(({ reflex, side, response }) => `${label} ${on} ${reflex} ${side} ${response}`),
    ),
  );

describe('what would be added', () => {
  const HEAD = 'Child,Date,Examiner,Moro L,Moro R,ATNR left,Landau';

  test('a finding for each cell that is filled; an empty one was not tested', () => {
    const result = plan(
      `${HEAD}\nKestrel,2026-05-18,PT 1,weak,absent,,\nKestrel,2026-06-01,PT 1,,,present,weak`,
    );
    expect(result.said).toEqual([]);
    expect(result.same).toBe(1);
    expect(added(result)).toEqual([
      'Kestrel 2026-05-18 moro right not-elicited',
      'Kestrel 2026-06-01 atnr left elicited',
      'Kestrel 2026-06-01 landau midline weak',
    ]);
  });

  test('the same sheet again adds nothing', () => {
    const text = `${HEAD}\nKestrel,2026-06-01,PT 1,weak,absent,present,weak`;
    const [first] = addedTo(plan(text).children);
    const again = plan(text, { shelf: [{ id: 'k1', record: first!.record }] });
    expect([again.children, again.said, again.same]).toEqual([[], [], 4]);
  });

  test('a row without an answer adds nothing and is counted', () => {
    const result = plan(`${HEAD}\nKestrel,soon,PT 1,,,,\nKestrel,2026-06-01,PT 1,weak,,,`);
    expect([result.unanswered, result.said, added(result).length]).toEqual([1, [], 1]);
  });

  test.each([
    ['Kestrel,soon,PT 1,weak,weak,,', ['Row 2, "Date": "soon" is not a date']],
    ['Kestrel,2025-12-01,PT 1,weak,weak,,', ['Row 2, "Date": 2025-12-01 is before']],
    ['Nobody,2026-06-01,PT 1,weak,weak,,', ['Row 2, "Child": nobody here is called "Nobody"']],
    [
      'Kestrel,2026-06-01,PT 1,++,,,+',
      ['Row 2, "Moro L": "++" is not', 'Row 2, "Landau": "+" is not'],
    ],
    ['Kestrel,2026-05-18,PT 1,brisk,,,', ['Row 2, "Moro L": says brisk, and the record says weak']],
  ])('%s is told once, by its cell', (row, sentences) => {
    const result = plan(`${HEAD}\n${row}`, { order: 'year-month-day' });
    expect(result.said.map((sentence, n) => sentence.slice(0, sentences[n]?.length))).toEqual(
      sentences,
    );
    expect(result.children).toEqual([]);
  });

  test('cells that one choice mends are told by the first of them', () => {
    const rows = ['2026-06-01', '2026-06-02', '2026-06-03'].map((on) => `Kestrel,${on},weak,+,+`);
    const result = plan(`Child,Date,Moro,ATNR L,Galant L\n${rows.join('\n')}`);
    expect(result.said).toEqual([
      'Row 2, "Moro": the Moro reflex is recorded on left or right; name one. The same in 2 more cells.',
      'Row 2, "ATNR L": "+" is not decided; choose its meaning above. The same in 5 more cells.',
    ]);
    expect(result.wrong).toBe(9);
  });

  test('a wrong answer leaves the others of its row', () => {
    const result = plan(`${HEAD}\nKestrel,2026-06-01,PT 1,++,weak,,`);
    expect(added(result)).toEqual(['Kestrel 2026-06-01 moro right weak']);
  });

  test('a side comes from the name, from the column of sides, or is asked for', () => {
    const asked = plan('Child,Date,Moro,Landau\nKestrel,2026-06-01,weak,weak');
    expect(asked.said).toEqual([
      'Row 2, "Moro": the Moro reflex is recorded on left or right; name one.',
    ]);
    expect(added(asked)).toEqual(['Kestrel 2026-06-01 landau midline weak']);
    const rows = [
      'Child,Date,Side,Moro,ATNR L',
      'Kestrel,2026-06-01,r,weak,brisk',
      'Kestrel,2026-06-02,x,weak,',
    ];
    const told = plan(rows.join('\n'));
    expect(added(told)).toEqual([
      'Kestrel 2026-06-01 moro right weak',
      'Kestrel 2026-06-01 atnr left brisk',
    ]);
    expect(told.said).toEqual(['Row 3, "Side": "x" is not decided; choose its meaning above.']);
    const odd = plan('Child,Date,Landau L\nKestrel,2026-06-01,weak');
    expect(odd.said[0]).toMatch(
      /^Row 2, "Landau L": the Landau .* is recorded on the midline alone; leave the side out/,
    );
  });

  test('two columns of one reflex and side may say the same; where they differ the second is told', () => {
    const head = 'Child,Date,Moro L,L Moro,Moro both,Moro L';
    expect(added(plan(`${head}\nKestrel,2026-06-01,weak,weak,,weak`))).toEqual([
      'Kestrel 2026-06-01 moro left weak',
    ]);
    const result = plan(`${head}\nKestrel,2026-06-01,weak,,brisk,absent`);
    expect(result.said).toEqual([
      'Row 2, "Moro both": says brisk, and "Moro L (column C)" says weak for the same reflex and side; keep one.',
      'Row 2, "Moro L (column F)": says not-elicited, and "Moro L (column C)" says weak for the same reflex and side; keep one.',
    ]);
    const twice = plan(`${head}\nKestrel,2026-06-01,weak,,,\nKestrel,2026-06-01,,weak,,`);
    expect(twice.said).toEqual([
      'Row 3, "L Moro": the same reflex, side and visit are already in row 2; keep one.',
    ]);
  });

  test('the note of a row is that of the visit, and one that is here keeps its own', () => {
    const result = plan(
      [
        'Child,Date,By,Moro L,Moro R,Note',
        'Kestrel,2026-06-01,PT 1,weak,weak,tired',
        'Kestrel,2026-06-02,PT 1,weak,,one',
        'Kestrel,2026-06-02,PT 1,,weak,two',
        'Kestrel,2026-05-18,PT 1,,weak,later',
      ].join('\n'),
    );
    const [child] = result.children;
    expect(child?.record.visits.map(({ on, note }) => [on, note])).toEqual([
      ['2026-05-18', ''],
      ['2026-06-01', 'tired'],
      ['2026-06-02', 'one'],
    ]);
    expect(
      child?.record.visits.flatMap(({ findings }) => findings.map(({ note }) => note)),
    ).toEqual(Array.from({ length: 6 }, () => ''));
    expect(result.said).toEqual([
      'Row 4, "Note": row 3 gives the same visit another note; keep one.',
      'Row 5, "Note": the visit is already here with another note; that note stays as it is.',
    ]);
  });

  test('a new child comes of a row of a visit as of a row of a finding', () => {
    const result = plan(
      'Child,Date,DOB,Gestation,Moro L,Moro R\nPlover,2026-06-01,2026-02-01,36w0d,weak,weak',
    );
    expect(result.said).toEqual([]);
    expect(result.children[0]?.record.child.birth.gestationalDays).toBe(252);
    expect(added(result)).toHaveLength(2);
  });
});

/** Each side of each reflex as one column: the most a sheet can have to say. */
const EVERY = [...ATLAS.reflexes.values()].flatMap(({ id, short, testedPerSide, midline }) => [
  ...(testedPerSide
    ? [`${short} left`, `${short} right`].map((name, n) => ({
        name,
        reflex: id,
        side: n ? 'right' : 'left',
      }))
    : []),
  ...(midline
    ? [{ name: testedPerSide ? `${short} midline` : short, reflex: id, side: 'midline' }]
    : []),
]);

test('every side of every reflex is found by its name, and all fit into one sheet', () => {
  const header = ['Child', 'Date', ...EVERY.map(({ name }) => name)];
  expect(header.length).toBeLessThanOrEqual(MAX_SHEET_COLUMNS);
  expect(guessShape(header, find)).toBe('visit');
  const result = plan(`${header.join(';')}\nKestrel;2026-06-01${';weak'.repeat(EVERY.length)}`);
  expect(result.said).toEqual([]);
  expect(added(result)).toEqual(
    EVERY.map(({ reflex, side }) => `Kestrel 2026-06-01 ${reflex} ${side} weak`),
  );
});

describe('both shapes say the same', () => {
  const visit = fc.record({
    child: fc.constantFrom('Kestrel', 'Plover'),
    on: fc.constantFrom('2026-05-18', '2026-06-01', '2026-07-09'),
    examiner: fc.constantFrom('PT 1', ''),
    state: fc.constantFrom(...STATES),
    // a cell for some of the columns
    cells: fc.dictionary(fc.nat(EVERY.length - 1).map(String), fc.constantFrom(...RESPONSES), {
      maxKeys: 12,
    }),
  });
  const visits = fc.uniqueArray(visit, {
    maxLength: 6,
    selector: ({ child, on, examiner }) => `${child} ${on} ${examiner}`,
  });
  const born = (child: string): string[] =>
    child === 'Plover' ? ['2026-02-01', '36w0d'] : ['', ''];

  test('findings written with a column for each reflex are read as with a row for each', () => {
    fc.assert(
      fc.property(
        visits,
        fc.shuffledSubarray([...EVERY.keys()], { minLength: EVERY.length }),
        (made, columns) => {
          const HEAD = ['Child', 'Date', 'Examiner', 'State', 'DOB', 'Gestation'];
          const head = (one: (typeof made)[number]): string[] => [
            one.child,
            one.on,
            one.examiner,
            one.state,
            ...born(one.child),
          ];
          const wide = [
            [...HEAD, ...columns.map((n) => EVERY[n]!.name)],
            ...made.map((one) => [...head(one), ...columns.map((n) => one.cells[n] ?? '')]),
          ];
          const long = [
            [...HEAD, 'Reflex', 'Side', 'Result'],
            ...made.flatMap((one) =>
              columns.flatMap((n) => {
                const { reflex, side } = EVERY[n]!;
                const response = one.cells[n];
                return response ? [[...head(one), reflex, side, response]] : [];
              }),
            ),
          ];
          const told = made.flatMap(({ cells }) => Object.keys(cells));
          fc.pre(told.length > 0);
          const [read, other] = [wide, long].map((rows) =>
            plan(Papa.unparse(rows), { order: 'year-month-day' }),
          );
          const texts = ({ children }: Planned): string[] =>
            addedTo(children).map(({ record }) => textWithoutIds(record));
          expect(texts(read!)).toEqual(texts(other!));
          expect([read!.same, read!.problems.length]).toEqual([
            other!.same,
            other!.problems.length,
          ]);
          // and both say what was written: all but what the record here has already, or says otherwise
          const written = made.flatMap(({ child, on, examiner, cells }) =>
            Object.entries(cells).map(([n, response]) => {
              const { reflex, side } = EVERY[Number(n)]!;
              const isHere =
                `${child} ${on} ${examiner} ${reflex} ${side}` ===
                'Kestrel 2026-05-18 PT 1 moro left';
              return isHere ? [] : [`${child} ${on} ${reflex} ${side} ${response}`];
            }),
          );
          expect(added(read!).toSorted()).toEqual(written.flat().toSorted());
        },
      ),
    );
  });
});
