/** Where text goes: it never overlaps other text and never leaves its room. */

/** A size in pixels and a weight, in the one sans of the chart unless it is a name or title. */
export interface Lettering {
  sizePx: number;
  weight?: number;
  serif?: boolean;
}

/** The width of a text in pixels. */
export type Measure = (text: string, lettering: Lettering) => number;

const NARROW = "iljtfrI.,:;'|!()[] -·";
const WIDE = 'mwMWOQGDHNU%—';

/**
 * The width of a text where nothing can be measured: by three widths of letters, as wide as
 * the widest of the usual sans faces runs, so that what fits by it fits.
 */
export const roughMeasure: Measure = (text, { sizePx, weight = 400, serif = false }) => {
  let ems = 0;
  for (const letter of text)
    ems += NARROW.includes(letter) ? 0.37 : WIDE.includes(letter) ? 0.9 : 0.62;
  return ems * sizePx * (weight >= 600 ? 1.06 : 1) * (serif ? 1.04 : 1);
};

/** A label along a line: where its middle would like to be, and its width. */
export interface Wanted {
  x: number;
  width: number;
}

/** Whether labels centred at their places, in ascending order, keep a gap between each other. */
export function keepApart(labels: readonly Wanted[], gapPx: number): boolean {
  return labels.every((label, index) => {
    const next = labels[index + 1];
    return !next || label.x + label.width / 2 + gapPx <= next.x - next.width / 2;
  });
}

/** A middle moved just so far that the label lies between two edges; centred when it is too wide. */
export function within(x: number, width: number, fromPx: number, toPx: number): number {
  if (width >= toPx - fromPx) return (fromPx + toPx) / 2;
  return Math.min(Math.max(x, fromPx + width / 2), toPx - width / 2);
}

/** The longest of some wordings that fits; undefined when even the last does not. */
export const fitting = (
  wordings: readonly string[],
  roomPx: number,
  lettering: Lettering,
  measure: Measure,
): string | undefined => wordings.find((text) => measure(text, lettering) <= roomPx);

/** Text cut to parts that fit a line each, in order; a part that is too wide stands alone. */
export function wrapParts(
  parts: readonly string[],
  joint: string,
  roomPx: number,
  lettering: Lettering,
  measure: Measure,
): string[] {
  const lines: string[] = [];
  for (const part of parts) {
    const last = lines.at(-1);
    const joined = last === undefined ? part : last + joint + part;
    if (last !== undefined && measure(joined, lettering) <= roomPx)
      lines[lines.length - 1] = joined;
    else lines.push(part);
  }
  return lines;
}
