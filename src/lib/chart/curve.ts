/** A path that runs along level lines and swings from one to the next. */
import { pathRound, type Path } from 'd3';

const DIGITS = 2;

export interface JoiningPath extends Path {
  /**
   * Swings from the end of one level line to the beginning of a lower one, leaving and arriving
   * level. Where the next begins further left it loops back.
   */
  join(x0: number, y0: number, x1: number, y1: number, reachPx: number): void;
}

export function path(): JoiningPath {
  const context = pathRound(DIGITS);
  return Object.assign(context, {
    join(x0: number, y0: number, x1: number, y1: number, reachPx: number) {
      const back = Math.max(0, x0 - x1);
      const reach = Math.max(Math.min((x1 - x0) / 2, reachPx), reachPx * 0.5, back * 0.35);
      context.bezierCurveTo(x0 + reach, y0, x1 - reach, y1, x1, y1);
    },
  });
}
