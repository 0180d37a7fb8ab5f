import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { agesOn } from '../../src/lib/age/clocks.ts';
import { DATING_METHODS } from '../../src/lib/age/doubt.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { verdictNow, verdictsUnder, verdictUnder } from '../../src/lib/judge/controls.ts';
import { readAt } from '../../src/lib/judge/expectation.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import type { Outcome } from '../../src/lib/judge/turns.ts';
import { verdictOf } from '../../src/lib/judge/verdict.ts';
import { anyQuestion, ask, bornAt, sheet } from '../support/question.ts';

describe('the verdict under each control', () => {
  const question = ask('moro', undefined, 'elicited', '2026-05-20', { gestation: 214 });
  const found = verdictsUnder(question);
  const outcome = (pick: (u: (typeof found)[number]['under']) => boolean): Outcome[] =>
    found.filter(({ under }) => pick(under)).map(({ judged }) => judged.verdict);

  test('names every dating method, every source twice, and both ways of counting', () => {
    const sources = new Set(question.compiled.windows.map((w) => w.claim.source.id)).size;
    expect(outcome((u) => u.control === 'dating')).toHaveLength(DATING_METHODS.length);
    expect(outcome((u) => u.control === 'without')).toHaveLength(sources);
    expect(outcome((u) => u.control === 'only-source')).toHaveLength(sources);
    expect(outcome((u) => u.control === 'correction')).toHaveLength(2);
  });

  test('says of each whether it changes the verdict', () => {
    const now = verdictNow(question).verdict;
    for (const { judged, changes } of found) expect(changes).toBe(judged.verdict !== now);
    expect(found.some(({ changes }) => changes)).toBe(true);
    expect(found.some(({ changes }) => !changes)).toBe(true);
  });

  test('uncorrected is the child judged as if born at term on its birthday', () => {
    const asTerm = verdictNow({ ...question, birth: bornAt(280) });
    const without = verdictUnder(question, { control: 'correction', corrected: false });
    expect(without.verdict).toBe(asTerm.verdict);
    if (without.verdict === 'not-judged' || asTerm.verdict === 'not-judged') throw new Error();
    expect(without.shares).toEqual(asTerm.shares);
  });

  test('corrected holds at any gestation and past the usual limit', () => {
    const old = ask('landau', undefined, 'elicited', '2028-03-01', { gestation: 270 });
    const corrected = verdictUnder(old, { control: 'correction', corrected: true });
    const { chronologicalDays, gestationalDays } = agesOn(old.birth, old.on);
    const plain = verdictOf(
      old.finding,
      readAt(old.compiled, gestationalDays + chronologicalDays, 8), // the sd of a last period
    );
    expect(corrected.verdict).toBe(plain.verdict);
    expect(corrected.totals.phases).toEqual(plain.totals.phases);
  });

  test('a source by itself is what a sheet of that source says', () => {
    fc.assert(
      fc.property(anyQuestion, fc.nat(), (asked, pick) => {
        const { windows } = asked.compiled;
        fc.pre(windows.length > 0);
        const { id } = windows[pick % windows.length]!.claim.source;
        const alone = sheetOf(ATLAS, new Set([id])).get(windows[0]!.claim.reflex)!;
        const held = sheet.get(windows[0]!.claim.reflex)!;
        expect(verdictUnder(asked, { control: 'only-source', source: id }, held).verdict).toBe(
          verdictNow({ ...asked, compiled: alone }).verdict,
        );
      }),
      { numRuns: 60 },
    );
  });
});
