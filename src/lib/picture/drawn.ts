/** What was drawn on a page, read off it: every value worked out, every place known. */

/** An affine transform as SVG writes it: x' = a x + c y + e, y' = b x + d y + f. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** How a shape or a text looks, as computed. */
export interface Look {
  fill: string;
  fillOpacity: number;
  stroke: string;
  strokeOpacity: number;
  /** In the shape's own units. */
  strokeWidth: number;
  cap: string;
  join: string;
  /** Lengths of dashes and gaps in the shape's own units; empty for a whole line. */
  dashes: readonly number[];
  /** The stroke lies under the fill. */
  strokeFirst: boolean;
  /** The stroke keeps its width whatever the transform. */
  fixedStroke: boolean;
}

export interface Letters {
  family: string;
  sizePx: number;
  weight: string;
  italic: boolean;
  anchor: string;
}

/** The place of a rectangle, a circle or a text by the names SVG gives them. */
export type Place = Readonly<Record<string, number>>;

/** One thing drawn. `matrix` leads from its own units to pixels from the picture's upper left corner. */
export type Drawn =
  /** `union`: its outlines are one filled shape, wherever they lie over each other. */
  | { is: 'path'; matrix: Matrix; d: string; look: Look; union?: boolean }
  | { is: 'rect' | 'circle'; matrix: Matrix; place: Place; look: Look }
  | { is: 'text'; matrix: Matrix; place: Place; text: string; look: Look; letters: Letters }
  /** Things under one opacity, or cut by an outline or a mask with an id among the definitions. */
  | { is: 'group'; opacity: number; clip?: string; mask?: string; within: readonly Drawn[] };

/** What others refer to. */
export type Definition =
  | { is: 'clip'; id: string; within: readonly Drawn[] }
  | { is: 'mask'; id: string; matrix: Matrix; place: Place; within: readonly Drawn[] }
  | {
      is: 'gradient';
      id: string;
      matrix: Matrix;
      place: Place;
      stops: readonly { offset: number; colour: string; opacity: number }[];
    };

/** A part of a page with everything drawn in it. */
export interface Drawing {
  widthPx: number;
  heightPx: number;
  drawn: readonly Drawn[];
  definitions: readonly Definition[];
}
