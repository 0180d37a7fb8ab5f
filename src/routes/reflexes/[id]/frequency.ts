/** Counts of real infants as small plots: one for each source and measure, nothing pooled. */
import { rollup } from 'd3';
import { DAYS_PER_MONTH, toAxisDay } from '$lib/age/axis.ts';
import type { SourcedCount } from '$lib/atlas/atlas.ts';
import { printedDay } from '$lib/atlas/printed.ts';
import type { Stretch } from '$lib/chart/model.ts';
import { LIMITS } from '$lib/chart/viewport.ts';
import { wilson, type ShareInterval } from '$lib/judge/counts.ts';

/** A count with a share, at its age on the axis. */
export interface Dot {
  count: SourcedCount;
  from: number;
  to: number;
  /** 0 to 1. */
  share: number;
  /** Whether the share was printed as a figure, not as "fewer than". */
  exact: boolean;
  /** 95 %; undefined where n or an exact share was not printed. */
  interval?: ShareInterval;
}

/** What one source counted by one measure in one group of infants. */
export interface Counted {
  key: string;
  source: SourcedCount['source'];
  measure: string;
  population: string;
  dots: readonly Dot[];
  /** Counts without an age on the axis or without a share: told, not drawn. */
  told: readonly SourcedCount[];
  /** The part of the axis that is drawn. */
  range: Stretch;
}

const isDrawn = (count: SourcedCount): boolean =>
  count.percent !== null &&
  count.unit !== 'milestone' &&
  count.low !== null &&
  printedDay(count.low, count.unit) <= LIMITS.to;

function dotOf(count: SourcedCount): Dot {
  const unit = count.unit === 'wkPMA' ? 'wkPMA' : 'mo';
  const share = (count.percent ?? 0) / 100;
  const exact = count.qualifier === '=' || count.qualifier === '~';
  const low = count.low ?? 0;
  return {
    count,
    from: printedDay(low, unit),
    to: printedDay(count.high ?? low, unit),
    share,
    exact,
    ...(exact && count.n !== null ? { interval: wilson(share * count.n, count.n) } : {}),
  };
}

/** A month and a half before the first age; after the last, room for its label. */
function rangeOf(dots: readonly Dot[]): Stretch {
  const first = Math.min(...dots.map((dot) => dot.from));
  const last = Math.max(...dots.map((dot) => dot.to));
  const span = Math.max(last - first, 3 * DAYS_PER_MONTH);
  return { from: toAxisDay(first - span * 0.14), to: toAxisDay(last + span * 0.5) };
}

/** The counts of one reflex by source, measure and group, in the order of the sources. */
export function countedIn(counts: readonly SourcedCount[]): Counted[] {
  const byMeasure = rollup(
    counts,
    (some): Counted => {
      const [first] = some as [SourcedCount, ...SourcedCount[]];
      const dots = some.filter(isDrawn).map(dotOf);
      return {
        key: `${first.source.id} ${first.measure} ${first.population}`,
        source: first.source,
        measure: first.measure,
        population: first.population,
        dots: dots.toSorted((a, b) => a.from - b.from),
        told: some.filter((count) => !isDrawn(count)),
        range: rangeOf(dots),
      };
    },
    (count) => `${count.source.id} ${count.measure} ${count.population}`,
  );
  return [...byMeasure.values()];
}
