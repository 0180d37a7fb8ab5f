/** A palm or a sole close to, held up to the viewer: built of the same pieces as in the whole figure. */
import type { Body } from './body.ts';
import { footAt } from './foot.ts';
import { handAt, type Ball } from './hand.ts';
import { bandPath, throughPath } from './outline.ts';
import { onPage, type Spot } from './page.ts';
import { tone, type Shape, type Tone } from './paint.ts';
import { disc, limbRun, limbTone, solid, type Pen } from './pen.ts';
import { FLESH } from './skeleton.ts';
import { at, between, type Frame, type Vec } from './space.ts';
import type { Framing } from './stage.ts';

/** The left palm as one sees it on an infant lying face up: fingers up, thumb towards the infant's middle. */
const PALM: Frame = { x: [0, 0, -1], y: [0, -1, 0], z: [-1, 0, 0] };
/** The left sole as one sees it from the infant's feet: toes up, big toe towards the infant's middle. */
const SOLE: Frame = { x: [1, 0, 0], y: [0, 0, -1], z: [0, 1, 0] };

/** The body with its left hand or foot brought before the viewer; otherwise as it is. */
export function broughtClose(body: Body, framing: Framing): Body {
  if (framing === 'hand')
    return { ...body, armL: { ...body.armL, wrist: [0, -0.14, 0], hand: PALM } };
  if (framing === 'foot')
    return { ...body, legL: { ...body.legL, ankle: [0, -0.09, 0], foot: SOLE } };
  return body;
}

const band = (pen: Pen, balls: readonly Ball[]): string =>
  bandPath(balls.map((b) => disc(pen, b.centre, b.radius)));

const crease = (pen: Pen, name: string, points: readonly Vec[]): Shape => ({
  name,
  d: throughPath(
    points.map((p): Spot => onPage(pen.page, p)),
    false,
  ),
  line: 'faint',
  width: pen.manner.line * 0.6,
});

/** Rubs out the line at the root of a digit that grows out of a piece drawn before it. */
function patchAt(pen: Pen, root: Ball | undefined, base: Ball | undefined, fill: Tone): Shape {
  const radius = (root?.radius ?? 0) * 0.97;
  const inward = root && base ? between(root.centre, base.centre, 0.6) : root?.centre;
  return {
    name: 'digit-root',
    d:
      root && inward
        ? band(pen, [
            { ...root, radius },
            { centre: inward, radius },
          ])
        : '',
    fill,
  };
}

/** The palm in two parts: what lies under a finger laid across it, and the fingers that close over that. */
export function palmShapes(pen: Pen): { behind: Shape[]; front: Shape[] } {
  const { wrist, hand: frame } = pen.body.armL;
  const j = pen.joints.armL;
  const tint = pen.tints.armL;
  const fill = limbTone(false, tint);
  const hand = handAt(wrist, frame, j.grip, j.spread);
  const [palm, ...digits] = hand.pieces;
  const point = (forward: number, across: number): Vec => at(wrist, frame, [0, -forward, across]);
  const arm: Ball[] = [
    { centre: point(0, 0), radius: FLESH.forearm[2] * 0.92 },
    { centre: point(-0.42, 0), radius: FLESH.forearm[1] * 0.95 },
  ];
  const sleeve = limbRun(pen, point(-0.3, 0), point(0.02, 0), false, tint);
  const [thumbBase, thumbTip] = digits.slice(12);
  const root = solid(
    pen,
    'palm',
    [palm, arm, thumbBase].map((balls) => (balls ? band(pen, balls) : '')).join(''),
    sleeve,
  );
  const creases = [
    crease(pen, 'crease', [point(0.135, -0.075), point(0.115, -0.02), point(0.145, 0.05)]),
    crease(pen, 'crease', [point(0.12, 0.075), point(0.085, 0.03), point(0.03, 0.025)]),
  ];
  const fingers = [0, 1, 2, 3].map((i) =>
    solid(
      pen,
      `finger-${i + 1}`,
      digits
        .slice(i * 3, i * 3 + 3)
        .map((p) => band(pen, p))
        .join(''),
      fill,
    ),
  );
  const thumb = thumbTip
    ? [
        solid(pen, 'thumb', band(pen, thumbTip), fill),
        patchAt(pen, thumbTip[0], thumbBase?.[0], fill),
      ]
    : [];
  const roots: Shape[] = [0.052, 0.01, -0.03, -0.062].map((across, i) => ({
    name: 'finger-root',
    d: band(pen, [
      {
        centre: point(0.17 - (i === 3 ? 0.02 : 0), across * (i === 3 ? 1 : 1.15)),
        radius: i === 3 ? 0.031 : 0.036,
      },
      { centre: point(0.11, across * 0.8), radius: 0.036 },
    ]),
    fill,
  }));
  const open = j.grip < 0.35;
  return {
    behind: open ? [root, ...fingers, ...roots, ...thumb, ...creases] : [root, ...creases.slice(1)],
    front: open ? [] : [...fingers, ...thumb],
  };
}

/** The sole in two parts: the foot, and the toes that curl over a thumb pressed against it. */
export function soleShapes(pen: Pen): { behind: Shape[]; front: Shape[] } {
  const { ankle, foot: frame } = pen.body.legL;
  const j = pen.joints.legL;
  const tint = pen.tints.legL;
  const fill = limbTone(false, tint);
  const foot = footAt(ankle, frame, j.toes, j.fan);
  const [heel, ball, ...toes] = foot.pieces;
  const point = (forward: number, inward: number, soleward = 0.1): Vec =>
    at(ankle, frame, [-inward, -soleward, forward]);
  const leg: Ball[] = [
    { centre: point(0.04, 0), radius: 0.1 },
    { centre: point(-0.36, -0.02), radius: 0.135 },
  ];
  const calf = solid(pen, 'calf', band(pen, leg), tone('skin-far'));
  const sole = solid(
    pen,
    'sole',
    (heel ? band(pen, heel) : '') + (ball ? band(pen, ball) : ''),
    // Only the front of the foot answers; heel and instep keep their colour and tell it from a hand.
    limbRun(pen, point(0.04, 0), point(0.22, 0), false, tint),
  );
  const digits = toes.map((p, i) => solid(pen, `toe-${i + 1}`, band(pen, p), fill)).reverse();
  const creases = [
    crease(pen, 'crease', [point(0.17, 0.1), point(0.15, 0.02), point(0.15, -0.08)]),
    crease(pen, 'crease', [point(0.12, 0.045), point(0.04, 0.035), point(-0.02, 0.05)]),
  ];
  const curled = j.toes < -0.3;
  const pad: Shape = {
    name: 'pad',
    d: band(pen, [
      { centre: point(0.205, 0.05), radius: 0.05 },
      { centre: point(0.17, -0.06), radius: 0.045 },
    ]),
    fill,
  };
  return curled
    ? { behind: [calf, sole, ...creases], front: digits }
    : { behind: [calf, sole, ...digits, pad, ...creases], front: [] };
}
