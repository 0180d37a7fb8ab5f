/** What is done to the infant, as plain marks: a touch, a way, a turn, a fall, a sound. */
import { ANCHORS } from './anchors.ts';
import type { Body } from './body.ts';
import { discPath, linePath, throughPath } from './outline.ts';
import { onPage, type Page, type Spot } from './page.ts';
import type { Shape } from './paint.ts';
import { add, cosDeg, mix, sinDeg, type Vec } from './space.ts';
import type { Anchor, MarkSpec, Offset } from './stage.ts';

/** A mark before it falls on a page: where its dots and lines are, in space. */
export interface Mark {
  readonly kind: MarkSpec['kind'];
  readonly dots: readonly Vec[];
  readonly lines: readonly {
    readonly points: readonly Vec[];
    readonly arrow: boolean;
    readonly dashed?: boolean;
  }[];
  readonly rings: readonly {
    readonly centre: Vec;
    readonly radius: number;
    readonly dashed?: boolean;
  }[];
}

const off = (v: Vec, by: Offset = [0, 0]): Vec => add(v, [by[0], by[1], 0]);

function arrowLine(a: Vec, b: Vec, bulge = 0): Vec[] {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const size = Math.hypot(dx, dy) || 1;
  return [0, 0.25, 0.5, 0.75, 1].map((t): Vec => {
    const out = bulge * 4 * t * (1 - t);
    return [mix(a[0], b[0], t) - (dy / size) * out, mix(a[1], b[1], t) + (dx / size) * out, a[2]];
  });
}

function markOf(spec: MarkSpec, body: Body): Mark {
  const place = (name: Anchor): Vec => ANCHORS[name](body);
  const none = { dots: [], lines: [], rings: [] };
  switch (spec.kind) {
    case 'touch': {
      const spot = off(place(spec.at), spec.off);
      return { kind: spec.kind, ...none, dots: [spot], rings: [{ centre: spot, radius: 0.105 }] };
    }
    case 'arrow': {
      const base = place(spec.at);
      const points = arrowLine(off(base, spec.from), off(base, spec.to), spec.bulge);
      return { kind: spec.kind, ...none, lines: [{ points, arrow: true }] };
    }
    case 'trail': {
      const points = spec.along.map(place);
      return {
        kind: spec.kind,
        ...none,
        dots: points.slice(0, 1),
        lines: [{ points, arrow: true }],
      };
    }
    case 'turn': {
      const middle = place(spec.at);
      const r = spec.radius ?? 0.72;
      const points = Array.from({ length: 9 }, (_, i): Vec => {
        const a = mix(spec.from, spec.to, i / 8);
        return off(middle, [r * sinDeg(a), r * cosDeg(a)]);
      });
      return { kind: spec.kind, ...none, lines: [{ points, arrow: true }] };
    }
    case 'drop': {
      const low = off(place(spec.at), spec.off);
      const high = off(low, [0, 0.5]);
      return {
        kind: spec.kind,
        dots: [],
        rings: [
          { centre: high, radius: 0.15, dashed: true },
          { centre: low, radius: 0.15 },
        ],
        lines: [
          { points: [high, off(low, [0, 0.19])], arrow: true },
          { points: [off(low, [-0.24, -0.19]), off(low, [0.24, -0.19])], arrow: false },
        ],
      };
    }
    case 'sound': {
      const source = off(place(spec.at), spec.off);
      const aim = Math.atan2(-(spec.off[1] - 0.05), -spec.off[0]);
      const wave = (r: number): Vec[] =>
        [-0.62, -0.31, 0, 0.31, 0.62].map((a) =>
          off(source, [r * Math.cos(aim + a), r * Math.sin(aim + a)]),
        );
      return {
        kind: spec.kind,
        dots: [source],
        rings: [],
        lines: [0.15, 0.26, 0.37].map((r) => ({ points: wave(r), arrow: false })),
      };
    }
    case 'plumb': {
      const spot = off(place(spec.at), spec.off);
      return {
        kind: spec.kind,
        dots: [spot],
        rings: [{ centre: spot, radius: 0.1 }],
        lines: [
          { points: [off(spot, [0, -0.13]), [spot[0], -0.3, spot[2]]], arrow: true, dashed: true },
        ],
      };
    }
  }
}

/** Whether something timed is shown: it comes half way to its first moment. */
export const shows = (during: readonly [number, number] | undefined, time: number): boolean => {
  const [from, until] = during ?? [1, Infinity];
  return time >= from - 0.5 && time < until + 0.5;
};

/** The marks shown at a time, in the axes of the body. */
export const marksOf = (specs: readonly MarkSpec[], body: Body, time: number): Mark[] =>
  specs.filter((spec) => shows(spec.during, time)).map((spec) => markOf(spec, body));

/** All points of a mark, for finding room for it. */
export const markPoints = (m: Mark): Vec[] => [
  ...m.dots,
  ...m.lines.flatMap((l) => l.points),
  ...m.rings.flatMap((r) => [
    off(r.centre, [r.radius, r.radius]),
    off(r.centre, [-r.radius, -r.radius]),
  ]),
];

const HEAD_LONG = 9;
const HEAD_HALF = 4.6;

/** A mark on the page: each line once in paper, wider, so that it stands clear of what it crosses. */
export function markShapes(page: Page, mark: Mark, width: number): Shape[] {
  const halo: Shape[] = [];
  const ink: Shape[] = [];
  const stroke = (d: string, w: number, dashed = false): void => {
    halo.push({ name: 'halo', d, line: 'paper', width: w + 3.2 });
    ink.push({ name: mark.kind, d, line: 'signal', width: w, ...(dashed ? { dashed } : {}) });
  };
  const fill = (d: string): void => {
    halo.push({ name: 'halo', d, fill: { key: 'paper' }, line: 'paper', width: 1.6 });
    ink.push({ name: mark.kind, d, fill: { key: 'signal' } });
  };
  for (const ring of mark.rings) {
    const [x, y] = onPage(page, ring.centre);
    const r = mark.kind === 'touch' || mark.kind === 'plumb' ? 6.6 : ring.radius * page.scale;
    stroke(discPath({ x, y, r }), width * 0.8, ring.dashed);
  }
  for (const dot of mark.dots) {
    const [x, y] = onPage(page, dot);
    fill(discPath({ x, y, r: 3 }));
  }
  for (const line of mark.lines) {
    const spots = line.points.map((p) => onPage(page, p));
    const tip = spots.at(-1);
    const before = spots.at(-2);
    if (!line.arrow || !tip || !before) {
      stroke(throughPath(spots, false), width * 0.8);
      continue;
    }
    const long = Math.hypot(tip[0] - before[0], tip[1] - before[1]) || 1;
    const ux = (tip[0] - before[0]) / long;
    const uy = (tip[1] - before[1]) / long;
    const neck: Spot = [tip[0] - ux * HEAD_LONG * 0.8, tip[1] - uy * HEAD_LONG * 0.8];
    const shaft = [
      ...spots.slice(0, -1).filter((s) => Math.hypot(s[0] - tip[0], s[1] - tip[1]) > HEAD_LONG),
      neck,
    ];
    stroke(throughPath(shaft, false), width, line.dashed);
    fill(
      linePath(
        [
          tip,
          [tip[0] - ux * HEAD_LONG - uy * HEAD_HALF, tip[1] - uy * HEAD_LONG + ux * HEAD_HALF],
          [tip[0] - ux * HEAD_LONG + uy * HEAD_HALF, tip[1] - uy * HEAD_LONG - ux * HEAD_HALF],
        ],
        true,
      ),
    );
  }
  return [...halo, ...ink];
}
