/** `tidemark judge`: every finding of every case, judged. */
import { agesOn } from '../lib/age/clocks.ts';
import { ATLAS } from '../lib/atlas/atlas.ts';
import type { Case } from '../lib/case/case.ts';
import { triesOf } from '../lib/case/finding.ts';
import { coursesOf, type Interval } from '../lib/case/course.ts';
import type { Cap } from '../lib/judge/caps.ts';
import { agreementOn, turningPoint } from '../lib/judge/hangs.ts';
import { inferredOf, type InferredCourse } from '../lib/judge/inferred.ts';
import {
  CaseJudge,
  worstFirst,
  type JudgedFinding,
  type JudgedVisit,
  type JudgeOptions,
} from '../lib/judge/judge.ts';
import { nextVisit } from '../lib/judge/nextVisit.ts';
import { TODAY_BASIS } from '../lib/judge/reading/asks.ts';
import { sideTrends } from '../lib/judge/reading/sides.ts';
import type { Fit } from '../lib/judge/reading/fit.ts';
import type { Dates } from '../lib/judge/reading/course.ts';
import { pairAsks, type SequenceCheck } from '../lib/judge/sequence.ts';
import { voicesOf } from '../lib/judge/verdict.ts';
import { en } from '../lib/words/en.ts';
import { agesJson } from './ages.ts';
import {
  BadInput,
  chosenOf,
  columns,
  judgeOptions,
  limitsOf,
  readCase,
  readOptions,
  type Command,
} from './input.ts';

/** What limits a verdict to a recheck: the count by its source, with the share of this answer. */
const capJson = (cap: Cap) =>
  cap.code === 'counted'
    ? {
        code: cap.code,
        source: cap.near.count.source.id,
        asPrinted: cap.near.count.asPrinted,
        n: cap.near.count.n,
        percent: cap.near.percent,
        interval: [cap.near.interval.low, cap.near.interval.high],
      }
    : cap;

/** Why a finding got its verdict: a code, its numbers, and the sentence a person reads. */
function reasonOf(found: JudgedFinding, visit: JudgedVisit, record: Case, options: JudgeOptions) {
  const { judged, finding, raised, caps, reading } = found;
  const flagged = raised.map((r) => en.judge.raisedSentence(r, finding.response));
  if (judged.verdict === 'not-judged') {
    const sentence = [en.judge.notJudgedSentence(judged.why), ...flagged].join(' ');
    return { ...judged.why, raised, sentence };
  }
  const agreement = agreementOn(finding, judged.verdict, reading);
  const limits = options.limits!;
  const { birth } = record.child;
  const turning = judged.firm
    ? undefined
    : turningPoint(finding, judged.verdict, reading.compiled, birth, visit.ages.on, limits);
  const sentence = [
    ...caps.map(en.judge.capSentence),
    en.judge.verdictSentence(judged.verdict, finding.response, agreement),
    ...(turning ? [en.judge.turningSentence(turning)] : []),
    ...flagged,
    ...en.judge.testsSentences(found),
  ].join(' ');
  return {
    code: judged.verdict,
    agreement,
    ...(turning ? { turning } : {}),
    raised,
    caps: caps.map(capJson),
    meanExpectation: judged.totals.meanExpectation,
    sentence,
  };
}

function verdictJson(
  found: JudgedFinding,
  visit: JudgedVisit,
  record: Case,
  options: JudgeOptions,
) {
  const { finding, given, judged, attention, raised, reading } = found;
  const spoken = judged.verdict !== 'not-judged';
  return {
    reflex: finding.reflex,
    ...(finding.variant === undefined ? {} : { variant: finding.variant }),
    side: finding.side,
    response: given.response,
    state: given.state,
    tries: triesOf(given),
    // what the examiners of the day agreed on, which the verdict is of
    ...(given === finding ? {} : { agreed: finding.response }),
    verdict: judged.verdict,
    attention,
    firm: spoken && judged.firm,
    shares: spoken
      ? Object.fromEntries(Object.entries(judged.shares).filter(([, s]) => s > 0))
      : {},
    flags: raised.map((r) => r.flag),
    reason: reasonOf(found, visit, record, options),
    claims: spoken
      ? voicesOf(finding.response, reading)
          .filter((voice) => voice.verdict !== undefined)
          .map(({ source, family, verdict, probability, speaks }) => ({
            source,
            family,
            verdict,
            probability,
            speaks,
          }))
      : [],
  };
}

const intervalJson = (interval: Interval | null) => interval && { ...interval };

const sequenceJson = ({
  sequence,
  order,
  reason,
  asks,
  steps,
  stations,
  pairs,
}: SequenceCheck) => ({
  id: sequence.id,
  order,
  reason,
  asks,
  steps,
  pairs: pairs.map((pair) => ({ ...pair, asks: pairAsks(pair) })),
  stations: stations.map(({ station, reflexes, interval }) => ({
    ...station,
    reflexes,
    interval: intervalJson(interval),
  })),
});

/** Axis days; null is never. */
const datesJson = (dates: Dates | null) =>
  dates && {
    median: finite(dates.median),
    interval: [finite(dates.low), finite(dates.high)],
  };
const finite = (day: number): number | null => (Number.isFinite(day) ? day : null);

const courseJson = ({ appears, integrates, ...course }: InferredCourse) => ({
  ...course,
  appears: datesJson(appears),
  integrates: datesJson(integrates),
});

const fitJson = ({ takingPart, median, low, high, hidden, onLine }: Fit) => ({
  takingPart,
  median: finite(median),
  interval: [low, high],
  hidden,
  onLine,
});

function visitJson(visit: JudgedVisit, judge: CaseJudge, options: JudgeOptions) {
  const { record } = judge;
  const { differences, left, right, side, limb } = visit.pattern;
  const fits = judge.fits(visit.visit);
  return {
    on: visit.visit.on,
    examiner: visit.visit.examiner,
    ages: agesJson(visit.ages),
    verdicts: visit.findings.map((found) => verdictJson(found, visit, record, options)),
    milestones: visit.milestones.map(({ milestone, seen, attention, why }) => ({
      milestone: milestone.id,
      seen,
      attention,
      why,
    })),
    today: visit.today.map(({ code, about }) => ({ code, about, basis: TODAY_BASIS[code] })),
    together: visit.together,
    pattern: { side, limb, counts: { left, right }, differences },
    fit: Object.fromEntries(fits.map((fit) => [fit.kind, fitJson(fit)])),
  };
}

function caseJson(record: Case, options: JudgeOptions) {
  const agesFor = (on: Parameters<typeof agesOn>[1]) =>
    agesOn(record.child.birth, on, options.limits);
  const judge = new CaseJudge(record, options);
  const { reading } = judge;
  const last = record.visits.at(-1)?.on;
  const reflexes = last
    ? [...reading.days].flatMap(([test, { sides }]) => {
        const whole = inferredOf(reading, test, last);
        const each = (['left', 'right'] as const).flatMap((side) =>
          sides[side] ? (inferredOf(reading, test, last, side) ?? []) : [],
        );
        return whole ? [{ ...courseJson(whole), sides: each.map(courseJson) }] : [];
      })
    : [];
  return {
    child: record.child.label,
    visits: record.visits.map((visit) => visitJson(judge.visit(visit), judge, options)),
    courses: coursesOf(judge.read.visits, agesFor),
    asymmetries: sideTrends(judge.read.visits),
    reflexes,
    sequences: judge.sequences.map(sequenceJson),
    nextVisit: nextVisit(judge, options) ?? null,
  };
}

function caseText(record: Case, options: JudgeOptions): string {
  const { birth, label, invented } = record.child;
  const judge = new CaseJudge(record, options);
  const blocks = record.visits.map((one) => {
    const visit = judge.visit(one);
    const { on, examiner } = visit.visit;
    const head = `${en.ages.dateWords(on)}  ${en.ages.countedWords(visit.ages, birth.born)}${examiner && `  ${examiner}`}\n`;
    const rows = worstFirst(visit.findings).map((found) => [
      `  ${found.reflex.short}`,
      en.atlas.sides[found.finding.side],
      en.day.responseWords(found),
      en.judge.verdicts[found.judged.verdict],
      en.judge.attentions[found.attention],
      reasonOf(found, visit, record, options).sentence,
    ]);
    return (
      head +
      columns(rows) +
      en.visit
        .visitSentences(visit, judge.fits(one), ATLAS)
        .map((sentence) => `  ${sentence}\n`)
        .join('')
    );
  });
  const orders = judge.sequences
    .filter(({ stations }) => stations.some(({ interval }) => interval !== null))
    .map((check) => [`  ${check.sequence.id}`, en.inferred.orderSentence(check, ATLAS)]);
  const name = `${label}${invented ? ' (fictional)' : ''}\n`;
  const order = orders.length > 0 ? `Sequences\n${columns(orders)}` : '';
  return name + blocks.join('\n') + order + `${en.judge.CAUTION}\n`;
}

/** Each case by itself: read, judged and given away before the next is read, so that many take no more room. */
function* judged(
  paths: readonly string[],
  options: JudgeOptions,
  asJson: boolean,
): Generator<string | BadInput> {
  let isFirst = true;
  for (const path of paths)
    try {
      const record = readCase(path);
      if (asJson) yield `${JSON.stringify(caseJson(record, options))}\n`;
      else yield (isFirst ? '' : '\n') + caseText(record, options);
      isFirst = false;
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      yield error;
    }
}

export const judgeCommand: Command = (args) => {
  const { values, positionals } = readOptions(args, { source: { type: 'string' } });
  if (positionals.length === 0)
    throw new BadInput('No case file is named; write tidemark judge CASE.json.');
  const options = judgeOptions(chosenOf(values.source), limitsOf(values));
  return judged(positionals, options, values.json ?? false);
};
