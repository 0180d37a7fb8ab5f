/**
 * What a visit asks for beyond single verdicts: the second try of what was missing, several to be discussed
 * together, and what should not wait until another day.
 */
import type { CivilDate } from '../../age/civil.ts';
import type { Side } from '../../atlas/types.ts';
import type { Visit } from '../../case/case.ts';
import { isElicited, testOf, triesOf, type Finding } from '../../case/finding.ts';
import {
  TODAY_FEEDING_FROM,
  TODAY_FEEDING_UNTIL,
  TODAY_LOST,
  TOGETHER,
  TRIES,
} from './constants.ts';
import { OTHER_SIDE } from './days.ts';
import type { LostMilestone, NotNow } from './lost.ts';

const FEEDING = ['sucking', 'swallowing'] as const;

/** Whether any finding of a reflex at some visits satisfies a test. */
const anyOf = (visits: readonly Visit[], test: (finding: Finding) => boolean): boolean =>
  visits.some(({ findings }) => findings.some(test));

const missing = (visits: readonly Visit[], reflex: string): boolean =>
  anyOf(visits, (f) => f.reflex === reflex && f.response === 'not-elicited') &&
  !anyOf(visits, (f) => f.reflex === reflex && isElicited(f.response));

/** How often a side was tried on a day without an answer, over all examiners. */
const triesOn = (visits: readonly Visit[], on: CivilDate, test: string, side: Side): number =>
  visits
    .filter((visit) => visit.on === on)
    .flatMap(({ findings }) => findings)
    .filter((f) => testOf(f) === test && f.side === side && f.response === 'not-elicited')
    .reduce((sum, f) => sum + triesOf(f), 0);

/**
 * Whether a response that was not elicited was looked for often enough to be called missing: twice on the
 * day, counted over its examiners, or on another day too. Sucking with swallowing, and one side beside one
 * that answers, need no second try.
 * @param missingOn whether this side was missing, by its verdict, on another day: one on which it was not
 * yet expected is no second try
 */
export function triedEnough(
  finding: Finding,
  on: CivilDate,
  visits: readonly Visit[],
  missingOn: (on: CivilDate) => boolean,
): boolean {
  const { reflex, side } = finding;
  const test = testOf(finding);
  if (triesOn(visits, on, test, side) >= TRIES) return true;
  const sameDay = visits.filter((visit) => visit.on === on);
  if (FEEDING.some((id) => id === reflex) && FEEDING.every((id) => missing(sameDay, id)))
    return true;
  const other = OTHER_SIDE[side];
  if (
    other &&
    anyOf(sameDay, (f) => testOf(f) === test && f.side === other && isElicited(f.response))
  )
    return true;
  return [...new Set(visits.map((visit) => visit.on))].some((day) => day !== on && missingOn(day));
}

/** The reflexes to be discussed at one visit, sides counted once, where they are enough to be said together. */
export function together(
  findings: readonly { reflex: string; asks: string }[],
  asksMore: ReadonlySet<string> = new Set(['discuss', 'today']),
): string[] {
  const reflexes = new Set(
    findings.filter(({ asks }) => asksMore.has(asks)).map(({ reflex }) => reflex),
  );
  return reflexes.size >= TOGETHER ? [...reflexes] : [];
}

/**
 * Where a reason not to wait comes from. `published`: a pathway asks for it in as many words; `ours`: no
 * pathway that was read names it so, and the nearest one is named.
 */
export interface TodayBasis {
  basis: 'published' | 'ours';
  source: string;
}

export type TodayCode = 'lost-milestone' | 'lost-reactions' | 'no-feeding';

/**
 * - Loss of motor skills: NICE NG127 (2019; read in two summaries) refers it to paediatric neurology or
 *   neurodevelopment by local pathways, and a new abnormality of gait immediately to acute paediatrics.
 *   That any lost milestone which the carer confirms is seen the same day is ours, and stricter.
 * - Lost lifelong reactions: no pathway that was read names them; taken as loss of motor skills. Ours.
 * - Feeding: a children's hospital's guideline on the seriously unwell young infant lists poor feeding and
 *   asks for early review by a senior clinician; a hospital's advice for the first month has a poor suck or
 *   one that cannot be sustained call for a doctor at once, by day or night (both read). That a young
 *   infant who cannot feed is referred urgently is also in the WHO booklet on illness under 2 months
 *   (memory). That both reflexes must be missing, in an alert infant of 37 weeks or more, is ours. The
 *   guideline's young infant is under 3 months: later the sucking reflex may have integrated, and one missed
 *   swallow would make a healthy child urgent.
 */
export const TODAY_BASIS: Readonly<Record<TodayCode, TodayBasis>> = {
  'lost-milestone': { basis: 'ours', source: 'NICE NG127, 2019: motor regression; gait' },
  'lost-reactions': { basis: 'ours', source: 'NICE NG127, 2019: motor regression' },
  'no-feeding': {
    basis: 'published',
    source: 'Royal Children’s Hospital Melbourne: seriously unwell neonate and young infant',
  },
};

export interface Today {
  code: TodayCode;
  on: CivilDate;
  /** Reflexes or the milestone it is about. */
  about: readonly string[];
}

const ALERT: ReadonlySet<Finding['state']> = new Set(['quiet-alert', 'active-alert']);

/** Neither sucking nor swallowing on a day, each looked for while alert, and elicited by nobody. */
function noFeeding(visits: readonly Visit[], on: CivilDate, postmenstrualDays: number): boolean {
  if (postmenstrualDays < TODAY_FEEDING_FROM || postmenstrualDays >= TODAY_FEEDING_UNTIL)
    return false;
  const sameDay = visits.filter((visit) => visit.on === on);
  return FEEDING.every(
    (reflex) =>
      missing(sameDay, reflex) &&
      anyOf(
        sameDay,
        (f) => f.reflex === reflex && f.response === 'not-elicited' && ALERT.has(f.state),
      ),
  );
}

/**
 * What should not wait, found on one day.
 * @param postmenstrualDays the child's age on that day
 * @param notNow and lost as found in this child by `lost.ts`
 */
export function todayOn(
  on: CivilDate,
  postmenstrualDays: number,
  visits: readonly Visit[],
  notNow: readonly NotNow[],
  lost: readonly LostMilestone[],
): Today[] {
  const found: Today[] = [];
  for (const { milestone, on: day, asks } of lost)
    if (day === on && asks === 'today')
      found.push({ code: 'lost-milestone', on, about: [milestone] });
  const triedTwice = ({ test, side, days: missed }: NotNow): boolean =>
    missed > 1 || triesOn(visits, on, test, side) >= TRIES;
  const reactions = notNow.filter(
    (one) =>
      one.on === on &&
      one.lifelong &&
      // what is lost only for standing beside something else is no reason to hurry
      one.lost.some((why) => why !== 'beside-another') &&
      triedTwice(one),
  );
  const about = [...new Set(reactions.map(({ reflex }) => reflex))];
  if (about.length >= TODAY_LOST) found.push({ code: 'lost-reactions', on, about });
  if (noFeeding(visits, on, postmenstrualDays))
    found.push({ code: 'no-feeding', on, about: [...FEEDING] });
  return found;
}
