import type { FaceJoints } from './joints.ts';
import { faceLine } from './head.ts';
import { throughPath } from './outline.ts';
import type { Page, Spot } from './page.ts';
import { tone, type Shape } from './paint.ts';
import { clamp, mix, type Frame, type Vec } from './space.ts';

const EYE = { x: 0.158, y: -0.08 };
const MOUTH_Y = -0.285;

/** An oval on the face. */
const oval = (x: number, y: number, rx: number, ry: number, corners = 14): Spot[] =>
  Array.from({ length: corners }, (_, i): Spot => {
    const a = (i / corners) * 2 * Math.PI;
    return [x + rx * Math.cos(a), y + ry * Math.sin(a)];
  });

const arc = (x: number, y: number, half: number, sag: number): Spot[] =>
  [-1, -0.5, 0, 0.5, 1].map((t): Spot => [x + t * half, y + sag * (1 - t * t)]);

/** Where the mouth is drawn from: a line when shut, an opening when not. */
function mouth(j: FaceJoints): { closed: Spot[]; open?: Spot[] } {
  const narrow = Math.max(j.purse, j.suck * 0.7);
  const half = mix(0.088, 0.024, narrow) * mix(1, 0.85, j.mouth);
  const sag = mix(-0.018, 0.022, j.cry) * (1 - narrow) * (1 - j.mouth);
  const closed = arc(0, MOUTH_Y, half, sag);
  if (j.mouth < 0.06) return { closed };
  const deep = mix(0.008, 0.088, j.mouth);
  return { closed, open: oval(0, MOUTH_Y - deep * 0.45, half * mix(1, 0.92, j.mouth), deep) };
}

/**
 * The features of the face, where they are turned to the viewer.
 * @param detail whether the eyes have whites and the face its small lines
 */
export function faceShapes(
  page: Page,
  origin: Vec,
  f: Frame,
  j: FaceJoints,
  line: number,
  detail: boolean,
): Shape[] {
  const shapes: Shape[] = [];
  const lay = (points: readonly Spot[], lift = 0): Spot[] =>
    faceLine(page, origin, f, points, lift);
  const stroke = (name: string, points: readonly Spot[], width = 1, faint = false): void => {
    const seen = lay(points);
    if (seen.length < 2) return;
    shapes.push({
      name,
      d: throughPath(seen, false),
      line: faint ? 'faint' : 'line',
      width: line * width,
    });
  };
  const filled = (name: string, points: readonly Spot[], fill: Shape['fill'], width = 0): void => {
    const seen = lay(points);
    if (seen.length < points.length * 0.6 || !fill) return;
    shapes.push({
      name,
      d: throughPath(seen, true),
      fill,
      ...(width ? { line: 'line' as const, width: line * width } : {}),
    });
  };
  const open = clamp(j.eyes, 0, 1);
  for (const side of [-1, 1]) {
    const x = side * EYE.x;
    // Brows: their inner ends rise in a cry, and both rise a little with open eyes.
    const inner = 0.03 * j.cry;
    stroke(
      'brow',
      [-1, -0.4, 0.3, 1].map((t): Spot => {
        const inward = -t * side;
        return [x + t * 0.07, 0.055 + 0.012 * open - 0.02 * t * t + inner * inward];
      }),
      0.8,
      true,
    );
    if (open < 0.3) stroke('lid', arc(x, EYE.y + 0.005, 0.062, -0.024), 0.95);
    else if (!detail) {
      filled('eye', oval(x + j.gaze * 0.018, EYE.y, 0.036, 0.05 * open), tone('line'));
    } else {
      const look = x + j.gaze * 0.034;
      filled('eye', oval(x, EYE.y, 0.068, 0.043 * open), tone('eye'));
      filled('iris', oval(look, EYE.y, 0.039, 0.0445 * open), tone('line'));
      filled('glint', oval(look - 0.013, EYE.y + 0.016, 0.011, 0.012 * open, 8), tone('eye'));
      stroke('lid', arc(x, EYE.y + 0.006, 0.07, 0.044 * open), 0.9);
      stroke('lid', arc(x, EYE.y - 0.016, 0.05, -0.03 * open), 0.4, true);
    }
  }
  stroke('nose', arc(0, -0.165, 0.036, -0.018), 0.85);
  if (detail && j.suck > 0.2)
    for (const side of [-1, 1])
      stroke(
        'cheek',
        [0.9, 0.3, -0.4].map((t): Spot => [
          side * (0.235 - 0.025 * j.suck * (1 - t * t)),
          -0.25 + t * 0.07,
        ]),
        0.8,
        true,
      );
  const lips = mouth(j);
  const seen = lips.open && lay(lips.open);
  if (seen && seen.length > 5)
    shapes.push({
      name: 'mouth',
      d: throughPath(seen, true),
      fill: tone('line', 'mouth', clamp(j.mouth * 4, 0, 1)),
      line: 'line',
      width: line * 0.55,
    });
  else stroke('mouth', lips.closed, 1);
  if (detail && j.purse > 0.3) {
    const ring = lay(oval(0, MOUTH_Y, 0.068, 0.056));
    if (ring.length > 9)
      shapes.push({ name: 'pout', d: throughPath(ring, true), line: 'line', width: line * 0.7 });
  }
  if (detail) stroke('chin', arc(0, -0.395, 0.035, 0.012), 0.7, true);
  return shapes;
}

/** The eyes alone, larger: where a picture is too small for a face but must say which way it looks. */
export function eyeShapes(page: Page, origin: Vec, f: Frame): Shape[] {
  return [-1, 1].flatMap((side) => {
    const ring = oval(side * EYE.x, EYE.y, 0.05, 0.062);
    const seen = faceLine(page, origin, f, ring);
    return seen.length < ring.length * 0.6
      ? []
      : [{ name: 'eye', d: throughPath(seen, true), fill: tone('line') }];
  });
}
