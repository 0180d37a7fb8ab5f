/** Questions of order and of ages against published figures and the trade. */
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Station } from '../../src/lib/atlas/types.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { groundOf } from '../../src/lib/lecture/questions/ground.ts';
import { DIFFICULTIES, type Question } from '../../src/lib/words/question.ts';
import { questionSet } from '../../src/lib/lecture/questions/set.ts';
import { Temporal } from 'temporal-polyfill';

const manySets = (
  source: string | undefined,
  kinds: Parameters<typeof questionSet>[1]['kinds'] & {},
): Question[] => {
  const ground = groundOf(ATLAS, sheetOf(ATLAS, source === undefined ? 'all' : new Set([source])));
  return DIFFICULTIES.flatMap((difficulty) =>
    [11, 12, 13].flatMap((seed) => questionSet(ground, { seed, count: 60, kinds, difficulty })),
  );
};

/** The order a question holds to be right, as stations: each before the next (or before all others). */
function pairs({ stem, choices, right }: Question): [Station, Station][] {
  const answer = choices[right]!;
  if (stem.kind === 'order' && answer.is === 'stations')
    return answer.stations.slice(1).map((after, i) => [answer.stations[i]!, after]);
  if (stem.kind !== 'first' || answer.is !== 'station') return [];
  return choices.flatMap((c): [Station, Station][] =>
    c.is === 'station' && c !== answer ? [[answer.station, c.station]] : [],
  );
}

describe('motor milestones (WHO 2006: first and 99th percentile of the age of achievement, months)', () => {
  const WHO: Record<string, [number, number]> = {
    sitting: [3.8, 9.2],
    'standing-helped': [4.8, 11.4],
    crawling: [5.2, 13.5],
    'walking-helped': [5.9, 13.7],
    standing: [6.9, 16.9],
    walking: [8.2, 17.6],
  };
  const asked = manySets(undefined, ['first', 'order']).flatMap(pairs);
  const milestone = (s: Station): string | undefined =>
    s.event === 'reached' ? s.milestone : undefined;

  test('milestones are asked about, none against another: every two published windows overlap', () => {
    expect(asked.some((pair) => pair.some((s) => milestone(s) !== undefined))).toBe(true);
    for (const [, [p1, p99]] of Object.entries(WHO))
      for (const [, [q1, q99]] of Object.entries(WHO)) expect(p1 < q99 && q1 < p99).toBe(true);
    expect(
      asked.filter(([a, b]) => milestone(a) !== undefined && milestone(b) !== undefined),
    ).toEqual([]);
  });

  test('what is held to come before one is over by its first percentile in every source that dates it, what comes after begins past its 99th', () => {
    /** Printed months of a source after term; weeks of gestation are before it. */
    const printed = (s: Station): [number, number][] =>
      s.event !== 'appears' && s.event !== 'integrates'
        ? []
        : ATLAS.claims
            .get(s.reflex)!
            .filter((c) => c.role === 'window')
            .flatMap((c) => {
              const age = s.event === 'appears' ? c.appears : c.integrates;
              return age?.unit === 'mo'
                ? [[age.low, age.high ?? Infinity] as [number, number]]
                : [];
            });
    let compared = 0;
    for (const [a, b] of asked) {
      const [before, after] = [milestone(a), milestone(b)];
      if (after !== undefined)
        for (const [, to] of printed(a)) {
          compared++;
          expect(to).toBeLessThanOrEqual(WHO[after]![0]);
        }
      if (before !== undefined)
        for (const [from] of printed(b)) {
          compared++;
          expect(from).toBeGreaterThanOrEqual(WHO[before]![1]);
        }
    }
    expect(compared).toBeGreaterThan(20);
  });
});

describe('protective reactions: forward, then sideways, then backward (common practice, no source)', () => {
  const TRADE = ['protective-forward', 'protective-sideways', 'protective-backward'];
  const place = (s: Station): number => (s.event === 'appears' ? TRADE.indexOf(s.reflex) : -1);
  const directions = (of: readonly Question[]) =>
    of.flatMap(pairs).filter(([a, b]) => place(a) >= 0 && place(b) >= 0);

  test('Dreeben 2008 alone (read: 6, 7, 9 months) asks for that order, and for no other', () => {
    const asked = directions(manySets('dreeben-2008', ['first', 'order']));
    expect(asked.length).toBeGreaterThan(0);
    for (const [a, b] of asked) expect(place(a)).toBeLessThan(place(b));
  });

  test('over all sources it is not asked, for one has sideways (6 months) before forward (Milani-Comparetti 1967, from memory)', () => {
    expect(directions(manySets(undefined, ['first', 'order']))).toEqual([]);
  });
});

test('the arms come apart from each other before they come apart from the legs (common practice, no source)', () => {
  const asked = manySets(undefined, ['first', 'order']).flatMap(pairs);
  const apart = (s: Station) => (s.event === 'sets-apart' ? s.apart : s.event);
  const both = asked.filter(([a, b]) => a.event === 'sets-apart' && b.event === 'sets-apart');
  expect(both.length).toBeGreaterThan(0);
  for (const [a, b] of both)
    expect([apart(a), apart(b)]).toEqual(['arms-from-each-other', 'arms-from-legs']);
});

test('reckoned ages agree with another calendar library; due date = birth + 40 weeks - gestation (AAP 2004)', () => {
  const set = manySets(undefined, ['arithmetic']);
  expect(set.length).toBeGreaterThan(400);
  const compared = { date: 0, days: 0 };
  for (const { stem, choices, right } of set) {
    const answer = choices[right]!;
    if (stem.kind !== 'arithmetic') throw new Error(`asked for arithmetic, given ${stem.kind}`);
    const due = Temporal.PlainDate.from(stem.born).add({ days: 280 - stem.gestationalDays });
    const on = Temporal.PlainDate.from(stem.on);
    if (answer.is === 'date') {
      compared.date += 1;
      expect(answer.on).toBe(due.toString());
    } else if (answer.is === 'days') {
      compared.days += 1;
      const from = stem.asks === 'corrected' ? due : due.subtract({ days: 280 });
      expect(answer.days).toBe(from.until(on, { largestUnit: 'days' }).days);
    }
  }
  expect(compared.date + compared.days).toBe(set.length);
  expect(Math.min(compared.date, compared.days)).toBeGreaterThan(20);
});
