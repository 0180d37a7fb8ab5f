/**
 * Children drawn by chance for the simulation, each event from the window of one source, and the visits at
 * which they are looked at. All of it follows from a seed.
 */
import { fromMonths } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Visit } from '../../src/lib/case/case.ts';
import type { Finding } from '../../src/lib/case/finding.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { ChildReading, Priors } from '../../src/lib/judge/reading/child.ts';
import { IMAGINED, MILESTONE_MISSED } from '../../src/lib/judge/reading/constants.ts';
import { logNormalOf } from '../../src/lib/judge/reading/milestone.ts';
import { eventsOf } from '../../src/lib/judge/reading/prior.ts';
import type { Chance } from '../../src/lib/lecture/random.ts';
import {
  answerOf,
  bornAtTerm,
  drawTruth,
  finding,
  visitAt,
  type Events,
  type Truth,
} from '../support/drawnChild.ts';

export const SHEET = sheetOf(ATLAS, 'default');
export const PRIORS = new Priors(ATLAS, SHEET);
/**
 * Without ODD: every healthy event is drawn from the window of some source. Each reflex as a whole: a finding that
 * is drawn says no variant.
 */
const EVENTS = new Map<string, Events>(
  [...ATLAS.reflexes.keys()].map((id) => [id, eventsOf(SHEET.get(id)!.windows, 0)]),
);
export const missedOf = (reflex: string): number => ATLAS.reflexes.get(reflex)!.absence.missed;

/** Everything that is true of one child: courses by reflex, and days of milestones. */
export interface TrueChild {
  reflexes: Map<string, Truth>;
  milestones: Map<string, number>;
}

const normal = (chance: Chance): number =>
  Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());

/** Reflexes of which both events are dated can be drawn without ODD. */
const DRAWN = [...EVENTS].filter(
  ([, { appears, integrates }]) => appears.dated && integrates.dated,
);

export function healthy(chance: Chance): TrueChild {
  const reflexes = new Map(
    DRAWN.map(([reflex, events]) => [reflex, drawTruth(events, () => chance.next())]),
  );
  const milestones = new Map<string, number>();
  for (const { id, window } of ATLAS.milestones.values()) {
    if (!window) continue;
    const { mu, sigma } = logNormalOf(window);
    milestones.set(id, fromMonths(Math.exp(mu + sigma * normal(chance))));
  }
  return { reflexes, milestones };
}

/** What is looked at on a day, and how. */
export interface LookedAt {
  reflexes: readonly string[];
  /** Whether what is not elicited is tried a second time. */
  twice?: boolean;
  milestones?: boolean;
}

/** A visit at which some reflexes, and every milestone unless they are left out, are looked at. */
export function visit(
  child: TrueChild,
  day: number,
  { reflexes, twice = false, milestones = true }: LookedAt,
  chance: Chance,
): Visit {
  const found = reflexes.flatMap((reflex): Finding[] => {
    const truth = child.reflexes.get(reflex);
    if (!truth) return [];
    const answer = () => answerOf(truth, day, missedOf(reflex), () => chance.next());
    const first = answer();
    if (first || !twice) return [finding(reflex, first)];
    return [{ ...finding(reflex, answer()), tries: 2 }];
  });
  const reached = milestones ? [...child.milestones] : [];
  return {
    ...visitAt(day, found),
    milestones: reached.map(([milestone, from]) => ({
      milestone,
      seen: chance.next() < (day >= from ? 1 - MILESTONE_MISSED : IMAGINED),
    })),
  };
}

export const ALL = DRAWN.map(([reflex]) => reflex);
export const between = (chance: Chance, from: number, to: number): number =>
  from + (to - from) * chance.next();

export const readingOf = (
  child: TrueChild,
  days: readonly number[],
  looked: LookedAt,
  chance: Chance,
): ChildReading => {
  const whole = [...new Set(days.map(Math.round))].sort((a, b) => a - b);
  const visits = whole.map((day) => visit(child, day, looked, chance));
  return new ChildReading(bornAtTerm(visits), PRIORS);
};
