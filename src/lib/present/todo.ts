/**
 * What is to be done about a finding, as codes: what to repeat and how, who is asked, and by when to look again.
 * The dates are those that pull the next visit forward. That a fixed posture is filmed for the team, and that a
 * difference is compared side by side, is common practice, no source.
 */
import { addDays, type CivilDate } from '../age/civil.ts';
import type { JudgedMilestone } from '../judge/milestones.ts';
import {
  DISCUSSED_AGAIN_DAYS,
  SEEN_AGAIN_DAYS,
  WATCHED_AGAIN_DAYS,
} from '../judge/reading/constants.ts';
import type { Attention } from '../judge/rules/rule.ts';
import type { Disagreement } from './differ.ts';
import type { Entry } from './verdictEntries.ts';

export type Todo =
  | { code: 'doctor' }
  /** The examiners of the day are to agree on one answer. */
  | { code: 'agree' }
  /** To be tried again, or seen again, in a calm and alert infant. */
  | { code: 'again' | 'calm' | 'alert' | 'confirm' }
  | { code: 'sides' }
  | { code: 'film' }
  | { code: 'team' }
  | { code: 'carer' }
  | { code: 'look'; by: CivilDate }
  /** No chosen source gives an age: it is kept, and read when one does. */
  | { code: 'kept' };

/** By when what asks is looked at again; undefined where nothing does. */
function lookBy(attention: Attention, seenBefore: boolean, on: CivilDate): Todo[] {
  if (attention === 'discuss') return [{ code: 'look', by: addDays(on, DISCUSSED_AGAIN_DAYS) }];
  if (attention !== 'watch') return [];
  const days = seenBefore ? SEEN_AGAIN_DAYS : WATCHED_AGAIN_DAYS;
  return [{ code: 'look', by: addDays(on, days) }];
}

/** What is to be repeated, and in which state; nothing where it was tried and seen as it should be. */
function repeat({ lead, attention }: Entry): Todo[] {
  const { judged, caps, raised } = lead;
  if (judged.verdict === 'not-judged')
    return [{ code: judged.why.code === 'silent' ? 'kept' : 'alert' }];
  const isCapped = (code: string): boolean => caps.some((cap) => cap.code === code);
  if (isCapped('crying') || raised.some(({ crying }) => crying)) return [{ code: 'calm' }];
  if (isCapped('state-unknown')) return [{ code: 'alert' }];
  if (isCapped('tried-once')) return [{ code: 'again' }];
  if (raised.some(({ flag, triedAgain }) => flag === 'seen-before' && !triedAgain))
    return [{ code: 'again' }];
  return attention === 'discuss' ? [{ code: 'confirm' }] : [];
}

/**
 * What to do about an entry of a day, in the order of doing it; nothing where nothing is flagged.
 * @param differing where the examiners of the day answered unlike
 */
export function todoOf(
  entry: Entry,
  on: CivilDate,
  differing: readonly Pick<Disagreement, 'agreed'>[],
): Todo[] {
  const { lead, attention } = entry;
  if (attention === 'today') return [{ code: 'doctor' }];
  const agree: Todo[] = differing.some(({ agreed }) => !agreed) ? [{ code: 'agree' }] : [];
  const first = [...agree, ...repeat(entry)];
  if (attention === 'fits') return agree;
  if (attention === 'not-judged') return first;
  const flags = new Set(lead.raised.map(({ flag }) => flag));
  return [
    ...first,
    ...(flags.has('uneven') ? [{ code: 'sides' as const }] : []),
    ...(flags.has('obligatory') ? [{ code: 'film' as const }] : []),
    ...(attention === 'discuss' ? [{ code: 'team' as const }] : []),
    ...lookBy(attention, flags.has('seen-before'), on),
  ];
}

/** What to do about a milestone of a day. */
export function todoOfMilestone({ attention, why }: JudgedMilestone, on: CivilDate): Todo[] {
  if (attention === 'today') return [{ code: 'doctor' }];
  const isSeenBefore = why === 'seen-before';
  return [
    ...(isSeenBefore ? [{ code: 'carer' as const }] : []),
    ...(attention === 'discuss' ? [{ code: 'team' as const }] : []),
    ...lookBy(attention, isSeenBefore, on),
  ];
}

/** How many findings of a day ask for how much: reflexes, and the milestones that ask for something. */
export type Counts = Readonly<Record<Attention, number>>;

export function countsOf(
  entries: readonly Pick<Entry, 'attention'>[],
  milestones: readonly Pick<JudgedMilestone, 'attention'>[],
): Counts {
  const counts = { 'not-judged': 0, fits: 0, watch: 0, discuss: 0, today: 0 };
  for (const { attention } of entries) counts[attention] += 1;
  for (const { attention } of milestones)
    if (attention !== 'fits' && attention !== 'not-judged') counts[attention] += 1;
  return counts;
}
