import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS, ATLAS_PARTS, buildAtlas } from '../../src/lib/atlas/atlas.ts';
import { COLUMNS, ownSource, readTable, type Row } from '../../src/lib/atlas/ownTable.ts';
import { PROSE } from '../../src/lib/atlas/prose.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import {
  MAX_ROWS,
  MAX_TABLE_BYTES,
  readCsv,
  tableTooLarge,
  TEMPLATE,
  writeCsv,
} from '../../src/lib/store/table.ts';
import { tableSentence } from '../../src/lib/words/en/ownPages.ts';

const reflexes = [...ATLAS.reflexes.values()];
const read = (rows: readonly Row[]) => readTable(rows, reflexes, PROSE);
const row = (change: Partial<Row>): Row => ({
  reflex: 'Moro reflex',
  appears: '28 wk',
  integrates: '4-6 mo',
  note: '',
  ...change,
});

test('a formula is disarmed in a cell of several lines too', () => {
  const [read] = (
    readCsv(writeCsv([row({ note: '=HYPERLINK("x")\nsecond line' })])) as { rows: Row[] }
  ).rows;
  expect(read!.note).toBe('\'=HYPERLINK("x")\nsecond line');
});

describe("a textbook's table becomes a source like any other", () => {
  test('the template is read whole, out of its own file', () => {
    const file = readCsv(writeCsv(TEMPLATE));
    expect(file).toEqual({ ok: true, rows: TEMPLATE });
    const { claims, problems } = read(TEMPLATE);
    expect(problems).toEqual([]);
    expect(claims.map((c) => c.reflex)).toEqual(['moro', 'palmar-grasp', 'protective-forward']);
  });

  test('it takes part in judgement, and nothing built in is overwritten', () => {
    const mine = ownSource('book', 'My textbook', read(TEMPLATE).claims);
    const atlas = buildAtlas({ ...ATLAS_PARTS, sources: [...ATLAS_PARTS.sources, mine] });
    const before = sheetOf(ATLAS).get('moro')!.windows.length;
    expect(sheetOf(atlas).get('moro')!.windows).toHaveLength(before + 1);
    expect(mine.id).toBe('own-book');
    expect(ATLAS.sources.has(mine.id)).toBe(false);
  });

  test('columns may stand in any order, with semicolons or tabs', () => {
    for (const separator of [';', '\t', ',']) {
      const text = [
        ['Integrates', 'reflex', 'APPEARS'],
        ['4-6 mo', 'Moro reflex', '28 wk'],
      ]
        .map((cells) => cells.join(separator))
        .join('\r\n');
      expect(readCsv(text)).toEqual({ ok: true, rows: [row({})] });
    }
  });
});

describe('bad tables', () => {
  test.each<[string, string, object]>([
    [
      'a column missing',
      'reflex,appears\nMoro,28 wk',
      { code: 'missing-columns', missing: ['integrates'] },
    ],
    [
      'an unknown column',
      'reflex,appears,integrates,price\nMoro,28 wk,4 mo,3',
      { code: 'unknown-columns', unknown: ['price'] },
    ],
    ['no rows', 'reflex,appears,integrates\n', { code: 'no-rows' }],
    ['nothing', '', { code: 'not-a-table' }],
    ['bytes', '\0\0\0', { code: 'not-a-table' }],
    [
      'too many rows',
      `reflex,appears,integrates\n${'Moro,28 wk,4 mo\n'.repeat(501)}`,
      { code: 'too-many-rows', limit: 500 },
    ],
    ['too large', 'x'.repeat(MAX_TABLE_BYTES + 1), { code: 'too-large', megabytes: 1 }],
  ])('%s', (_, text, problem) => {
    expect(readCsv(text)).toEqual({ ok: false, problem });
  });

  test('50 MB, before it is read', () => {
    expect(tableTooLarge(50_000_000)).toEqual({ code: 'too-large', megabytes: 50 });
  });

  test.each<[string, Partial<Row>, string, string]>([
    ['a number without a unit', { integrates: '6' }, 'integrates', 'no-unit'],
    ['low above high', { integrates: '6-4 mo' }, 'integrates', 'low-above-high'],
    ['a mistyped reflex', { reflex: 'Morro reflx' }, 'reflex', 'unknown-reflex'],
    ['no reflex', { reflex: 'qqqq' }, 'reflex', 'unknown-reflex'],
    ['a formula', { note: '=HYPERLINK("x")' }, 'note', 'formula'],
    ['a formula as a reflex', { reflex: '@SUM(A1)' }, 'reflex', 'formula'],
    ['script', { note: '<script>x</script>' }, 'note', 'markup'],
    ['nothing stated', { appears: '', integrates: '-' }, 'appears', 'nothing-stated'],
    [
      'an end before the start',
      { reflex: 'Symmetrical tonic neck reflex', appears: '6 mo', integrates: '2 mo' },
      'integrates',
      'ends-before-start',
    ],
    ['an endless cell', { note: 'x'.repeat(1000) }, 'note', 'too-long'],
  ])('%s is said on its cell', (_, change, column, code) => {
    const { claims, problems } = read([row({ reflex: 'Galant reflex' }), row(change)]);
    expect(claims).toEqual([]);
    expect(problems[0]).toMatchObject({ row: 1, column, code });
  });

  test('a mistyped reflex offers the nearest', () => {
    expect(read([row({ reflex: 'Galantt' })]).problems[0]).toMatchObject({ nearest: 'galant' });
  });

  test('two rows for one reflex', () => {
    expect(read([row({}), row({ reflex: 'moro' })]).problems).toEqual([
      { code: 'twice', firstRow: 0, row: 1, column: 'reflex' },
    ]);
  });
});

const cell = fc.string({ maxLength: 12 });
test('any table gets an answer, and any text a sentence or rows', () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ reflex: cell, appears: cell, integrates: cell, note: cell }), {
        maxLength: 5,
      }),
      fc.string(),
      (rows, text) => {
        for (const problem of read(rows).problems) expect(COLUMNS).toContain(problem.column);
        const table = readCsv(text);
        if (!table.ok) expect(tableSentence(table.problem)).toMatch(/^[^\n]+[.?]$/);
        else expect(table.rows.length).toBeLessThanOrEqual(MAX_ROWS);
      },
    ),
    { numRuns: 300 },
  );
});
