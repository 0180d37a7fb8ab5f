import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromMonths } from '../../../src/lib/age/axis.ts';
import { roughMeasure } from '../../../src/lib/chart/labels.ts';
import {
  FIT_COURSE,
  placeFitCourse,
  type FitVisit,
} from '../../../src/lib/chart/small/fitCourse.ts';
import type { FitData } from '../../../src/lib/chart/model.ts';
import { en } from '../../../src/lib/words/en.ts';

const words = {
  kind: en.inferred.fitKind,
  equal: en.course.fitCourse.equal(true),
  term: 'term',
  across: en.course.fitCourse.across(true),
  up: en.course.fitCourse.up,
};

const fit = (
  kind: FitData['kind'],
  median: number,
  low: number | null,
  high: number | null,
): FitData => ({
  kind,
  median: fromMonths(median),
  low: low === null ? null : fromMonths(low),
  high: high === null ? null : fromMonths(high),
});
const visit = (months: number, ...fits: FitData[]): FitVisit => ({ day: fromMonths(months), fits });
const placed = (...visits: FitVisit[]) => placeFitCourse(visits, words)!;

/** The two ends of the line on which both ages are equal. */
const endsOf = (path: string): number[] => [...path.matchAll(/-?[\d.]+/g)].map(Number);

const anyFit = fc
  .tuple(
    fc.constantFrom('primitive', 'postural', 'milestones' as const),
    fc.tuple(
      fc.double({ min: 0, max: 22, noNaN: true }),
      fc.double({ min: 0, max: 22, noNaN: true }),
      fc.double({ min: 0, max: 22, noNaN: true }),
    ),
    fc.constantFrom('both', 'low', 'high'),
  )
  .map(([kind, ages, open]) => {
    const [low, median, high] = ages.toSorted((a, b) => a - b);
    return fit(kind, median!, open === 'low' ? null : low!, open === 'high' ? null : high!);
  });
const anyVisits = fc.uniqueArray(
  fc
    .tuple(
      fc.double({ min: -3, max: 22, noNaN: true }),
      fc.uniqueArray(anyFit, { maxLength: 3, selector: ({ kind }) => kind }),
    )
    .map(([months, fits]) => visit(months, ...fits)),
  { minLength: 1, maxLength: 6, selector: ({ day }) => day },
);

describe('the best-fitting ages over the visits', () => {
  it('put a median on the line of equal ages where it is the age of the child', () => {
    const course = placed(
      visit(2, fit('primitive', 1, 0.5, 3)),
      visit(5, fit('primitive', 5, 4, 6)),
    );
    const [x0, y0, x1, y1] = endsOf(course.equal) as [number, number, number, number];
    const onLine = (x: number): number => y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
    const [first, second] = course.strokes;
    expect(second!.middle).toBeCloseTo(onLine(second!.x), 0);
    // a younger best-fitting age is below the line
    expect(first!.middle).toBeGreaterThan(onLine(first!.x) + 10);
    expect(course.lines.map(({ kind }) => kind)).toEqual(['primitive']);
  });

  it('leave an end that the axis cuts off open, without a median and off the line over visits', () => {
    const course = placed(
      visit(1, fit('postural', 1, null, 1.7)),
      visit(5, fit('postural', 5, 2, 6)),
      visit(7, fit('postural', 9, 7, null)),
    );
    const [before, both, after] = course.strokes;
    expect(before).toMatchObject({ openBottom: true, openTop: false });
    // it begins at the end it has, as the other visits place that age
    expect(both!.bottom).toBeLessThan(before!.top);
    expect(before!.bottom - before!.top).toBeLessThanOrEqual(14);
    expect(before!.middle).toBeUndefined();
    expect(both!.middle).toBeDefined();
    expect(after).toMatchObject({ openTop: true, openBottom: false });
    expect(after!.bottom).toBeLessThan(both!.top);
    expect(course.lines).toEqual([]);
  });

  it('stand beside each other at one visit, and for two examiners of one day', () => {
    const course = placed(
      visit(4, fit('primitive', 4, 3, 5), fit('postural', 4, 3, 5)),
      visit(4, fit('primitive', 3, 2, 5)),
    );
    const across = course.strokes.map(({ x }) => x).toSorted((a, b) => a - b);
    expect(across[1]! - across[0]!).toBeGreaterThanOrEqual(6);
    expect(across[2]! - across[1]!).toBeGreaterThanOrEqual(6);
    expect(course.visits).toHaveLength(1);
  });

  it('are not drawn where no visit has one', () => {
    expect(placeFitCourse([visit(1), visit(3)], words)).toBeUndefined();
  });

  it('stay within the picture, whatever the ages, with labels that do not meet', () => {
    fc.assert(
      fc.property(anyVisits, (visits) => {
        const course = placeFitCourse(visits, words);
        expect(course === undefined).toBe(visits.every(({ fits }) => fits.length === 0));
        if (!course) return;
        for (const { top, bottom, middle, x } of course.strokes) {
          expect(top).toBeGreaterThanOrEqual(course.top);
          expect(bottom).toBeLessThanOrEqual(course.bottom);
          expect(bottom).toBeGreaterThanOrEqual(top);
          if (middle !== undefined) expect(middle >= top && middle <= bottom).toBe(true);
          expect(x > 0 && x < FIT_COURSE.width).toBe(true);
        }
        const boxes = course.labels.map(({ x, y, text }) => {
          const width = roughMeasure(text, { sizePx: 12 });
          expect(y > 0 && y <= course.bottom).toBe(true);
          expect(x + width).toBeLessThanOrEqual(FIT_COURSE.width + 0.1);
          return { x, y, width };
        });
        for (const [at, one] of boxes.entries())
          for (const other of boxes.slice(at + 1))
            expect(
              one.x + one.width <= other.x ||
                other.x + other.width <= one.x ||
                Math.abs(one.y - other.y) >= 12,
            ).toBe(true);
      }),
    );
  });
});
