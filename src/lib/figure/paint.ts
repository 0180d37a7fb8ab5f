/** What a drawing is made of: plain shapes in drawing order, colours by name. */
import type { Spot } from './page.ts';

/** The colours a figure may use. The page decides what they are in light, dark and print. */
export type FillKey =
  | 'skin'
  | 'skin-far'
  | 'limb'
  | 'head-tint'
  | 'nappy'
  | 'nappy-far'
  | 'mat'
  | 'examiner'
  | 'examiner-line'
  | 'board'
  | 'line'
  | 'faint'
  | 'mouth'
  | 'eye'
  | 'ink'
  | 'hair'
  | 'signal'
  | 'paper';

/** A colour, or a share of the way from one to another. Always opaque. */
export interface Tone {
  readonly key: FillKey;
  readonly towards?: FillKey;
  /** 0 to 1, of the way to `towards`. */
  readonly share?: number;
}

/** A way across the page, in page units. */
export interface Way {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** A run from one tone to another between two page points. */
export interface Run extends Way {
  readonly from: Tone;
  readonly to: Tone;
}

const rounded = (value: number): number => Math.round(value * 10) / 10;

/** A way from one page point to another, to a tenth of a unit. */
export const wayOf = (from: Spot, to: Spot): Way => ({
  x1: rounded(from[0]),
  y1: rounded(from[1]),
  x2: rounded(to[0]),
  y2: rounded(to[1]),
});

/** One path. Its parts overlap freely: the line round them is painted first and the fill over it. */
export interface Shape {
  readonly name: string;
  readonly d: string;
  readonly fill?: Tone | Run;
  readonly line?: FillKey;
  /** Page units outside the fill (closed shapes), or the whole width (open lines). */
  readonly width?: number;
  readonly dashed?: boolean;
  /** Wholly there up to the first point, gone at the second. */
  readonly fade?: Way;
}

/** A tone, a share of the way to another. @param share 0 to 1 */
export function tone(key: FillKey, towards?: FillKey, share = 0): Tone {
  if (!towards || share < 0.005) return { key };
  return share > 0.995 ? { key: towards } : { key, towards, share: Math.round(share * 100) / 100 };
}

/** A still: plain data, in a frame that nothing leaves. */
export interface Scene {
  readonly width: number;
  readonly height: number;
  /** Ground, infant and examiner's hands, from the farthest to the nearest. */
  readonly layers: readonly Shape[];
  /** What is done to the infant; drawn over everything. */
  readonly marks: readonly Shape[];
  /** A close-up is cut off at this window. */
  readonly window?: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    readonly round: number;
  };
}
