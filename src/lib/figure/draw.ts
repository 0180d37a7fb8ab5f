/** A body as shapes from the farthest to the nearest. */
import { levelAt } from './body.ts';
import { armLayers, legLayers, shoulderPatch } from './limbs.ts';
import { tone, type Shape } from './paint.ts';
import { solid, type Pen, type Placed } from './pen.ts';
import { between } from './space.ts';
import { headShapes, nappyShapes, trunkShapes } from './torso.ts';

const byDepth = (list: readonly Placed[]): Shape[] =>
  [...list].sort((a, b) => a.depth - b.depth).flatMap((p) => p.shapes);

/** The body in two parts, between which an examiner's hand round the trunk may lie. */
export function bodyShapes(pen: Pen): { behind: Shape[]; front: Shape[] } {
  const { body } = pen;
  const facing = body.chest.z[2];
  const sideOn = Math.abs(body.chest.x[2]) > 0.5;
  const chestDepth = levelAt(body.levels, 0.86).centre[2];
  const hipDepth = levelAt(body.levels, 0).centre[2];
  const farthest: Placed[] = [];
  const underNappy: Placed[] = [];
  const nearest: Placed[] = [];
  const rootsOfFarArms: Shape[] = [];
  const nearCuffs: string[] = [];

  for (const side of ['L', 'R'] as const) {
    const a = body[`arm${side}`];
    const off = between(a.shoulder, a.elbow, 0.5)[2] - chestDepth;
    const far = off < -0.1 * facing - 0.02;
    const { upper, lower } = armLayers(pen, side, far && sideOn);
    const root = shoulderPatch(pen, side);
    if (far) {
      farthest.push(upper, lower);
      if (!sideOn) rootsOfFarArms.push(root);
    } else {
      const [shape, ...more] = upper.shapes;
      nearest.push(
        { depth: upper.depth, shapes: [...(shape ? [shape] : []), root, ...more] },
        lower,
      );
    }
  }

  for (const side of ['L', 'R'] as const) {
    const l = body[`leg${side}`];
    const far = between(l.hip, l.knee, 0.5)[2] - hipDepth < -0.13;
    const legs = legLayers(pen, side, far && sideOn);
    if (far) {
      const cuff = solid(pen, `cuff-${side}`, legs.cuff, tone(sideOn ? 'nappy-far' : 'nappy'));
      const { depth, shapes } = legs.upper;
      farthest.push(
        { depth, shapes: legs.coming ? [cuff, ...shapes] : [...shapes, cuff] },
        legs.lower,
      );
      continue;
    }
    nearCuffs.push(legs.cuff);
    (legs.coming ? nearest : underNappy).push(legs.upper);
    // A shank that hangs down or back under a thigh in the plane of the page goes with the thigh.
    const comesForward = legs.coming || (!sideOn && legs.lower.depth > hipDepth + 0.3);
    const crosses = sideOn && legs.lower.depth > legs.upper.depth;
    (comesForward || crosses ? nearest : underNappy).push(legs.lower);
  }

  nearest.push({ depth: body.head.centre[2] + 0.12, shapes: headShapes(pen) });
  return {
    behind: [
      ...byDepth(farthest),
      ...trunkShapes(pen),
      ...rootsOfFarArms,
      ...byDepth(underNappy),
      ...nappyShapes(pen, nearCuffs),
    ],
    front: byDepth(nearest),
  };
}
