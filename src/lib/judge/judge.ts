/** A whole case judged: every finding at its age, under the chosen sources, with the rules on top. */
import { DEFAULT_LIMITS, type Ages, type CorrectionLimits } from '../age/clocks.ts';
import type { Atlas } from '../atlas/atlas.ts';
import type { Reflex } from '../atlas/types.ts';
import { agesAt, type Case, type Visit } from '../case/case.ts';
import { isAnswer, isElicited, type Finding } from '../case/finding.ts';
import {
  compile,
  readAt,
  totalsOf,
  type Compiled,
  type Reading,
  type Totals,
} from './expectation.ts';
import { RULES } from './rules/registry.ts';
import type { Attention, Raised } from './rules/rule.ts';
import { DISCUSS_SHARE } from './thresholds.ts';
import { verdictOf, type PhaseVerdict } from './verdict.ts';
import { windowsOf } from './window.ts';

/** The sources judged by: all of them, or those whose ids are named. */
export type Chosen = 'all' | ReadonlySet<string>;

/** Every reflex's windows under the chosen sources, ready to read at any age. */
export type Sheet = ReadonlyMap<string, Compiled>;

export function sheetOf(atlas: Atlas, chosen: Chosen = 'all'): Sheet {
  const sheet = new Map<string, Compiled>();
  for (const [id, claims] of atlas.claims) {
    const windows = windowsOf(claims);
    sheet.set(
      id,
      compile(chosen === 'all' ? windows : windows.filter((w) => chosen.has(w.claim.source.id))),
    );
  }
  return sheet;
}

export interface JudgedFinding {
  finding: Finding;
  reflex: Reflex;
  judged: PhaseVerdict;
  /** What it asks for: the most of what the verdict and the flags ask. */
  attention: Attention;
  raised: readonly Raised[];
  reading: Reading;
}

export interface JudgedVisit {
  visit: Visit;
  ages: Ages;
  findings: readonly JudgedFinding[];
}

export interface JudgeOptions {
  atlas: Atlas;
  sheet: Sheet;
  limits?: CorrectionLimits;
}

const MORE: Readonly<Record<Attention, number>> = {
  'not-judged': 0,
  fits: 1,
  watch: 2,
  discuss: 3,
};

/** What a verdict asks for by its phase alone. */
export function attentionOf(judged: PhaseVerdict): Attention {
  if (judged.verdict === 'not-judged') return 'not-judged';
  const share = judged.shares[judged.verdict];
  switch (judged.verdict) {
    case 'persisting':
    case 'missing':
      return share >= DISCUSS_SHARE - 1e-12 ? 'discuss' : 'watch';
    case 'early':
      return share >= DISCUSS_SHARE - 1e-12 ? 'watch' : 'fits';
    default:
      return 'fits';
  }
}

/** Earlier answers on one reflex and side, one entry a date: elicited if any examiner elicited it. */
function answersBefore(visits: readonly Visit[], finding: Finding, on: string) {
  const byDate = new Map<string, boolean>();
  for (const visit of visits) {
    if (visit.on >= on) continue;
    for (const f of visit.findings)
      if (f.reflex === finding.reflex && f.side === finding.side && isAnswer(f))
        byDate.set(visit.on, (byDate.get(visit.on) ?? false) || isElicited(f.response));
  }
  return [...byDate]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([date, elicited]) => ({ on: date, elicited }));
}

const OTHER = { left: 'right', right: 'left', midline: undefined } as const;

/** The answer on the other side at the same visit, when both sides answered. */
function otherSide(finding: Finding, visit: Visit): Finding | undefined {
  const side = OTHER[finding.side];
  if (!side || !isAnswer(finding)) return undefined;
  return visit.findings.find((f) => f.reflex === finding.reflex && f.side === side && isAnswer(f));
}

/** One visit judged; `visits` are all of the child's, for what came before. */
export function judgeVisit(
  record: Case,
  visit: Visit,
  { atlas, sheet, limits = DEFAULT_LIMITS }: JudgeOptions,
): JudgedVisit {
  const ages = agesAt(record, visit.on, limits);
  const readings = new Map<string, { reading: Reading; totals: Totals }>();
  const findings = visit.findings.flatMap((finding): JudgedFinding[] => {
    const reflex = atlas.reflexes.get(finding.reflex);
    const compiled = sheet.get(finding.reflex);
    if (!reflex || !compiled) return [];
    let read = readings.get(reflex.id);
    if (!read) {
      const reading = readAt(compiled, ages.axisDay, ages.sdDays);
      read = { reading, totals: totalsOf(reading) };
      readings.set(reflex.id, read);
    }
    const judged = verdictOf(finding, read.reading, read.totals);
    const context = {
      finding,
      reflex,
      other: otherSide(finding, visit),
      before: answersBefore(record.visits, finding, visit.on),
      totals: read.totals,
    };
    const raised = RULES.flatMap((rule) => rule(context) ?? []);
    let attention = attentionOf(judged);
    for (const { asks } of raised) if (MORE[asks] > MORE[attention]) attention = asks;
    return [{ finding, reflex, judged, attention, raised, reading: read.reading }];
  });
  return { visit, ages, findings };
}

export const judgeCase = (record: Case, options: JudgeOptions): JudgedVisit[] =>
  record.visits.map((visit) => judgeVisit(record, visit, options));

/** Worst first: what is to be discussed, then watched, then what fits, then what is not judged. */
export function worstFirst(findings: readonly JudgedFinding[]): JudgedFinding[] {
  const order: Readonly<Record<Attention, number>> = {
    discuss: 0,
    watch: 1,
    fits: 2,
    'not-judged': 3,
  };
  const share = ({ judged }: JudgedFinding): number =>
    judged.verdict === 'not-judged' ? 0 : judged.shares[judged.verdict];
  return [...findings].sort(
    (a, b) => order[a.attention] - order[b.attention] || share(b) - share(a),
  );
}
