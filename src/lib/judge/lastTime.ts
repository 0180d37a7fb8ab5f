/** What the last visits left of one reflex: an open question, no answer, or a change seen through. */
import { isAsking } from './rules/rule.ts';
import type { CivilDate } from '../age/civil.ts';
import { sidesOf } from '../atlas/core.ts';
import type { Reflex, Side } from '../atlas/types.ts';
import type { Visit } from '../case/case.ts';
import { isAnswer, isElicited, testOf, type Finding } from '../case/finding.ts';
import { totalsOf, type Totals } from './expectation.ts';
import { worstFirst, type JudgedFinding, type JudgedVisit } from './judge.ts';
import { EMERGING, INTEGRATED, INTEGRATING, NOT_YET } from './phases.ts';

/** What stands from last time. */
export type LastTime =
  | { code: 'never' }
  /** Looked at, and no answer since: not assessable, or missing in a state that does not allow judging. */
  | { code: 'unread'; on: CivilDate; finding: Finding }
  /** To be looked at again: the verdict that asks for most, with every flag on any side. */
  | {
      code: 'open';
      on: CivilDate;
      verdict: string;
      flags: readonly string[];
      /** Missing once, so that a second try is asked for: on these sides. */
      again: readonly Side[];
    }
  /** Seen to be there or gone on every side, with no change ahead. */
  | { code: 'settled'; on: CivilDate; now: 'there' | 'gone' }
  | { code: 'answered'; on: CivilDate };

/** A share of the sources too small to matter: one voice in ten. A choice of ours. */
export const FEW = 0.1;

/** Whether a judged finding leaves something to look at again. */
const isOpen = ({ judged, attention }: JudgedFinding): boolean =>
  isAsking(attention) || judged.verdict === 'closing' || judged.verdict === 'may-still-appear';

/** Whether a finding was missing once: not tried twice, or seen before and not now. */
const asksAgain = ({ caps, raised, attention }: JudgedFinding): boolean =>
  isAsking(attention) &&
  (caps.some(({ code }) => code === 'tried-once') ||
    raised.some(({ flag }) => flag === 'seen-before'));

const share = ({ phases, speaking }: Totals, ...which: readonly number[]): number =>
  which.reduce((sum, phase) => sum + phases[phase]!, 0) / speaking;

/**
 * A change that was seen through on every side: there, and not yet in the span in which it goes; or
 * gone, at an age past the span in which it comes. To test it again would look for a return.
 */
function settled(
  reflex: Reflex,
  found: readonly JudgedFinding[],
  now: Totals,
): 'there' | 'gone' | undefined {
  const answers = found.map(({ finding }) => finding).filter(isAnswer);
  const needed = sidesOf(reflex).filter((side) => side !== 'midline' || !reflex.testedPerSide);
  if (!needed.every((side) => answers.some((answer) => answer.side === side))) return undefined;
  if (answers.every(({ response }) => isElicited(response)))
    return share(now, INTEGRATING, INTEGRATED) < FEW ? 'there' : undefined;
  if (answers.some(({ response }) => isElicited(response))) return undefined;
  const then = totalsOf(found[0]!.reading);
  return then.anySpeaks && share(then, NOT_YET, EMERGING) < FEW ? 'gone' : undefined;
}

/**
 * What stands of a reflex from a child's visits up to a date, oldest first.
 * @param variant as which it was tested; undefined: what does not say
 * @param now what the sources say of it on that date
 * @param judged a visit with its verdicts
 */
export function lastTime(
  visits: readonly Visit[],
  reflex: Reflex,
  variant: string | undefined,
  now: Totals,
  judged: (visit: Visit) => JudgedVisit,
): LastTime {
  const test = testOf({ reflex: reflex.id, variant });
  const of = (visit: Visit): Finding[] => visit.findings.filter((f) => testOf(f) === test);
  const looked = visits.filter((visit) => of(visit).length > 0);
  const last = looked.findLast((visit) => of(visit).some(isAnswer));
  const since = looked.at(-1);
  if (!since) return { code: 'never' };
  if (since.on !== last?.on) return { code: 'unread', on: since.on, finding: of(since)[0]! };
  // of every examiner of the day
  const found = looked
    .filter(({ on }) => on === last.on)
    .flatMap((visit) => judged(visit).findings)
    .filter(({ finding }) => testOf(finding) === test);
  const open = worstFirst(found.filter(isOpen));
  if (open[0]) {
    const flags = new Set(open.flatMap(({ raised }) => raised.map(({ flag }) => flag)));
    const again = [...new Set(found.filter(asksAgain).map(({ finding }) => finding.side))];
    const { verdict } = open[0].judged;
    return { code: 'open', on: last.on, verdict, flags: [...flags], again };
  }
  const seen = now.anySpeaks ? settled(reflex, found, now) : undefined;
  return seen ? { code: 'settled', on: last.on, now: seen } : { code: 'answered', on: last.on };
}
