/**
 * What tells responses apart, computed from stimulus, position, limb pattern and ages: as rows for a
 * table, and as the few points a sentence is made of. Codes only; the words are elsewhere.
 */
import {
  BODY_PARTS,
  bodyMoments,
  isStill,
  sameAct,
  type Act,
  type BodyMoment,
  type BodyPart,
} from './moments.ts';
import type { Position, Reflex, StimulusKind } from './types.ts';

/** Ages in axis days over all sources; null where none dates it. */
export interface AgeSpans {
  appears: { from: number; to: number } | null;
  integrates: { from: number; to: number } | null;
  lifelong: boolean;
}

/** How the ages of two responses lie to each other. */
export type AgeRelation = 'first-gone-before-second' | 'second-gone-before-first' | 'overlap';

/** One line of the table: the same aspect of every response, in their order. */
export type DifferenceRow =
  | { aspect: 'stimulus'; same: boolean; values: readonly StimulusKind[] }
  | { aspect: 'position'; same: boolean; values: readonly Position[] }
  /** `phase` counts from 1: the first phase, then the second; null in a response that has ended by then. */
  | { aspect: BodyPart; phase: number; same: boolean; values: readonly (Act | null)[] }
  | { aspect: 'ages'; same: boolean; values: readonly AgeSpans[] };

/** The moments of one variant in order; a response without phases has one. */
const phasesOf = (reflex: Reflex, variant: string): BodyMoment[] =>
  bodyMoments(reflex).filter(({ pattern }) => pattern.variant === variant);

const likeness = (a: BodyMoment, b: BodyMoment): number =>
  BODY_PARTS.filter((part) => !isStill(a.acts[part]) && sameAct(a.acts[part], b.acts[part])).length;

/** The variant of each of two responses in whose main moments most parts do the same; else the first. */
export function closestVariants(a: Reflex, b: Reflex): [string, string] {
  let most = -1;
  let found: [string, string] = [a.patterns[0]?.variant ?? '', b.patterns[0]?.variant ?? ''];
  for (const x of bodyMoments(a).filter((m) => m.main))
    for (const y of bodyMoments(b).filter((m) => m.main)) {
      const same = likeness(x, y);
      if (same > most) {
        most = same;
        found = [x.pattern.variant, y.pattern.variant];
      }
    }
  return found;
}

const allSame = <T>(values: readonly T[], same: (a: T, b: T) => boolean): boolean =>
  values.slice(1).every((value) => same(values[0]!, value));

const sameSpan = (
  a: { from: number; to: number } | null,
  b: { from: number; to: number } | null,
): boolean => a?.from === b?.from && a?.to === b?.to;

/** A variant of a response that is looked at, with its ages. */
export interface Compared {
  reflex: Reflex;
  variant: string;
  ages: AgeSpans;
}

/**
 * The table of two to four responses: stimulus, position, every part that moves in any of them (a
 * line for each phase there is), and the ages.
 */
export function differenceRows(compared: readonly Compared[]): DifferenceRow[] {
  const moments = compared.map(({ reflex, variant }) => phasesOf(reflex, variant));
  const phases = Math.max(...moments.map((all) => all.length));
  const rows: DifferenceRow[] = [];
  const stimuli = compared.map(({ reflex }) => reflex.stimulus);
  const positions = compared.map(({ reflex }) => reflex.position);
  const is = <T>(a: T, b: T): boolean => a === b;
  rows.push({ aspect: 'stimulus', same: allSame(stimuli, is), values: stimuli });
  rows.push({ aspect: 'position', same: allSame(positions, is), values: positions });
  for (const part of BODY_PARTS)
    for (let phase = 1; phase <= phases; phase++) {
      const values = moments.map((all) => all[phase - 1]?.acts[part] ?? null);
      if (values.every((act) => act === null || isStill(act))) continue;
      const same = allSame(values, (a, b) => a !== null && b !== null && sameAct(a, b));
      rows.push({ aspect: part, phase, same, values });
    }
  const ages = compared.map((one) => one.ages);
  const same = allSame(
    ages,
    (a, b) =>
      sameSpan(a.appears, b.appears) &&
      sameSpan(a.integrates, b.integrates) &&
      a.lifelong === b.lifelong,
  );
  rows.push({ aspect: 'ages', same, values: ages });
  return rows;
}

/** Whether the last source lets one go before the first has the other come. */
export function ageRelation(a: AgeSpans, b: AgeSpans): AgeRelation {
  const goneBefore = (x: AgeSpans, y: AgeSpans): boolean =>
    !x.lifelong && x.integrates !== null && y.appears !== null && x.integrates.to <= y.appears.from;
  if (goneBefore(a, b)) return 'first-gone-before-second';
  if (goneBefore(b, a)) return 'second-gone-before-first';
  return 'overlap';
}

/** A part that one response moves otherwise than the other. */
export interface PartDifference {
  part: BodyPart;
  first: Act;
  second: Act;
}

/** What a sentence on two responses is made of, in the order in which it is said. */
export interface TellApart {
  /** Parts that move alike in both. */
  same: readonly BodyPart[];
  parts: readonly PartDifference[];
  /** Null where both are elicited alike. */
  stimulus: readonly [StimulusKind, StimulusKind] | null;
  position: readonly [Position, Position] | null;
  ages: AgeRelation;
}

/** What tells the second response from the first, at the moments each is known by. */
export function tellApart(a: Compared, b: Compared): TellApart {
  const main = ({ reflex, variant }: Compared): BodyMoment | undefined =>
    phasesOf(reflex, variant).find((moment) => moment.main);
  const [x, y] = [main(a), main(b)];
  const same: BodyPart[] = [];
  const parts: PartDifference[] = [];
  if (x && y)
    for (const part of BODY_PARTS) {
      const [first, second] = [x.acts[part], y.acts[part]];
      if (isStill(first) && isStill(second)) continue;
      if (sameAct(first, second)) same.push(part);
      else parts.push({ part, first, second });
    }
  const pair = <T>(first: T, second: T): readonly [T, T] | null =>
    first === second ? null : [first, second];
  return {
    same,
    parts,
    stimulus: pair(a.reflex.stimulus, b.reflex.stimulus),
    position: pair(a.reflex.position, b.reflex.position),
    ages: ageRelation(a.ages, b.ages),
  };
}
