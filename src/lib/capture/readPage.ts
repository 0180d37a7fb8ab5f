/**
 * Reads what is drawn in a part of the page: every SVG with its computed colours and its place, and
 * the words around them. It looks and changes nothing that stays.
 */
import type { Drawing, Drawn } from '../picture/drawn.ts';
import { isShown, lettersOf, lookOf, matrixOf, readSvg, type Reading } from './readSvg.ts';

const HELD_BY_SCROLLING = 'sticky';

const boxOf = (element: Element): DOMRect => element.getBoundingClientRect();

let pen: CanvasRenderingContext2D | null = null;

/** How far below the top of its line a text's baseline lies, px. */
function ascentOf(style: CSSStyleDeclaration): number {
  pen ??= document.createElement('canvas').getContext('2d');
  if (!pen) return parseFloat(style.fontSize);
  pen.font = `${style.fontStyle} ${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
  return pen.measureText('x').fontBoundingBoxAscent;
}

/** The words of a text node by the lines they are set in. */
function linesOf(node: Text): { text: string; rect: DOMRect }[] {
  const range = document.createRange();
  const lines: { text: string; rect: DOMRect }[] = [];
  for (const { index, 0: word } of node.data.matchAll(/\S+/g)) {
    range.setStart(node, index);
    range.setEnd(node, index + word.length);
    const rect = range.getBoundingClientRect();
    if (rect.width === 0) continue;
    const last = lines.at(-1);
    if (last && Math.abs(last.rect.top - rect.top) < 1) last.text += ` ${word}`;
    else lines.push({ text: word, rect });
  }
  return lines;
}

function readText(node: Text, reading: Reading): Drawn[] {
  const parent = node.parentElement;
  if (!parent) return [];
  const style = getComputedStyle(parent);
  const ascent = ascentOf(style);
  const block = parent.closest('p, h1, h2, h3, li, div');
  const capital =
    block !== null &&
    getComputedStyle(block, '::first-letter').textTransform === 'uppercase' &&
    block.textContent.trimStart().startsWith(node.data.trimStart());
  return linesOf(node).map(({ text, rect }, index): Drawn => {
    reading.bottom = Math.max(reading.bottom, rect.bottom);
    const said = capital && index === 0 ? text.charAt(0).toUpperCase() + text.slice(1) : text;
    const shift = matrixOf(new DOMMatrix().translate(-reading.origin.x, -reading.origin.y));
    return {
      is: 'text',
      matrix: shift,
      place: { x: rect.left, y: rect.top + ascent },
      text: style.textTransform === 'uppercase' ? said.toUpperCase() : said,
      look: { ...lookOf(style), fill: style.color, fillOpacity: 1, stroke: 'none' },
      letters: lettersOf(style, 'start'),
    };
  });
}

function readNode(node: Node, reading: Reading): Drawn[] {
  if (node instanceof SVGElement) {
    const drawn = readSvg(node, reading);
    if (drawn.length > 0) reading.bottom = Math.max(reading.bottom, boxOf(node).bottom);
    return drawn;
  }
  if (node instanceof Text) return readText(node, reading);
  if (!(node instanceof HTMLElement)) return [];
  const style = getComputedStyle(node);
  if (!isShown(node, style)) return [];
  const within = [...node.childNodes].flatMap((child) => readNode(child, reading));
  if (within.length === 0) return [];
  const opacity = Number(style.opacity);
  return opacity < 1 ? [{ is: 'group', opacity, within }] : within;
}

/** What stays in sight while the page scrolls is put where it belongs, for as long as it is read. */
function atRest<T>(root: HTMLElement, read: () => T): T {
  for (const motion of root.getAnimations({ subtree: true })) motion.finish();
  const held = [...root.querySelectorAll<HTMLElement>('*')].filter(
    (element) => getComputedStyle(element).position === HELD_BY_SCROLLING,
  );
  for (const element of held) element.style.position = 'static';
  try {
    return read();
  } finally {
    for (const element of held) element.style.removeProperty('position');
  }
}

/**
 * Everything drawn in a part of the page, in pixels as it stands there.
 * @param keyed whether what explains its signs (`data-legend`) is wanted too
 */
export function readDrawing(root: HTMLElement, keyed: boolean): Drawing {
  return atRest(root, () => {
    const key = root.querySelector<HTMLElement>('[data-legend]');
    const frame = boxOf(root);
    const reading: Reading = {
      origin: new DOMPoint(frame.left, frame.top),
      bottom: frame.top,
      definitions: [],
    };
    if (key && !keyed) key.hidden = true;
    const drawn = [...root.childNodes].flatMap((node) => readNode(node, reading));
    if (key) key.hidden = false;
    return {
      widthPx: frame.width,
      heightPx: reading.bottom - frame.top,
      drawn,
      definitions: reading.definitions,
    };
  });
}
