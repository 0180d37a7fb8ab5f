/** A whole case judged: every finding at its age, under the chosen sources, with the rules on top. */
import { DEFAULT_LIMITS, type Ages, type CorrectionLimits } from '../age/clocks.ts';
import type { Atlas, SourcedClaim, SourcedCount } from '../atlas/atlas.ts';
import type { Reflex, Side } from '../atlas/types.ts';
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
import { capsOf, type Cap } from './caps.ts';
import { RULES } from './rules/registry.ts';
import type { Attention, PastAnswer, Raised, RuleContext } from './rules/rule.ts';
import { DISCUSS_SHARE } from './thresholds.ts';
import { verdictOf, type Judged } from './verdict.ts';
import { windowsOf } from './window.ts';

/**
 * The sources judged by: those that judge by default (`judgedByDefault` of a claim), all of them, or
 * those whose ids are named.
 */
export type Chosen = 'default' | 'all' | ReadonlySet<string>;

const isChosen = ({ source, judgedByDefault }: SourcedClaim, chosen: Chosen): boolean =>
  chosen === 'all' || (chosen === 'default' ? judgedByDefault : chosen.has(source.id));

/** Every reflex's windows under the chosen sources, ready to read at any age. */
export type Sheet = ReadonlyMap<string, Compiled>;

export function sheetOf(atlas: Atlas, chosen: Chosen = 'all'): Sheet {
  const sheet = new Map<string, Compiled>();
  for (const [id, claims] of atlas.claims) {
    const windows = windowsOf(claims);
    sheet.set(id, compile(windows.filter(({ claim }) => isChosen(claim, chosen))));
  }
  return sheet;
}

export interface JudgedFinding {
  finding: Finding;
  reflex: Reflex;
  judged: Judged;
  /** What it asks for: the most of what the verdict and the flags ask. */
  attention: Attention;
  raised: readonly Raised[];
  /** What holds the verdict by the phase to a watch. */
  caps: readonly Cap[];
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

/** What a verdict asks for by its phase alone, watched at most where something caps it. */
export function attentionOf(judged: Judged, caps: readonly Cap[]): Attention {
  if (judged.verdict === 'not-judged') return 'not-judged';
  const { share } = judged;
  switch (judged.verdict) {
    case 'persisting':
    case 'missing':
      return share >= DISCUSS_SHARE - 1e-12 && caps.length === 0 ? 'discuss' : 'watch';
    case 'early':
      return share >= DISCUSS_SHARE - 1e-12 ? 'watch' : 'fits';
    default:
      return 'fits';
  }
}

/** Every answer of a record by reflex, then side, oldest first, one entry a date. */
export type History = ReadonlyMap<string, Partial<Record<Side, readonly PastAnswer[]>>>;

export function historyOf(visits: readonly Visit[]): History {
  const history = new Map<string, Partial<Record<Side, PastAnswer[]>>>();
  for (const { on, findings } of [...visits].sort((a, b) => (a.on < b.on ? -1 : 1)))
    for (const finding of findings) {
      if (!isAnswer(finding)) continue;
      let sides = history.get(finding.reflex);
      if (!sides) history.set(finding.reflex, (sides = {}));
      const answers = (sides[finding.side] ??= []);
      const elicited = isElicited(finding.response);
      const last = answers.at(-1);
      if (last?.on === on) last.elicited ||= elicited;
      else answers.push({ on, elicited });
    }
  return history;
}

const NO_ANSWERS: readonly PastAnswer[] = [];
const OTHER = { left: 'right', right: 'left', midline: undefined } as const;

const NO_CAPS: readonly Cap[] = [];
const NO_COUNTS: readonly SourcedCount[] = [];
const NOTHING_RAISED: readonly Raised[] = [];

function raise(context: RuleContext): readonly Raised[] {
  let raised: Raised[] | undefined;
  for (const rule of RULES) {
    const found = rule(context);
    if (found) (raised ??= []).push(found);
  }
  return raised ?? NOTHING_RAISED;
}

/** A reflex read at one visit: both sides share it. */
interface Read {
  reflex: Reflex;
  reading: Reading;
  totals: Totals;
  /** The findings of the visit that are answers, by side. */
  answers: Partial<Record<Side, Finding>>;
}

/** Every reflex looked at in a visit, read once at the child's age. */
function readVisit(visit: Visit, ages: Ages, { atlas, sheet }: JudgeOptions): Map<string, Read> {
  const reads = new Map<string, Read>();
  for (const finding of visit.findings) {
    let read = reads.get(finding.reflex);
    if (!read) {
      const reflex = atlas.reflexes.get(finding.reflex);
      const compiled = sheet.get(finding.reflex);
      if (!reflex || !compiled) continue; // of an atlas that is not at hand: it stays in the record
      const reading = readAt(compiled, ages.axisDay, ages.sdDays);
      read = { reflex, reading, totals: totalsOf(reading), answers: {} };
      reads.set(finding.reflex, read);
    }
    if (isAnswer(finding)) read.answers[finding.side] = finding;
  }
  return reads;
}

/** The answer on the other side at the same visit, when both sides answered. */
function otherSide({ side }: Finding, { answers }: Read): Finding | undefined {
  const other = OTHER[side];
  return other && answers[side] ? answers[other] : undefined;
}

/** One visit judged; the history is that of all the child's visits, for what came before. */
export function judgeVisit(
  record: Case,
  visit: Visit,
  options: JudgeOptions,
  history = historyOf(record.visits),
): JudgedVisit {
  const { atlas } = options;
  const ages = agesAt(record, visit.on, options.limits ?? DEFAULT_LIMITS);
  const reads = readVisit(visit, ages, options);
  const findings: JudgedFinding[] = [];
  for (const finding of visit.findings) {
    const read = reads.get(finding.reflex);
    if (!read) continue;
    const { reflex, reading, totals } = read;
    const judged = verdictOf(finding, reading, totals);
    const raised = raise({
      finding,
      reflex,
      other: otherSide(finding, read),
      on: visit.on,
      history: history.get(finding.reflex)?.[finding.side] ?? NO_ANSWERS,
      totals,
      ageDays: ages.axisDay,
    });
    const caps =
      judged.verdict === 'not-judged'
        ? NO_CAPS
        : capsOf(finding, reflex, judged, reading, atlas.counts.get(reflex.id) ?? NO_COUNTS);
    let attention = attentionOf(judged, caps);
    for (const { asks } of raised) if (MORE[asks] > MORE[attention]) attention = asks;
    findings.push({ finding, reflex, judged, attention, raised, caps, reading });
  }
  return { visit, ages, findings };
}

export function judgeCase(record: Case, options: JudgeOptions): JudgedVisit[] {
  const history = historyOf(record.visits);
  return record.visits.map((visit) => judgeVisit(record, visit, options, history));
}

/** Worst first: what is to be discussed, then watched, then what fits, then what is not judged. */
export function worstFirst(findings: readonly JudgedFinding[]): JudgedFinding[] {
  const order: Readonly<Record<Attention, number>> = {
    discuss: 0,
    watch: 1,
    fits: 2,
    'not-judged': 3,
  };
  const share = ({ judged }: JudgedFinding): number =>
    judged.verdict === 'not-judged' ? 0 : judged.share;
  return [...findings].sort(
    (a, b) => order[a.attention] - order[b.attention] || share(b) - share(a),
  );
}
