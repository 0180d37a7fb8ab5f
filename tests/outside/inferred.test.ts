/**
 * What is inferred over visits, against ways of working it out that share nothing with it: a count through
 * a daily grid, children drawn by chance, and published figures.
 */
import { describe, expect, test } from 'vitest';
import { fromMonths } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { shiftsOf } from '../../src/lib/judge/reading/clock.ts';
import { IMAGINED } from '../../src/lib/judge/reading/constants.ts';
import { Inferred, seen, type DayLikelihood } from '../../src/lib/judge/reading/course.ts';
import { logNormalOf, milestonePrior } from '../../src/lib/judge/reading/milestone.ts';
import { ordersOf, type Happening } from '../../src/lib/judge/reading/order.ts';
import { eventsOf, priorOf } from '../../src/lib/judge/reading/prior.ts';
import { chanceOf } from '../../src/lib/lecture/random.ts';
import { gridOf, pairsOf } from '../support/bruteCourse.ts';
import { drawTruth } from '../support/drawnChild.ts';
import { runs, written } from '../support/runs.ts';

const SHEET = sheetOf(ATLAS, 'default');
const windowsFor = (reflex: string) => SHEET.get(reflex)!.windows;
const missedOf = (reflex: string) => ATLAS.reflexes.get(reflex)!.absence.missed;

/** A child's days in short, whole days on the axis: months after term, with (+) or without (-). */
const daysOf = (reflex: string, said: string): DayLikelihood[] =>
  said === ''
    ? []
    : said
        .split(' ')
        .map((one) =>
          seen(
            Math.round(fromMonths(Number(one.slice(0, -1)))),
            one.endsWith('+'),
            missedOf(reflex),
          ),
        );

interface Child {
  first: string;
  second: string;
  event: 'appears' | 'integrates';
  firstDays: string;
  secondDays: string;
  /** Even, so that each shift is by whole days. */
  sdDays: number;
}

const CHILDREN: Child[] = [
  { first: 'atnr', second: 'stnr', event: 'appears', firstDays: '', secondDays: '', sdDays: 0 },
  { first: 'atnr', second: 'stnr', event: 'appears', firstDays: '7-', secondDays: '7+', sdDays: 0 },
  {
    first: 'protective-forward',
    second: 'protective-sideways',
    event: 'appears',
    firstDays: '5- 7+ 9+',
    secondDays: '5- 7- 9+',
    sdDays: 0,
  },
  {
    first: 'protective-forward',
    second: 'protective-backward',
    event: 'appears',
    firstDays: '6- 8- 10-',
    secondDays: '6- 8+ 10+',
    sdDays: 8,
  },
  {
    first: 'moro',
    second: 'palmar-grasp',
    event: 'integrates',
    firstDays: '2+ 4+ 5-',
    secondDays: '2+ 5-',
    sdDays: 14,
  },
];
const titled = CHILDREN.map(
  (child) =>
    [
      `${child.first} (${child.firstDays}) and ${child.second} (${child.secondDays}), sd ${child.sdDays}`,
      child,
    ] as const,
);

const closed = ({ first, second, event, firstDays, secondDays, sdDays }: Child) => {
  const happening = (reflex: string, said: string): Happening => ({
    event,
    courses: [new Inferred(priorOf(windowsFor(reflex)), daysOf(reflex, said), sdDays)],
    polynomial: true,
  });
  return ordersOf(happening(first, firstDays), happening(second, secondDays))!;
};

describe('order against a count through a daily grid', () => {
  /** How an event is spread over the grid given the days, with the weight of it all. */
  function spread(reflex: string, event: Child['event'], days: readonly DayLikelihood[]) {
    const events = eventsOf(windowsFor(reflex));
    const [appears, integrates] = [gridOf(events.appears), gridOf(events.integrates)];
    const at = new Map<number, number>();
    const weight = pairsOf(appears, integrates, days, (a, i, mass) => {
      const on = event === 'appears' ? a : i;
      at.set(on, (at.get(on) ?? 0) + mass);
    });
    return { on: appears.days.map((day) => at.get(day) ?? 0), weight, days: appears.days };
  }

  test.each(titled)('%s', (_, child) => {
    const { first, second, event, sdDays } = child;
    const sums = { firstBefore: 0, secondBefore: 0, neither: 0 };
    let total = 0;
    for (const shift of shiftsOf(sdDays)) {
      const moved = (reflex: string, said: string) =>
        daysOf(reflex, said).map((day) => ({ ...day, day: day.day + shift.days }));
      const a = spread(first, event, moved(first, child.firstDays));
      const b = spread(second, event, moved(second, child.secondDays));
      total += shift.weight * a.weight * b.weight;
      let later = b.on.reduce((sum, mass) => sum + mass, 0);
      let earlier = 0;
      a.on.forEach((mass, k) => {
        const same = b.on[k]!;
        later -= same;
        const tie = a.days[k] === 140 || a.days[k] === Infinity;
        sums.firstBefore += shift.weight * mass * (later + (tie ? 0 : same / 2));
        sums.secondBefore += shift.weight * mass * (earlier + (tie ? 0 : same / 2));
        if (tie) sums.neither += shift.weight * mass * same;
        earlier += same;
      });
    }
    const orders = closed(child);
    expect(orders.firstBefore).toBeCloseTo(sums.firstBefore / total, 3);
    expect(orders.secondBefore).toBeCloseTo(sums.secondBefore / total, 3);
    expect(orders.neither).toBeCloseTo(sums.neither / total, 3);
    expect(orders.firstBefore + orders.secondBefore + orders.neither).toBeCloseTo(1, 9);
  });
});

describe(`order against ${written(runs(1_000_000))} children drawn by chance, each found as this one was`, () => {
  const normal = (chance: () => number): number =>
    Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());

  test.each(titled)('%s', (_, child) => {
    const dealt = chanceOf(14);
    const chance = () => dealt.next();
    const events = [eventsOf(windowsFor(child.first)), eventsOf(windowsFor(child.second))] as const;
    const days = [daysOf(child.first, child.firstDays), daysOf(child.second, child.secondDays)];
    let [kept, firstBefore, secondBefore] = [0, 0, 0];
    for (let draws = runs(1_000_000); draws > 0; draws--) {
      const shift = child.sdDays * normal(chance);
      const drawn = events.map((one) => drawTruth(one, chance));
      // each day's answer is drawn too: the likelihoods are those of the answer that was given
      const alike = drawn.every(({ a, i }, k) =>
        days[k]!.every(({ day, ifThere, ifNot }) => {
          const there = a <= day + shift && day + shift < i;
          return chance() < (there ? ifThere : ifNot);
        }),
      );
      if (!alike) continue;
      kept++;
      const [x, y] = drawn.map(({ a, i }) => (child.event === 'appears' ? a : i)) as [
        number,
        number,
      ];
      if (x < y) firstBefore++;
      else if (y < x) secondBefore++;
    }
    expect(kept).toBeGreaterThan(300);
    const orders = closed(child);
    // five standard errors: one seed, so the test cannot come out otherwise another time
    const near = (share: number, p: number) =>
      expect(Math.abs(share / kept - p)).toBeLessThan(
        5 * Math.sqrt((p * (1 - p)) / kept) + 2 / kept,
      );
    near(firstBefore, orders.firstBefore);
    near(secondBefore, orders.secondBefore);
  });
});

describe('milestones: WHO 2006, Acta Paediatr Suppl 450:86-95', () => {
  // 1st and 99th percentile read in the abstract; mean and SD in months as printed in a therapy clinic's
  // article on the study (2014, read); medians from memory
  test.each([
    ['sitting', 5.9, 6.0, 1.1],
    ['standing-helped', 7.4, 7.6, 1.4],
    ['crawling', 8.3, 8.5, 1.7],
    ['walking-helped', 9.0, 9.2, undefined],
    ['standing', 10.8, 11.0, undefined],
    ['walking', 12.0, 12.1, undefined],
  ])('%s: median %f, mean %f months', (id, median, mean, sd) => {
    const milestone = ATLAS.milestones.get(id)!;
    const { mu, sigma } = logNormalOf(milestone.window!);
    expect(Math.abs(Math.exp(mu) - median)).toBeLessThanOrEqual(0.1);
    const modelled = Math.exp(mu + sigma ** 2 / 2);
    expect(Math.abs(modelled - mean)).toBeLessThanOrEqual(0.15);
    if (sd !== undefined)
      expect(Math.abs(modelled * Math.sqrt(Math.exp(sigma ** 2) - 1) - sd)).toBeLessThanOrEqual(
        0.15,
      );
    const course = new Inferred(milestonePrior(milestone, 0)!, [], 0);
    const { p1Months, p99Months } = milestone.window!;
    expect(course.by('appears', fromMonths(p1Months))).toBeCloseTo(0.01, 9);
    expect(course.by('appears', fromMonths(p99Months))).toBeCloseTo(0.99, 9);
    expect(course.quantile('appears', 0.5)).toBeCloseTo(fromMonths(Math.exp(mu)), 3);
  });

  test('an order with a milestone, integrated month by month, is that of a fine sum', () => {
    const walking = new Inferred(milestonePrior(ATLAS.milestones.get('walking')!)!, [], 0);
    const parachute = new Inferred(
      priorOf(windowsFor('protective-forward')),
      daysOf('protective-forward', '6- 9+'),
      0,
    );
    const happening = (course: Inferred, polynomial: boolean): Happening => ({
      event: 'appears',
      courses: [course],
      polynomial,
    });
    const { firstBefore } = ordersOf(happening(parachute, true), happening(walking, false))!;
    let fine = 0;
    const step = 0.05;
    for (let day = 140; day < 1010; day += step)
      fine +=
        (parachute.by('appears', day + step) - parachute.by('appears', day)) *
        (1 - walking.by('appears', day + step / 2));
    expect(firstBefore).toBeCloseTo(fine, 5);
  });
});

describe('published counts by age beside what the model expects of a healthy infant', () => {
  const thereAt = (reflex: string, months: number): number =>
    new Inferred(priorOf(windowsFor(reflex)), [], 0).states(fromMonths(months)).there;

  // Shapiro et al. 1981 (abstract, read): 249 infants at routine visits
  test.each([
    [2, 0.89],
    [6, 0.42],
    [12, 0.08],
  ])('asymmetrical tonic neck response at %i months: counted %f', (months, counted) => {
    expect(Math.abs(thereAt('atnr', months) - counted)).toBeLessThan(0.08);
  });

  /*
   * Olhweiler et al. 2005 (read): healthy preterm infants at corrected age; nobody had them at 9 and 12 months,
   * and 2.7 in 100 at 6. At 6 months the model has 0.20, 0.19 and 0.25 instead. Of the Moro's 0.20:
   * - 0.05 comes of ODD. "Never" in the sources and those that say "later than" add nothing;
   * - the rest comes of sources that print "6 months": a bare month is read half a month either way, so that at
   *   6.0 months half of theirs still have it. Ended at 6.0 they would leave nothing.
   * The study's own row adds nothing: it is read as gone at 6 months, since nearly all had lost it by then.
   * Kept as a window of 6 to 9 months it had added 0.10, 0.11 and 0.21: nobody would have lost it before 6.
   */
  test.each(['moro', 'palmar-grasp', 'positive-support'])(
    '%s: none at 9 and 12 months',
    (reflex) => {
      for (const months of [9, 12]) expect(thereAt(reflex, months)).toBeLessThan(0.08);
      // what is taught lasts longer than what was counted, and so does the model
      expect(thereAt(reflex, 6)).toBeGreaterThan(0.027);
    },
  );

  // the same study: the plantar grasp in all at 6 months, and fading after
  test('plantar grasp: all at 6 months', () => {
    expect(thereAt('plantar-grasp', 6)).toBeGreaterThan(0.9);
    expect(thereAt('plantar-grasp', 12)).toBeLessThan(thereAt('plantar-grasp', 9));
  });

  // Cupps et al. 1976 (read): full extension in 45 of 100 at 4 months and 90 at 7.5
  test('Landau at 4 and 7.5 months: counted 0.45 and 0.9', () => {
    expect(Math.abs(thereAt('landau', 4) - 0.45)).toBeLessThan(0.15);
    expect(Math.abs(thereAt('landau', 7.5) - 0.9)).toBeLessThan(0.05);
  });

  test('what an examiner elicits of what is there, and imagines of what is not', () => {
    const there = seen(300, true, missedOf('moro'));
    expect(there.ifThere).toBeCloseTo(0.9, 12);
    expect(there.ifNot).toBe(IMAGINED);
  });
});
