import { describe, expect, test } from 'vitest';
import { ATLAS, ATLAS_PARTS, buildAtlas } from '../../src/lib/atlas/atlas.ts';
import { agreementOn } from '../../src/lib/judge/hangs.ts';
import { judgeCase, sheetOf, type JudgeOptions } from '../../src/lib/judge/judge.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { findingRows } from '../../src/lib/present/findingRows.ts';
import { findingsCsv } from '../../src/lib/store/findingsTable.ts';
import { childCase } from '../support/kestrel.ts';

const options: JudgeOptions = { atlas: ATLAS, sheet: sheetOf(ATLAS) };
const rowsOf = (...records: ReturnType<typeof demoCase>[]) =>
  findingRows(records.map((record) => ({ record, visits: judgeCase(record, options) })));

describe('findings as rows', () => {
  const demo = demoCase(ATLAS);

  test('one a finding, in the order of the record', () => {
    const rows = rowsOf(demo);
    expect(rows.map(({ on, reflex, side }) => `${on} ${reflex} ${side}`)).toEqual(
      demo.visits.flatMap(({ on, findings }) =>
        findings.map(({ reflex, side }) => `${on} ${reflex} ${side}`),
      ),
    );
    expect(rows.every(({ invented }) => invented)).toBe(true);
  });

  test('each with the verdict, share and sources that judging gave it', () => {
    const judged = judgeCase(demo, options).flatMap(({ findings }) => findings);
    rowsOf(demo).forEach((row, i) => {
      const { finding, judged: found, attention, raised, reading } = judged[i]!;
      expect(row).toMatchObject({ verdict: found.verdict, attention });
      expect(row.flags).toEqual(raised.map(({ flag }) => flag));
      if (found.verdict === 'not-judged') return;
      expect(row.share).toBe(found.share);
      const { of, voices } = agreementOn(finding, found.verdict, reading);
      expect([row.sources, row.voices]).toEqual([of, voices.of]);
    });
  });

  test('ages by hand: born at 33w0d on 1 January, seen on 11 February', () => {
    const record = childCase({ born: '2026-01-01', gestation: '33w0d' }, [
      { on: '2026-02-11', findings: [['moro', 'left', 'elicited']] },
    ]);
    // 31 - 1 + 11 = 41 days old; 231 + 41 = 272 after the last period; 8 days before the due date
    expect(rowsOf(record)[0]).toMatchObject({
      gestationalDays: 231,
      chronologicalDays: 41,
      postmenstrualDays: 272,
      correctedDays: -8,
      usedDays: -8,
      counts: 'corrected',
    });
  });

  test('a child born at term is judged by the days since birth', () => {
    const record = childCase({ born: '2026-01-01', gestation: '39w0d' }, [
      { on: '2026-02-11', findings: [['moro', 'left', 'elicited']] },
    ]);
    expect(rowsOf(record)[0]).toMatchObject({ usedDays: 41, counts: 'chronological' });
  });

  test('what could not be judged says why', () => {
    const record = childCase({ born: '2026-01-01', gestation: '40w0d' }, [
      { on: '2026-02-11', findings: [['moro', 'left', 'not-elicited', 'crying']] },
    ]);
    expect(rowsOf(record)[0]).toMatchObject({
      verdict: 'not-judged',
      whyNot: 'unfit-state',
      share: null,
      firm: null,
    });
  });

  test('a reflex that the atlas no longer holds stays in the table', () => {
    const less = buildAtlas({
      ...ATLAS_PARTS,
      reflexes: ATLAS_PARTS.reflexes.filter(({ id }) => id !== 'moro'),
      sources: ATLAS_PARTS.sources.map((source) => ({
        ...source,
        claims: source.claims.filter(({ reflex }) => reflex !== 'moro'),
        counts: source.counts.filter(({ reflex }) => reflex !== 'moro'),
      })),
      sequences: [],
    });
    const visits = judgeCase(demo, { atlas: less, sheet: sheetOf(less) });
    const rows = findingRows([{ record: demo, visits }]);
    expect(rows).toHaveLength(rowsOf(demo).length);
    const moro = rows.filter(({ reflex }) => reflex === 'moro');
    expect(moro.length).toBeGreaterThan(0);
    for (const row of moro) expect(row).toMatchObject({ whyNot: 'unknown-reflex', sources: 0 });
  });

  test('several records, numbered, and without names nobody is named', () => {
    const rows = rowsOf(demo, demo);
    expect(new Set(rows.map(({ childNumber }) => childNumber))).toEqual(new Set([1, 2]));
    expect(findingsCsv(rows, { names: false, dates: true })).not.toContain(demo.child.label);
  });
});
