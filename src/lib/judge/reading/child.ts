/**
 * One child read over all visits: every course inferred, on demand, from the chosen sources, the days on
 * which it was looked at and the dating. Priors are worked out once for a set of sources.
 */
import type { CivilDate } from '../../age/civil.ts';
import { DEFAULT_LIMITS, type CorrectionLimits } from '../../age/clocks.ts';
import type { Atlas } from '../../atlas/atlas.ts';
import type { Side, Station } from '../../atlas/types.ts';
import type { Case } from '../../case/case.ts';
import { lastTests } from '../../case/course.ts';
import { reflexOf } from '../../case/finding.ts';
import type { Sheet } from '../judge.ts';
import { clockOf, type Clock } from './clock.ts';
import { MILESTONE_MISSED, ODD, RECENT_DAYS } from './constants.ts';
import { Inferred, seen } from './course.ts';
import { daysOf, milestoneDaysOf, type ReflexDays, type SeenDay } from './days.ts';
import { milestonePrior } from './milestone.ts';
import {
  happenedBy,
  pairsOf,
  placeOf,
  type KeptSources,
  type Known,
  type Lookup,
  type PairOrder,
} from './orders.ts';
import { priorOf, type PairPrior } from './prior.ts';

/** The priors of every reflex and milestone under the chosen sources, each worked out when first asked for. */
export class Priors {
  readonly atlas: Atlas;
  readonly sheet: Sheet;
  /** What the sources say of each pair of stations. */
  readonly orders: KeptSources = new Map();
  readonly #kept = new Map<string, PairPrior | undefined>();

  constructor(atlas: Atlas, sheet: Sheet) {
    this.atlas = atlas;
    this.sheet = sheet;
  }

  #keep(key: string, make: () => PairPrior | undefined): PairPrior | undefined {
    if (!this.#kept.has(key)) this.#kept.set(key, make());
    return this.#kept.get(key);
  }

  /**
   * Of a reflex or one of its variants (`testOf`); undefined where it is not in the atlas.
   * @param odd 0: no child differs from every source
   */
  reflex(test: string, odd = ODD): PairPrior | undefined {
    const compiled = this.sheet.get(test);
    return compiled && this.#keep(`${test} ${odd}`, () => priorOf(compiled.windows, odd));
  }

  /** Undefined for a milestone without a published window. */
  milestone(id: string, odd = ODD): PairPrior | undefined {
    const milestone = this.atlas.milestones.get(id);
    return milestone && this.#keep(`milestone ${id} ${odd}`, () => milestonePrior(milestone, odd));
  }
}

const KEPT = new WeakMap<Sheet, Priors>();

/** The priors of a set of sources, the same ones each time they are asked for. */
export function priorsFor(atlas: Atlas, sheet: Sheet): Priors {
  let priors = KEPT.get(sheet);
  if (priors?.atlas !== atlas) KEPT.set(sheet, (priors = new Priors(atlas, sheet)));
  return priors;
}

const NO_DAYS: readonly SeenDay[] = [];

export class ChildReading {
  readonly record: Case;
  readonly priors: Priors;
  readonly clock: Clock;
  /** By test (`testOf`). */
  readonly days: ReadonlyMap<string, ReflexDays>;
  readonly milestoneDays: ReadonlyMap<string, readonly SeenDay[]>;
  readonly #last: ReadonlyMap<string, string>;
  readonly #courses = new Map<string, Inferred>();
  readonly #known = new Map<string, Known>();
  readonly #gone = new Map<string, number>();

  constructor(record: Case, priors: Priors, limits: CorrectionLimits = DEFAULT_LIMITS) {
    this.record = record;
    this.priors = priors;
    this.clock = clockOf(record.child.birth, limits);
    this.days = daysOf(record.visits);
    this.#last = lastTests(record.visits);
    this.milestoneDays = milestoneDaysOf(record.visits);
  }

  #infer(prior: PairPrior, days: readonly SeenDay[], missed: number): Inferred {
    const likelihoods = days.map(({ on, there }) => seen(this.clock.dayOn(on), there, missed));
    return new Inferred(prior, likelihoods, this.clock.sdDays);
  }

  /** The test by which a reflex was looked at last; the reflex itself where it never was. */
  lastTest(reflex: string): string {
    return this.#last.get(reflex) ?? reflex;
  }

  /**
   * The course of a reflex or one of its variants (`testOf`), or of one of its sides; undefined for one that is
   * not in the atlas.
   */
  course(test: string, side?: Side): Inferred | undefined {
    const key = side ? `${test} ${side}` : test;
    const kept = this.#courses.get(key);
    if (kept) return kept;
    const prior = this.priors.reflex(test);
    const known = this.priors.atlas.reflexes.get(reflexOf(test));
    if (!prior || !known) return undefined;
    const looked = this.days.get(test);
    const days = (side ? looked?.sides[side] : looked?.whole) ?? NO_DAYS;
    const course = this.#infer(prior, days, known.absence.missed);
    this.#courses.set(key, course);
    return course;
  }

  /**
   * P(a side of what is tested has gone by a date), from the sources and its last `RECENT_DAYS` days up to that
   * date. Kept, since each later day of a response that came back asks for the same.
   */
  goneBy(test: string, side: Side, on: CivilDate): number {
    const key = `${test} ${side} ${on}`;
    const kept = this.#gone.get(key);
    if (kept !== undefined) return kept;
    const gone = this.#goneBy(test, side, on);
    this.#gone.set(key, gone);
    return gone;
  }

  #goneBy(test: string, side: Side, on: CivilDate): number {
    const prior = this.priors.reflex(test);
    const known = this.priors.atlas.reflexes.get(reflexOf(test));
    if (!prior?.datedI || !known) return 0;
    const before = (this.days.get(test)?.sides[side] ?? NO_DAYS).filter((day) => day.on <= on);
    const days = before.slice(-RECENT_DAYS);
    const course = this.#infer(prior, days, known.absence.missed);
    return course.contradicted ? 0 : course.by('integrates', this.clock.dayOn(on));
  }

  /** The course of a milestone; undefined for one without a published window. */
  milestone(id: string): Inferred | undefined {
    const key = `milestone ${id}`;
    const kept = this.#courses.get(key);
    if (kept) return kept;
    const prior = this.priors.milestone(id);
    if (!prior) return undefined;
    const course = this.#infer(prior, this.milestoneDays.get(id) ?? NO_DAYS, MILESTONE_MISSED);
    this.#courses.set(key, course);
    return course;
  }

  readonly #lookup: Lookup = (what) => {
    const milestone = 'milestone' in what;
    // an order is of a reflex as a whole: of the test by which it was looked at last
    const id = milestone ? what.milestone : this.lastTest(what.reflex);
    const key = `${milestone ? 'milestone ' : ''}${id}`;
    const prior = (odd?: number) =>
      milestone ? this.priors.milestone(id, odd) : this.priors.reflex(id, odd);
    const child = milestone ? this.milestone(id) : this.course(id);
    const [wide, strict] = [prior(), prior(0)];
    if (!child || !wide || !strict) return undefined;
    if (!milestone && !(what.event === 'appears' ? wide.datedA : wide.datedI)) return undefined;
    let known = this.#known.get(key);
    if (!known) {
      known = {
        lookedAt: child.likelihood.map(({ day }) => day),
        child,
        // a shift would move both alike: the order of the sources needs none
        alone: new Inferred(wide, [], 0),
        strict: new Inferred(strict, [], 0),
      };
      this.#known.set(key, known);
    }
    return known;
  };

  /** P(a station was reached by a day), 0 to 1; undefined where no chosen source dates it. */
  reached(station: Station): ((day: number) => number) | undefined {
    const place = placeOf(station, this.priors.atlas, this.#lookup);
    return place && ((day) => happenedBy(place.of('child'), day));
  }

  /** Every pair of every sequence of the atlas, by the sequence's id. */
  orders(): Map<string, PairOrder[]> {
    const { atlas, orders } = this.priors;
    return new Map(
      atlas.sequences.map((sequence) => [
        sequence.id,
        pairsOf(sequence, atlas, this.#lookup, orders, (reflex) => this.lastTest(reflex)),
      ]),
    );
  }
}
