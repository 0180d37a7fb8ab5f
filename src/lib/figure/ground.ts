/** What the infant rests on or is brought against. */
import type { Joints } from './joints.ts';
import { bandPath, blobBandPath, linePath, throughPath } from './outline.ts';
import { blobOf, discOf, onPage, type Page, type Spot } from './page.ts';
import type { Shape } from './paint.ts';
import { at, turned, UPRIGHT, type Frame, type Vec } from './space.ts';
import type { Stage } from './stage.ts';

/** Half lengths of a tilt board across and along, its thickness, and the height of what it rocks on. */
const BOARDS = {
  lying: { across: 1.28, along: 1.85, thick: 0.13, rocker: 0.2 },
  quadruped: { across: 1.0, along: 1.35, thick: 0.13, rocker: 0.24 },
  upright: { across: 1.45, along: 0.62, thick: 0.13, rocker: 0.26 },
} as const;

const boardOf = (stage: Stage): (typeof BOARDS)[keyof typeof BOARDS] =>
  stage.setting === 'hanging' ? BOARDS.lying : BOARDS[stage.setting];

/** A board's axes: it slopes with the body on it, and lies along a body on hands and knees. */
function boardFrame(stage: Stage, j: Joints): Frame {
  const sloped = turned(turned(UPRIGHT, 'x', stage.elevation), 'z', -j.placing.slope);
  return stage.setting === 'quadruped' ? turned(sloped, 'y', j.placing.yaw) : sloped;
}

/** The hips are not the middle of the body: how far towards the head the board's middle lies. */
const boardMiddle = (stage: Stage): number =>
  stage.setting === 'lying' ? -0.42 : stage.setting === 'quadruped' ? 0.35 : 0.2;

/** Corners of what is rested on, for finding room for it; in the axes of the viewer. */
export function groundPoints(stage: Stage, j: Joints): Vec[] {
  if (stage.ground === 'board') {
    const b = boardOf(stage);
    const f = boardFrame(stage, j);
    const corners = [-1, 1].flatMap((x) =>
      [-1, 1].map((z) =>
        at([0, 0, 0], f, [x * b.across, -b.thick, z * b.along + boardMiddle(stage)]),
      ),
    );
    return [...corners, [0, -b.thick - b.rocker, 0]];
  }
  if (stage.ground === 'floor') return [[0, -0.12, 0]];
  if (stage.ground === 'rug') return rugEdges(stage);
  return [];
}

const RUG = { across: 1.8, along: 1.4 };

function rugEdges(stage: Stage): Vec[] {
  const f = turned(UPRIGHT, 'x', stage.elevation);
  return [
    [RUG.across, 0, 0.3],
    [-RUG.across, 0, 0.3],
    [0, 0, 0.3 + RUG.along],
  ].map((v) => at([0, 0, 0], f, v as unknown as Vec));
}

/** A rectangle with rounded corners, clockwise. */
function roundedPath(x: number, y: number, w: number, h: number, r: number): string {
  const turn = (dx: number, dy: number): string => `a${r} ${r} 0 0 1 ${dx} ${dy}`;
  return `M${x + r} ${y}h${w - 2 * r}${turn(r, r)}v${h - 2 * r}${turn(-r, r)}h${2 * r - w}${turn(-r, -r)}v${2 * r - h}${turn(r, -r)}Z`;
}

/** The mat that fills the frame; close-ups are cut off at its edge. */
export const WINDOW = { x: 6, y: 6, width: 288, height: 268, round: 22 } as const;

function board(page: Page, stage: Stage, j: Joints): Shape[] {
  const b = boardOf(stage);
  const f = boardFrame(stage, j);
  const corner = (x: number, y: number, z: number): Spot =>
    onPage(page, at([0, 0, 0], f, [x * b.across, y, z * b.along + boardMiddle(stage)]));
  const round = 0.045;
  const slab = [-1, 1].flatMap((x) =>
    [-1, 1].flatMap((z) =>
      [-round, -b.thick].map((y) =>
        discOf(page, at([0, 0, 0], f, [x * b.across, y, z * b.along + boardMiddle(stage)]), round),
      ),
    ),
  );
  const shapes: Shape[] = [];
  if (stage.elevation < 30) {
    const foot = discOf(page, [0, -b.thick - b.rocker + 0.04, 0], 0.05);
    const half = 0.3 * page.scale;
    const top = discOf(page, at([0, 0, 0], f, [0, -b.thick, 0]), 0.03);
    shapes.push({
      name: 'rocker',
      d: bandPath([{ ...foot, x: foot.x - half }, { ...foot, x: foot.x + half }, top]),
      fill: { key: 'mat' },
      line: 'examiner-line',
      width: 0.9,
    });
  }
  shapes.push({
    name: 'board',
    d: bandPath(slab),
    fill: { key: 'mat' },
    line: 'examiner-line',
    width: 1,
  });
  // The edge between top and side shows at the end of the board nearest the viewer.
  const near = f.z[2] < 0 ? -1 : 1;
  if (stage.elevation > 15)
    shapes.push({
      name: 'board-edge',
      d: linePath([corner(-near, -0.01, near), corner(near, -0.01, near)]),
      line: 'examiner-line',
      width: 0.8,
    });
  return shapes;
}

function waves(page: Page, width: number, height: number): Shape[] {
  const shapes: Shape[] = [];
  for (let row = 0; row < 5; row++) {
    const y = 34 + row * ((height - 68) / 4);
    for (const start of row % 2 ? [22, width - 86] : [30, width - 74]) {
      const points = Array.from({ length: 9 }, (_, i): Spot => [
        page.mirrored ? width - start - i * 6 : start + i * 6,
        y + (i % 2 ? 2.2 : -2.2),
      ]);
      shapes.push({
        name: 'wave',
        d: throughPath(points, false),
        line: 'examiner-line',
        width: 0.9,
      });
    }
  }
  return shapes;
}

/** A table's edge that a foot or hand is brought against: its top and the corner nearest the infant. */
export interface Edge {
  readonly corner: Vec;
}

const TABLE_THICK = 0.2;

function table(page: Page, edge: Edge, width: number): Shape[] {
  const [x, y] = onPage(page, edge.corner);
  const out = page.mirrored ? width - 8 : 8;
  const thick = TABLE_THICK * page.scale;
  const r = 3;
  const [left, right] = out < x ? [out, x] : [x, out];
  return [
    {
      name: 'table',
      d: bandPath(
        [
          [left + r, y + r],
          [right - r, y + r],
          [left + r, y + thick],
          [right - r, y + thick],
        ].map(([cx = 0, cy = 0]) => ({ x: cx, y: cy, r })),
      ),
      fill: { key: 'mat' },
      line: 'examiner-line',
      width: 1,
    },
  ];
}

/** The ground of a stage on a page; water comes with the stimulus. @param edge where the stage has a table, its corner */
export function groundShapes(
  page: Page,
  stage: Stage,
  j: Joints,
  frame: { width: number; height: number; time: number },
  edge?: Edge,
): Shape[] {
  const { width, height, time } = frame;
  const w = WINDOW;
  const mat: Shape = {
    name: 'mat',
    d: roundedPath(w.x, w.y, w.width, w.height, w.round),
    fill: { key: 'mat' },
  };
  switch (stage.ground) {
    case 'mat':
      return [mat];
    case 'water':
      return time < 0.5 ? [mat] : [mat, ...waves(page, width, height)];
    case 'board':
      return board(page, stage, j);
    case 'rug': {
      const f = turned(UPRIGHT, 'x', stage.elevation);
      const disc = blobOf(page, at([0, 0, 0], f, [0, 0, 0.3]), [
        at([0, 0, 0], f, [RUG.across, 0, 0]),
        at([0, 0, 0], f, [0, 0, RUG.along]),
      ]);
      return [{ name: 'rug', d: blobBandPath([disc]), fill: { key: 'mat' } }];
    }
    case 'floor': {
      const y = Math.round(onPage(page, [0, 0, 0])[1] * 10) / 10;
      const strip = linePath(
        [
          [8, y],
          [width - 8, y],
          [width - 8, y + 7],
          [8, y + 7],
        ],
        true,
      );
      return [
        { name: 'mat', d: strip, fill: { key: 'mat' } },
        {
          name: 'floor',
          d: linePath([
            [8, y],
            [width - 8, y],
          ]),
          line: 'ink',
          width: 1,
        },
      ];
    }
    case 'edge':
      return edge ? table(page, edge, width) : [];
    case 'none':
      return [];
  }
}
