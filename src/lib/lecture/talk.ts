/**
 * A talk: steps over the live chart. A step says which lanes, which age, what range, which sources
 * and which figure, with a caption for the hall and a note for the speaker. It names things by id and
 * holds none of them, so that a talk shows what the atlas says on the day it is given.
 */
import type { AxisDay } from '../age/axis.ts';
import type { Atlas } from '../atlas/atlas.ts';
import type { Stretch } from '../chart/model.ts';

/** How much of an invented child is shown. */
export interface ChildShown {
  id: string;
  /** Its findings up to and including this visit, counted from 1; 0 shows the ages alone. */
  visits: number;
  /** Whether the verdicts on the last of these visits are shown, or the hall judges first. */
  verdicts: boolean;
}

/** What a step is read by: all sources, those the app judges by where nothing is chosen, or some by id. */
export type TalkSources = 'all' | 'default' | readonly string[];

export interface StepView {
  /** Reflexes from top to bottom, by id. */
  lanes: readonly string[];
  age: AxisDay;
  range: Stretch;
  sources: TalkSources;
  /** Lanes that show each source's own window. */
  opened: readonly string[];
  /** Sequences that stand under the lanes, by id. */
  orders: readonly string[];
  /** The reflex whose figure stands beside the chart. */
  figure?: string | undefined;
  /** The lane that stands out. */
  lit?: string | undefined;
  child?: ChildShown | undefined;
}

export interface TalkStep extends StepView {
  caption: string;
  note: string;
}

export interface Talk {
  title: string;
  /** What the talk is for, in a sentence or two. */
  about: string;
  steps: readonly TalkStep[];
}

/** The invented children a talk may show. */
export const TALK_CHILDREN = ['kestrel'] as const;

/** What a talk names that is not at hand. It stays in the talk and is left out of the picture. */
export interface Missing {
  reflexes: readonly string[];
  sources: readonly string[];
  orders: readonly string[];
  children: readonly string[];
}

export function missingIn(
  talk: Talk,
  atlas: Pick<Atlas, 'reflexes' | 'sources' | 'sequences'>,
): Missing {
  const orders = new Set(atlas.sequences.map((sequence) => sequence.id));
  const reflexes = new Set<string>();
  const sources = new Set<string>();
  const unknownOrders = new Set<string>();
  const children = new Set<string>();
  for (const step of talk.steps) {
    for (const id of [...step.lanes, ...step.opened, step.figure, step.lit])
      if (id !== undefined && !atlas.reflexes.has(id)) reflexes.add(id);
    if (typeof step.sources !== 'string')
      for (const id of step.sources) if (!atlas.sources.has(id)) sources.add(id);
    for (const id of step.orders) if (!orders.has(id)) unknownOrders.add(id);
    const child = step.child?.id;
    if (child !== undefined && !(TALK_CHILDREN as readonly string[]).includes(child))
      children.add(child);
  }
  return {
    reflexes: [...reflexes],
    sources: [...sources],
    orders: [...unknownOrders],
    children: [...children],
  };
}

export const lacks = (missing: Missing): boolean =>
  Object.values(missing).some((ids: readonly string[]) => ids.length > 0);

/** The steps with one of them at another place; places out of range leave them as they are. */
export function movedStep(
  steps: readonly TalkStep[],
  from: number,
  to: number,
): readonly TalkStep[] {
  const step = steps[from];
  if (!step || from === to || to < 0 || to >= steps.length) return steps;
  return steps.toSpliced(from, 1).toSpliced(to, 0, step);
}

/** A step's place within a talk: the nearest there is. */
export const stepWithin = (step: number, steps: number): number =>
  Math.min(Math.max(Math.trunc(step) || 0, 0), Math.max(0, steps - 1));

/**
 * The part of the lanes in sight: as many as can be read at once, fewer when zoomed in.
 * @param capacity how many lanes the picture has room for at a legible size
 * @param wanted how many are wanted: all, or a few when zoomed
 * @param at the first one in sight, moved just far enough that the slice is full
 */
export function lanesInSight(
  lanes: readonly string[],
  capacity: number,
  wanted: number,
  at: number,
): { lanes: readonly string[]; from: number } {
  const count = Math.max(1, Math.min(capacity, wanted, lanes.length));
  const from = Math.min(Math.max(0, Math.trunc(at) || 0), Math.max(0, lanes.length - count));
  return { lanes: lanes.slice(from, from + count), from };
}
