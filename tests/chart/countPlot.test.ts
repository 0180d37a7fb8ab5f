/** The small plots of counts on a reflex's page: every one of the atlas, laid out. */
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { en } from '../../src/lib/words/en.ts';
import { countPlot, PLOT, type Box } from '../../src/routes/reflexes/[id]/countPlot.ts';
import { countedIn } from '../../src/routes/reflexes/[id]/frequency.ts';

const words = { ...en.chart.chartWords(ATLAS), label: en.atlasPages.countLabel };
const PLOTS = [...ATLAS.counts.values()]
  .flatMap(countedIn)
  .filter(({ dots }) => dots.length > 0)
  .map((counted) => ({ counted, plot: countPlot(counted, words) }));

const overlap = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));

describe('a plot of counts', () => {
  test('has an age in figures on its axis, also where it has one dot', () => {
    expect(PLOTS.filter(({ counted }) => counted.dots.length === 1).length).toBeGreaterThan(10);
    for (const { counted, plot } of PLOTS) {
      const labels = plot.ticks.filter(({ label }) => label !== '');
      expect(labels.length, counted.key).toBeGreaterThan(0);
    }
  });

  test('names term where it is in sight, clear of the figures', () => {
    for (const { counted, plot } of PLOTS) {
      expect(plot.term !== null).toBe(counted.range.from < 280 && counted.range.to > 280);
      for (const { x, label, width } of plot.ticks)
        if (plot.term && label) expect(Math.abs(x - plot.term.x)).toBeGreaterThan(12 + width / 2);
    }
  });

  test('has its labels clear of each other, of every dot, and within its sides', () => {
    for (const { counted, plot } of PLOTS)
      plot.dots.forEach(({ label }, index) => {
        expect(label.box.left, counted.key).toBeGreaterThanOrEqual(PLOT.left - 1);
        expect(label.box.right, counted.key).toBeLessThanOrEqual(PLOT.width + 1);
        plot.dots.forEach((other, at) => {
          const dot = {
            left: other.x - 4,
            right: other.x + 4,
            top: other.y - 4,
            bottom: other.y + 4,
          };
          expect(overlap(label.box, dot), `${counted.key}: ${label.text}`).toBe(0);
          if (at !== index)
            expect(overlap(label.box, other.label.box), `${counted.key}: ${label.text}`).toBe(0);
        });
      });
  });
});
