/** The words beneath a family's chart stand clear of each other, at both widths. */
import { expect, test } from 'vitest';
import { TERM_DAYS } from '../../src/lib/age/axis.ts';
import { anchorAt, tickShares } from '../../src/lib/handout/familyTicks.ts';
import { CHILDREN, pagesOf } from './pages.ts';

/** What a letter of words such as "12 months" takes at 358 px and at 768 px, as shares; measured in Chromium. */
const LETTER = { narrow: 0.026, wide: 0.0125 };

/** From where to where words reach that stand at a share of the axis. */
function reach(share: number, takes: number): [number, number] {
  const anchor = anchorAt(share);
  const from = anchor === 'start' ? share : anchor === 'end' ? share - takes : share - takes / 2;
  return [from, from + takes];
}

test.each(CHILDREN)('of %s', (_, record) => {
  for (const { chart } of pagesOf(record)) {
    const shown = tickShares(chart);
    expect(shown.length).toBeGreaterThanOrEqual(2);
    for (const width of ['narrow', 'wide'] as const) {
      const reaches = shown
        .filter(({ isWideOnly }) => width === 'wide' || !isWideOnly)
        .map(({ tick }) =>
          reach(
            (tick.axisDay - chart.from) / (chart.to - chart.from),
            tick.words.length * LETTER[width],
          ),
        );
      // the day that is counted from is always named
      expect(shown.find(({ tick }) => tick.axisDay === TERM_DAYS)?.isWideOnly).toBe(false);
      reaches.slice(1).forEach(([from], before) => {
        expect(from).toBeGreaterThan(reaches[before]![1]);
      });
    }
  }
});
