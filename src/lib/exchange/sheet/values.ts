/** A clinic's words for reflexes, sides, responses and states, each to ours. */
import type { Side } from '../../atlas/types.ts';
import { RESPONSES, STATES, type InfantState, type Response } from '../../case/finding.ts';

/** What a word is read as; `leave` leaves its rows out. */
export const LEAVE = 'leave';
export const SHEET_SIDES = ['left', 'right', 'midline', 'both'] as const;
export type SheetSide = (typeof SHEET_SIDES)[number];

export type Valued = 'reflex' | 'side' | 'response' | 'state';
export const VALUED: readonly Valued[] = ['reflex', 'response', 'side', 'state'];

/** Their word to our code, for each kind of word; a word without one is not decided yet. */
export type Values = Readonly<Record<Valued, Readonly<Record<string, string>>>>;

/**
 * Words that can mean one thing only. A plus or a number is left to the reader: sheets disagree on them.
 * Common practice, no source.
 */
const RESPONSE_WORDS: Readonly<Partial<Record<Response, readonly string[]>>> = {
  'not-elicited': ['absent', 'no response', 'none', 'not present', 'no'],
  weak: ['diminished', 'faint'],
  elicited: ['present', 'normal', 'yes'],
  brisk: ['exaggerated', 'hyperactive'],
  'not-assessable': ['not testable', 'could not be tested'],
};
const SIDE_WORDS: Readonly<Record<SheetSide, readonly string[]>> = {
  left: ['l', 'lt'],
  right: ['r', 'rt'],
  midline: ['mid', 'centre', 'center', 'middle'],
  both: ['b', 'bilateral', 'both sides', 'l+r', 'l/r', 'left and right'],
};
const STATE_WORDS: Readonly<Partial<Record<InfantState, readonly string[]>>> = {
  crying: ['cry', 'cries'],
  'not-recorded': ['unknown', '?', 'n/a'],
};

export const plainWord = (word: string): string =>
  word
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, ' ')
    .trim();

const coded = <T extends string>(
  word: string,
  codes: readonly T[],
  words: Readonly<Partial<Record<T, readonly string[]>>>,
): T | undefined => {
  const said = plainWord(word);
  return codes.find((code) => plainWord(code) === said || words[code]?.includes(said));
};

/** Finds a reflex by any of its names; undefined for none that is surely meant. */
export type FindReflex = (word: string) => string | undefined;

/** What a word is read as before anybody has said otherwise. */
export function guessValue(kind: Valued, word: string, findReflex: FindReflex): string | undefined {
  switch (kind) {
    case 'reflex':
      return findReflex(word);
    case 'response':
      return coded(word, RESPONSES, RESPONSE_WORDS);
    case 'side':
      return coded(word, SHEET_SIDES, SIDE_WORDS);
    case 'state':
      return coded(word, STATES, STATE_WORDS);
  }
}

/** What a word is read as; undefined while that is not decided. */
export const readAs = (values: Values, kind: Valued, word: string): string | undefined =>
  Object.hasOwn(values[kind], word) ? values[kind][word] : undefined;

/** The sides of a word, given those the reflex has: none said is the only one there is. */
export function sidesOf(side: string | undefined, has: readonly Side[]): Side[] | undefined {
  if (side === 'both') return ['left', 'right'];
  if (side !== undefined) return [side as Side];
  return has.length === 1 ? [...has] : undefined;
}
