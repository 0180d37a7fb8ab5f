/** Which questions are wanted, as the address says it: the same address, the same set. */
import type { Group } from '../atlas/types.ts';
import { MAX_SEED } from '../lecture/random.ts';
import { DIFFICULTIES, KINDS, type Difficulty, type QuestionKind } from '../words/question.ts';
import { groups } from '../words/en/atlas.ts';

export interface QuizWish {
  seed: number;
  count: number;
  /** None: every kind. */
  kinds: readonly QuestionKind[];
  /** None: every group. */
  groups: readonly Group[];
  difficulty: Difficulty;
}

export const MAX_COUNT = 60;
export const USUAL: Omit<QuizWish, 'seed'> = {
  count: 10,
  kinds: [],
  groups: [],
  difficulty: 'medium',
};

export const GROUPS = Object.keys(groups) as readonly Group[];

/** A whole number within limits as typed; undefined for anything else. */
export function wholeIn(text: string, low: number, high: number): number | undefined {
  const trimmed = text.trim();
  const value = Number(trimmed);
  return /^\d{1,7}$/.test(trimmed) && value >= low && value <= high ? value : undefined;
}

const listIn = <T extends string>(text: string | null, known: readonly T[]): T[] => {
  const said = (text ?? '').split('.');
  return known.filter((one) => said.includes(one));
};

/** The part of the address after its `?`. */
export const queryIn = (hash: string): URLSearchParams =>
  new URLSearchParams(hash.split('?')[1] ?? '');

/** What an address wishes for; what is not understood falls back to the usual. */
export function wishIn(query: URLSearchParams, seed: string | null): QuizWish | undefined {
  const number = wholeIn(seed ?? '', 0, MAX_SEED);
  if (number === undefined) return undefined;
  return {
    seed: number,
    count: wholeIn(query.get('count') ?? '', 1, MAX_COUNT) ?? USUAL.count,
    kinds: listIn(query.get('kinds'), KINDS),
    groups: listIn(query.get('groups'), GROUPS),
    difficulty: DIFFICULTIES.find((one) => one === query.get('difficulty')) ?? USUAL.difficulty,
  };
}

/** The wish as the query of an address, without its seed. */
export function queryOf({ count, kinds, groups: of, difficulty }: Omit<QuizWish, 'seed'>): string {
  const query = new URLSearchParams({ count: String(count), difficulty });
  if (kinds.length > 0) query.set('kinds', kinds.join('.'));
  if (of.length > 0) query.set('groups', of.join('.'));
  return query.toString();
}

export const testAddress = (wish: QuizWish): string => `#/quiz?seed=${wish.seed}&${queryOf(wish)}`;
export const stageAddress = (wish: QuizWish): string =>
  `#/quiz/stage/${wish.seed}?${queryOf(wish)}`;
export const paperAddress = (wish: QuizWish): string =>
  `#/quiz/paper/${wish.seed}?${queryOf(wish)}`;

/** A number for a new set. */
export const newSeed = (): number => Math.floor(Math.random() * (MAX_SEED + 1));
