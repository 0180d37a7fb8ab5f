/** Reads an SVG of the page: its shapes, their computed colours, what cuts and fades them, their place. */
import type { Definition, Drawn, Letters, Look, Matrix, Place } from '../picture/drawn.ts';

/**
 * Controls, and what is said to a screen reader only, are no part of a picture; a button whose words
 * are what is shown, as a choice of a question, is marked `data-drawn`.
 */
const LEFT_OUT =
  'button:not([data-drawn]), input, select, textarea, summary, table, .no-print, .unseen, [role="toolbar"]';

/** What is known while a part of the page is read. */
export interface Reading {
  /** From the window to the picture. */
  origin: DOMPoint;
  /** Where in the window the lowest of what is drawn ends. */
  bottom: number;
  definitions: Definition[];
}

export const matrixOf = ({ a, b, c, d, e, f }: DOMMatrix): Matrix => [a, b, c, d, e, f];

/** From an element's own units to the picture's pixels. */
function placeOf(element: SVGGraphicsElement, { origin }: Reading): DOMMatrix {
  const screen = element.getScreenCTM() ?? new DOMMatrix();
  return new DOMMatrix().translate(-origin.x, -origin.y).multiply(DOMMatrix.fromMatrix(screen));
}

/** Colours and strokes as they were computed. */
export function lookOf(style: CSSStyleDeclaration): Look {
  const dashes = style.strokeDasharray === 'none' ? [] : style.strokeDasharray.split(/[ ,]+/);
  return {
    fill: ownReference(style.fill),
    fillOpacity: Number(style.fillOpacity),
    stroke: ownReference(style.stroke),
    strokeOpacity: Number(style.strokeOpacity),
    strokeWidth: parseFloat(style.strokeWidth),
    cap: style.strokeLinecap,
    join: style.strokeLinejoin,
    dashes: dashes.map(parseFloat),
    strokeFirst: style.paintOrder.startsWith('stroke'),
    fixedStroke: style.getPropertyValue('vector-effect') === 'non-scaling-stroke',
  };
}

/** A paint that refers to a gradient is set when the gradient is read. */
const ownReference = (paint: string): string => (paint.startsWith('url(') ? 'none' : paint);

/** Letters as they were computed. */
export const lettersOf = (style: CSSStyleDeclaration, anchor = style.textAnchor): Letters => ({
  family: style.fontFamily,
  sizePx: parseFloat(style.fontSize),
  weight: style.fontWeight,
  italic: style.fontStyle === 'italic',
  anchor,
});

const number = (element: Element, name: string): number => Number(element.getAttribute(name) ?? 0);

/** Figures by their names; one that is left out is nought. */
const places = (element: Element, names: readonly string[]): Place =>
  Object.fromEntries(names.map((name) => [name, number(element, name)]));

/** A corner's radius is only there when it is named. */
const corners = (element: Element): string[] =>
  ['rx', 'ry'].filter((name) => element.hasAttribute(name));

/** The element a `url(#...)` names. */
function referred(value: string): Element | null {
  const id = /^url\(["']?#(.*?)["']?\)/.exec(value)?.[1];
  return id === undefined ? null : document.getElementById(id.replaceAll('\\', ''));
}

/** A gradient as the shape that is painted with it has it; the name under which it now stands. */
function gradientFor(value: string, matrix: DOMMatrix, reading: Reading): string | undefined {
  const gradient = referred(value);
  if (!(gradient instanceof SVGLinearGradientElement)) return undefined;
  const id = `run${reading.definitions.length + 1}`;
  reading.definitions.push({
    is: 'gradient',
    id,
    matrix: matrixOf(matrix),
    place: places(gradient, ['x1', 'y1', 'x2', 'y2']),
    stops: [...gradient.querySelectorAll('stop')].map((stop) => {
      const style = getComputedStyle(stop);
      return {
        offset: stop.offset.baseVal,
        colour: style.stopColor,
        opacity: Number(style.stopOpacity),
      };
    }),
  });
  return `url(#${id})`;
}

function paintedWith(style: CSSStyleDeclaration, matrix: DOMMatrix, reading: Reading): Look {
  const look = lookOf(style);
  const fill = style.fill.startsWith('url(') ? gradientFor(style.fill, matrix, reading) : undefined;
  return fill === undefined ? look : { ...look, fill };
}

/** A shape or a text; `matrix` is given where the element itself has no place, as in a mask. */
function leafOf(element: SVGElement, matrix: DOMMatrix, reading: Reading): Drawn[] {
  const style = getComputedStyle(element);
  const look = paintedWith(style, matrix, reading);
  const to = matrixOf(matrix);
  switch (element.localName) {
    case 'path':
      return [
        {
          is: 'path',
          matrix: to,
          d: element.getAttribute('d') ?? '',
          look,
          union: element.closest('[data-union]') !== null,
        },
      ];
    case 'rect':
      return [
        {
          is: 'rect',
          matrix: to,
          place: places(element, ['x', 'y', 'width', 'height', ...corners(element)]),
          look,
        },
      ];
    case 'circle':
      return [{ is: 'circle', matrix: to, place: places(element, ['cx', 'cy', 'r']), look }];
    case 'text': {
      const isKept = style.whiteSpace.startsWith('pre') || element.hasAttribute('xml:space');
      const text = element.textContent;
      return [
        {
          is: 'text',
          matrix: to,
          place: { x: number(element, 'x'), y: number(element, 'y') },
          text: isKept ? text : text.replaceAll(/\s+/g, ' ').trim(),
          look,
          letters: lettersOf(style),
        },
      ];
    }
    default:
      return [];
  }
}

function clipFor(element: Element, matrix: DOMMatrix, reading: Reading): string | undefined {
  const clip = referred(getComputedStyle(element).clipPath);
  if (!clip) return undefined;
  return defineClip(
    [...clip.children].flatMap((child) => leafOf(child as SVGElement, matrix, reading)),
    reading,
  );
}

function defineClip(within: readonly Drawn[], reading: Reading): string {
  const id = `cut${reading.definitions.length + 1}`;
  reading.definitions.push({ is: 'clip', id, within });
  return id;
}

function maskFor(element: Element, matrix: DOMMatrix, reading: Reading): string | undefined {
  const mask = referred(element.getAttribute('mask') ?? '');
  if (!mask) return undefined;
  const within = [...mask.children].flatMap((child) =>
    leafOf(child as SVGElement, matrix, reading),
  );
  const id = `fade${reading.definitions.length + 1}`;
  const place = places(mask, ['x', 'y', 'width', 'height']);
  reading.definitions.push({ is: 'mask', id, matrix: matrixOf(matrix), place, within });
  return id;
}

/** The frame of an SVG cuts off what lies outside it, unless it is said not to. */
function frameOf(svg: SVGSVGElement, matrix: DOMMatrix, reading: Reading): string | undefined {
  if (getComputedStyle(svg).overflow === 'visible') return undefined;
  const box = svg.viewBox.baseVal;
  const place: Place = svg.hasAttribute('viewBox')
    ? { x: box.x, y: box.y, width: box.width, height: box.height }
    : { x: 0, y: 0, width: svg.width.baseVal.value, height: svg.height.baseVal.value };
  const look: Look = {
    fill: 'rgb(0, 0, 0)',
    fillOpacity: 1,
    stroke: 'none',
    strokeOpacity: 1,
    strokeWidth: 0,
    cap: 'butt',
    join: 'miter',
    dashes: [],
    strokeFirst: false,
    fixedStroke: false,
  };
  return defineClip([{ is: 'rect', matrix: matrixOf(matrix), place, look }], reading);
}

/** Whether an element is seen, and part of a picture. */
export const isShown = (element: Element, style: CSSStyleDeclaration): boolean =>
  style.display !== 'none' && style.visibility !== 'hidden' && !element.matches(LEFT_OUT);

/** An SVG and all within it, each with its place in the picture. */
export function readSvg(element: SVGElement, reading: Reading): Drawn[] {
  const style = getComputedStyle(element);
  if (!isShown(element, style) || !(element instanceof SVGGraphicsElement)) return [];
  if (element instanceof SVGDefsElement) return [];
  const matrix = placeOf(element, reading);
  const isFrame = element instanceof SVGSVGElement;
  const isGroup = isFrame || element instanceof SVGGElement;
  const clip = isFrame ? frameOf(element, matrix, reading) : clipFor(element, matrix, reading);
  const mask = maskFor(element, matrix, reading);
  const within = isGroup
    ? [...element.children].flatMap((child) =>
        child instanceof SVGElement ? readSvg(child, reading) : [],
      )
    : leafOf(element, matrix, reading);
  if (within.length === 0) return [];
  const cut = { ...(clip ? { clip } : {}), ...(mask ? { mask } : {}) };
  return [{ is: 'group', opacity: Number(style.opacity), ...cut, within }];
}
