import { describe, expect, it } from 'vitest';
import { fromGestationWeeks, fromMonths, TERM, toAxisDay } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { roughMeasure } from '../../src/lib/chart/labels.ts';
import { layout } from '../../src/lib/chart/layout.ts';
import {
  commandOf,
  grabAt,
  laneAt,
  laneBeside,
  markAt,
  stepAge,
  wheelFactor,
} from '../../src/lib/chart/nearest.ts';
import { WHOLE } from '../../src/lib/chart/viewport.ts';
import { english } from './english.ts';
import { dataOf, KESTREL } from './kestrel.ts';

const data = dataOf(KESTREL);
const placed = layout(
  data,
  { range: WHOLE, age: fromMonths(5), order: 'group', opened: new Set() },
  { widthPx: 1280 },
  1,
  english(ATLAS),
  roughMeasure,
);
const { scale } = placed.frame;

describe('a press', () => {
  const age = fromMonths(5);
  it.each([
    ['on the axis', scale.x(fromMonths(9)), 'axis', 'age'],
    ['at the foot', scale.x(fromMonths(9)), 'foot', 'age'],
    ['on the age line', scale.x(age) + 3, 'body', 'age'],
    ['on the plot', scale.x(age) + 60, 'body', 'plot'],
    ['on a name', 20, 'body', 'name'],
    ['beyond the plot', 1279, 'body', 'none'],
  ] as const)('%s takes hold of what is there', (_, x, block, grab) => {
    expect(grabAt(x, block, scale, age, 7)).toBe(grab);
  });

  it('finds the lane it lies on, and none on a heading', () => {
    const moro = placed.lanes.lanes.get('moro');
    expect(laneAt((moro?.top ?? 0) + 2, placed.lanes)).toBe('moro');
    expect(laneAt(placed.lanes.headings[0]?.y ?? 0, placed.lanes)).toBeUndefined();
  });

  it('finds the side that was pressed', () => {
    const marks = data.child?.marks ?? [];
    const x = scale.x(data.child?.visits[1]?.day ?? 0);
    expect(markAt(x - 5, 'moro', marks, scale, 1, 12)?.side).toBe('left');
    expect(markAt(x + 5, 'moro', marks, scale, 1, 12)?.response).toBe('weak');
    expect(markAt(x + 60, 'moro', marks, scale, 1, 12)).toBeUndefined();
  });
});

describe('a key', () => {
  it.each([
    ['ArrowRight', false, { do: 'age', direction: 1, far: false }],
    ['ArrowLeft', true, { do: 'age', direction: -1, far: true }],
    ['PageUp', false, { do: 'age', direction: 1, far: true }],
    ['ArrowDown', false, { do: 'lane', direction: 1 }],
    ['0', false, { do: 'reset' }],
    ['Home', false, { do: 'reset' }],
    ['Enter', false, { do: 'open' }],
    ['Escape', false, { do: 'leave' }],
    ['q', false, undefined],
  ] as const)('%s (with shift: %s) means %j', (key, shift, command) => {
    expect(commandOf(key, shift)).toEqual(command);
  });

  it('zooms out by as much as it zooms in', () => {
    const near = commandOf('+', false);
    const out = commandOf('-', false);
    expect(near?.do === 'zoom' && out?.do === 'zoom' && near.factor * out.factor).toBeCloseTo(1);
  });

  it.each([
    [300, false, 1, 301],
    [TERM, true, -1, TERM - 7],
    [fromGestationWeeks(30), true, 1, fromGestationWeeks(31)],
    [fromMonths(3), true, 1, fromMonths(4)],
  ] as const)('moves the age from %s (far: %s, %s) to %s', (day, far, direction, to) => {
    expect(stepAge(toAxisDay(day), far, direction)).toBeCloseTo(to, 9);
  });

  it('moves between lanes in the order shown, and holds at the ends', () => {
    const { order } = placed.lanes;
    expect(laneBeside(undefined, 1, order)).toBe(order[0]);
    expect(laneBeside(order[0], 1, order)).toBe(order[1]);
    expect(laneBeside(order[0], -1, order)).toBe(order[0]);
    expect(laneBeside(order.at(-1), 1, order)).toBe(order.at(-1));
  });
});

describe('a wheel', () => {
  it('zooms back by as much as it zoomed', () => {
    expect(wheelFactor(120) * wheelFactor(-120)).toBeCloseTo(1);
    expect(wheelFactor(-120)).toBeGreaterThan(1);
  });
});
