/** Finding room: everything that is ever shown of a response fits the frame, at one scale throughout. */
import { ANCHORS } from './anchors.ts';
import { bodyOf, type Body } from './body.ts';
import { broughtClose } from './closeup.ts';
import { groundPoints, type Edge } from './ground.ts';
import { helperOf, type Helper } from './helper.ts';
import type { LimbPattern } from '../atlas/types.ts';
import type { Ball } from './hand.ts';
import type { Joints } from './joints.ts';
import { markPoints, marksOf, shows, type Mark } from './marks.ts';
import type { Page } from './page.ts';
import { anglesOf, staged } from './pose.ts';
import { contactsOf, hipsOn, reachOf, seen, type Contacts } from './solve.ts';
import type { Vec } from './space.ts';
import type { Framing, Stage } from './stage.ts';

export const WIDTH = 300;
export const HEIGHT = 280;
/** The largest head in page units: larger, and a short response would dwarf a long one. */
const LARGEST = 66;
const MARGIN = 17;

/** One moment in space, as the viewer's axes have it. */
export interface Moment3 {
  readonly joints: Joints;
  readonly body: Body;
  readonly marks: readonly Mark[];
  readonly helpers: readonly Helper[];
}

/** Held in the air with nothing below. */
const hangs = (stage: Stage): boolean => stage.ground === 'none' || stage.ground === 'edge';

/** The body, marks and helpers at a time, unmirrored. */
export function momentOf(pattern: LimbPattern, reflexId: string, time: number): Moment3 {
  const { stage } = staged(pattern, reflexId);
  const joints = anglesOf(pattern, reflexId, time, 'left');
  const hips = seen(hipsOn(joints, hangs(stage)), stage.elevation);
  const body = broughtClose(bodyOf(joints, stage.elevation, hips), stage.framing);
  return {
    joints,
    body,
    marks: marksOf(stage.marks, body, time),
    helpers: stage.helpers.filter((h) => shows(h.during, time)).map((h) => helperOf(h, body)),
  };
}

interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

function grow(box: Box, v: Vec, r = 0): void {
  box.left = Math.min(box.left, v[0] - r);
  box.right = Math.max(box.right, v[0] + r);
  box.bottom = Math.min(box.bottom, v[1] - r);
  box.top = Math.max(box.top, v[1] + r);
}

/** What of the body must be in the frame: all of it, or all but the legs. */
const shownParts = (c: Contacts, framing: Framing): Ball[] =>
  framing === 'upper'
    ? [c.head, c.armL, c.armR, c.handL, c.handR].flat()
    : (Object.values(c) as (readonly Ball[])[]).flat();

/** What a moment takes up, in head heights. */
export function extentOf(m: Moment3, stage: Stage, box: Box): void {
  const sideways: readonly Vec[] = [
    [1, 0, 0],
    [0, 1, 0],
  ];
  for (const across of sideways)
    for (const b of shownParts(contactsOf(m.body, m.joints, across), stage.framing) as {
      centre: Vec;
      radius: number;
    }[])
      grow(box, b.centre, b.radius);
  for (const mark of m.marks) for (const p of markPoints(mark)) grow(box, p, 0.08);
  for (const h of m.helpers) {
    for (const b of h.hand.pieces.flat()) grow(box, b.centre, b.radius);
    if (stage.framing === 'whole') for (const b of h.forearm) grow(box, b.centre, b.radius);
  }
  for (const p of groundPoints(stage, m.joints)) grow(box, p);
}

export interface Room {
  readonly width: number;
  readonly height: number;
  readonly margin: number;
  /** The most page units a head height may take. */
  readonly largest: number;
}

/** The scale and origin at which some moments fill a room and none leaves it. */
export function fitted(
  moments: readonly Moment3[],
  stage: Stage,
  room: Room,
): Omit<Page, 'mirrored'> {
  const box: Box = { left: Infinity, right: -Infinity, top: -Infinity, bottom: Infinity };
  for (const moment of moments) extentOf(moment, stage, box);
  const scale = Math.min(
    room.largest,
    (room.width - 2 * room.margin) / (box.right - box.left),
    (room.height - 2 * room.margin) / (box.top - box.bottom),
  );
  return {
    scale,
    originX: room.width / 2 - ((box.left + box.right) / 2) * scale,
    originY: room.height / 2 + ((box.top + box.bottom) / 2) * scale,
  };
}

/** Scale and what stands in the middle of the frame, for close-ups. */
const CLOSE: Partial<Record<Framing, { scale: number; middle: (body: Body) => Vec }>> = {
  face: { scale: 138, middle: (b) => [b.head.centre[0], b.head.centre[1] - 0.12, 0] },
  hand: { scale: 330, middle: () => [0, 0, 0] },
  foot: { scale: 360, middle: () => [0, 0, 0] },
};

const pages = new WeakMap<LimbPattern, Map<string, Omit<Page, 'mirrored'>>>();

/** The scale and origin that hold for all moments of one response. */
export function pageOf(pattern: LimbPattern, reflexId: string, mirrored: boolean): Page {
  const known = pages.get(pattern) ?? new Map<string, Omit<Page, 'mirrored'>>();
  pages.set(pattern, known);
  let page = known.get(reflexId);
  if (!page) {
    const { stage, poses } = staged(pattern, reflexId);
    const times = Array.from({ length: (poses.length - 1) * 4 + 1 }, (_, i) => i / 4);
    const close = CLOSE[stage.framing];
    const moments = times.map((time) => momentOf(pattern, reflexId, time));
    const [first] = moments;
    if (close && first) {
      const [x, y] = close.middle(first.body);
      page = {
        scale: close.scale,
        originX: WIDTH / 2 - x * close.scale,
        originY: HEIGHT / 2 + y * close.scale,
      };
    } else
      page = fitted(moments, stage, {
        width: WIDTH,
        height: HEIGHT,
        margin: MARGIN,
        largest: LARGEST,
      });
    known.set(reflexId, page);
  }
  return mirrored ? { ...page, mirrored, originX: WIDTH - page.originX } : { ...page, mirrored };
}

/** The corner of the table that a foot or hand is brought against and set down on: found, not typed. */
export function edgeOf(pattern: LimbPattern, reflexId: string): Edge | undefined {
  const { stage, poses } = staged(pattern, reflexId);
  if (stage.ground !== 'edge' || !stage.placed) return undefined;
  const touched = ANCHORS[stage.placed.touched](momentOf(pattern, reflexId, 1).body);
  const last = momentOf(pattern, reflexId, poses.length - 1);
  const down = contactsOf(last.body, last.joints, [0, -1, 0])[stage.placed.part];
  return { corner: [touched[0] + stage.placed.gap, -reachOf(down, [0, -1, 0]), 0] };
}
