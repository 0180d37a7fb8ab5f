/** The examiner's hand: of the same build as the infant's, larger, pale, its forearm fading out. */
import { ANCHORS } from './anchors.ts';
import type { Body } from './body.ts';
import { handAt, type Ball, type Extremity } from './hand.ts';
import { bandPath, throughPath } from './outline.ts';
import { discOf, onPage, type Page, type Spot } from './page.ts';
import { wayOf, type Shape } from './paint.ts';
import { add, between, cosDeg, inFrame, sinDeg, times, type Frame, type Vec } from './space.ts';
import type { ExaminerSpec } from './stage.ts';

/** Sizes against the infant's own hand: a grown hand, held a little small so that it never leads. */
const USUAL = 1.75;
const FOREARM = 1.05;

/** How each hold bends the fingers (index to little one), thumb included, and which point of it touches. */
const HOLDS: Record<
  ExaminerSpec['hold'],
  { grips: readonly number[]; spread: number; touch: Vec }
> = {
  point: { grips: [0, 0.9, 0.95, 1], spread: 0, touch: [-0.02, -0.36, 0.075] },
  thumb: { grips: [0.75, 0.8, 0.85, 0.9], spread: 0.6, touch: [-0.06, -0.17, 0.19] },
  flat: { grips: [0.06, 0.06, 0.06, 0.06], spread: 0.1, touch: [-0.05, -0.2, 0] },
  grasp: { grips: [0.62, 0.62, 0.62, 0.62], spread: 0, touch: [-0.09, -0.18, 0.02] },
};

export interface ExaminerHand {
  readonly spec: ExaminerSpec;
  readonly hand: Extremity;
  readonly forearm: readonly Ball[];
  readonly wrist: Vec;
  readonly end: Vec;
}

function frameOf(spec: ExaminerSpec): Frame {
  const y: Vec = [sinDeg(spec.forearm), cosDeg(spec.forearm), 0];
  const clockwise: Vec = [cosDeg(spec.forearm), -sinDeg(spec.forearm), 0];
  const thumbward = spec.thumb === 'counter' ? times(clockwise, -1) : clockwise;
  return { x: [0, 0, spec.palm === 'viewer' ? -1 : 1], y, z: thumbward };
}

/** An examiner's hand placed so that its touching point meets the anchor, in the axes of the body. */
export function examinerHandOf(spec: ExaminerSpec, body: Body): ExaminerHand {
  const frame = frameOf(spec);
  const size = USUAL * (spec.size ?? 1);
  const hold = HOLDS[spec.hold];
  const goal = add(ANCHORS[spec.at](body), [spec.off?.[0] ?? 0, spec.off?.[1] ?? 0, 0]);
  const wrist = add(goal, times(inFrame(frame, hold.touch), -size));
  // The hand is made at the infant's size about its wrist, then grown.
  const small = handAt([0, 0, 0], frame, hold.grips, hold.spread);
  const grow = (v: Vec): Vec => add(wrist, times(v, size));
  const hand: Extremity = {
    pieces: small.pieces.map((p) =>
      p.map((b) => ({ centre: grow(b.centre), radius: b.radius * size })),
    ),
    seams: small.seams.map((s) => s.map(grow)),
  };
  const end = add(wrist, times(frame.y, FOREARM));
  return {
    spec,
    hand,
    wrist,
    end,
    forearm: [
      { centre: wrist, radius: 0.085 * size },
      { centre: end, radius: 0.115 * size },
    ],
  };
}

/** The examiner's hand on the page. */
export function examinerShapes(page: Page, h: ExaminerHand, line: number): Shape[] {
  const band = (balls: readonly Ball[]): string =>
    bandPath(balls.map((b) => discOf(page, b.centre, b.radius)));
  const along = (share: number): Spot => onPage(page, between(h.wrist, h.end, share));
  const seams: Shape[] = h.hand.seams.map((s) => ({
    name: 'examiner-finger',
    d: throughPath(
      s.map((v) => onPage(page, v)),
      false,
    ),
    line: 'examiner-line',
    width: line * 0.5,
  }));
  return [
    {
      name: 'examiner',
      d: h.hand.pieces.map(band).join('') + band(h.forearm),
      fill: { key: 'examiner' },
      line: 'examiner-line',
      width: line * 0.62,
      fade: wayOf(along(0.12), along(0.92)),
    },
    ...seams,
  ];
}
