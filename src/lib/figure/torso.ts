/** Trunk with neck, nappy, and head with face. */
import { levelAt, type Level } from './body.ts';
import { eyeShapes, faceShapes } from './face.ts';
import { ears, hairLines, headOutline } from './head.ts';
import { bandPath, blobBandPath, discPath, linePath, throughPath } from './outline.ts';
import { blobOf, onPage, type Spot } from './page.ts';
import { tone, type Shape } from './paint.ts';
import { disc, solid, type Pen } from './pen.ts';
import { FLESH } from './skeleton.ts';
import { at, cosDeg, inFrame, sinDeg, times, type Vec } from './space.ts';
import { girdle, girth, pelvisOutline, trunkOutline } from './trunk.ts';

const WAIST = 0.22;
/** Facing the viewer at least this much, the trunk shows what is on its front or back. */
const SHOWS = 0.35;

/** Chest or belly as a whole: what is left of the trunk when it points at the viewer. */
function bulk(pen: Pen, level: Level): string {
  const g = girth(level.along);
  const middle = at(level.centre, level.frame, [0, 0, (g.belly - g.back) / 2]);
  return blobBandPath([
    blobOf(pen.page, middle, [
      times(level.frame.x, g.half),
      times(level.frame.y, 0.3),
      times(level.frame.z, (g.belly + g.back) / 2),
    ]),
  ]);
}

function surfaceMarks(pen: Pen): Shape[] {
  const { page, body, manner } = pen;
  const shapes: Shape[] = [];
  const dimple = (name: string, along: number, out: number, r: number): void => {
    const { centre, frame } = levelAt(body.levels, along);
    const g = girth(along);
    const deep = g.belly * Math.sqrt(Math.max(0, 1 - (out / g.half) ** 2));
    const [x, y] = onPage(page, at(centre, frame, [out, 0, deep]));
    shapes.push({
      name,
      d: discPath({ x, y, r: r * page.scale }),
      line: 'faint',
      width: manner.line * 0.5,
    });
  };
  if (body.chest.z[2] > SHOWS) {
    dimple('nipple', 0.74, 0.2, 0.018);
    dimple('nipple', 0.74, -0.2, 0.018);
    dimple('navel', 0.34, 0, 0.024);
  }
  if (body.chest.z[2] < -SHOWS) {
    const groove: Spot[] = [0.82, 0.7, 0.55, 0.4, 0.3].map((along) => {
      const { centre, frame } = levelAt(body.levels, along);
      return onPage(page, at(centre, frame, [0, 0, -girth(along).back]));
    });
    shapes.push({
      name: 'spine',
      d: throughPath(groove, false),
      line: 'faint',
      width: manner.line * 0.7,
    });
  }
  return shapes;
}

export function trunkShapes(pen: Pen): Shape[] {
  const { page, body, tints, manner } = pen;
  const skull = at(body.head.centre, body.head.frame, [0, -0.12, -0.1]);
  const neck = levelAt(body.levels, 0.93).centre;
  const d =
    throughPath(trunkOutline(page, body), true) +
    bulk(pen, levelAt(body.levels, 0.72)) +
    bulk(pen, levelAt(body.levels, 0.3)) +
    bandPath([disc(pen, neck, FLESH.neck[0]), disc(pen, skull, FLESH.neck[2])]);
  return [
    solid(pen, 'trunk', d, tone('skin', 'limb', tints.trunk * 0.8)),
    ...(manner.plain ? [] : surfaceMarks(pen)),
  ];
}

/** The nappy with those of its legs that lie before the trunk. */
export function nappyShapes(pen: Pen, cuffs: readonly string[]): Shape[] {
  const { page, body, manner } = pen;
  const d = throughPath(pelvisOutline(page, body, WAIST), true) + cuffs.join('');
  const shapes = [solid(pen, 'nappy', d, tone('nappy'))];
  if (!manner.plain)
    shapes.push({
      name: 'waistband',
      d: throughPath(girdle(page, body, WAIST - 0.055, 0.02), false),
      line: 'faint',
      width: manner.line * 0.6,
    });
  return shapes;
}

/** A band over the eyes and round the head. */
function blindfold(pen: Pen): Shape[] {
  const { page, body, manner } = pen;
  const { centre, frame } = body.head;
  const edge = (y: number): Spot[] =>
    Array.from({ length: 13 }, (_, i): Vec => {
      const a = -90 + i * 15;
      return [0.425 * sinDeg(a), y - 0.03 * cosDeg(a), 0.44 * cosDeg(a)];
    })
      .map((v) => ({ v, seen: inFrame(frame, [v[0], 0, v[2]])[2] > -0.05 }))
      .filter((p) => p.seen)
      .map((p) => onPage(page, at(centre, frame, p.v)));
  const top = edge(0.03);
  const low = edge(-0.14).reverse();
  return [
    solid(
      { ...pen, manner: { ...manner, line: manner.line * 0.7 } },
      'blindfold',
      linePath([...top, ...low], true),
      tone('nappy'),
    ),
  ];
}

export function headShapes(pen: Pen): Shape[] {
  const { page, body, joints, tints, manner } = pen;
  const { centre, frame } = body.head;
  const fill = tone('skin', 'head-tint', tints.head);
  const sides = ears(page, centre, frame);
  const NEAR = 0.25;
  const ear = (e: (typeof sides)[number]): Shape => solid(pen, 'ear', blobBandPath([e.blob]), fill);
  const shapes: Shape[] = sides.filter((e) => e.facing <= NEAR).map(ear);
  const outline = headOutline(page, centre, frame, joints.face.purse);
  shapes.push(solid(pen, 'head', throughPath(outline, true), fill));
  if (manner.plain) shapes.push(...eyeShapes(page, centre, frame));
  else {
    for (const line of hairLines(page, centre, frame))
      shapes.push({
        name: 'hair',
        d: throughPath(line, false),
        line: 'faint',
        width: manner.line * 0.75,
      });
    shapes.push(...faceShapes(page, centre, frame, joints.face, manner.line, manner.detail));
    if (manner.blindfold) shapes.push(...blindfold(pen));
  }
  for (const e of sides)
    if (e.facing > NEAR) {
      shapes.push(ear(e));
      if (!manner.plain)
        shapes.push({
          name: 'ear-fold',
          d: throughPath(e.hollow, false),
          line: 'line',
          width: manner.line * 0.65,
        });
    }
  return shapes;
}
