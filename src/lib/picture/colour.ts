/** Colours as a browser has worked them out, written so that every drawing program reads them. */
import { color } from 'd3';

/** What a shape is painted with: a hex colour with its opacity, nothing, or a gradient by its id. */
export interface Paint {
  colour: string;
  /** 0 to 1. */
  alpha: number;
}

export const NO_PAINT: Paint = { colour: 'none', alpha: 1 };

/** `color(srgb 0.5 0.2 1 / 0.4)`: how a browser gives a mixed colour (CSS Color 4). */
const MIXED = /^color\(srgb ([\d.e+-]+) ([\d.e+-]+) ([\d.e+-]+)(?: \/ ([\d.e+-]+))?\)$/;

const pair = (channel: number): string =>
  Math.round(Math.min(Math.max(channel, 0), 1) * 255)
    .toString(16)
    .padStart(2, '0');

/**
 * Reads a colour as computed: `rgb()`, `rgba()`, `color(srgb ...)` or `none`. Opacity stands apart,
 * since some programs know no colour that carries its own.
 * @throws RangeError for anything else: a colour that is guessed would be wrong unseen
 */
export function paintOf(computed: string): Paint {
  if (computed === 'none') return NO_PAINT;
  const mixed = MIXED.exec(computed);
  if (mixed) {
    const [red, green, blue, alpha] = mixed.slice(1).map(Number);
    return {
      colour: `#${pair(red!)}${pair(green!)}${pair(blue!)}`,
      alpha: mixed[4] === undefined ? 1 : alpha!,
    };
  }
  const plain = color(computed);
  if (!plain) throw new RangeError(`no colour: ${computed}`);
  return { colour: plain.copy({ opacity: 1 }).formatHex(), alpha: plain.opacity };
}
