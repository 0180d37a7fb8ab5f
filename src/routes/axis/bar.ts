/** How a band is drawn on the empty axis. */
import { WHOLE } from '$lib/chart/viewport.ts';
import type { Placed } from '$lib/lecture/emptyAxis.ts';

/**
 * The outline of a band; open to the right when it runs on.
 * @param x from axis day to px
 * @param y top of the band, px
 * @param high its height, px
 */
export function barOf(
  x: (day: number) => number,
  { begins, ends }: Placed,
  y: number,
  high: number,
): string {
  const [from, to] = [x(begins), x(ends)];
  return ends >= WHOLE.to
    ? `M${to + high * 0.6} ${y + high / 2}L${to} ${y}H${from}V${y + high}H${to}Z`
    : `M${from} ${y}H${to}V${y + high}H${from}Z`;
}
