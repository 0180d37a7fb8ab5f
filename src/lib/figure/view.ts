/** Finding room: everything that is ever shown of a response fits the frame, at one scale throughout. */
import { ANCHORS } from './anchors.ts';
import { bodyOf, type Body } from './body.ts';
import { broughtClose } from './closeup.ts';
import { groundPoints, type Edge } from './ground.ts';
import type { Ball } from './hand.ts';
import { examinerHandOf, type ExaminerHand } from './examiner.ts';
import type { Joints } from './joints.ts';
import { markPoints, marksOf, shows, type Mark } from './marks.ts';
import type { Page } from './page.ts';
import { endOf, poseAt, type Staging } from './pose.ts';
import { contactsOf, hipsOn, reachOf, seen, type Contacts } from './solve.ts';
import type { Vec } from './space.ts';
import type { Framing, Stage } from './stage.ts';

export const WIDTH = 300;
export const HEIGHT = 280;
/** The largest head in page units: larger, and a short response would dwarf a long one. */
const LARGEST = 66;
const MARGIN = 17;

/** One moment in space, as the viewer's axes have it, unmirrored. */
export interface Instant {
  readonly joints: Joints;
  readonly body: Body;
  readonly marks: readonly Mark[];
  readonly examiner: readonly ExaminerHand[];
}

/** Held in the air with nothing below. */
const hangs = (stage: Stage): boolean => stage.ground === 'none' || stage.ground === 'edge';

/** Body, marks and examiner at a time. */
export function instantOf(staging: Staging, time: number): Instant {
  const { stage } = staging;
  const joints = poseAt(staging, time);
  const hips = seen(hipsOn(joints, hangs(stage)), stage.elevation);
  const body = broughtClose(bodyOf(joints, stage.elevation, hips), stage.framing);
  return {
    joints,
    body,
    marks: marksOf(stage.marks, body, time),
    examiner: stage.examiner
      .filter((h) => shows(h.during, time))
      .map((h) => examinerHandOf(h, body)),
  };
}

interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

function include(box: Box, v: Vec, r = 0): void {
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

function includeInstant(box: Box, instant: Instant, stage: Stage): void {
  const ways: readonly Vec[] = [
    [1, 0, 0],
    [0, 1, 0],
  ];
  for (const way of ways)
    for (const b of shownParts(contactsOf(instant.body, instant.joints, way), stage.framing))
      include(box, b.centre, b.radius);
  for (const mark of instant.marks) for (const p of markPoints(mark)) include(box, p, 0.08);
  for (const h of instant.examiner) {
    for (const b of h.hand.pieces.flat()) include(box, b.centre, b.radius);
    if (stage.framing === 'whole') for (const b of h.forearm) include(box, b.centre, b.radius);
  }
  for (const p of groundPoints(stage, instant.joints)) include(box, p);
}

export interface Room {
  readonly width: number;
  readonly height: number;
  readonly margin: number;
  /** The most page units a head height may take. */
  readonly largest: number;
}

/** The scale and origin at which some instants fill a room and none leaves it. */
export function fitted(instants: readonly Instant[], stage: Stage, room: Room): Page {
  const box: Box = { left: Infinity, right: -Infinity, top: -Infinity, bottom: Infinity };
  for (const instant of instants) includeInstant(box, instant, stage);
  const scale = Math.min(
    room.largest,
    (room.width - 2 * room.margin) / (box.right - box.left),
    (room.height - 2 * room.margin) / (box.top - box.bottom),
  );
  return {
    scale,
    originX: room.width / 2 - ((box.left + box.right) / 2) * scale,
    originY: room.height / 2 + ((box.top + box.bottom) / 2) * scale,
    mirrored: false,
  };
}

/** Page units to a head height in close-ups, and what stands in the middle of the frame. */
const CLOSE: Partial<Record<Framing, { scale: number; middle: (body: Body) => Vec }>> = {
  face: { scale: 138, middle: (b) => [b.head.centre[0], b.head.centre[1] - 0.12, 0] },
  hand: { scale: 330, middle: () => [0, 0, 0] },
  foot: { scale: 320, middle: () => [0, 0, 0] },
};

function roomFor(staging: Staging): Page {
  const { stage } = staging;
  const close = CLOSE[stage.framing];
  if (close) {
    const [x, y] = close.middle(instantOf(staging, 0).body);
    return {
      scale: close.scale,
      originX: WIDTH / 2 - x * close.scale,
      originY: HEIGHT / 2 + y * close.scale,
      mirrored: false,
    };
  }
  const times = Array.from({ length: endOf(staging) * 4 + 1 }, (_, i) => i / 4);
  const instants = times.map((time) => instantOf(staging, time));
  return fitted(instants, stage, {
    width: WIDTH,
    height: HEIGHT,
    margin: MARGIN,
    largest: LARGEST,
  });
}

/** The corner of the table that a foot or hand is brought against and set down on: found, not typed. */
function tableOf(staging: Staging): Edge | undefined {
  const { ground, placed } = staging.stage;
  if (ground !== 'edge' || !placed) return undefined;
  const touched = ANCHORS[placed.touched](instantOf(staging, 1).body);
  const last = instantOf(staging, endOf(staging));
  const down: Vec = [0, -1, 0];
  const depth = reachOf(contactsOf(last.body, last.joints, down)[placed.part], down);
  return { corner: [touched[0] + placed.gap, -depth, 0] };
}

/** What holds for all moments of a staging. */
export interface Setup {
  readonly page: Page;
  readonly edge: Edge | undefined;
}

const setups = new WeakMap<Staging, Setup>();

/** Scale, origin and table of a staging, worked out once. */
export function setupOf(staging: Staging): Setup {
  let setup = setups.get(staging);
  if (!setup) {
    setup = { page: roomFor(staging), edge: tableOf(staging) };
    setups.set(staging, setup);
  }
  return setup;
}

/** A page as its mirror shows it. */
export const mirroredPage = (page: Page): Page => ({
  ...page,
  mirrored: !page.mirrored,
  originX: WIDTH - page.originX,
});
