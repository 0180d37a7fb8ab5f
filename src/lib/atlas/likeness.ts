/**
 * How alike two responses look, computed from their limb patterns: what is most easily mistaken for
 * what. Ages and stimuli play no part; they are what tells look-alikes apart.
 */
import type { LimbPattern, LimbTokens, Reflex } from './types.ts';

type Part =
  'head' | 'trunk' | 'armL' | 'armR' | 'legL' | 'legR' | 'handL' | 'handR' | 'footL' | 'footR';

/** How much each part catches the eye. Choices of ours: limbs more than hands, hands more than feet. */
const WEIGHT: Readonly<Record<Part, number>> = {
  head: 1,
  trunk: 1,
  armL: 1.5,
  armR: 1.5,
  legL: 1.5,
  legR: 1.5,
  handL: 1,
  handR: 1,
  footL: 0.75,
  footR: 0.75,
};
const FACE_WEIGHT = 1;

const PARTS = Object.keys(WEIGHT) as Part[];

/** The part of the other limb that does the same there: a hand that closes, a foot that curls. */
const HOMOLOGUE: Partial<Record<Part, Part>> = {
  armL: 'legL',
  armR: 'legR',
  legL: 'armL',
  legR: 'armR',
  handL: 'footL',
  handR: 'footR',
  footL: 'handL',
  footR: 'handR',
};
const HOMOLOGUE_SHARE = 0.5;

const MIRROR: Readonly<Record<Part, Part>> = {
  head: 'head',
  trunk: 'trunk',
  armL: 'armR',
  armR: 'armL',
  legL: 'legR',
  legR: 'legL',
  handL: 'handR',
  handR: 'handL',
  footL: 'footR',
  footR: 'footL',
};

const swapSide = (token: string): string =>
  token.endsWith('-left')
    ? token.replace(/left$/, 'right')
    : token.endsWith('-right')
      ? token.replace(/right$/, 'left')
      : token;

/** One moment of a response as plain tokens. */
type Tokens = Readonly<Record<Part, string>> & { face: string };

function tokensOf(moment: LimbTokens): Tokens {
  const tokens = Object.fromEntries(PARTS.map((part) => [part, moment[part]]));
  return { ...(tokens as Record<Part, string>), face: moment.face ?? 'none' };
}

/** Left for right, by computation. */
function mirrored(tokens: Tokens): Tokens {
  const swapped = Object.fromEntries(PARTS.map((part) => [part, swapSide(tokens[MIRROR[part]])]));
  return { ...(swapped as Record<Part, string>), face: swapSide(tokens.face) };
}

/** Every moment a response passes through: each variant, each phase. */
const everyMoment = (patterns: readonly LimbPattern[]): Tokens[] =>
  patterns.flatMap((pattern) => (pattern.phases ?? [pattern]).map(tokensOf));

/** The moment each variant is known by. */
const mainMoments = (patterns: readonly LimbPattern[]): Tokens[] => patterns.map(tokensOf);

/** Shared movement over all movement, 0 to 1; parts that do nothing in both count for nothing. */
function momentLikeness(a: Tokens, b: Tokens): number {
  let shared = 0;
  let all = 0;
  for (const part of PARTS) {
    const weight = WEIGHT[part];
    const [x, y] = [a[part], b[part]];
    if (x === 'none' && y === 'none') continue;
    all += weight;
    if (x === y) shared += weight;
    else {
      const twin = HOMOLOGUE[part];
      if (twin && x !== 'none' && x === b[twin]) shared += weight * HOMOLOGUE_SHARE;
    }
  }
  if (a.face !== 'none' || b.face !== 'none') {
    all += FACE_WEIGHT;
    if (a.face === b.face) shared += FACE_WEIGHT;
  }
  return all === 0 ? 0 : Math.min(1, shared / all);
}

/** The likeness of the two moments that look most alike, either side round. */
function closest(as: readonly Tokens[], bs: readonly Tokens[]): number {
  let most = 0;
  for (const a of as)
    for (const b of bs)
      most = Math.max(
        most,
        momentLikeness(a, b),
        momentLikeness(b, a),
        momentLikeness(a, mirrored(b)),
        momentLikeness(mirrored(b), a),
      );
  return most;
}

/** A response seen in another position is less easily mistaken. A choice of ours. */
const OTHER_POSITION = 0.75;

type Seen = Pick<Reflex, 'patterns' | 'position'>;

/**
 * How easily one response is taken for another, 0 to 1: mostly the moments of any phase that look
 * most alike, and a little the moments they are known by; less where the infant lies or sits otherwise.
 */
export function likenessOf(a: Seen, b: Seen): number {
  const known = closest(mainMoments(a.patterns), mainMoments(b.patterns));
  const passing = closest(everyMoment(a.patterns), everyMoment(b.patterns));
  return (0.15 * known + 0.85 * passing) * (a.position === b.position ? 1 : OTHER_POSITION);
}

export interface LookAlike {
  a: Reflex;
  b: Reflex;
  likeness: number;
}

/** Every pair of different reflexes at least this much alike, the most alike first. */
export function lookAlikes(reflexes: readonly Reflex[], atLeast = 0.4): LookAlike[] {
  const pairs: LookAlike[] = [];
  reflexes.forEach((a, i) => {
    for (const b of reflexes.slice(i + 1)) {
      const likeness = likenessOf(a, b);
      if (likeness >= atLeast) pairs.push({ a, b, likeness });
    }
  });
  return pairs.sort((p, q) => q.likeness - p.likeness);
}

/** The reflexes most easily mistaken for one, the most alike first. */
export const mistakenFor = (
  reflex: Reflex,
  reflexes: readonly Reflex[],
  atLeast = 0.4,
): { reflex: Reflex; likeness: number }[] =>
  reflexes
    .filter((other) => other.id !== reflex.id)
    .map((other) => ({ reflex: other, likeness: likenessOf(reflex, other) }))
    .filter(({ likeness }) => likeness >= atLeast)
    .sort((a, b) => b.likeness - a.likeness);
