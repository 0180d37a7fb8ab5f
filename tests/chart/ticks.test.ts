import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromGestationWeeks, fromMonths, TERM, toAxisDay } from '../../src/lib/age/axis.ts';
import { roughMeasure } from '../../src/lib/chart/labels.ts';
import { axisScale } from '../../src/lib/chart/scale.ts';
import { ticksIn } from '../../src/lib/chart/ticks.ts';
import { clampRange, LIMITS, WHOLE } from '../../src/lib/chart/viewport.ts';

const figures = { tick: ({ value }: { value: number }) => String(value) };
const inWords = {
  tick: ({ value, unit }: { value: number; unit: string }) => `${value} ${unit}s of age`,
};

const ticksAt = (
  widthPx: number,
  from: number,
  to: number,
  words: typeof inWords | typeof figures = figures,
  textPx = 12,
) =>
  ticksIn(
    axisScale(clampRange({ from: toAxisDay(from), to: toAxisDay(to) }), 10, widthPx - 14),
    { sizePx: textPx },
    words,
    roughMeasure,
    [0, widthPx],
  );

describe('ticks', () => {
  it('ascend, keep their figures apart and on the chart, from a phone to a hall', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 390, max: 1920 }),
        fc.double({ min: LIMITS.from, max: LIMITS.to - 60, noNaN: true }),
        fc.double({ min: 40, max: 2000, noNaN: true }),
        fc.constantFrom(figures, inWords),
        fc.constantFrom(12, 24),
        (width, from, span, words, size) => {
          const ticks = ticksAt(width, from, from + span, words, size);
          ticks.slice(1).forEach((tick, index) => {
            expect(tick.day).toBeGreaterThan(ticks[index]?.day ?? Infinity);
          });
          const labelled = ticks.filter((tick) => tick.label !== '');
          labelled.forEach((tick, index) => {
            const next = labelled[index + 1];
            expect(tick.x - tick.width / 2).toBeGreaterThanOrEqual(0);
            expect(tick.x + tick.width / 2).toBeLessThanOrEqual(width);
            if (next) expect(tick.x + tick.width / 2).toBeLessThanOrEqual(next.x - next.width / 2);
          });
        },
      ),
    );
  });

  it('count weeks before term and months after, every fourth and every second at first view', () => {
    const ticks = ticksAt(1200, WHOLE.from, WHOLE.to).filter((tick) => tick.label !== '');
    expect(ticks.filter((t) => t.unit === 'week').map((t) => t.value)).toEqual([
      20, 24, 28, 32, 36,
    ]);
    expect(ticks.filter((t) => t.unit === 'month').map((t) => t.value)).toEqual([
      2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24,
    ]);
  });

  it('leave term to its own line', () => {
    expect(ticksAt(1200, WHOLE.from, WHOLE.to).some((tick) => tick.day === TERM)).toBe(false);
  });

  it('come closer as there is room', () => {
    const near = ticksAt(1200, fromGestationWeeks(32), fromMonths(2)).filter((t) => t.label !== '');
    expect(near.filter((t) => t.unit === 'week').map((t) => t.value)).toEqual([
      32, 33, 34, 35, 36, 37, 38, 39,
    ]);
  });
});
