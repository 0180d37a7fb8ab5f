/** A picture to take away: the drawing with what it is called above and what it rests on below. */
import { wrapParts, type Lettering, type Measure } from '../chart/labels.ts';
import type { Drawing, Drawn, Matrix } from './drawn.ts';
import { flat, flatDefinition } from './flat.ts';
import { letterRules, stackFor, typefaceOf, type Bytes, type Typeface } from './letters.ts';
import { markup, type Node } from './node.ts';

/** What stands around the drawing. */
export interface Around {
  title: string;
  /** What the drawing's signs mean, in words; empty where it needs none. */
  legend: string;
  citation: string;
}

export interface Wanted {
  drawing: Drawing;
  /** Undefined: the drawing by itself. */
  around: Around | undefined;
  /** For whoever cannot see the picture. */
  label: string;
  /** The colour of the ground; undefined leaves it clear. */
  ground: string | undefined;
  ink: string;
  soft: string;
  bytes: Bytes;
  measure: Measure;
}

export interface Picture {
  svg: string;
  widthPx: number;
  heightPx: number;
}

const MARGIN = 16;
const TITLE: Lettering = { sizePx: 19, weight: 600, serif: true };
const SMALL: Lettering = { sizePx: 12 };
const LEADING = 1.35;
/** What lines keep free at their end: where a program takes letters of its own, they may run wider. */
const RESERVE = 0.9;
/** Narrower than this, words around a drawing would be a column of single words. */
const LEAST_WIDTH = 360;

const SANS = 'Source Sans 3';
const SERIF = 'Source Serif 4';

interface Block {
  nodes: Node[];
  heightPx: number;
}

/** Words set in lines of a width, from a height down. */
function lines(
  text: string,
  lettering: Lettering,
  colour: string,
  fromY: number,
  { widthPx, measure }: { widthPx: number; measure: Measure },
): Block {
  if (text === '') return { nodes: [], heightPx: 0 };
  const { sizePx, weight, serif } = lettering;
  const rows = wrapParts(text.split(' '), ' ', widthPx * RESERVE, lettering, measure);
  const nodes = rows.map((row, index): Node => ({
    tag: 'text',
    at: {
      x: MARGIN,
      y: Math.round((fromY + sizePx + index * sizePx * LEADING) * 100) / 100,
      fill: colour,
      'font-family': stackFor(serif ? SERIF : SANS),
      'font-size': sizePx,
      'font-weight': weight,
    },
    text: row,
  }));
  return { nodes, heightPx: (rows.length - 1) * sizePx * LEADING + sizePx * 1.3 };
}

/** The typefaces of all texts. */
function typefacesIn(drawn: readonly Drawn[]): Typeface[] {
  return drawn.flatMap((one) => {
    if (one.is === 'group') return typefacesIn(one.within);
    return one.is === 'text' ? [typefaceOf(one.letters.family)] : [];
  });
}

/** The whole picture as the text of an SVG file that needs nothing else. */
export function sheet(wanted: Wanted): Picture {
  const { drawing, around, ground, ink, soft, measure } = wanted;
  const margin = around ? MARGIN : 0;
  const drawnWidth = around ? Math.max(drawing.widthPx, LEAST_WIDTH) : drawing.widthPx;
  const widthPx = Math.ceil(drawnWidth + 2 * margin);
  const room = { widthPx: drawnWidth, measure };
  const title = around ? lines(around.title, TITLE, ink, margin, room) : undefined;
  const top = margin + (title ? title.heightPx + 8 : 0);
  const legendY = top + drawing.heightPx + 8;
  const legend = around ? lines(around.legend, SMALL, soft, legendY, room) : undefined;
  const citationY = legendY + (legend && legend.heightPx > 0 ? legend.heightPx + 4 : 0);
  const citation = around ? lines(around.citation, SMALL, soft, citationY, room) : undefined;
  const heightPx = Math.ceil(citation ? citationY + citation.heightPx + margin : drawing.heightPx);

  const left = margin + (drawnWidth - drawing.widthPx) / 2;
  const content = drawing.drawn.flatMap(flat);
  const used = new Set([...typefacesIn(drawing.drawn), ...(around ? ['sans', 'serif'] : [])]);
  const moved: Matrix = [1, 0, 0, 1, left, top];
  const root: Node = {
    tag: 'svg',
    at: {
      xmlns: 'http://www.w3.org/2000/svg',
      width: widthPx,
      height: heightPx,
      viewBox: `0 0 ${widthPx} ${heightPx}`,
    },
    within: [
      { tag: 'title', text: wanted.label },
      { tag: 'style', text: letterRules(used as ReadonlySet<Typeface>, wanted.bytes) },
      ...(drawing.definitions.length > 0
        ? [{ tag: 'defs', within: drawing.definitions.map(flatDefinition) }]
        : []),
      ...(ground === undefined
        ? []
        : [{ tag: 'rect', at: { width: widthPx, height: heightPx, fill: ground } }]),
      ...(title?.nodes ?? []),
      left === 0 && top === 0
        ? { tag: 'g', within: content }
        : { tag: 'g', at: { transform: `matrix(${moved.join(' ')})` }, within: content },
      ...(legend?.nodes ?? []),
      ...(citation?.nodes ?? []),
    ],
  };
  return { svg: markup(root), widthPx, heightPx };
}
