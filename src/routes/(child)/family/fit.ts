/**
 * Fits a family's sheet to the paper: tries its layouts on the sheet itself, from the roomiest on,
 * and keeps the first that needs no more than two sheets.
 */
import { fallOf, firstWithin, flowing, type Block } from '$lib/handout/sheets.ts';

/** Lines close together, no room to write, headings on the line of their text. */
const WAYS = ['close', 'unruled', 'run-in'] as const;

interface Layout {
  /** Width of a figure, points; nought leaves it out. */
  figure: number;
  how: readonly (typeof WAYS)[number][];
}

/** So many are enough for a family to keep. */
export const MOST_SHEETS = 2;

/** The roomiest first. */
const LAYOUTS: readonly [Layout, ...Layout[]] = [
  { figure: 96, how: [] },
  ...[84, 72, 60, 48].map((figure) => ({ figure, how: [] })),
  { figure: 48, how: ['close'] },
  { figure: 42, how: ['close', 'unruled'] },
  { figure: 42, how: ['close', 'run-in'] },
  { figure: 42, how: ['close', 'unruled', 'run-in'] },
  { figure: 0, how: ['close', 'unruled', 'run-in'] },
];

/** What a line to write on takes, points, and the most of them. */
const LINE_PT = 24;
const MOST_LINES = 8;
/** So many lines to write on stand on the sheet while it is measured. */
export const FEWEST_LINES = 2;

/** Room between the margins of Letter, the lower of the two papers; points, less a little for rounding. */
const ROOM_PT = ((279.4 - 2 * 8) / 25.4) * 72 - 6;
const PT_PX = 96 / 72;

const heightOf = (node: Element): number => node.getBoundingClientRect().height / PT_PX;

/** What may be torn apart: nothing, but a plain text where lines stand close. */
function partsOf(block: HTMLElement, how: Layout['how']): Block[] {
  const height = heightOf(block);
  if (!how.includes('close') || block.dataset.block !== 'flows')
    return [{ height, keeps: block.dataset.block === 'keeps' }];
  const text = how.includes('run-in') ? block : (block.querySelector('p') ?? block);
  const line = parseFloat(getComputedStyle(text).lineHeight) / PT_PX;
  return flowing(height, line, Math.floor(heightOf(text) / line + 0.2));
}

/**
 * Lays the sheet out as it fits best: sets its classes and the width of its figures.
 * @param sheet holds its blocks marked `data-block`, with the fewest lines to write on
 * @returns how many sheets it takes on A4 or Letter, and how many lines to write on have room
 */
export function fit(sheet: HTMLElement): { sheets: number; lines: number } {
  const blocks = [...sheet.querySelectorAll<HTMLElement>('[data-block]')];
  const { fall } = firstWithin(LAYOUTS, MOST_SHEETS, ({ figure, how }) => {
    sheet.style.setProperty('--figure', `${figure}pt`);
    sheet.classList.toggle('bare', figure === 0);
    for (const way of WAYS) sheet.classList.toggle(way, how.includes(way));
    return fallOf(
      blocks.flatMap((block) => partsOf(block, how)),
      ROOM_PT,
    );
  });
  const lines = FEWEST_LINES + Math.max(0, Math.floor(fall.rest / LINE_PT));
  return { sheets: fall.sheets, lines: Math.min(MOST_LINES, lines) };
}
