/** Which words stand beneath the family's chart, so that none touches another. */
import { TERM_DAYS } from '../age/axis.ts';
import type { FamilyChart } from './model.ts';

type Tick = FamilyChart['ticks'][number];

/** Shares of the axis that a letter takes, and the air between words, on a wide page and on a narrow one. */
const WIDE = { letter: 0.014, air: 0.02 };
const NARROW = { letter: 0.027, air: 0.03 };

/** So near to an end of the axis words begin or end at their place, so that they stay on the page. */
const EDGE = 0.12;

/** How words stand to their place at a share of the axis. */
export const anchorAt = (share: number): 'start' | 'middle' | 'end' =>
  share < EDGE ? 'start' : share > 1 - EDGE ? 'end' : 'middle';

/** From where to where words reach. */
function reachOf(share: number, takes: number): readonly [number, number] {
  const anchor = anchorAt(share);
  const from = anchor === 'start' ? share : anchor === 'end' ? share - takes : share - takes / 2;
  return [from, from + takes];
}

/**
 * The ticks that find room, in order: the day that is counted from first, then the last, then by age.
 * Those that find room on a wide page only are told apart.
 */
export function tickShares({
  ticks,
  from,
  to,
}: FamilyChart): { tick: Tick; isWideOnly: boolean }[] {
  const origin = ticks.find(({ axisDay }) => axisDay === TERM_DAYS);
  const last = ticks.at(-1);
  const wanted = [...new Set([origin, last, ...ticks])].filter((tick) => tick !== undefined);
  const fitting = ({ letter, air }: typeof WIDE): Set<Tick> => {
    const kept = new Map<Tick, readonly [number, number]>();
    for (const tick of wanted) {
      const share = (tick.axisDay - from) / (to - from);
      const [start, end] = reachOf(share, tick.words.length * letter);
      const isClear = [...kept.values()].every(([a, b]) => end + air <= a || b + air <= start);
      if (isClear) kept.set(tick, [start, end]);
    }
    return new Set(kept.keys());
  };
  const [wide, narrow] = [fitting(WIDE), fitting(NARROW)];
  return ticks
    .filter((tick) => wide.has(tick) || narrow.has(tick))
    .map((tick) => ({ tick, isWideOnly: !narrow.has(tick) }));
}
