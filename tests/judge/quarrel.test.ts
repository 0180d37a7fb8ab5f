import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromGestationWeeks, fromMonths } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { readAt } from '../../src/lib/judge/expectation.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { everyReflexAt } from '../../src/lib/judge/moment.ts';
import { ROW } from '../../src/lib/judge/phases.ts';
import { quarrelOver } from '../../src/lib/judge/quarrel.ts';
import { supportFor, supportOf, tally } from '../../src/lib/judge/support.ts';

const sheet = sheetOf(ATLAS);
const from = fromGestationWeeks(20);
const to = fromMonths(24);

describe('where the sources quarrel', () => {
  test('a reflex with one source has no quarrel', () => {
    expect(quarrelOver(sheet.get('perez')!, from, to)).toMatchObject({ quarrelDays: 0, share: 0 });
  });

  test('the stretches cover the span without gaps, and the days agree with a count day by day', () => {
    for (const id of ['moro', 'atnr', 'rooting', 'stnr', 'protective-forward']) {
      const compiled = sheet.get(id)!;
      const { stretches, quarrelDays } = quarrelOver(compiled, from, to);
      expect(stretches[0]!.fromDay).toBe(from);
      expect(stretches.at(-1)!.toDay).toBe(to);
      stretches.slice(1).forEach((s, i) => expect(s.fromDay).toBe(stretches[i]!.toDay));
      let days = 0;
      const step = 0.25;
      for (let day = from + step / 2; day < to; day += step) {
        const { phases } = readAt(compiled, day, 0);
        const said = new Map<string, number>();
        compiled.windows.forEach((w, i) => {
          const phase = phases.subarray(i * ROW, i * ROW + ROW).indexOf(1);
          if (phase > 0 && !said.has(w.claim.source.id)) said.set(w.claim.source.id, phase);
        });
        if (new Set(said.values()).size > 1) days += step;
      }
      expect(Math.abs(days - quarrelDays)).toBeLessThan(2 * stretches.length * step);
    }
  });
});

describe('which windows support an order', () => {
  const dated = fc
    .tuple(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 1, max: 40 }))
    .map(([start, width]) => ({
      source: 's',
      reflex: 'r',
      from: start,
      to: start + width,
    }));

  test('supports one way is contradicts the other', () => {
    fc.assert(
      fc.property(dated, dated, (a, b) => {
        const mirror = { supports: 'contradicts', contradicts: 'supports', overlaps: 'overlaps' };
        expect(supportOf(b, a)).toBe(mirror[supportOf(a, b)]);
      }),
    );
  });

  test('every pair of sources has the arms apart from each other before the arms apart from the legs', () => {
    const [before, after] = ATLAS.sequences.find((s) => s.id === 'arms-then-legs')!.stations;
    const counts = tally(supportFor(before!, after!, ATLAS));
    expect(counts.contradicts).toBe(0);
    expect(counts.overlaps).toBe(0);
    expect(counts.supports).toBeGreaterThan(30);
  });

  test('forward before sideways is quarrelled over', () => {
    const [before, after] = ATLAS.sequences.find((s) => s.id === 'protective-directions')!.stations;
    const counts = tally(supportFor(before!, after!, ATLAS));
    for (const n of Object.values(counts)) expect(n).toBeGreaterThan(0);
  });
});

test('in most sources the arms-wide startle is there at 3 months and going at 4, the backward prop not yet there', () => {
  const at3 = everyReflexAt(ATLAS, sheet, fromMonths(3), 0);
  expect(at3.find((m) => m.reflex.id === 'moro')!.standing).toBe('there');
  const at = new Map(everyReflexAt(ATLAS, sheet, fromMonths(4), 0).map((m) => [m.reflex.id, m]));
  expect(at.get('moro')!.standing).toBe('going');
  expect(at.get('protective-backward')!.standing).toBe('not-yet');
  expect(at.get('stepping')!.standing).toBe('gone');
  for (const m of at.values()) {
    const counted = Object.values(m.sources).reduce((a, b) => a + b, 0);
    expect(counted).toBe(m.speaking.sources);
    expect(m.speaking.voices).toBeLessThanOrEqual(m.speaking.sources);
  }
});
