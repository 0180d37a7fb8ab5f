/**
 * What changed at a visit: each finding against the last earlier answer to the same test on the same side,
 * and what asked for attention then and was not looked at again. Codes only; words/ makes sentences.
 */
import type { CivilDate } from '../age/civil.ts';
import type { Reflex, Side } from '../atlas/types.ts';
import { isAnswer, isElicited, strengthOf, testOf, type Response } from '../case/finding.ts';
import { daysOf, findingsOf } from './day.ts';
import { worstFirst, type JudgedFinding, type JudgedVisit } from './judge.ts';
import { isAsking } from './rules/rule.ts';

/** How a response stands against the one before it. */
export type Move = 'came' | 'came-back' | 'went' | 'stronger' | 'weaker' | 'same' | 'first';

/** A finding beside the last answer before it. */
export interface Change {
  reflex: Reflex;
  side: Side;
  move: Move;
  /** The last answer at an earlier date; undefined when this is the first. */
  before: JudgedFinding | undefined;
  /** When that was seen. */
  since: CivilDate | undefined;
  now: JudgedFinding;
  /** Whether the same response means something else at this age. */
  meansOtherwise: boolean;
}

/** What asked for attention when it was last looked at, and was not looked at (or gave no answer) now. */
export interface LeftOpen {
  reflex: Reflex;
  side: Side;
  last: JudgedFinding;
  since: CivilDate;
}

export interface VisitChanges {
  changed: readonly Change[];
  /** Neither the response nor what it means has changed. */
  same: readonly Change[];
  leftOpen: readonly LeftOpen[];
}

interface Past {
  found: JudgedFinding;
  on: CivilDate;
}

const keyOf = ({ finding }: JudgedFinding): string => `${testOf(finding)} ${finding.side}`;

/** The move from one answer to the next; `earlier` says whether it was ever there before that. */
export function moveOf(before: Response | undefined, now: Response, wasThere: boolean): Move {
  if (before === undefined) return 'first';
  if (!isElicited(before)) return isElicited(now) ? (wasThere ? 'came-back' : 'came') : 'same';
  if (!isElicited(now)) return 'went';
  const step = strengthOf(now) - strengthOf(before);
  return step === 0 ? 'same' : step > 0 ? 'stronger' : 'weaker';
}

const flagsOf = (found: JudgedFinding): string =>
  found.raised
    .map(({ flag }) => flag)
    .sort()
    .join(' ');

/** Whether two answers, alike in response, mean different things at their ages. */
const meansOtherwise = (before: JudgedFinding, now: JudgedFinding): boolean =>
  before.judged.verdict !== now.judged.verdict ||
  before.attention !== now.attention ||
  flagsOf(before) !== flagsOf(now);

/**
 * The changes at one visit. `earlier` are the judged visits before it; those on the same date (another
 * examiner's) do not count as earlier.
 */
export function changesAt(visit: JudgedVisit, earlier: readonly JudgedVisit[]): VisitChanges {
  const past = new Map<string, Past>();
  const there = new Set<string>();
  const dated = earlier.filter((one) => one.visit.on < visit.visit.on);
  for (const day of daysOf(dated))
    for (const found of worstFirst(findingsOf(day)).reverse()) {
      if (!isAnswer(found.finding)) continue;
      past.set(keyOf(found), { found, on: day[0]!.visit.on });
      if (isElicited(found.finding.response)) there.add(keyOf(found));
    }
  const changed: Change[] = [];
  const same: Change[] = [];
  const answered = new Set<string>();
  for (const now of visit.findings) {
    if (!isAnswer(now.finding)) continue;
    const key = keyOf(now);
    answered.add(key);
    const last = past.get(key);
    const move = moveOf(last?.found.finding.response, now.finding.response, there.has(key));
    const otherwise = last !== undefined && meansOtherwise(last.found, now);
    const change: Change = {
      reflex: now.reflex,
      side: now.finding.side,
      move,
      before: last?.found,
      since: last?.on,
      now,
      meansOtherwise: otherwise,
    };
    (move === 'same' && !otherwise ? same : changed).push(change);
  }
  const leftOpen = [...past]
    .filter(([key, { found }]) => !answered.has(key) && isAsking(found.attention))
    .map(([, { found, on }]) => ({
      reflex: found.reflex,
      side: found.finding.side,
      last: found,
      since: on,
    }));
  return { changed, same, leftOpen };
}
