/** A response as the moments it passes through, part by part, the two sides of a pair together. */
import type { LimbPattern, LimbTokens, Reflex } from './types.ts';

/** The parts a response is described by, in the order in which an examiner looks. */
export const BODY_PARTS = ['head', 'trunk', 'arms', 'legs', 'hands', 'feet', 'face'] as const;
export type BodyPart = (typeof BODY_PARTS)[number];

/**
 * What a part does: its tokens, sorted; none = it has no part in the response. `right` is null for
 * head, trunk and face, which have no sides.
 */
export interface Act {
  left: readonly string[];
  right: readonly string[] | null;
}

/** One moment of one variant. `phase` counts from 1; null where the response has no phases. */
export interface BodyMoment {
  pattern: LimbPattern;
  phase: number | null;
  /** The moment the variant is known by. */
  main: boolean;
  acts: Readonly<Record<BodyPart, Act>>;
}

const tokens = (token: string | undefined, also: readonly string[] = []): string[] =>
  [token ?? 'none', ...also].filter((word) => word !== 'none').sort();

/** Every part's act at one moment. */
export function actsOf(moment: LimbTokens): Record<BodyPart, Act> {
  const { also } = moment;
  const single = (token: string | undefined): Act => ({ left: tokens(token), right: null });
  return {
    head: single(moment.head),
    trunk: single(moment.trunk),
    arms: { left: tokens(moment.armL, also?.armL), right: tokens(moment.armR, also?.armR) },
    legs: { left: tokens(moment.legL, also?.legL), right: tokens(moment.legR, also?.legR) },
    hands: { left: tokens(moment.handL), right: tokens(moment.handR) },
    feet: { left: tokens(moment.footL), right: tokens(moment.footR) },
    face: single(moment.face),
  };
}

/** Every moment of a response: each variant, each of its phases. */
export const bodyMoments = ({ patterns }: Pick<Reflex, 'patterns'>): BodyMoment[] =>
  patterns.flatMap((pattern): BodyMoment[] =>
    pattern.phases
      ? pattern.phases.map((phase, index) => ({
          pattern,
          phase: index + 1,
          main: index + 1 === (pattern.mainPhase ?? 1),
          acts: actsOf(phase),
        }))
      : [{ pattern, phase: null, main: true, acts: actsOf(pattern) }],
  );

const sameTokens = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((token, index) => token === b[index]);

/** Whether a part does the same, side for side. */
export const sameAct = (a: Act, b: Act): boolean =>
  sameTokens(a.left, b.left) && sameTokens(a.right ?? [], b.right ?? []);

/** Whether a part has no part in the moment. */
export const isStill = ({ left, right }: Act): boolean =>
  left.length === 0 && (right?.length ?? 0) === 0;
