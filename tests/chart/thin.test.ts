import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromMonths, TERM, toAxisDay } from '../../src/lib/age/axis.ts';
import {
  MOST_MARKS,
  THIN_GROUND,
  THIN_PX,
  thinPaths,
  type ThinVisit,
} from '../../src/lib/chart/thin.ts';

const dots = (path: string): number => path.split('M').length - 1;
const visit = fc.record({
  day: fc.integer({ min: 150, max: 1000 }).map(toAxisDay),
  discuss: fc.nat(9),
  watch: fc.nat(9),
});
const paths = (visits: readonly ThinVisit[]) =>
  thinPaths({ born: TERM, now: { day: fromMonths(9), spreadDays: 0 }, visits });

describe('a thin strip', () => {
  it('has one mark for each that asks, up to what has room, and then says that there are more', () => {
    fc.assert(
      fc.property(visit, (one) => {
        const { discuss, watch, more } = paths([one]);
        const all = one.discuss + one.watch;
        const shown = dots(discuss) + dots(watch);
        expect(shown + dots(more)).toBe(Math.min(all, MOST_MARKS));
        expect(dots(more)).toBe(all > MOST_MARKS ? 1 : 0);
        // what is to be discussed is never left out for what is to be watched
        expect(dots(discuss)).toBe(Math.min(one.discuss, shown));
      }),
    );
  });

  it('keeps all it draws within its height', () => {
    fc.assert(
      fc.property(fc.array(visit, { maxLength: 6 }), (visits) => {
        for (const path of Object.values<string>({ ...paths(visits) }))
          for (const [, y] of path.matchAll(/M[\d.-]+ ([\d.-]+)/g)) {
            expect(Number(y)).toBeGreaterThanOrEqual(0);
            expect(Number(y)).toBeLessThanOrEqual(THIN_PX);
          }
      }),
    );
  });

  it('stands on the axis from 20 weeks of gestation to 24 months after term', () => {
    const [from, , span] = THIN_GROUND.viewBox.split(' ').map(Number);
    expect(from).toBe(140);
    expect(from! + span!).toBeCloseTo(280 + 24 * 30.4375, 6);
    expect(THIN_GROUND.term).toContain('M280 ');
  });

  it('draws no life and no age before birth, and the doubt only where there is some', () => {
    const unborn = thinPaths({ born: TERM, now: undefined, visits: [] });
    expect([unborn.life, unborn.now]).toEqual(['', '']);
    expect(dots(paths([]).now)).toBe(1);
    const doubted = thinPaths({ born: TERM, now: { day: TERM, spreadDays: 20 }, visits: [] });
    expect(doubted.now).toContain('M260 1H300');
  });
});
