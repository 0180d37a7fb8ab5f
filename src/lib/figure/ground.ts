import { onPage, type Page } from './page.ts';
import { linePath } from './outline.ts';
import type { Shape } from './paint.ts';
import type { Stage } from './stage.ts';

const roundedPath = (x: number, y: number, w: number, h: number, r: number): string =>
  `M${x + r} ${y}h${w - 2 * r}a${r} ${r} 0 0 1 ${r} ${r}v${h - 2 * r}a${r} ${r} 0 0 1 ${-r} ${r}h${2 * r - w}a${r} ${r} 0 0 1 ${-r} ${-r}v${2 * r - h}a${r} ${r} 0 0 1 ${r} ${-r}Z`;

/** What the infant rests on. */
export function groundShapes(page: Page, stage: Stage, width: number, height: number): Shape[] {
  if (stage.ground === 'mat')
    return [
      { name: 'mat', d: roundedPath(6, 6, width - 12, height - 12, 22), fill: { key: 'mat' } },
    ];
  if (stage.ground === 'floor') {
    const y = Math.round(onPage(page, [0, 0, 0])[1] * 10) / 10;
    return [
      {
        name: 'mat',
        d: linePath(
          [
            [8, y],
            [width - 8, y],
            [width - 8, y + 6],
            [8, y + 6],
          ],
          true,
        ),
        fill: { key: 'mat' },
      },
      {
        name: 'floor',
        d: linePath([
          [8, y],
          [width - 8, y],
        ]),
        line: 'ink',
        width: 1,
      },
    ];
  }
  return [];
}
