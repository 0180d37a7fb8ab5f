import { describe, expect, it } from 'vitest';
import { fromMonths } from '../../../src/lib/age/axis.ts';
import type { Response } from '../../../src/lib/case/finding.ts';
import type { Side } from '../../../src/lib/atlas/types.ts';
import { placePresence, PRESENCE } from '../../../src/lib/chart/small/presence.ts';
import { ATLAS } from '../../../src/lib/atlas/atlas.ts';
import { sheetOf } from '../../../src/lib/judge/judge.ts';
import { priorsFor } from '../../../src/lib/judge/reading/child.ts';
import { Inferred, seen } from '../../../src/lib/judge/reading/course.ts';

const mark = (months: number, side: Side, response: Response, visit = 0) => ({
  reflex: 'moro',
  side,
  response,
  day: fromMonths(months),
  spreadDays: 0,
  visit,
  asks: false,
});
const prior = priorsFor(ATLAS, sheetOf(ATLAS)).reflex('moro')!;
const moro = new Inferred(
  prior,
  [seen(fromMonths(2), true, 0.1), seen(fromMonths(7), false, 0.1)],
  0,
);
const marks = [
  mark(2, 'left', 'elicited'),
  mark(2, 'right', 'weak'),
  mark(7, 'midline', 'not-elicited', 1),
];
const placed = placePresence(moro, marks, fromMonths(7), 'term');

/** The places of a path. */
const pointsOf = (path: string): [x: number, y: number][] =>
  path
    .slice(1)
    .split('L')
    .map((point) => point.split(' ').map(Number) as [number, number]);

describe('how likely a response is present over the axis', () => {
  it('is as high as the inferred probability at each place of the axis', () => {
    const points = pointsOf(placed.line);
    const [zero, two] = ['term', '2'].map(
      (text) => placed.ticks.find((one) => one.text === text)!.at,
    );
    const dayAt = (x: number): number =>
      fromMonths(0) + ((x - zero!) / (two! - zero!)) * (fromMonths(2) - fromMonths(0));
    for (const [x, y] of points) {
      const height = (placed.bottom - y) / (placed.bottom - placed.top);
      expect(height).toBeCloseTo(moro.states(dayAt(x)).there, 1);
    }
    expect(points[0]![0]).toBe(placed.left);
    expect(points.at(-1)![0]).toBe(placed.right);
  });

  it('has the findings at the age of their visit, left beside right, and the age that is shown', () => {
    const [left, right, late] = placed.marks;
    expect(left!.x).toBeLessThan(right!.x);
    expect((left!.x + right!.x) / 2).toBeCloseTo(
      placed.ticks.find(({ text }) => text === '2')!.at,
      0,
    );
    expect(late!.x).toBeCloseTo(placed.now, 0);
    expect(placed.marks.map(({ response }) => response)).toEqual([
      'elicited',
      'weak',
      'not-elicited',
    ]);
  });

  it('keeps two examiners of one day apart, within the picture', () => {
    const two = placePresence(
      moro,
      [
        mark(-1.5, 'left', 'elicited'),
        mark(-1.5, 'right', 'elicited'),
        mark(-1.5, 'left', 'weak', 1),
      ],
      fromMonths(-1.5),
      'term',
    );
    const across = two.marks.map(({ x }) => x);
    expect(Math.abs(across[2]! - across[0]!)).toBeGreaterThan(12);
    for (const x of [...across, two.term, two.now]) expect(x > 0 && x < PRESENCE.width).toBe(true);
  });
});
