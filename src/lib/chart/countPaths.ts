/** How counts are drawn on an opened lane: a dot, its interval down and its ages across, and curves. */
import type { SourcedCount } from '../atlas/atlas.ts';
import { countPoints, type CountPoint } from './counted.ts';

/** So many ages of one measure in one source make a curve; fewer stay points. */
export const CURVE_AGES = 4;

/** The runs of points that are one measure of one source at four or more ages, each in order of age. */
export function curvesOf(points: readonly CountPoint[]): CountPoint[][] {
  const runs = new Map<string, CountPoint[]>();
  for (const point of points) {
    const { source, measureId, population } = point.count;
    const key = `${source.id} ${measureId} ${population}`;
    runs.set(key, [...(runs.get(key) ?? []), point]);
  }
  return [...runs.values()].filter((run) => new Set(run.map(({ day }) => day)).size >= CURVE_AGES);
}

export interface DrawnCounts {
  points: readonly { point: CountPoint; dot: string; bars: string }[];
  curves: readonly string[];
}

const n = (value: number): string => value.toFixed(3);

/** Paths in the lane's own scale. A dot is a line of no length: its round cap is what is seen. */
export function drawCounts(counts: readonly SourcedCount[]): DrawnCounts {
  const points = countPoints(counts);
  return {
    points: points.map((point) => {
      const { day, from, to, share, interval } = point;
      const across = to > from ? `M${n(from)} ${n(-share)}H${n(to)}` : '';
      const down = interval ? `M${n(day)} ${n(-interval.low)}V${n(-interval.high)}` : '';
      return { point, dot: `M${n(day)} ${n(-share)}h0`, bars: across + down };
    }),
    curves: curvesOf(points).map(
      (run) => `M${run.map(({ day, share }) => `${n(day)} ${n(-share)}`).join('L')}`,
    ),
  };
}
