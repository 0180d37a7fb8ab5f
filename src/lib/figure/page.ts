import type { Vec } from './space.ts';

/** A point on the page, in page units, y down. */
export type Spot = readonly [x: number, y: number];

/** How space falls on the page: seen straight on, `scale` page units to a head height. */
export interface Page {
  readonly scale: number;
  readonly originX: number;
  readonly originY: number;
  /** Left and right exchanged. */
  readonly mirrored: boolean;
}

export const onPage = (page: Page, v: Vec): Spot => [
  page.originX + (page.mirrored ? -1 : 1) * v[0] * page.scale,
  page.originY - v[1] * page.scale,
];

/** A rounded blob on the page: a centre and the spread whose boundary is the ellipse. */
export interface Blob {
  readonly x: number;
  readonly y: number;
  /** Squared radii as a symmetric matrix [xx, xy, yy]. */
  readonly spread: readonly [xx: number, xy: number, yy: number];
}

export interface Disc {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** A ball in space as the disc it covers. @param radius head heights */
export function discOf(page: Page, centre: Vec, radius: number): Disc {
  const [x, y] = onPage(page, centre);
  return { x, y, r: radius * page.scale };
}

/** An ellipsoid, given by its half axes in space, as the ellipse it covers. */
export function blobOf(page: Page, centre: Vec, halfAxes: readonly Vec[]): Blob {
  const [x, y] = onPage(page, centre);
  const k = page.scale * page.scale;
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (const a of halfAxes) {
    xx += a[0] * a[0] * k;
    xy += (page.mirrored ? 1 : -1) * a[0] * a[1] * k;
    yy += a[1] * a[1] * k;
  }
  return { x, y, spread: [xx, xy, yy] };
}

/** The point of a blob that lies furthest in a direction. */
export function furthest(blob: Blob, nx: number, ny: number): Spot {
  const [xx, xy, yy] = blob.spread;
  const sx = xx * nx + xy * ny;
  const sy = xy * nx + yy * ny;
  const reach = Math.sqrt(Math.max(1e-9, sx * nx + sy * ny));
  return [blob.x + sx / reach, blob.y + sy / reach];
}
