import { describe, expect, test } from 'vitest';
import { fromMonths } from '../../src/lib/age/axis.ts';
import { parseCivil } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { isDue, isForTeachingOnly, voicesAt } from '../../src/lib/judge/coreSet.ts';
import { readAt, totalsOf } from '../../src/lib/judge/expectation.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { linesForAge, planFor } from '../../src/lib/judge/plan.ts';
import { CORE_SIZE } from '../../src/lib/judge/reading/constants.ts';
import { childCase } from '../support/kestrel.ts';

describe('the core set for an age', () => {
  const core = (months: number): Map<string, number> =>
    new Map(
      linesForAge(fromMonths(months), 0, judged)
        .lines.filter(({ coreVoices }) => coreVoices > 0)
        .map(({ reflex, coreVoices }) => [reflex.id, coreVoices]),
    );
  const judged = { atlas: ATLAS, sheet: sheetOf(ATLAS, 'default') };

  test('holds twelve at most, of which most voices speak, each due and fit for a clinic', () => {
    for (const months of [-2, 0, 1, 3, 5, 7, 9, 12, 18]) {
      const set = core(months);
      expect(set.size).toBeGreaterThan(6);
      expect(set.size).toBeLessThanOrEqual(CORE_SIZE);
      const least = Math.min(...set.values());
      for (const [id, reflex] of ATLAS.reflexes) {
        const compiled = judged.sheet.get(id)!;
        const totals = totalsOf(readAt(compiled, fromMonths(months), 0));
        const at = { reflex, compiled, totals, ageDays: fromMonths(months), sdDays: 0 };
        if (set.has(id)) {
          expect(isDue(at)).toBe(true);
          expect(isForTeachingOnly(reflex)).toBe(false);
          const families = compiled.windows
            .filter((w) => w.speaksFrom <= at.ageDays && at.ageDays < w.speaksTo)
            .map(({ claim }) => claim.family);
          expect(set.get(id)).toBe(new Set(families).size);
        } else if (isDue(at) && !isForTeachingOnly(reflex))
          expect(voicesAt(at)).toBeLessThanOrEqual(least);
      }
    }
  });

  // a chapter on the newborn examination (after Thureen et al., 2005; read as an excerpt) names the first
  // four; a study of 484 infants looked for the forward parachute at 9 and 12 months (BMC Pediatr 2009;9:13,
  // abstract read)
  test.each([
    [0, ['rooting', 'sucking', 'moro', 'atnr']],
    [9, ['protective-forward']],
    [12, ['protective-forward']],
  ])('at %i months has what is published as examined then', (months, ids) => {
    for (const id of ids) expect([...core(months).keys()]).toContain(id);
  });

  test('leaves out what was seen to have integrated, and keeps what is there for life', () => {
    const seen = (id: string, response: 'elicited' | 'not-elicited') => {
      const record = childCase({ born: '2025-10-01', gestation: '40w0d' }, [
        { on: '2026-06-20', findings: ['left', 'right'].map((s) => [id, s, response] as never) },
      ]);
      return planFor(record, parseCivil('2026-07-15')!, judged).lines.some(
        ({ reflex }) => reflex.id === id,
      );
    };
    expect(core(9.5).has('protective-forward')).toBe(true);
    expect(seen('protective-forward', 'elicited')).toBe(true);
    expect(seen('moro', 'not-elicited')).toBe(false);
  });
});
