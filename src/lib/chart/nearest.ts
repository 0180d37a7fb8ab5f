/** What a pointer or a key means. */
import { DAYS_PER_MONTH, DAYS_PER_WEEK, TERM, type AxisDay } from '../age/axis.ts';
import { besideOf, SIDE_PX } from './marks.ts';
import type { MarkData } from './model.ts';
import type { PlacedLanes } from './lanes.ts';
import type { AxisScale } from './scale.ts';
import { clampAge } from './viewport.ts';

/** What a press takes hold of. */
export type Grab = 'age' | 'plot' | 'name' | 'none';

/** The blocks of the chart, from top to bottom. */
export type Block = 'strip' | 'axis' | 'body' | 'foot';

/** A press on the axis or at the foot takes the age line there; near the line it takes hold of it. */
export function grabAt(
  x: number,
  block: Block,
  scale: AxisScale,
  ageDay: number,
  reachPx: number,
): Grab {
  const across = x >= scale.leftPx - reachPx && x <= scale.rightPx + reachPx;
  if (across && (block === 'axis' || block === 'foot')) return 'age';
  if (x < scale.leftPx) return 'name';
  if (!across) return 'none';
  return Math.abs(scale.x(ageDay) - x) <= reachPx ? 'age' : 'plot';
}

/** The lane at a height within the lanes' block; undefined on a heading or between. */
export function laneAt(y: number, placed: PlacedLanes): string | undefined {
  for (const lane of placed.lanes.values())
    if (y >= lane.top && y < lane.top + lane.height) return lane.id;
  return undefined;
}

/** The lane above or below another in the order shown; the ends hold. */
export function laneBeside(
  id: string | undefined,
  step: 1 | -1,
  order: readonly string[],
): string | undefined {
  if (id === undefined) return step > 0 ? order[0] : order.at(-1);
  const at = order.indexOf(id);
  return order[Math.min(Math.max(at + step, 0), order.length - 1)];
}

/** The finding whose mark is nearest to a place on its lane, within reach. */
export function markAt(
  x: number,
  laneId: string,
  marks: readonly MarkData[],
  scale: AxisScale,
  unit: number,
  reachPx: number,
): MarkData | undefined {
  let best: MarkData | undefined;
  let least = reachPx;
  for (const [mark, px] of besideOf(marks.filter(({ reflex }) => reflex === laneId))) {
    const distance = Math.abs(scale.x(mark.day) + (px + SIDE_PX[mark.side]) * unit - x);
    if (distance <= least) {
      best = mark;
      least = distance;
    }
  }
  return best;
}

/** A day; with `far` a week before term and a month after. */
export const stepDays = (day: number, far: boolean, direction: 1 | -1): number => {
  if (!far) return 1;
  const before = direction > 0 ? day < TERM : day <= TERM;
  return before ? DAYS_PER_WEEK : DAYS_PER_MONTH;
};

export const stepAge = (day: number, far: boolean, direction: 1 | -1): AxisDay =>
  clampAge(day + direction * stepDays(day, far, direction));

/** What a key asks of the chart. */
export type Command =
  | { do: 'age'; direction: 1 | -1; far: boolean }
  | { do: 'lane'; direction: 1 | -1 }
  | { do: 'zoom'; factor: number }
  | { do: 'reset' }
  | { do: 'open' }
  | { do: 'leave' };

const ZOOM_STEP = 1.4;

/** The command of a key; undefined for any other key, which is left alone. */
export function commandOf(key: string, shift: boolean): Command | undefined {
  switch (key) {
    case 'ArrowLeft':
    case 'ArrowRight':
      return { do: 'age', direction: key === 'ArrowRight' ? 1 : -1, far: shift };
    case 'PageUp':
    case 'PageDown':
      return { do: 'age', direction: key === 'PageUp' ? 1 : -1, far: true };
    case 'ArrowUp':
    case 'ArrowDown':
      return { do: 'lane', direction: key === 'ArrowDown' ? 1 : -1 };
    case '+':
    case '=':
      return { do: 'zoom', factor: ZOOM_STEP };
    case '-':
    case '_':
      return { do: 'zoom', factor: 1 / ZOOM_STEP };
    case '0':
    case 'Home':
      return { do: 'reset' };
    case 'Enter':
    case ' ':
      return { do: 'open' };
    case 'Escape':
      return { do: 'leave' };
    default:
      return undefined;
  }
}

/** Half again as far for each notch of a wheel, about the pointer. */
export const wheelFactor = (deltaPx: number): number => Math.exp(-deltaPx * 0.0016);
