import { blobOf, onPage, type Blob, type Page, type Spot } from './page.ts';
import { at, dot, inFrame, type Frame, type Vec } from './space.ts';

/** One rounded part of the head: centre and radii in head heights, x to the infant's left, y up. */
interface Part {
  readonly centre: Vec;
  readonly radii: Vec;
}

const PARTS: readonly Part[] = [
  { centre: [0, 0.115, -0.06], radii: [0.425, 0.385, 0.465] },
  { centre: [0, -0.13, 0.07], radii: [0.365, 0.33, 0.305] },
  { centre: [0.19, -0.2, 0.17], radii: [0.205, 0.19, 0.18] },
  { centre: [-0.19, -0.2, 0.17], radii: [0.205, 0.19, 0.18] },
  { centre: [0, -0.37, 0.19], radii: [0.13, 0.11, 0.125] },
  { centre: [0, 0.19, 0.165], radii: [0.3, 0.27, 0.24] },
];
const NOSE: Part = { centre: [0, -0.125, 0.375], radii: [0.052, 0.055, 0.066] };
const lips = (purse: number): Part => ({
  centre: [0, -0.28, 0.315 + 0.05 * purse],
  radii: [0.1 - 0.035 * purse, 0.066, 0.062 + 0.012 * purse],
});
const EARS: readonly Part[] = [
  { centre: [0.41, -0.07, -0.06], radii: [0.062, 0.12, 0.085] },
  { centre: [-0.41, -0.07, -0.06], radii: [0.062, 0.12, 0.085] },
];

const partBlob = (page: Page, origin: Vec, f: Frame, { centre, radii }: Part): Blob =>
  blobOf(page, at(origin, f, centre), [
    inFrame(f, [radii[0], 0, 0]),
    inFrame(f, [0, radii[1], 0]),
    inFrame(f, [0, 0, radii[2]]),
  ]);

/** How far a blob reaches from a middle in one direction; 0 where the ray misses it. */
function reachAlong(blob: Blob, middle: Spot, nx: number, ny: number): number {
  const [xx, xy, yy] = blob.spread;
  const det = xx * yy - xy * xy;
  if (det <= 0) return 0;
  const dx = middle[0] - blob.x;
  const dy = middle[1] - blob.y;
  const a = (yy * nx * nx - 2 * xy * nx * ny + xx * ny * ny) / det;
  const b = (yy * nx * dx - xy * (nx * dy + ny * dx) + xx * ny * dy) / det;
  const c = (yy * dx * dx - 2 * xy * dx * dy + xx * dy * dy) / det - 1;
  const root = b * b - a * c;
  return root < 0 ? 0 : Math.max(0, (-b + Math.sqrt(root)) / a);
}

const RAYS = 48;

/** The outline of the head as it is turned: the parts seen from their middle, their creases softened. */
export function headOutline(page: Page, origin: Vec, f: Frame, purse: number): Spot[] {
  const soft = PARTS.map((part) => partBlob(page, origin, f, part));
  const sharp = [NOSE, lips(purse)].map((part) => partBlob(page, origin, f, part));
  const middle = onPage(page, at(origin, f, [0, 0, 0.02]));
  const far = (blobs: readonly Blob[], a: number): number => {
    const [nx, ny] = [Math.cos(a), Math.sin(a)];
    let reach = 0;
    for (const b of blobs) reach = Math.max(reach, reachAlong(b, middle, nx, ny));
    return reach;
  };
  // Rays crowd where the face looks, so that a profile keeps its nose and lips.
  const face = onPage(page, at(origin, f, [0, -0.2, 0.35]));
  const toFace = Math.atan2(face[1] - middle[1], face[0] - middle[0]);
  const angles = Array.from({ length: RAYS }, (_, i) => {
    const t = (i / RAYS) * 2 * Math.PI;
    return toFace + t - 0.55 * Math.sin(t);
  });
  const width = 0.13;
  return angles.map((a) => {
    let sum = 0;
    let weight = 0;
    for (let k = -4; k <= 4; k++) {
      const w = Math.exp(-(k * k) / 6);
      sum += w * far(soft, a + (k * width) / 3);
      weight += w;
    }
    const smooth = sum / weight;
    const fine = (far(sharp, a - 0.035) + 2 * far(sharp, a) + far(sharp, a + 0.035)) / 4;
    const r = fine > smooth ? fine : Math.max(smooth, fine);
    return [middle[0] + r * Math.cos(a), middle[1] + r * Math.sin(a)];
  });
}

/** Ears, with how far each faces the viewer (1 = straight on, negative = behind the head). */
export function ears(
  page: Page,
  origin: Vec,
  f: Frame,
): { blob: Blob; facing: number; hollow: Spot[] }[] {
  return EARS.map((ear) => {
    const side = Math.sign(ear.centre[0]);
    const line: Vec[] = [
      [side * 0.45, -0.03, -0.05],
      [side * 0.455, -0.045, -0.02],
      [side * 0.455, -0.085, -0.025],
      [side * 0.45, -0.11, -0.06],
    ];
    return {
      blob: partBlob(page, origin, f, ear),
      facing: inFrame(f, [side, 0, 0])[2],
      hollow: line.map((v) => onPage(page, at(origin, f, v))),
    };
  });
}

/** A point of the face's surface, given as seen from the front. @returns undefined where no face is */
export function onFace(x: number, y: number): { point: Vec; normal: Vec } | undefined {
  let best: { point: Vec; normal: Vec } | undefined;
  for (const { centre, radii } of PARTS) {
    const u = (x - centre[0]) / radii[0];
    const v = (y - centre[1]) / radii[1];
    const rest = 1 - u * u - v * v;
    if (rest <= 0) continue;
    const w = Math.sqrt(rest);
    const z = centre[2] + radii[2] * w;
    if (!best || z > best.point[2])
      best = { point: [x, y, z], normal: [u / radii[0], v / radii[1], w / radii[2]] };
  }
  return best;
}

/** A line on the face as it falls on the page: only where the face is turned to the viewer. */
export function faceLine(
  page: Page,
  origin: Vec,
  f: Frame,
  line: readonly Spot[],
  lift = 0,
): Spot[] {
  const seen: Spot[] = [];
  for (const [x, y] of line) {
    const found = onFace(x, y);
    if (!found) continue;
    const size = Math.sqrt(dot(found.normal, found.normal));
    if (inFrame(f, found.normal)[2] / size < 0.08) continue;
    const raised: Vec = [found.point[0], found.point[1], found.point[2] + lift];
    seen.push(onPage(page, at(origin, f, raised)));
  }
  return seen;
}

/** A line on the skull, where it faces the viewer. */
function skullLine(
  page: Page,
  origin: Vec,
  f: Frame,
  line: readonly Vec[],
  facing: number,
): Spot[] {
  const [skull] = PARTS;
  if (!skull) return [];
  const seen: Spot[] = [];
  for (const way of line) {
    const size = Math.hypot(way[0], way[1], way[2]) || 1;
    const unit: Vec = [way[0] / size, way[1] / size, way[2] / size];
    const normal: Vec = [
      unit[0] / skull.radii[0],
      unit[1] / skull.radii[1],
      unit[2] / skull.radii[2],
    ];
    const steep = inFrame(f, normal)[2] / Math.sqrt(dot(normal, normal));
    if (steep < facing) continue;
    const point: Vec = [
      skull.centre[0] + unit[0] * skull.radii[0],
      skull.centre[1] + unit[1] * skull.radii[1],
      skull.centre[2] + unit[2] * skull.radii[2],
    ];
    seen.push(onPage(page, at(origin, f, point)));
  }
  return seen;
}

/** First hair: a whorl at the back of the crown and a lock over the forehead. */
export function hairLines(page: Page, origin: Vec, f: Frame): Spot[][] {
  const whorl: Vec[] = Array.from({ length: 13 }, (_, i) => {
    const a = (i / 12) * 1.6 * 2 * Math.PI;
    const r = 0.07 + 0.25 * (i / 12);
    return [r * Math.cos(a), 0.62 + r * Math.sin(a), -0.78];
  });
  const lock = (x: number): Vec[] => [
    [x * 0.4, 1, 0.05],
    [x + 0.03, 0.98, 0.24],
    [x + 0.12, 0.93, 0.42],
  ];
  const curls = skullLine(page, origin, f, whorl, 0.5);
  return [
    ...(curls.length === whorl.length ? [curls] : []),
    ...[lock(-0.1), lock(0.02)]
      .map((line) => skullLine(page, origin, f, line, 0.04))
      .filter((line) => line.length > 2),
  ];
}

/** The head's parts as balls that reach as far in one direction as the parts do. @param way a unit vector */
export function headBalls(origin: Vec, f: Frame, way: Vec): { centre: Vec; radius: number }[] {
  return [...PARTS, NOSE, ...EARS].map(({ centre, radii }) => ({
    centre: at(origin, f, centre),
    radius: Math.hypot(
      radii[0] * dot(f.x, way),
      radii[1] * dot(f.y, way),
      radii[2] * dot(f.z, way),
    ),
  }));
}
