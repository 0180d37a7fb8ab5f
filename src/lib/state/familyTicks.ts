/** Which words stand beneath the family's chart, so that none touches another. */
import type { FamilyChart } from '../handout/model.ts';

type Tick = FamilyChart['ticks'][number];

/** Shares of the axis that words take with the air beside them, on a wide page and on a narrow one. */
const WIDE = 0.15;
const NARROW = 0.29;

/** So near to an end of the axis words begin or end at their place, so that they stay on the page. */
const EDGE = 0.12;

/** How words stand to their place at a share of the axis. */
export const anchorAt = (share: number): 'start' | 'middle' | 'end' =>
  share < EDGE ? 'start' : share > 1 - EDGE ? 'end' : 'middle';

/** The middle of words that take so much of the axis. */
function middleAt(share: number, takes: number): number {
  const anchor = anchorAt(share);
  return anchor === 'middle' ? share : anchor === 'start' ? share + takes / 2 : share - takes / 2;
}

/**
 * The ticks that find room, in order: birth and the due date first, then the last, then by age.
 * Those that find room on a wide page only are told apart.
 */
export function tickShares({
  ticks,
  from,
  to,
}: FamilyChart): { tick: Tick; isWideOnly: boolean }[] {
  const share = ({ axisDay }: Tick): number => (axisDay - from) / (to - from);
  const [first, ...rest] = ticks;
  const last = rest.pop();
  const wanted = [first, last, ...rest].filter((tick) => tick !== undefined);
  const fitting = (takes: number): Tick[] =>
    wanted.reduce<Tick[]>((kept, tick) => {
      const middle = middleAt(share(tick), takes);
      return kept.every((other) => Math.abs(middleAt(share(other), takes) - middle) >= takes)
        ? [...kept, tick]
        : kept;
    }, []);
  const narrow = fitting(NARROW);
  return fitting(WIDE)
    .toSorted((a, b) => a.axisDay - b.axisDay)
    .map((tick) => ({ tick, isWideOnly: !narrow.includes(tick) }));
}
