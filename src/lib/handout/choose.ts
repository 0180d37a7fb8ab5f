/** Which three to six reflexes a family's page tells of. */
import { MAX_TOLD } from '../case/shape.ts';
import { isTalked, type Stands } from './stands.ts';

export { MAX_TOLD };

/**
 * So many are told of where so many were looked at: few enough that each is understood, and has its
 * figure on paper. Only what asks for attention brings more. A choice of ours.
 */
export const FILL_TO = 4;

/**
 * What asks for attention brings so many, and no more by itself: the rest is to be talked about, and
 * a clinician may choose one more. A choice of ours.
 */
export const BRING_TO = 5;

const MOVING: ReadonlySet<string> = new Set(['closing', 'may-still-appear']);
const UNMOVED: ReadonlySet<string> = new Set(['same', 'first']);

/** How much a reflex matters to the page, 0 the most: discuss, watch, changed, about to change, the rest. */
export function rankOf({ attention, move, told }: Stands): number {
  if (isTalked(attention)) return 0;
  if (attention === 'watch') return 1;
  if (!UNMOVED.has(move)) return 2;
  if (told.some(({ found }) => MOVING.has(found.judged.verdict))) return 3;
  return attention === 'not-judged' ? 4 : 5;
}

/** The last rank that brings more: what is to be discussed or watched. */
const MATTERS = 1;

export interface Choice {
  told: readonly Stands[];
  /** To be discussed and not told of: the page says that it is to be talked about. */
  toTalkAbout: readonly Stands[];
  isChosen: boolean;
}

/**
 * The choice for a page. A reflex the clinician chose that was not looked at is passed over; one that
 * asks to be discussed and was not chosen, or found no room, is to be talked about.
 */
export function choose(stands: readonly Stands[], chosen: readonly string[] | null): Choice {
  const ranked = stands.toSorted((a, b) => rankOf(a) - rankOf(b));
  const mattering = ranked.filter((one) => rankOf(one) <= MATTERS).length;
  const told = chosen
    ? ranked.filter(({ reflex }) => chosen.includes(reflex.id))
    : ranked.slice(0, Math.min(BRING_TO, Math.max(mattering, FILL_TO)));
  return {
    told,
    toTalkAbout: ranked.filter((one) => isTalked(one.attention) && !told.includes(one)),
    isChosen: chosen !== null,
  };
}
