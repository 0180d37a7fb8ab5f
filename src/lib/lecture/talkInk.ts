/**
 * The colours and sizes of the hall. Letters are ink, soft or signal, on paper or on the ground
 * before term; every such pair keeps at least 7:1 (WCAG 2.2, 1.4.6).
 */
export const STAGE_INK = {
  light: {
    paper: '#fbfaf6',
    womb: '#f1ede3',
    ink: '#141d24',
    soft: '#3d4953',
    hair: '#d9d5cb',
    edge: '#6c757d',
    tide: '#1d5666',
    signal: '#7c2608',
    mat: '#f0ebdf',
  },
  dark: {
    paper: '#0e1214',
    womb: '#191f22',
    ink: '#f2efe7',
    soft: '#bcc6cc',
    hair: '#333d43',
    edge: '#8a969d',
    tide: '#8ac6d4',
    signal: '#ffb08c',
    mat: '#20282d',
  },
} as const;

/** The tokens in which letters are set, and what they stand on. */
export const LETTERS = ['ink', 'soft', 'signal'] as const;
export const GROUNDS = ['paper', 'womb'] as const;

/** The smallest letter is at least this share of the picture's height. */
export const LEAST_LETTER = 1 / 40;

/** A capital's share of the size the letters are set in: Source Sans 3, 660 of 1000 units. */
export const CAPITAL = 0.66;

/** The chart's smallest size at scale 1, px (chart/sizes.ts). */
const CHART_SMALL_PX = 12;

/** A little more than the least, so that no rounding of the browser's takes it below. */
const MARGIN = 1.015;

/** The smallest size of letters for a picture of this height, px. */
export const leastSizePx = (heightPx: number): number =>
  (heightPx * LEAST_LETTER * MARGIN) / CAPITAL;

/** The scale of the chart's text at which its smallest letters are legible. */
export const stageText = (heightPx: number): number => leastSizePx(heightPx) / CHART_SMALL_PX;

/** From one lane to the next at least, so that a lane's name keeps its size (chart/sizes.ts: 0.72). */
export const leastPitchPx = (heightPx: number): number => leastSizePx(heightPx) / 0.72;

/** How many lanes a room of this height holds, beside the axis, the age line's label and the rest. */
export function lanesThatFit(
  roomPx: number,
  heightPx: number,
  rest: { stations: number; sequences: number; rows: number; ageLines: number },
): number {
  const text = stageText(heightPx);
  const around =
    (40 + 31 + 14 + 5) * text +
    rest.stations * 40 * text +
    rest.sequences * 5 * text +
    rest.rows * 15.5 * text +
    (rest.ageLines - 1) * 17.55 * text;
  return Math.max(1, Math.floor((roomPx - around) / leastPitchPx(heightPx)));
}
