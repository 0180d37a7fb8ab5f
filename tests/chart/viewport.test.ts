import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toAxisDay } from '../../src/lib/age/axis.ts';
import {
  clampAge,
  clampRange,
  follow,
  LIMITS,
  MIN_SPAN_DAYS,
  panBy,
  pinch,
  spanOf,
  WHOLE,
  zoomAbout,
} from '../../src/lib/chart/viewport.ts';

const range = fc
  .tuple(
    fc.double({ min: LIMITS.from, max: LIMITS.to - 100, noNaN: true }),
    fc.double({ min: 60, max: 700, noNaN: true }),
  )
  .map(([from, span]) => clampRange({ from: toAxisDay(from), to: toAxisDay(from + span) }));

const share = fc.double({ min: 0, max: 1, noNaN: true });

const isWithin = (one: { from: number; to: number }): boolean =>
  one.from >= LIMITS.from - 1e-6 && one.to <= LIMITS.to + 1e-6 && one.from < one.to;

describe('zoom', () => {
  it('is undone by its inverse, and keeps the day under the pointer where it was', () => {
    fc.assert(
      fc.property(range, share, fc.double({ min: 1, max: 3, noNaN: true }), (r, at, factor) => {
        const day = r.from + at * spanOf(r);
        const near = zoomAbout(r, day, factor);
        if (spanOf(r) / factor > MIN_SPAN_DAYS)
          expect((day - near.from) / spanOf(near)).toBeCloseTo(at, 6);
        const back = zoomAbout(near, day, spanOf(near) / spanOf(r));
        expect(back.from).toBeCloseTo(r.from, 4);
        expect(back.to).toBeCloseTo(r.to, 4);
      }),
    );
  });

  it('never leaves the limits, nor goes below the least span', () => {
    fc.assert(
      fc.property(range, share, fc.double({ min: 0.001, max: 1000, noNaN: true }), (r, at, f) => {
        const zoomed = zoomAbout(r, r.from + at * spanOf(r), f);
        expect(isWithin(zoomed)).toBe(true);
        expect(spanOf(zoomed)).toBeGreaterThanOrEqual(MIN_SPAN_DAYS - 1e-6);
      }),
    );
  });
});

describe('pan', () => {
  it('keeps the span and never leaves the limits', () => {
    fc.assert(
      fc.property(range, fc.double({ min: -5000, max: 5000, noNaN: true }), (r, days) => {
        const moved = panBy(r, days);
        expect(isWithin(moved)).toBe(true);
        expect(spanOf(moved)).toBeCloseTo(spanOf(r), 6);
      }),
    );
  });
});

describe('two fingers', () => {
  it('leave the range as it is where they do not move, and zoom in as they part', () => {
    const held = [WHOLE.from + 0.25 * spanOf(WHOLE), WHOLE.from + 0.75 * spanOf(WHOLE)] as const;
    expect(pinch(WHOLE, held, [0.25, 0.75]).from).toBeCloseTo(WHOLE.from, 6);
    const parted = pinch(WHOLE, held, [0.1, 0.9]);
    expect(spanOf(parted)).toBeCloseTo(spanOf(WHOLE) * (0.5 / 0.8), 6);
  });

  it('change nothing where they meet', () => {
    expect(pinch(WHOLE, [300, 310], [0.5, 0.5])).toBe(WHOLE);
  });
});

describe('the age line', () => {
  it('stays on the axis', () => {
    expect(clampAge(-4)).toBe(LIMITS.from);
    expect(clampAge(1e6)).toBe(LIMITS.to);
  });

  it('is followed out of sight by just as much as is needed', () => {
    expect(follow(WHOLE, 400)).toBe(WHOLE);
    const later = follow(WHOLE, WHOLE.to + 10);
    expect(later.to).toBeGreaterThan(WHOLE.to + 10);
    expect(spanOf(later)).toBeCloseTo(spanOf(WHOLE), 6);
  });
});
