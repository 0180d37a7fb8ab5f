/** What a reflex means today, as codes: from the verdict, its firmness and what was raised on top. */
import type { Side } from '../atlas/types.ts';
import { isElicited } from '../case/finding.ts';
import { attentionOf, worstFirst } from '../judge/judge.ts';
import { isAsking, type Attention, type Raised } from '../judge/rules/rule.ts';
import type { Meaning } from '../words/family.ts';
import { isTalked, type Told } from './stands.ts';

export interface Meant {
  meaning: Meaning;
  /** Whether every source that speaks agrees. What a rule raised rests on none and is firm. */
  firm: boolean;
}

/** What sides mean together; a meaning names the sides it is true of. */
export interface MeantOf extends Meant {
  sides: readonly Side[];
}

const TALK: Readonly<Record<string, Meaning>> = {
  obligatory: 'talk-held',
  returned: 'talk-returned',
  uneven: 'talk-sides',
  lost: 'talk-lost',
};
const WATCH: Readonly<Record<string, Meaning>> = {
  uneven: 'watch-sides',
  weak: 'watch-faint',
  brisk: 'watch-strong',
  'seen-before': 'watch-lost',
};

const ofRaised = ({ flag, asks, common }: Raised): Meaning | undefined => {
  if (isTalked(asks)) return TALK[flag];
  return flag === 'uneven' && common ? 'watch-sides-common' : WATCH[flag];
};

/** Caps by which healthy infants may lack a response, and by which it is to be looked for again first. */
const MAY_LACK: ReadonlySet<string> = new Set(['counted', 'tells-little']);
const AGAIN: ReadonlySet<string> = new Set(['tried-once', 'state-unknown']);

const CANNOT_TELL = {
  'not-assessable': 'cannot-tell-tried',
  'unfit-state': 'cannot-tell-state',
  silent: 'cannot-tell-silent',
} as const;

/** What the verdict alone means. */
function ofVerdict({ found: { finding, judged, caps }, wasThere }: Told): Meant {
  if (judged.verdict === 'not-judged') return { meaning: CANNOT_TELL[judged.why.code], firm: true };
  const { firm } = judged;
  const asks = attentionOf(judged, caps);
  switch (judged.verdict) {
    case 'persisting':
      return { meaning: asks === 'discuss' ? 'talk-still-there' : 'watch-still-there', firm };
    case 'missing':
      // what was there before is not still to come
      if (wasThere && !caps.some(({ code }) => AGAIN.has(code)))
        return { meaning: asks === 'discuss' ? 'talk-gone' : 'watch-gone', firm };
      // never "we expect to see it" of what healthy infants may lack
      if (caps.some(({ code }) => MAY_LACK.has(code))) return { meaning: 'watch-may-lack', firm };
      if (caps.some(({ code }) => AGAIN.has(code))) return { meaning: 'watch-again', firm };
      return { meaning: asks === 'discuss' ? 'talk-not-seen' : 'watch-not-seen', firm };
    case 'early':
      return { meaning: asks === 'watch' ? 'watch-soon' : 'soon', firm };
    case 'closing':
      return { meaning: 'fading', firm };
    case 'may-still-appear':
      return { meaning: wasThere ? 'gone-may-come' : 'may-come', firm };
    case 'fits':
      return { meaning: isElicited(finding.response) ? 'there' : 'away', firm };
  }
}

/** Every reason a finding has for what it asks for, and what its verdict means when nothing asks. */
export function meaningsOf(told: Told): Meant[] {
  const { attention, judged, raised, caps } = told.found;
  const flags = raised
    .filter(({ asks }) => asks === attention || (attention === 'today' && asks === 'discuss'))
    .flatMap((one) => ofRaised(one) ?? [])
    .map((meaning): Meant => ({
      meaning,
      // that it is often clearer is known only where every source expects it by now
      firm: meaning !== 'watch-faint' || (judged.verdict === 'fits' && judged.firm),
    }));
  const own: Attention = attentionOf(judged, caps);
  // of what was seen before we want to look again, whatever the guides say of this age
  if (flags.some(({ meaning }) => meaning === 'talk-lost' || meaning === 'watch-lost'))
    return flags;
  // what has come back is not "still" there
  if (judged.verdict === 'persisting' && flags.some(({ meaning }) => meaning === 'talk-returned'))
    return flags;
  return own === attention || flags.length === 0 ? [...flags, ofVerdict(told)] : flags;
}

/** What a reflex means over its sides: all reasons for the most that any side asks for, each once. */
export function meantBy(told: readonly Told[]): MeantOf[] {
  const [lead] = worstFirst(told.map(({ found }) => found));
  if (!lead) return [];
  const asks = isAsking(lead.attention);
  const of = asks
    ? told.filter(({ found }) => found.attention === lead.attention)
    : told.filter(({ found }) => found === lead);
  const meant = new Map<Meaning, MeantOf>();
  for (const one of of)
    for (const { meaning, firm } of meaningsOf(one)) {
      const before = meant.get(meaning);
      const sides = [...(before?.sides ?? []), one.found.finding.side];
      meant.set(meaning, { meaning, firm: firm && (before?.firm ?? true), sides });
    }
  return [...meant.values()];
}
