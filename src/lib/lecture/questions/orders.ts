/** What comes first, what comes next, and putting things in order. */
import { permute } from 'd3';
import type { Chance } from '../random.ts';
import { band, dealt, WRONG, type Maker } from './deal.ts';
import {
  comparable,
  eventSubjects,
  fitsGap,
  gapDays,
  happenings,
  isAhead,
  isAsked,
  isOver,
  surelyBefore,
  type Happening,
} from './events.ts';
import { PLAIN_AGES, type Ground } from './ground.ts';
import { kept } from './kept.ts';
import type { Choice, Difficulty, Why } from '../../words/question.ts';

const choiceOf = ({ station }: Happening): Choice => ({ is: 'station', station });

/** One event of each reflex, in the order given. */
const onePerReflex = (events: readonly Happening[]): Happening[] =>
  events.filter(
    (one, i) => !events.slice(0, i).some((x) => x.of.some((id) => one.of.includes(id))),
  );

function whyOf(events: readonly Happening[], ageDays: number | null): Why {
  const isMilestone = (one: Happening): boolean => one.station.event === 'reached';
  return {
    reflexes: [...new Set(events.filter((e) => !isMilestone(e)).flatMap((e) => e.of))],
    milestones: events.filter(isMilestone).flatMap((e) => e.of),
    ageDays,
    rests: events.flatMap((e) =>
      e.rests.map((one) => ({
        ...one,
        happens: { station: e.station, ...e.said },
      })),
    ),
  };
}

const eventsOf = (ground: Ground): Happening[] => kept(ground, 'events', () => happenings(ground));

const find = (key: string, ground: Ground): Happening | undefined =>
  eventsOf(ground).find((one) => one.key === key && isAsked(one, ground));

/** Events that surely come after one, as far after as the difficulty wants, the nearest first. */
const after = (one: Happening, ground: Ground, difficulty: Difficulty): Happening[] =>
  kept(ground, `after ${one.key} ${difficulty}`, () =>
    eventsOf(ground)
      .filter(
        (other) =>
          comparable(one, other) &&
          surelyBefore(one, other, ground) &&
          fitsGap(gapDays(one, other), difficulty),
      )
      .sort((a, b) => gapDays(one, a) - gapDays(one, b)),
  );

export const first: Maker = {
  subjects: eventSubjects,
  make(subject, ground, chance, difficulty) {
    const right = find(subject, ground);
    if (!right) return undefined;
    const near = band(after(right, ground, difficulty), difficulty, WRONG * 2);
    const wrong = onePerReflex(chance.shuffled(near)).slice(0, WRONG);
    // what counts for two wrong ones must count among all: like is compared with like
    if (!wrong.every((a) => wrong.every((b) => comparable(a, b)))) return undefined;
    const deal = dealt(choiceOf(right), wrong.map(choiceOf), chance);
    return (
      deal && { stem: { kind: 'first' }, ...deal, why: whyOf([right, ...wrong], null), round: '' }
    );
  },
};

/** What comes next is looked for at most so far ahead, days. */
const AHEAD_DAYS = 150;

export const next: Maker = {
  subjects: eventSubjects,
  make(subject, ground, chance, difficulty) {
    const right = find(subject, ground);
    if (!right) return undefined;
    const ages = PLAIN_AGES.filter(
      ({ axisDay }) => isAhead(right, axisDay) && right.opens - axisDay <= AHEAD_DAYS,
    );
    const age = chance.one(ages);
    if (!age) return undefined;
    const later = band(after(right, ground, difficulty), difficulty, WRONG * 2);
    const past = eventsOf(ground)
      .filter(
        (one) =>
          comparable(one, right) &&
          isOver(one, age.axisDay) &&
          surelyBefore(one, right, ground) &&
          fitsGap(age.axisDay - one.closes, difficulty),
      )
      .sort((a, b) => b.closes - a.closes);
    const [firstLater] = chance.shuffled(later);
    if (!firstLater) return undefined;
    const wrong = onePerReflex([
      right,
      firstLater,
      ...chance.shuffled([...later, ...band(past, difficulty, WRONG)]),
    ]).slice(1, WRONG + 1);
    if (!wrong.every((a) => wrong.every((b) => comparable(a, b)))) return undefined;
    const deal = dealt(choiceOf(right), wrong.map(choiceOf), chance);
    return (
      deal && {
        stem: { kind: 'next', age },
        ...deal,
        why: whyOf([right, ...wrong], age.axisDay),
        round: `${age.unit} ${age.value}`,
      }
    );
  },
};

/** How many are put in order. */
const LENGTH: Readonly<Record<Difficulty, number>> = { easy: 3, medium: 3, hard: 4 };

/** Wrong orders, those that differ least from the right one first: a swap of neighbours, then others. */
function wrongOrders(length: number): number[][] {
  const orders: number[][] = [];
  const walk = (order: number[]): void => {
    if (order.length === length) orders.push(order);
    for (let i = 0; i < length; i++) if (!order.includes(i)) walk([...order, i]);
  };
  walk([]);
  const moved = (order: readonly number[]): number =>
    order.reduce((sum, at, i) => sum + Math.abs(at - i), 0);
  return orders.filter((order) => moved(order) > 0).sort((a, b) => moved(a) - moved(b));
}

function chainFrom(
  start: Happening,
  ground: Ground,
  chance: Chance,
  difficulty: Difficulty,
): Happening[] | undefined {
  const chain = [start];
  while (chain.length < LENGTH[difficulty]) {
    const last = chain.at(-1)!;
    const wide = difficulty === 'hard' ? after(last, ground, 'medium') : [];
    const follows = [...after(last, ground, difficulty), ...wide].filter((one) =>
      chain.every((earlier) => surelyBefore(earlier, one, ground) && comparable(earlier, one)),
    );
    const one = chance.one(follows);
    if (!one) return undefined;
    chain.push(one);
  }
  return chain;
}

const CHAINS = 6;

export const order: Maker = {
  subjects: eventSubjects,
  make(subject, ground, chance, difficulty) {
    const start = find(subject, ground);
    if (!start) return undefined;
    for (let i = 0; i < CHAINS; i++) {
      const chain = chainFrom(start, ground, chance, difficulty);
      if (!chain) continue;
      const stations = chain.map(({ station }) => station);
      const choice = (of: readonly number[]): Choice => ({
        is: 'stations',
        stations: permute(stations, of),
      });
      const wrong = chance.shuffled(band(wrongOrders(chain.length), difficulty, WRONG));
      const deal = dealt(choice(stations.map((_, i) => i)), wrong.map(choice), chance);
      if (!deal) return undefined;
      return {
        stem: { kind: 'order' },
        ...deal,
        why: whyOf(chain, null),
        round: chain.map(({ key }) => key).join(' '),
      };
    }
    return undefined;
  },
};
