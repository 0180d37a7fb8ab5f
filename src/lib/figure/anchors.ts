import { levelAt, type Body } from './body.ts';
import { onFace } from './head.ts';
import { at, type Vec } from './space.ts';
import type { Anchor } from './stage.ts';
import { girth } from './trunk.ts';

const headPoint = (body: Body, v: Vec): Vec => at(body.head.centre, body.head.frame, v);

function facePoint(body: Body, x: number, y: number): Vec {
  return headPoint(body, onFace(x, y)?.point ?? [x, y, 0.4]);
}

function trunkPoint(body: Body, along: number, out: number, face: 1 | -1 | 0): Vec {
  const { centre, frame } = levelAt(body.levels, along);
  const g = girth(along);
  const round = Math.sqrt(Math.max(0, 1 - (out / g.half) ** 2));
  return at(centre, frame, [out, 0, face === 0 ? 0 : face > 0 ? g.belly * round : -g.back * round]);
}

const hand = (body: Body, side: 'L' | 'R', v: Vec): Vec =>
  at(body[`arm${side}`].wrist, body[`arm${side}`].hand, v);
const foot = (body: Body, side: 'L' | 'R', v: Vec): Vec =>
  at(body[`leg${side}`].ankle, body[`leg${side}`].foot, v);

/** Where on the body something is, in the axes the body is given in. */
export const ANCHORS: Record<Anchor, (body: Body) => Vec> = {
  head: (b) => b.head.centre,
  crown: (b) => headPoint(b, [0, 0.5, -0.04]),
  occiput: (b) => headPoint(b, [0, 0.02, -0.52]),
  ear: (b) => headPoint(b, [b.head.frame.x[2] > 0 ? 0.45 : -0.45, -0.07, -0.06]),
  glabella: (b) => facePoint(b, 0, 0),
  mouth: (b) => facePoint(b, 0, -0.285),
  'mouth-corner-L': (b) => facePoint(b, 0.115, -0.275),
  'lip-upper': (b) => facePoint(b, 0, -0.245),
  'lip-lower': (b) => facePoint(b, 0, -0.33),
  throat: (b) => headPoint(b, [0, -0.44, 0.02]),
  chest: (b) => trunkPoint(b, 0.74, 0, 1),
  belly: (b) => trunkPoint(b, 0.42, 0, 1),
  back: (b) => trunkPoint(b, 0.6, 0, -1),
  'shoulder-L': (b) => b.armL.shoulder,
  'shoulder-R': (b) => b.armR.shoulder,
  'flank-L': (b) => trunkPoint(b, 0.55, 0.36, 0),
  'flank-R': (b) => trunkPoint(b, 0.55, -0.36, 0),
  pelvis: (b) => levelAt(b.levels, 0.05).centre,
  'pelvis-L': (b) => trunkPoint(b, 0.1, 0.42, 0),
  'palm-L': (b) => hand(b, 'L', [-0.05, -0.12, 0]),
  'palm-R': (b) => hand(b, 'R', [-0.05, -0.12, 0]),
  'hand-back-L': (b) => hand(b, 'L', [0.06, -0.14, 0]),
  'wrist-L': (b) => b.armL.wrist,
  'wrist-R': (b) => b.armR.wrist,
  'knee-L': (b) => b.legL.knee,
  'knee-R': (b) => b.legR.knee,
  'ankle-L': (b) => b.legL.ankle,
  'sole-L': (b) => foot(b, 'L', [0, -0.15, 0.1]),
  'sole-R': (b) => foot(b, 'R', [0, -0.15, 0.1]),
  'ball-L': (b) => foot(b, 'L', [0.0, -0.16, 0.19]),
  'foot-top-L': (b) => foot(b, 'L', [0, -0.02, 0.18]),
  'sole-outer-L': (b) => foot(b, 'L', [0.085, -0.15, 0.1]),
  'sole-curve-L': (b) => foot(b, 'L', [0.062, -0.15, 0.17]),
  'sole-heel-L': (b) => foot(b, 'L', [0.045, -0.15, -0.03]),
  'spine-low': (b) => trunkPoint(b, 0.26, 0, -1),
  'spine-high': (b) => trunkPoint(b, 0.9, 0, -1),
  'paraspinal-high': (b) => trunkPoint(b, 0.82, 0.13, -1),
  'paraspinal-low': (b) => trunkPoint(b, 0.3, 0.15, -1),
  ground: () => [0, 0, 0],
};
