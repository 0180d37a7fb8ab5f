/**
 * Things drawn, as elements that look the same in any program: transforms are worked into the
 * figures, because not every program keeps a stroke's width under them, lays a stroke under its fill
 * or shows a dot that is a line of no length.
 */
import svgpath from 'svgpath';
import { NO_PAINT, paintOf, type Paint } from './colour.ts';
import type { Definition, Drawn, Look, Matrix, Place } from './drawn.ts';
import { stackFor } from './letters.ts';
import type { Node } from './node.ts';

const TINY = 1e-6;

/** Two decimals of a pixel: a hundredth is not seen even at four times the size. */
const rounded = (value: number): number => Math.round(value * 100) / 100;

/** How much every length grows; undefined where it grows unlike in two directions. */
export function growthOf([a, b, c, d]: Matrix): number | undefined {
  const across = Math.hypot(a, b);
  const down = Math.hypot(c, d);
  const isSquare = Math.abs(a * c + b * d) < TINY * Math.max(1, across * down);
  return isSquare && Math.abs(across - down) < TINY * Math.max(1, across) ? across : undefined;
}

/** Neither turned nor mirrored. */
const isUpright = ([a, b, c, d]: Matrix): boolean =>
  Math.abs(b) < TINY && Math.abs(c) < TINY && a > 0 && d > 0;

type Attributes = Record<string, string | number | undefined>;

const paintIn = (css: string): Paint =>
  css.startsWith('url(') ? { colour: css, alpha: 1 } : paintOf(css);

/** Less than this is not seen. */
const opacityOf = (share: number): number | undefined =>
  share > 0.999 ? undefined : Math.round(share * 1000) / 1000;

function fillOf({ fill, fillOpacity }: Look): Attributes {
  const { colour, alpha } = paintIn(fill);
  return { fill: colour, 'fill-opacity': opacityOf(alpha * fillOpacity) };
}

/** @param growth by how much the stroke is to be wider than it says */
function strokeOf(look: Look, growth: number): Attributes {
  const { colour, alpha } = look.strokeWidth > 0 ? paintIn(look.stroke) : NO_PAINT;
  if (colour === 'none') return {};
  const width = look.fixedStroke ? 1 : growth;
  return {
    stroke: colour,
    'stroke-opacity': opacityOf(alpha * look.strokeOpacity),
    'stroke-width': rounded(look.strokeWidth * width),
    'stroke-linecap': look.cap === 'butt' ? undefined : look.cap,
    'stroke-linejoin': look.join === 'miter' ? undefined : look.join,
    'stroke-dasharray':
      look.dashes.length > 0 ? look.dashes.map((one) => rounded(one * width)).join(' ') : undefined,
  };
}

/** One element for each layer of paint: a stroke that lies under its fill comes first, by itself. */
function painted(look: Look, growth: number, make: (paint: Attributes) => Node): Node[] {
  const fill = fillOf(look);
  const stroke = strokeOf(look, growth);
  const hasFill = fill.fill !== 'none';
  const hasStroke = stroke.stroke !== undefined;
  if (!hasFill && !hasStroke) return [];
  if (look.strokeFirst && hasFill && hasStroke)
    return [make({ fill: 'none', ...stroke }), make(fill)];
  return [make({ ...fill, ...stroke })];
}

/** Where a path has only points, each a dot under a round pen: the points; else undefined. */
function dotsIn(path: InstanceType<typeof svgpath>): [number, number][] | undefined {
  const dots: [number, number][] = [];
  let others = 0;
  path.iterate((segment, index, x, y) => {
    const [command] = segment;
    if (command === 'M') dots.push([segment[1], segment[2]]);
    else if (command === 'L' && segment[1] === x && segment[2] === y && index > 0) return;
    else others += 1;
  });
  return others === 0 ? dots : undefined;
}

/** @param isUnion whether its outlines are one shape, wherever they lie over each other */
function flatPath(matrix: Matrix, d: string, look: Look, isUnion: boolean): Node[] {
  const growth = growthOf(matrix);
  const strokeStands = look.stroke === 'none' || look.fixedStroke || growth !== undefined;
  if (!strokeStands)
    return painted(look, 1, (paint) => ({
      tag: 'path',
      at: { d, transform: `matrix(${matrix.join(' ')})`, ...paint },
    }));
  // flat lines are made plain ones first, for a turn makes them slant
  const placed = svgpath(d)
    .abs()
    .unshort()
    .matrix([...matrix]);
  const plain = svgpath(placed.toString())
    .abs()
    .iterate((segment, _index, x, y) => {
      if (segment[0] === 'H') return [['L', segment[1], y]];
      if (segment[0] === 'V') return [['L', x, segment[1]]];
      return undefined;
    });
  const dots = look.cap === 'round' && look.fill === 'none' ? dotsIn(plain) : undefined;
  if (dots) {
    const {
      stroke,
      'stroke-opacity': opacity,
      'stroke-width': width,
    } = strokeOf(look, growth ?? 1);
    if (stroke === undefined) return [];
    return dots.map(([x, y]) => ({
      tag: 'circle',
      at: {
        cx: rounded(x),
        cy: rounded(y),
        r: rounded(Number(width) / 2),
        fill: stroke,
        'fill-opacity': opacity,
      },
    }));
  }
  const path = placed.round(2).toString();
  const nodes = painted(look, growth ?? 1, (paint) => ({ tag: 'path', at: { d: path, ...paint } }));
  return isUnion ? nodes.flatMap(laidApart) : nodes;
}

/**
 * The outlines of a fill laid each by itself: some programs for slides and drawings cut holes where
 * outlines of one path lie over each other. A line, or a fill half clear, stays as it is.
 */
function laidApart(node: Node): Node[] {
  const { at } = node;
  if (at?.stroke !== undefined || at?.['fill-opacity'] !== undefined) return [node];
  const outlines = String(at?.d).match(/M[^M]+/g) ?? [];
  return outlines.map((d) => ({ ...node, at: { ...at, d } }));
}

const grown = (place: Place, [a, , , d, e, f]: Matrix): Attributes =>
  Object.fromEntries(
    Object.entries(place).map(([name, value]) => {
      if (name === 'x' || name === 'cx') return [name, rounded(value * a + e)];
      if (name === 'y' || name === 'cy') return [name, rounded(value * d + f)];
      return [name, rounded(value * (name === 'height' || name === 'ry' ? d : a))];
    }),
  );

/** Shapes with figures of their own: worked in where they stay upright, else under a transform. */
function placed(
  matrix: Matrix,
  place: Place,
  look: Look,
  make: (at: Attributes, growth: number) => Node,
): Node[] {
  const growth = growthOf(matrix);
  if (isUpright(matrix) && growth !== undefined)
    return painted(look, growth, (paint) => make({ ...grown(place, matrix), ...paint }, growth));
  if (isUpright(matrix) && look.stroke === 'none' && place.r === undefined)
    return painted(look, 1, (paint) => make({ ...grown(place, matrix), ...paint }, 1));
  return painted(look, 1, (paint) =>
    make({ ...place, ...paint, transform: `matrix(${matrix.join(' ')})` }, 1),
  );
}

/** A thing drawn as elements, in the order in which they are laid. */
export function flat(one: Drawn): Node[] {
  switch (one.is) {
    case 'path':
      return flatPath(one.matrix, one.d, one.look, one.union ?? false);
    case 'rect':
    case 'circle':
      return placed(one.matrix, one.place, one.look, (at) => ({ tag: one.is, at }));
    case 'text': {
      const { family, sizePx, weight, italic, anchor } = one.letters;
      return placed(one.matrix, one.place, one.look, (at, growth) => ({
        tag: 'text',
        at: {
          ...at,
          'font-family': stackFor(family),
          'font-size': rounded(sizePx * growth),
          'font-weight': weight === '400' ? undefined : weight,
          'font-style': italic ? 'italic' : undefined,
          'text-anchor': anchor === 'start' ? undefined : anchor,
          'xml:space': / {2}/.test(one.text) ? 'preserve' : undefined,
        },
        text: one.text,
      }));
    }
    case 'group': {
      const within = one.within.flatMap(flat);
      const opacity = opacityOf(one.opacity);
      if (within.length === 0) return [];
      if (opacity === undefined && !one.clip && !one.mask) return within;
      const at = {
        opacity,
        'clip-path': one.clip && `url(#${one.clip})`,
        mask: one.mask && `url(#${one.mask})`,
      };
      return [{ tag: 'g', at, within }];
    }
  }
}

/** A definition as the element that others name by its id. */
export function flatDefinition(one: Definition): Node {
  switch (one.is) {
    case 'clip':
      return { tag: 'clipPath', at: { id: one.id }, within: one.within.flatMap(flat) };
    case 'mask':
      return {
        tag: 'mask',
        at: { id: one.id, maskUnits: 'userSpaceOnUse', ...grown(one.place, one.matrix) },
        within: one.within.flatMap(flat),
      };
    case 'gradient':
      return {
        tag: 'linearGradient',
        at: {
          id: one.id,
          gradientUnits: 'userSpaceOnUse',
          ...one.place,
          gradientTransform: `matrix(${one.matrix.map((n) => Math.round(n * 1e4) / 1e4).join(' ')})`,
        },
        within: one.stops.map(({ offset, colour, opacity }) => {
          const paint = paintOf(colour);
          return {
            tag: 'stop',
            at: {
              offset,
              'stop-color': paint.colour,
              'stop-opacity': opacityOf(paint.alpha * opacity),
            },
          };
        }),
      };
  }
}
