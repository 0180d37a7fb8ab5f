/**
 * What tells most within ten minutes. What an answer tells is the capacity-like mutual information of a
 * binary channel (Shannon 1948, section 12): checked against the sum over its four joint probabilities.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromMonths } from '../../src/lib/age/axis.ts';
import type { CivilDate } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { linesForAge, planFor } from '../../src/lib/judge/plan.ts';
import { TEN_MINUTES } from '../../src/lib/judge/reading/constants.ts';
import {
  answerTells,
  chooseWithin,
  minutesFor,
  openOrders,
  toldBy,
  withinTen,
  type Candidate,
  type OpenOrder,
} from '../../src/lib/judge/tenMinutes.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { examplesOn, WRITTEN_FOR } from '../../src/lib/examples/examples.ts';
import { childCase } from '../support/kestrel.ts';

const options = { atlas: ATLAS, sheet: sheetOf(ATLAS, 'default') };

describe('what an answer tells', () => {
  const share = fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000);

  test('is the mutual information over the four joint probabilities', () => {
    fc.assert(
      fc.property(share, share, share, (there, missed, imagined) => {
        const joint = [
          [there * (1 - missed), there * missed],
          [(1 - there) * imagined, (1 - there) * (1 - imagined)],
        ];
        let sum = 0;
        for (const [k, row] of joint.entries())
          for (const [l, p] of row.entries()) {
            const is = k === 0 ? there : 1 - there;
            const said = joint[0]![l]! + joint[1]![l]!;
            if (p > 0 && is > 0 && said > 0) sum += p * Math.log2(p / (is * said));
          }
        expect(answerTells(there, missed, imagined)).toBeCloseTo(sum, 9);
      }),
    );
  });

  test('is a bit at an even chance without error, less where absence tells little, none when sure', () => {
    expect(answerTells(0.5, 0, 0)).toBeCloseTo(1, 12);
    expect(answerTells(0.5, 0.5)).toBeLessThan(answerTells(0.5, 0.1));
    expect(answerTells(0, 0.1)).toBeCloseTo(0, 12);
    expect(answerTells(1, 0.1)).toBeCloseTo(0, 12);
  });
});

const IDS = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i'];
const candidatesAny: fc.Arbitrary<Candidate[]> = fc
  .array(
    fc.record({
      minutes: fc.constantFrom(0.5, 1, 1.5, 2),
      tells: fc.double({ min: 0, max: 1, noNaN: true }),
      read: fc.constantFrom(0.48, 0.88),
    }),
    { minLength: 1, maxLength: IDS.length },
  )
  .map((all) => all.map((one, at) => ({ id: IDS[at]!, ...one })));
const orderAny: fc.Arbitrary<OpenOrder> = fc.record({
  stations: fc.array(fc.subarray(IDS, { minLength: 1, maxLength: 2 }), {
    minLength: 1,
    maxLength: 2,
  }),
  bits: fc.double({ min: 0, max: 1, noNaN: true }),
});
const ordersAny = fc.array(orderAny, { maxLength: 5 });
const timeAny = fc.constantFrom(1, 2, 3.5, 5);

const minutesOf = (chosen: readonly Candidate[]): number =>
  chosen.reduce((sum, { minutes }) => sum + minutes, 0);

/** Every set that fits, looked at: the most that can be told. */
function bruteBest(all: readonly Candidate[], orders: readonly OpenOrder[], time: number): number {
  let best = 0;
  for (let mask = 0; mask < 1 << all.length; mask++) {
    const chosen = all.filter((_, at) => mask & (1 << at));
    if (minutesOf(chosen) <= time) best = Math.max(best, toldBy(chosen, orders));
  }
  return best;
}

/** One by one: the most telling by itself first, whatever the others tell, while it fits. */
function oneByOne(all: readonly Candidate[], orders: readonly OpenOrder[], time: number): number {
  const chosen: Candidate[] = [];
  const alone = (one: Candidate): number => toldBy([one], orders);
  for (const one of all.toSorted((a, b) => alone(b) - alone(a)))
    if (minutesOf(chosen) + one.minutes <= time) chosen.push(one);
  return toldBy(chosen, orders);
}

describe('the set that tells most', () => {
  test('is what looking at every set finds, never over the time, at least as good as one by one', () => {
    fc.assert(
      fc.property(candidatesAny, ordersAny, timeAny, (all, orders, time) => {
        const { chosen, minutes, bits } = chooseWithin(all, orders, time);
        expect(minutes).toBeLessThanOrEqual(time);
        expect(minutesOf(chosen)).toBeCloseTo(minutes, 9);
        expect(toldBy(chosen, orders)).toBeCloseTo(bits, 9);
        expect(bits).toBeCloseTo(bruteBest(all, orders, time), 6);
        expect(bits).toBeGreaterThanOrEqual(oneByOne(all, orders, time) - 1e-6);
      }),
    );
  });

  test('tells no less with one more open question', () => {
    fc.assert(
      fc.property(candidatesAny, ordersAny, orderAny, timeAny, (all, orders, more, time) => {
        const before = chooseWithin(all, orders, time).bits;
        expect(chooseWithin(all, [...orders, more], time).bits).toBeGreaterThanOrEqual(
          before - 1e-6,
        );
      }),
    );
  });

  test('what a set tells grows with it, and by less the more is in it', () => {
    const pairAny = fc.tuple(candidatesAny, fc.nat(), fc.nat(), fc.nat());
    fc.assert(
      fc.property(pairAny, ordersAny, ([all, one, small, large], orders) => {
        const added = all[one % all.length]!;
        const rest = all.filter((other) => other !== added);
        const inSmall = rest.filter((_, at) => small & large & (1 << at));
        const inLarge = rest.filter((_, at) => large & (1 << at));
        const gain = (set: Candidate[]): number =>
          toldBy([...set, added], orders) - toldBy(set, orders);
        expect(gain(inLarge)).toBeGreaterThanOrEqual(-1e-12);
        expect(gain(inSmall)).toBeGreaterThanOrEqual(gain(inLarge) - 1e-12);
      }),
    );
  });

  test('both sides of an open order are taken together where each alone is passed over', () => {
    const of = (id: string, tells: number): Candidate => ({ id, minutes: 1, tells, read: 1 });
    const all = [of('a', 0.3), of('b', 0.3), of('c', 0.5), of('d', 0.5)];
    const ids = (orders: OpenOrder[]): string[] =>
      chooseWithin(all, orders, 2)
        .chosen.map(({ id }) => id)
        .sort();
    expect(ids([])).toEqual(['c', 'd']);
    expect(ids([{ stations: [['a'], ['b']], bits: 0.9 }])).toEqual(['a', 'b']);
    // what tells of one station twice is counted once
    expect(ids([{ stations: [['a', 'b']], bits: 0.9 }])).toEqual(['a', 'c']);
  });
});

describe('in a child', () => {
  const records = [demoCase(ATLAS), ...examplesOn(WRITTEN_FOR, ATLAS).map(({ record }) => record)];

  test('it is of the plan, in the order of testing, within the time, and the same again', () => {
    let orders = 0;
    for (const record of records) {
      const on = WRITTEN_FOR < record.child.birth.born ? record.child.birth.born : WRITTEN_FOR;
      const plan = planFor(record, on, options);
      const child = { reading: plan.reading, day: plan.reading.clock.dayOn(on) };
      const ten = withinTen(plan.lines, child);
      orders += openOrders(child.reading, child.day).length;
      expect(ten.lines).toEqual(plan.lines.filter((line) => ten.lines.includes(line)));
      const minutes = ten.lines.reduce((sum, { reflex }) => sum + minutesFor(reflex), 0);
      expect(minutes).toBe(ten.minutes);
      expect(minutes).toBeLessThanOrEqual(TEN_MINUTES);
      for (const { reflex, why } of ten.lines) {
        expect(reflex.cautions).not.toContain('no-water');
        expect(why.map(({ code }) => code)).not.toContain('tells-nothing');
      }
      expect(withinTen(planFor(record, on, options).lines, child)).toEqual(ten);
    }
    expect(orders).toBeGreaterThan(0);
  });

  test('what was flagged last time comes first: in Kestrel what persists, is obligatory, or differs', () => {
    const record = demoCase(ATLAS);
    const plan = planFor(record, record.visits.at(-1)!.on, options);
    const child = { reading: plan.reading, day: plan.reading.clock.dayOn(plan.on) };
    const ids = withinTen(plan.lines, child).lines.map(({ reflex }) => reflex.id);
    expect(ids).toEqual(expect.arrayContaining(['atnr', 'crossed-extension', 'moro']));
    expect(ids.length).toBeGreaterThan(3);
  });

  test('a visit tells less of the orders once both of two have likely happened', () => {
    const late = childCase({ born: '2024-06-01', gestation: '40w0d' }, [
      { on: '2026-05-25', findings: [['protective-forward', 'left', 'elicited']] },
    ]);
    const { reading } = planFor(late, WRITTEN_FOR, options);
    const sum = (on: CivilDate): number =>
      openOrders(reading, reading.clock.dayOn(on)).reduce((all, { bits }) => all + bits, 0);
    expect(sum(WRITTEN_FOR)).toBeLessThan(sum('2025-01-01' as CivilDate) / 2);
  });

  test('without a child the sources alone choose, within the time', () => {
    for (const months of [-1, 0, 2, 4, 6, 9, 12, 18]) {
      const { lines } = linesForAge(fromMonths(months), 0, options);
      const ten = withinTen(lines);
      expect(ten.minutes).toBeLessThanOrEqual(TEN_MINUTES);
      expect(ten.lines.length).toBeGreaterThan(0);
    }
  });
});
