import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import type { CivilDate } from '../../src/lib/age/civil.ts';
import { RESPONSES, SIDES, STATES } from '../../src/lib/case/finding.ts';
import { rearmed } from '../../src/lib/store/disarm.ts';
import {
  FINDING_COLUMNS,
  findingsCsv,
  type FindingRow,
  type TableOptions,
} from '../../src/lib/store/findingsTable.ts';

const WHOLE: TableOptions = { names: true, dates: true };

const ROW: FindingRow = {
  child: 'Kestrel',
  childNumber: 1,
  invented: true,
  on: '2026-03-01' as CivilDate,
  examiner: 'Wren',
  gestationalDays: 232,
  chronologicalDays: 30,
  postmenstrualDays: 262,
  correctedDays: -18,
  usedDays: -18,
  counts: 'corrected',
  reflex: 'moro',
  reflexName: 'Moro reflex',
  side: 'left',
  response: 'elicited',
  state: 'quiet-alert',
  tries: 1,
  variant: '',
  verdict: 'fits',
  whyNot: '',
  share: 2 / 3,
  firm: false,
  flags: ['uneven', 'weak'],
  attention: 'watch',
  sources: 7,
  voices: 5,
  note: 'Startled, then calm; see "video"',
  agreed: '',
};

/** Cells read back by column name, as a spreadsheet would have them. */
function readBack(text: string, delimiter = ','): Record<string, string>[] {
  const { data, errors } = Papa.parse<Record<string, string>>(text, {
    header: true,
    delimiter,
    skipEmptyLines: true,
  });
  expect(errors).toEqual([]);
  return data;
}

/** Text of the kind that breaks tables or is run by a spreadsheet. */
const nasty = fc
  .array(
    fc.oneof(
      fc.constantFrom('=', '+', '-', '@', '\t', '\r', '\n', '\r\n', '"', "'", ',', ';', ' ', '1'),
      fc.string({ unit: 'grapheme', maxLength: 8 }),
    ),
    { maxLength: 8 },
  )
  .map((parts) => parts.join(''));

const anyRow: fc.Arbitrary<FindingRow> = fc
  .record({
    child: nasty,
    examiner: nasty,
    note: nasty,
    reflex: nasty,
    reflexName: nasty,
    childNumber: fc.integer({ min: 1, max: 3 }),
    invented: fc.boolean(),
    gestationalDays: fc.integer({ min: 154, max: 314 }),
    chronologicalDays: fc.nat({ max: 1200 }),
    side: fc.constantFrom(...SIDES),
    response: fc.constantFrom(...RESPONSES),
    state: fc.constantFrom(...STATES),
    share: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
    firm: fc.option(fc.boolean()),
  })
  .map((some) => {
    const postmenstrualDays = some.gestationalDays + some.chronologicalDays;
    const correctedDays = postmenstrualDays - 280;
    return { ...ROW, ...some, postmenstrualDays, correctedDays, usedDays: correctedDays };
  });

/** What a spreadsheet may run: the first characters that common practice (no source) disarms. */
const RUNS = ['=', '+', '-', '@', '\t', '\r', '\n'];

describe('the table of findings', () => {
  test('one row, cell by cell', () => {
    expect(readBack(findingsCsv([ROW], WHOLE))).toEqual([
      {
        child: 'Kestrel',
        invented: 'yes',
        visit_date: '2026-03-01',
        gestation_at_birth: '33w1d', // 232 = 33 x 7 + 1
        gestation_at_birth_days: '232',
        chronological_days: '30',
        postmenstrual: '37w3d', // 262 = 37 x 7 + 3
        postmenstrual_days: '262',
        corrected_days: '-18',
        age_used_days: '-18',
        age_counts: 'corrected',
        agreed: '',
        examiner: 'Wren',
        reflex: 'moro',
        reflex_name: 'Moro reflex',
        side: 'left',
        response: 'elicited',
        state: 'quiet-alert',
        tries: '1',
        variant: '',
        verdict: 'fits',
        why_not_judged: '',
        share: '0.6667',
        firm: 'no',
        flags: 'uneven weak',
        attention: 'watch',
        sources: '7',
        voices: '5',
        note: 'Startled, then calm; see "video"',
        sources_used: '',
        correction_rule: '',
        names_in_it: '',
        caution: '',
      },
    ]);
  });

  test('what it must carry stands in every row', () => {
    const said = { sources: 'two sources', rule: 'corrected', names: 'none', caution: 'with care' };
    const rows = readBack(findingsCsv([ROW, ROW], { ...WHOLE, said }));
    expect(rows).toHaveLength(2);
    for (const row of rows)
      expect(row).toMatchObject({
        sources_used: 'two sources',
        correction_rule: 'corrected',
        names_in_it: 'none',
        caution: 'with care',
      });
  });

  test('without names or dates nothing that could name somebody is left', () => {
    const text = findingsCsv([ROW], { names: false, dates: false });
    const [row] = readBack(text);
    expect(row).toMatchObject({ child: 'child', visit_date: '', examiner: '', note: '' });
    expect(row!['chronological_days']).toBe('30');
    expect(text).not.toMatch(/Kestrel|Wren|2026|Startled/);
  });

  test('several children without names are told apart by number', () => {
    const rows = [ROW, { ...ROW, childNumber: 2, child: 'Plover' }];
    const found = readBack(findingsCsv(rows, { names: false, dates: true }));
    expect(found.map((row) => row['child'])).toEqual(['child 1', 'child 2']);
  });

  test('what was not judged has no share and no firmness', () => {
    const unjudged = { ...ROW, verdict: 'not-judged', whyNot: 'silent', share: null, firm: null };
    expect(readBack(findingsCsv([unjudged], WHOLE))[0]).toMatchObject({
      verdict: 'not-judged',
      why_not_judged: 'silent',
      share: '',
      firm: '',
    });
  });

  test('no findings: the columns alone', () => {
    const text = findingsCsv([], WHOLE);
    expect(Papa.parse<string[]>(text, { skipEmptyLines: true }).data).toEqual([FINDING_COLUMNS]);
  });
});

describe('any table read back', () => {
  test('has every text as it was, disarmed where a spreadsheet would run it', () => {
    fc.assert(
      fc.property(fc.array(anyRow, { minLength: 1, maxLength: 5 }), (rows) => {
        const found = readBack(findingsCsv(rows, WHOLE));
        expect(found).toHaveLength(rows.length);
        rows.forEach((row, i) => {
          for (const [column, text] of [
            ['child', row.child],
            ['examiner', row.examiner],
            ['reflex', row.reflex],
            ['reflex_name', row.reflexName],
            ['note', row.note],
          ] as const)
            expect(rearmed(found[i]![column]!)).toBe(text);
          expect(Number(found[i]!['corrected_days'])).toBe(row.correctedDays);
          expect(Number(found[i]!['postmenstrual_days'])).toBe(row.postmenstrualDays);
          const [weeks, days] = found[i]!['postmenstrual']!.split(/[wd]/).map(Number);
          expect(weeks! * 7 + days!).toBe(row.postmenstrualDays);
          if (row.share !== null) expect(Number(found[i]!['share'])).toBeCloseTo(row.share, 4);
        });
      }),
    );
  });

  test('has no cell that a spreadsheet would run, but numbers', () => {
    fc.assert(
      fc.property(anyRow, fc.boolean(), (row, names) => {
        for (const cell of Object.values(readBack(findingsCsv([row], { names, dates: true }))[0]!))
          if (RUNS.includes(cell.charAt(0))) expect(cell).toMatch(/^-\d+$/);
        expect(names || !findingsCsv([row], { names, dates: true }).includes('Wren')).toBe(true);
      }),
    );
  });

  test('a program that takes semicolons for separators finds no new cell', () => {
    const text = findingsCsv([{ ...ROW, note: 'calm;=1+1', child: 'a;=2+2' }], WHOLE);
    for (const [cell] of Papa.parse<string[]>(text, { delimiter: ';', skipEmptyLines: true }).data)
      expect(cell!.startsWith('=')).toBe(false);
    expect(
      Papa.parse<string[]>(text, { delimiter: ';', skipEmptyLines: true })
        .data.flat()
        .filter((cell) => cell.startsWith('=')),
    ).toEqual([]);
  });
});
