/** Which words stand beneath the family's chart, so that none touches another. */
import type { FamilyChart } from '../handout/model.ts';

type Tick = FamilyChart['ticks'][number];

/** Shares of the axis a word is kept from its neighbours, on a wide page and on a narrow one. */
const WIDE = 0.16;
const NARROW = 0.3;

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
  const fitting = (apart: number): Tick[] =>
    wanted.reduce<Tick[]>(
      (kept, tick) =>
        kept.every((other) => Math.abs(share(other) - share(tick)) >= apart)
          ? [...kept, tick]
          : kept,
      [],
    );
  const narrow = fitting(NARROW);
  return fitting(WIDE)
    .toSorted((a, b) => a.axisDay - b.axisDay)
    .map((tick) => ({ tick, isWideOnly: !narrow.includes(tick) }));
}
