/**
 * A whole case judged: every finding at its age, under the chosen sources, with the rules on top, and with
 * what was seen in this child on other days.
 */
import type { CivilDate } from '../age/civil.ts';
import { DEFAULT_LIMITS, type Ages } from '../age/clocks.ts';
import type { SourcedCount } from '../atlas/atlas.ts';
import type { Reflex, Side } from '../atlas/types.ts';
import { agesAt, type Case, type Visit } from '../case/case.ts';
import { asTested, isOfVariant } from '../atlas/variants.ts';
import { isElicited, testOf, triesOf, type Finding } from '../case/finding.ts';
import { settled } from '../case/settled.ts';
import { capsOf, type Cap, type Made } from './caps.ts';
import { readAt, totalsOf, type Reading, type Totals } from './expectation.ts';
import { attentionOf, type JudgedFinding, type JudgedVisit, type JudgeOptions } from './judged.ts';
import { judgeMilestones } from './milestones.ts';
import { Past } from './past.ts';
import { together, todayOn, triedEnough, type Today } from './reading/asks.ts';
import { answersForSide, OTHER_SIDE } from './reading/days.ts';
import { fitsOf, type Fit } from './reading/fit.ts';
import { sidePattern } from './reading/sides.ts';
import { raisedByLoss } from './rules/lost.ts';
import { RULES } from './rules/registry.ts';
import {
  asksMore,
  ATTENTIONS,
  type Attention,
  type Raised,
  type RuleContext,
} from './rules/rule.ts';
import { checkSequences, type SequenceCheck } from './sequence.ts';
import { verdictOf } from './verdict.ts';

export { attentionOf, type JudgedFinding, type JudgedVisit, type JudgeOptions } from './judged.ts';
export { sheetOf, type Chosen, type Sheet } from './sheet.ts';

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

/** A reflex, or one variant of it, read at one visit: both sides share it. */
interface Read {
  reflex: Reflex;
  reading: Reading;
  totals: Totals;
  /** The findings of the visit that answer for their side. */
  answers: Partial<Record<Side, Finding>>;
}

/** Everything looked at in a visit, by its test (`testOf`), read once at the child's age. */
function readVisit(visit: Visit, ages: Ages, { atlas, sheet }: JudgeOptions): Map<string, Read> {
  const reads = new Map<string, Read>();
  for (const finding of visit.findings) {
    const test = testOf(finding);
    let read = reads.get(test);
    if (!read) {
      const reflex = atlas.reflexes.get(finding.reflex);
      const compiled = sheet.get(test);
      if (!reflex || !compiled) continue; // of an atlas that is not at hand: it stays in the record
      const reading = readAt(compiled, ages.axisDay, ages.sdDays);
      const tested = asTested(reflex, finding.variant);
      read = { reflex: tested, reading, totals: totalsOf(reading), answers: {} };
      reads.set(test, read);
    }
    if (answersForSide(finding, visit.findings)) read.answers[finding.side] = finding;
  }
  return reads;
}

/** The answer on the other side at the same visit, when both sides answered. */
function otherSide({ side }: Finding, { answers }: Read): Finding | undefined {
  const other = OTHER_SIDE[side];
  return other && answers[side] ? answers[other] : undefined;
}

/** The most of what a verdict and the flags ask for. */
const mostOf = (attention: Attention, raised: readonly Raised[]): Attention =>
  raised.reduce((most, { asks }) => (asksMore(asks, most) ? asks : most), attention);

/** A visit read, before what was seen before and is not now is laid over it. */
interface Begun {
  ages: Ages;
  reads: ReadonlyMap<string, Read>;
  findings: readonly JudgedFinding[];
}

/** One child's visits, judged when they are asked for. */
export class CaseJudge {
  /** As it was recorded. */
  readonly record: Case;
  /** As it is judged: with the answers that examiners agreed on. */
  readonly read: Case;
  readonly #options: JudgeOptions;
  readonly #readAs: ReadonlyMap<Visit, Visit>;
  readonly #past: Past;
  readonly #begun = new Map<Visit, Begun>();
  readonly #read = new Map<Visit, Pick<Begun, 'ages' | 'reads'>>();

  constructor(record: Case, options: JudgeOptions) {
    this.record = record;
    this.read = settled(record);
    this.#readAs = new Map(
      this.read === record ? [] : record.visits.map((visit, at) => [visit, this.read.visits[at]!]),
    );
    this.#options = options;
    this.#past = new Past(this.read, options, (on, besides) => this.#discusses(on, besides));
  }

  /** Courses, orders and fits of the child, over all visits. */
  get reading(): Past['reading'] {
    return this.#past.reading;
  }

  /** The order of things, each sequence with every pair of its stations. */
  get sequences(): SequenceCheck[] {
    const { atlas, limits = DEFAULT_LIMITS } = this.#options;
    const { read: record, reading } = this;
    const agesOn = (on: CivilDate): Ages => agesAt(record, on, limits);
    return checkSequences(atlas, record.visits, agesOn, reading.orders());
  }

  /** The ages that the findings of a visit fit best. */
  fits(visit: Visit): Fit[] {
    const { priors, clock } = this.reading;
    return fitsOf(this.#readAs.get(visit) ?? visit, priors, clock.sdDays);
  }

  #readOf(visit: Visit): Pick<Begun, 'ages' | 'reads'> {
    let read = this.#read.get(visit);
    if (!read) {
      const ages = agesAt(this.record, visit.on, this.#options.limits ?? DEFAULT_LIMITS);
      this.#read.set(visit, (read = { ages, reads: readVisit(visit, ages, this.#options) }));
    }
    return read;
  }

  /** Whether a side was missing, by its verdict, on an earlier day. */
  #missingOn({ side, ...of }: Finding, on: CivilDate, before: CivilDate): boolean {
    if (on >= before) return false;
    const test = testOf(of);
    return this.read.visits.some((visit) => {
      if (visit.on !== on) return false;
      const finding = visit.findings.find((f) => testOf(f) === test && f.side === side);
      const read = finding && this.#readOf(visit).reads.get(test);
      return (
        read !== undefined && verdictOf(finding!, read.reading, read.totals).verdict === 'missing'
      );
    });
  }

  /** Seen while crying, and by nobody that day in another state. */
  #onlyCrying({ side, state, response, ...of }: Finding, on: CivilDate): boolean {
    if (state !== 'crying' || !isElicited(response)) return false;
    const test = testOf(of);
    return !this.read.visits.some(
      (visit) =>
        visit.on === on &&
        visit.findings.some(
          (f) =>
            testOf(f) === test && f.side === side && f.state !== 'crying' && isElicited(f.response),
        ),
    );
  }

  #begin(visit: Visit): Begun {
    let begun = this.#begun.get(visit);
    if (!begun) {
      const { ages, reads } = this.#readOf(visit);
      const findings = visit.findings.flatMap((finding): JudgedFinding[] => {
        const read = reads.get(testOf(finding));
        return read ? [this.#judge(finding, read, visit, ages)] : [];
      });
      this.#begun.set(visit, (begun = { ages, reads, findings }));
    }
    return begun;
  }

  #judge(finding: Finding, read: Read, { on }: Visit, ages: Ages): JudgedFinding {
    const { reflex, reading, totals } = read;
    const judged = verdictOf(finding, reading, totals);
    const other = otherSide(finding, read);
    const test = testOf(finding);
    const onlyCrying = this.#onlyCrying(finding, on);
    const raised = raise({
      finding,
      reflex,
      other,
      on,
      history: this.#past.answers(finding),
      totals,
      ageDays: ages.axisDay,
      stays: other && other.response !== finding.response ? this.#past.staysOn(test, on) : 0,
      goneBy: (day) => this.reading.goneBy(test, finding.side, day),
      onlyCrying,
    });
    const made: Made = {
      triedEnough: () =>
        triedEnough(finding, on, this.read.visits, (day) => this.#missingOn(finding, day, on)),
      oneSide: other !== undefined && isElicited(other.response),
      onlyCrying,
    };
    const counted = this.#options.atlas.counts.get(reflex.id) ?? NO_COUNTS;
    const counts = finding.variant
      ? counted.filter((count) => isOfVariant(count, finding.variant))
      : counted;
    const caps =
      judged.verdict === 'not-judged'
        ? NO_CAPS
        : capsOf(finding, reflex, judged, reading, counts, made);
    const attention = mostOf(attentionOf(judged, caps), raised);
    return { finding, given: finding, reflex, judged, attention, raised, caps, reading };
  }

  /** Whether anything but a reflex is to be discussed on a day, by what was seen that day alone. */
  #discusses(on: CivilDate, besides: string): boolean {
    const isDiscussed = (attention: Attention): boolean => asksMore(attention, 'watch');
    const ofTheDay = ({ judged, caps, raised }: JudgedFinding): Attention =>
      mostOf(
        attentionOf(judged, caps),
        raised.filter(({ flag }) => flag !== 'returned'),
      );
    return (
      this.#past.lostMilestones.some((one) => one.on === on && isDiscussed(one.asks)) ||
      this.read.visits.some(
        (visit) =>
          visit.on === on &&
          this.#begin(visit).findings.some(
            (found) => found.reflex.id !== besides && isDiscussed(ofTheDay(found)),
          ),
      )
    );
  }

  /** The findings of a visit, with what was seen before and is not now. */
  #findings(visit: Visit): readonly JudgedFinding[] {
    const { findings } = this.#begin(visit);
    if (this.#past.notNow.size === 0) return findings;
    return findings.map((found) => {
      const { finding } = found;
      const notNow =
        finding.response === 'not-elicited' ? this.#past.notNowAt(finding, visit.on) : undefined;
      if (!notNow || !answersForSide(finding, visit.findings)) return found;
      const raised = [...found.raised, raisedByLoss(notNow, triesOf(finding))];
      return { ...found, raised, attention: mostOf(found.attention, raised) };
    });
  }

  visit(recorded: Visit): JudgedVisit {
    const visit = this.#readAs.get(recorded) ?? recorded;
    const { ages, reads } = this.#begin(visit);
    const milestones = judgeMilestones(
      visit,
      ages,
      this.#options.atlas,
      visit.milestones.length > 0 ? this.#past.lostMilestones : [],
    );
    const today = this.#today(visit, ages);
    const urgent = new Set(today.flatMap(({ about }) => about));
    const findings = this.#findings(visit).map((found) =>
      urgent.has(found.reflex.id) && found.finding.response === 'not-elicited'
        ? { ...found, attention: 'today' as const }
        : found,
    );
    return {
      visit: recorded,
      read: visit,
      ages,
      findings:
        visit === recorded
          ? findings
          : findings.map((found) => ({
              ...found,
              given: recorded.findings[visit.findings.indexOf(found.finding)] ?? found.finding,
            })),
      milestones,
      today,
      together: together(
        findings.map(({ reflex, attention }) => ({ reflex: reflex.id, asks: attention })),
      ),
      pattern: sidePattern(
        visit,
        this.#options.atlas.reflexes,
        (test) => reads.get(test)?.totals.meanExpectation,
      ),
    };
  }

  /** What should not wait, of one day. Nothing can be without something missing or lost. */
  #today({ on, findings, milestones }: Visit, ages: Ages): readonly Today[] {
    const mayBe =
      milestones.some(({ seen }) => !seen) ||
      findings.some(({ response }) => response === 'not-elicited');
    if (!mayBe) return [];
    const { notNow, lostMilestones } = this.#past;
    const { visits } = this.read;
    return todayOn(on, ages.postmenstrualDays, visits, [...notNow.values()], lostMilestones);
  }
}

export function judgeCase(record: Case, options: JudgeOptions): JudgedVisit[] {
  const judge = new CaseJudge(record, options);
  return record.visits.map((visit) => judge.visit(visit));
}

/** Worst first: what should not wait, what is to be discussed, then watched, then what fits, then the rest. */
export function worstFirst(findings: readonly JudgedFinding[]): JudgedFinding[] {
  const order = (attention: Attention): number => ATTENTIONS.indexOf(attention);
  const share = ({ judged }: JudgedFinding): number =>
    judged.verdict === 'not-judged' ? 0 : judged.share;
  return [...findings].sort(
    (a, b) => order(b.attention) - order(a.attention) || share(b) - share(a),
  );
}
