/** What draws one body on one page. */
import type { Body } from './body.ts';
import type { Ball, Extremity } from './hand.ts';
import type { Joints } from './joints.ts';
import { bandPath } from './outline.ts';
import { discOf, onPage, type Disc, type Page } from './page.ts';
import { tone, wayOf, type FillKey, type Run, type Shape, type Tone } from './paint.ts';
import { between, type Vec } from './space.ts';

/** How strongly each part takes part in the response: 0 keeps its own colour, 1 is fully tinted. */
export interface Tints {
  readonly head: number;
  readonly trunk: number;
  readonly armL: number;
  readonly armR: number;
  readonly legL: number;
  readonly legR: number;
}

export const NO_TINT: Tints = { head: 0, trunk: 0, armL: 0, armR: 0, legL: 0, legR: 0 };

export interface Manner {
  /** Width of the outline in page units. */
  readonly line: number;
  /** Eyes with whites, small lines of the face: for close-ups. */
  readonly detail: boolean;
  /** No face and no seams: for pictures a few dozen pixels high. */
  readonly plain: boolean;
  /** The eyes are covered with a band. */
  readonly blindfold?: boolean;
}

/** Shapes with how near the viewer they lie. */
export interface Placed {
  readonly depth: number;
  readonly shapes: readonly Shape[];
}

export interface Pen {
  readonly page: Page;
  readonly body: Body;
  readonly joints: Joints;
  readonly tints: Tints;
  readonly manner: Manner;
}

export const disc = (pen: Pen, centre: Vec, radius: number): Disc =>
  discOf(pen.page, centre, radius);

/** A bone with its flesh, fullest a little above its middle. */
export function bonePath(
  pen: Pen,
  a: Vec,
  b: Vec,
  flesh: readonly [number, number, number],
): string {
  const full = between(a, b, 0.38);
  return bandPath([disc(pen, a, flesh[0]), disc(pen, full, flesh[1]), disc(pen, b, flesh[2])]);
}

/** All pieces of a hand or foot as one path. */
export const piecesPath = (pen: Pen, e: Extremity): string =>
  e.pieces.map((piece) => bandPath(piece.map((b: Ball) => disc(pen, b.centre, b.radius)))).join('');

/** A shape with the line round it. */
export const solid = (pen: Pen, name: string, d: string, fill: Tone | Run): Shape => ({
  name,
  d,
  fill,
  line: 'line',
  width: pen.manner.line,
});

/** Fill without a line: rubs out a line where two pieces grow into one. */
export const patch = (name: string, d: string, fill: Tone | Run): Shape => ({ name, d, fill });

/** The colour of a limb that takes part in the response to a degree. */
export const limbTone = (far: boolean, tint: number): Tone =>
  tone(far ? 'skin-far' : 'skin', 'limb', far ? tint * 0.86 : tint);

/** From the trunk's colour to the limb's over the first half of the upper bone. */
export function limbRun(pen: Pen, a: Vec, b: Vec, far: boolean, tint: number): Tone | Run {
  const own: FillKey = far ? 'skin-far' : 'skin';
  if (tint < 0.01) return tone(own);
  const [x1, y1] = onPage(pen.page, between(a, b, 0.06));
  const [x2, y2] = onPage(pen.page, between(a, b, 0.58));
  if (Math.hypot(x2 - x1, y2 - y1) < 4) return limbTone(far, tint);
  return { from: tone(own), to: limbTone(far, tint), ...wayOf([x1, y1], [x2, y2]) };
}
