/**
 * How much a grading of findings asks for: of healthy children, where it should be little, and of children
 * in whom one reflex is truly absent or truly persists, where it should be that reflex.
 */
import { fromMonths } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { isElicited } from '../../src/lib/case/finding.ts';
import { judgeCase } from '../../src/lib/judge/judge.ts';
import { SURE_SOURCES } from '../../src/lib/judge/reading/constants.ts';
import { Inferred } from '../../src/lib/judge/reading/course.ts';
import { chanceOf, type Chance } from '../../src/lib/lecture/random.ts';
import { bornAtTerm } from '../support/drawnChild.ts';
import { ALL, healthy, PRIORS, SHEET, visit, type TrueChild } from './children.ts';
import { REFLEXES_TESTED } from './simulate.ts';

/** What each finding of the last visit of a record asks for, however it is worked out. */
export type Grading = (record: Case) => readonly { reflex: string; asks: string }[];

/** The grading of the app: `attention` of each finding. */
export const graded: Grading = (record) =>
  judgeCase(record, { atlas: ATLAS, sheet: SHEET })
    .at(-1)!
    .findings.map(({ reflex, attention }) => ({ reflex: reflex.id, asks: attention }));

/** Why the last visit of a record has something to be discussed: each flag, or the verdict alone; and `today`. */
export function reasonsOf(record: Case): ReadonlySet<string> {
  const { findings, today } = judgeCase(record, { atlas: ATLAS, sheet: SHEET }).at(-1)!;
  const reasons = findings
    .filter(({ attention }) => DISCUSSED.has(attention))
    .flatMap(({ raised, judged }): string[] => {
      const flags = raised.filter(({ asks }) => DISCUSSED.has(asks)).map(({ flag }) => flag);
      return flags.length > 0 ? flags : [judged.verdict];
    });
  return new Set(today.length > 0 ? [...reasons, 'today'] : reasons);
}

const DISCUSSED: ReadonlySet<string> = new Set(['discuss', 'today']);
const ASKED: ReadonlySet<string> = new Set([...DISCUSSED, 'watch']);

/** The ages of visits, in months after term. */
export const AGES = [1, 3, 5, 7, 9, 12] as const;

/** How a child is seen. */
export interface Seen {
  /** At each of the ages up to this one, and not at this one alone. */
  before: boolean;
  /** What is not elicited is tried a second time at the same visit. */
  twice: boolean;
}

const recordOf = (
  child: TrueChild,
  months: number,
  reflexes: readonly string[],
  { before, twice }: Seen,
  chance: Chance,
): Case =>
  bornAtTerm(
    AGES.filter((age) => age === months || (before && age < months)).map((age) =>
      visit(child, fromMonths(age), { reflexes, twice, milestones: false }, chance),
    ),
  );

export interface Burden {
  visits: number;
  /** Visits with anything to be discussed, and findings watched in all of them. */
  discussed: number;
  watched: number;
}

/** What the last visits of healthy children ask for, with 20 reflexes looked at. */
export function burdenAt(
  grading: Grading,
  visits: number,
  seed: number,
  months: number,
  seen: Seen,
): Burden {
  const chance = chanceOf(seed);
  const sum: Burden = { visits, discussed: 0, watched: 0 };
  for (let left = visits; left > 0; left--) {
    const child = healthy(chance);
    const tested = chance.shuffled(ALL).slice(0, REFLEXES_TESTED);
    const grades = grading(recordOf(child, months, tested, seen, chance));
    if (grades.some(({ asks }) => DISCUSSED.has(asks))) sum.discussed++;
    sum.watched += grades.filter(({ asks }) => asks === 'watch').length;
  }
  return sum;
}

/** At how many visits of healthy children each reason makes something to be discussed. */
export function reasonsAt(
  visits: number,
  seed: number,
  months: number,
  seen: Seen,
): ReadonlyMap<string, number> {
  const chance = chanceOf(seed);
  const counted = new Map<string, number>();
  for (let left = visits; left > 0; left--) {
    const child = healthy(chance);
    const tested = chance.shuffled(ALL).slice(0, REFLEXES_TESTED);
    for (const reason of reasonsOf(recordOf(child, months, tested, seen, chance)))
      counted.set(reason, (counted.get(reason) ?? 0) + 1);
  }
  return counted;
}

/** A reflex is of the core where so many voices judge by it. */
const CORE_VOICES = 3;

const CORE = ALL.filter(
  (id) => new Set(SHEET.get(id)!.windows.map(({ claim }) => claim.family)).size >= CORE_VOICES,
);

export type Kind = 'absent' | 'persisting';

/** Core reflexes that, by the sources alone, every child but few has, or has let go, at an age. */
export function sureAt(kind: Kind, months: number): string[] {
  return CORE.filter((id) => {
    const { there, gone } = new Inferred(PRIORS.reflex(id, 0)!, [], 0).states(fromMonths(months));
    return (kind === 'absent' ? there : gone) >= SURE_SOURCES;
  });
}

export interface Asked {
  children: number;
  /** Children whose finding shows it, and who are asked about it, of all and of those. */
  shown: number;
  asked: number;
  askedOfShown: number;
  /** Of all, those in whom it is to be discussed. */
  discussed: number;
}

/** Children in whom one core reflex never appears, or never integrates, at ages when sources are sure. */
export function askedAt(
  grading: Grading,
  children: number,
  seed: number,
  kind: Kind,
  months: number,
  seen: Seen,
): Asked | undefined {
  const chance = chanceOf(seed);
  const sure = sureAt(kind, months);
  if (sure.length === 0) return undefined;
  const sum: Asked = { children, shown: 0, asked: 0, askedOfShown: 0, discussed: 0 };
  for (let left = children; left > 0; left--) {
    const child = healthy(chance);
    const reflex = chance.one(sure)!;
    const { a } = child.reflexes.get(reflex)!;
    child.reflexes.set(reflex, { a: kind === 'absent' ? Infinity : a, i: Infinity });
    const others = chance.shuffled(ALL.filter((id) => id !== reflex));
    const tested = [reflex, ...others.slice(0, REFLEXES_TESTED - 1)];
    const record = recordOf(child, months, tested, seen, chance);
    const asks = grading(record).find((one) => one.reflex === reflex)?.asks ?? '';
    const last = record.visits.at(-1)!.findings.find((one) => one.reflex === reflex)!;
    const shown = isElicited(last.response) === (kind === 'persisting');
    if (shown) sum.shown++;
    if (ASKED.has(asks)) sum.asked++;
    if (shown && ASKED.has(asks)) sum.askedOfShown++;
    if (DISCUSSED.has(asks)) sum.discussed++;
  }
  return sum;
}
