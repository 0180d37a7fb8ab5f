/** English for what a conference looks at beside single findings: how the sides differ, and kappa. */
import type { CivilDate } from '../../age/civil.ts';
import type { Trend } from '../../judge/reading/sides.ts';
import { dateWords } from './ages.ts';

interface Gap {
  on: CivilDate;
  gap: number;
}

export const sides = 'Asymmetry and its trend';

const MOVED: Readonly<Record<Trend, string>> = {
  new: 'not seen before',
  same: 'unchanged',
  growing: 'more than before',
  shrinking: 'less than before',
  turned: 'the other side was the weaker one before',
  'evened-out': 'no longer different',
};

/** Which side is the weaker at last, on how many days in a row, and how the difference moved. */
export function trendWords({
  gaps,
  trend,
  stays,
}: {
  gaps: readonly Gap[];
  trend: Trend;
  stays: number;
}): string {
  const last = gaps.at(-1)?.gap ?? 0;
  if (last === 0) return `The sides are alike: ${MOVED[trend]}.`;
  const days = stays > 1 ? `, on ${stays} days in a row` : '';
  return `Weaker on the ${last < 0 ? 'left' : 'right'}${days}: ${MOVED[trend]}.`;
}

/** Each day with the steps of strength between the sides: `12 January 2026: right weaker by 1 step`. */
export const gapWords = (gaps: readonly Gap[]): string =>
  gaps
    .map(({ on, gap }) => {
      const steps = `${Math.abs(gap)} ${Math.abs(gap) === 1 ? 'step' : 'steps'}`;
      const said = gap === 0 ? 'alike' : `${gap < 0 ? 'left' : 'right'} weaker by ${steps}`;
      return `${dateWords(on)}: ${said}`;
    })
    .join('; ');

export const kappaFrom = (least: number, n: number): string =>
  `Kappa is given from ${least} pairs on, with its interval; here ${n === 1 ? 'is 1 pair' : `are ${n} pairs`}. Read the findings themselves.`;
