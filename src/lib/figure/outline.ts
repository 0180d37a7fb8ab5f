/** Closed outlines and open lines as path strings. All run clockwise, so that overlaps never leave holes. */
import { furthest, type Blob, type Disc, type Spot } from './page.ts';
import { Trace } from './trace.ts';

/** An arc is drawn in pieces no longer than this: near half a circle, a rounded end would shift its middle. */
const LONGEST_ARC = 1.9;

/** A clockwise arc round a disc, from where the trace stands. @param sweep radians */
function roundOff(trace: Trace, { x, y, r }: Disc, from: number, sweep: number): void {
  const pieces = Math.ceil(sweep / LONGEST_ARC);
  for (let i = 1; i <= pieces; i++) {
    const a = from + (sweep * i) / pieces;
    trace.arc(r, [x + r * Math.cos(a), y + r * Math.sin(a)]);
  }
}

/** A disc as a path. */
export function discPath(disc: Disc): string {
  const trace = new Trace().move([disc.x + disc.r, disc.y]);
  roundOff(trace, disc, 0, 2 * Math.PI);
  return trace.close();
}

const SAMPLES = 72;
/** Directions all round, worked out once. */
const WAYS: readonly Spot[] = Array.from({ length: SAMPLES }, (_, i): Spot => {
  const a = (i / SAMPLES) * 2 * Math.PI;
  return [Math.cos(a), Math.sin(a)];
});

/** The direction in which two discs reach equally far, of the two the one nearer `near`; in radians. */
function commonTangent(one: Disc, other: Disc, near: number): number {
  const dx = one.x - other.x;
  const dy = one.y - other.y;
  const apart = Math.hypot(dx, dy) || 1;
  const off = Math.acos(Math.min(1, Math.max(-1, (other.r - one.r) / apart)));
  const axis = Math.atan2(dy, dx);
  const gap = (a: number): number => Math.abs(Math.atan2(Math.sin(a - near), Math.cos(a - near)));
  return gap(axis + off) < gap(axis - off) ? axis + off : axis - off;
}

interface Run {
  readonly disc: Disc;
  readonly from: number;
  readonly to: number;
}

/** The same for two discs, of which each leads on its own side of the common tangents. */
function pairRuns(a: Disc, b: Disc): Run[] {
  const apart = Math.hypot(b.x - a.x, b.y - a.y);
  if (apart <= Math.abs(a.r - b.r) + 1e-6) return [];
  const axis = Math.atan2(b.y - a.y, b.x - a.x);
  const off = Math.acos((a.r - b.r) / apart);
  return [
    { disc: b, from: axis - off, to: axis + off },
    { disc: a, from: axis + off, to: axis - off },
  ];
}

/** Which disc makes the common outline in which directions, clockwise all round. */
function runs(discs: readonly Disc[]): Run[] {
  const [a, b] = discs;
  if (a && b && discs.length === 2) return pairRuns(a, b);
  const leaders = WAYS.map(([nx, ny]) => {
    let best: Disc | undefined;
    let reach = -Infinity;
    for (const d of discs) {
      const here = d.x * nx + d.y * ny + d.r;
      if (here > reach + 1e-9) [best, reach] = [d, here];
    }
    return best;
  });
  const starts: { disc: Disc; from: number }[] = [];
  leaders.forEach((here, i) => {
    const before = leaders[(i + SAMPLES - 1) % SAMPLES];
    if (!before || !here || before === here) return;
    const near = ((i - 0.5) / SAMPLES) * 2 * Math.PI;
    starts.push({ disc: here, from: commonTangent(before, here, near) });
  });
  return starts.map((start, i) => ({
    ...start,
    to: starts[(i + 1) % starts.length]?.from ?? start.from,
  }));
}

/** The rubber band round some discs: straight sides, round ends. */
export function bandPath(discs: readonly Disc[]): string {
  const parts = runs(discs);
  const largest = discs.reduce((a, b) => (b.r > a.r ? b : a));
  if (parts.length < 2) return discPath(largest);
  const on = (d: Disc, a: number): Spot => [d.x + d.r * Math.cos(a), d.y + d.r * Math.sin(a)];
  const trace = new Trace();
  for (const { disc, from, to } of parts) {
    const sweep = (((to - from) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
    if (trace.d) trace.line(on(disc, from));
    else trace.move(on(disc, from));
    roundOff(trace, disc, from, sweep);
  }
  return trace.close();
}

const BLOB_SAMPLES = 20;

const reachOf = (blob: Blob, a: number): number => {
  const [x, y] = furthest(blob, Math.cos(a), Math.sin(a));
  return x * Math.cos(a) + y * Math.sin(a);
};

function leaderAt(blobs: readonly Blob[], a: number): Blob | undefined {
  let best: Blob | undefined;
  let reach = -Infinity;
  for (const blob of blobs) {
    const here = reachOf(blob, a);
    if (here > reach + 1e-9) [best, reach] = [blob, here];
  }
  return best;
}

/** Where the tangents at two points of an outline meet, given the directions the points face. */
function corner(p: Spot, a: number, q: Spot, b: number): Spot {
  const cross = Math.sin(b - a);
  if (Math.abs(cross) < 1e-6) return [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
  const cp = p[0] * Math.cos(a) + p[1] * Math.sin(a);
  const cq = q[0] * Math.cos(b) + q[1] * Math.sin(b);
  return [
    (cp * Math.sin(b) - cq * Math.sin(a)) / cross,
    (cq * Math.cos(a) - cp * Math.cos(b)) / cross,
  ];
}

/** The rubber band round some blobs: the sides between two of them are straight, the rest is round. */
export function blobBandPath(blobs: readonly Blob[]): string {
  const stops: { blob: Blob; a: number; p: Spot }[] = [];
  const stop = (blob: Blob, a: number): void => {
    stops.push({ blob, a, p: furthest(blob, Math.cos(a), Math.sin(a)) });
  };
  const step = (2 * Math.PI) / BLOB_SAMPLES;
  for (let i = 0; i < BLOB_SAMPLES; i++) {
    const [here, next] = [leaderAt(blobs, i * step), leaderAt(blobs, (i + 1) * step)];
    if (!here || !next) continue;
    stop(here, i * step);
    if (here === next) continue;
    // The direction in which both reach equally far, where one hands over to the other.
    let [low, high] = [i * step, (i + 1) * step];
    for (let k = 0; k < 16; k++) {
      const middle = (low + high) / 2;
      if (reachOf(here, middle) >= reachOf(next, middle)) low = middle;
      else high = middle;
    }
    stop(here, low);
    stop(next, low);
  }
  const trace = new Trace();
  stops.forEach((s, i) => {
    const next = stops[(i + 1) % stops.length] ?? s;
    if (i === 0) trace.move(s.p);
    if (s.blob === next.blob) trace.quadratic(corner(s.p, s.a, next.p, next.a), next.p);
    else trace.line(next.p);
  });
  return trace.close();
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
  const trace = new Trace().move(p(0));
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
    trace.cubic([b[0] + out[0], b[1] + out[1]], [c[0] - back[0], c[1] - back[1]], c);
  }
  return closed ? trace.close() : trace.d;
}

/** A broken straight line through points. */
export function linePath(points: readonly Spot[], closed = false): string {
  const trace = new Trace();
  points.forEach((p, i) => (i ? trace.line(p) : trace.move(p)));
  return closed ? trace.close() : trace.d;
}
