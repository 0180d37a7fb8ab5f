/** Closed outlines and open lines as path strings. All run clockwise, so that overlaps never leave holes. */
import { furthest, type Blob, type Disc, type Spot } from './page.ts';

const num = (value: number): string => {
  const rounded = Math.round(value * 10) / 10;
  return String(rounded === 0 ? 0 : rounded);
};
const spot = ([x, y]: Spot): string => `${num(x)} ${num(y)}`;

/** A disc as a path. */
export function discPath({ x, y, r }: Disc): string {
  const arc = `A${num(r)} ${num(r)} 0 1 1`;
  return `M${spot([x - r, y])}${arc} ${spot([x + r, y])}${arc} ${spot([x - r, y])}Z`;
}

/** The directions in which one disc hands over to the next on the way round their common outline. */
function runs(discs: readonly Disc[]): { disc: Disc; from: number; to: number }[] {
  const SAMPLES = 120;
  const leader = (i: number): number => {
    const a = (i / SAMPLES) * 2 * Math.PI;
    let best = 0;
    let reach = -Infinity;
    discs.forEach((d, k) => {
      const here = d.x * Math.cos(a) + d.y * Math.sin(a) + d.r;
      if (here > reach + 1e-9) [best, reach] = [k, here];
    });
    return best;
  };
  const leaders = Array.from({ length: SAMPLES }, (_, i) => leader(i));
  const found: { disc: Disc; from: number; to: number }[] = [];
  for (let i = 0; i < SAMPLES; i++) {
    const before = discs[leaders[(i + SAMPLES - 1) % SAMPLES] ?? 0];
    const here = discs[leaders[i] ?? 0];
    if (!before || !here || before === here) continue;
    // Both discs reach equally far in the direction of their common tangent.
    const dx = before.x - here.x;
    const dy = before.y - here.y;
    const apart = Math.hypot(dx, dy);
    const off = Math.acos(Math.min(1, Math.max(-1, (here.r - before.r) / (apart || 1))));
    const axis = Math.atan2(dy, dx);
    const near = ((i - 0.5) / SAMPLES) * 2 * Math.PI;
    const gap = (a: number): number => Math.abs(Math.atan2(Math.sin(a - near), Math.cos(a - near)));
    const turn = gap(axis + off) < gap(axis - off) ? axis + off : axis - off;
    found.push({ disc: here, from: turn, to: turn });
  }
  found.forEach((run, i) => {
    run.to = found[(i + 1) % found.length]?.from ?? run.from;
  });
  return found;
}

/** The rubber band round some discs: straight sides, round ends. */
export function bandPath(discs: readonly Disc[]): string {
  const parts = runs(discs);
  const largest = discs.reduce((a, b) => (b.r > a.r ? b : a));
  if (parts.length < 2) return discPath(largest);
  const on = (d: Disc, a: number): Spot => [d.x + d.r * Math.cos(a), d.y + d.r * Math.sin(a)];
  let path = '';
  for (const { disc, from, to } of parts) {
    const sweep = (((to - from) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
    path += `${path ? 'L' : 'M'}${spot(on(disc, from))}`;
    path += `A${num(disc.r)} ${num(disc.r)} 0 ${sweep > Math.PI ? 1 : 0} 1 ${spot(on(disc, to))}`;
  }
  return `${path}Z`;
}

/** The rubber band round some blobs, to a fraction of a page unit. */
export function blobBandPath(blobs: readonly Blob[], corners = 28): string {
  const points: Spot[] = [];
  for (let i = 0; i < corners; i++) {
    const a = (i / corners) * 2 * Math.PI;
    const n: Spot = [Math.cos(a), Math.sin(a)];
    let best: Spot | undefined;
    for (const blob of blobs) {
      const here = furthest(blob, n[0], n[1]);
      if (!best || here[0] * n[0] + here[1] * n[1] > best[0] * n[0] + best[1] * n[1]) best = here;
    }
    const last = points.at(-1);
    if (best && (!last || Math.hypot(best[0] - last[0], best[1] - last[1]) > 0.4))
      points.push(best);
  }
  return throughPath(points, true);
}

/** Points in clockwise order round what they enclose. */
export function clockwise(points: readonly Spot[]): readonly Spot[] {
  let area = 0;
  points.forEach((a, i) => {
    const b = points[(i + 1) % points.length] ?? a;
    area += a[0] * b[1] - b[0] * a[1];
  });
  return area < 0 ? [...points].reverse() : points;
}

/** A smooth line through points. @param closed whether the last point joins the first */
export function throughPath(line: readonly Spot[], closed: boolean): string {
  const points = closed ? clockwise(line) : line;
  const n = points.length;
  const p = (i: number): Spot =>
    points[closed ? (i + n) % n : Math.min(n - 1, Math.max(0, i))] ?? [0, 0];
  let path = `M${spot(p(0))}`;
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const [a, b, c, d] = [p(i - 1), p(i), p(i + 1), p(i + 2)];
    // The pull of the neighbours is held to the length of the piece, so that uneven spacing never loops.
    const piece = Math.hypot(c[0] - b[0], c[1] - b[1]);
    const pull = (from: Spot, to: Spot): Spot => {
      const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
      return [((to[0] - from[0]) / long) * piece * 0.33, ((to[1] - from[1]) / long) * piece * 0.33];
    };
    const out = pull(a, c);
    const back = pull(b, d);
    path += `C${spot([b[0] + out[0], b[1] + out[1]])} ${spot([c[0] - back[0], c[1] - back[1]])} ${spot(c)}`;
  }
  return closed ? `${path}Z` : path;
}

/** A broken straight line through points. */
export const linePath = (points: readonly Spot[], closed = false): string =>
  points.map((p, i) => `${i ? 'L' : 'M'}${spot(p)}`).join('') + (closed ? 'Z' : '');
