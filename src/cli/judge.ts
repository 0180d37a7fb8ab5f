/** `tidemark judge`: every finding of every case, judged. */
import { agesOn } from '../lib/age/clocks.ts';
import { ATLAS } from '../lib/atlas/atlas.ts';
import type { Case } from '../lib/case/case.ts';
import { coursesOf, type Interval } from '../lib/case/course.ts';
import type { Cap } from '../lib/judge/caps.ts';
import { agreementOn, turningPoint } from '../lib/judge/hangs.ts';
import {
  judgeCase,
  worstFirst,
  type JudgedFinding,
  type JudgedVisit,
  type JudgeOptions,
} from '../lib/judge/judge.ts';
import { checkSequences, type SequenceCheck } from '../lib/judge/sequence.ts';
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

/** What holds a verdict to a watch: the count by its source, with the share of this answer. */
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
  const { finding, judged, attention, raised, reading } = found;
  const spoken = judged.verdict !== 'not-judged';
  return {
    reflex: finding.reflex,
    side: finding.side,
    response: finding.response,
    state: finding.state,
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

const sequenceJson = ({ sequence, order, steps, stations }: SequenceCheck) => ({
  id: sequence.id,
  order,
  steps,
  stations: stations.map(({ station, reflexes, interval }) => ({
    ...station,
    reflexes,
    interval: intervalJson(interval),
  })),
});

function caseJson(record: Case, options: JudgeOptions) {
  const agesFor = (on: Parameters<typeof agesOn>[1]) =>
    agesOn(record.child.birth, on, options.limits);
  return {
    child: record.child.label,
    visits: judgeCase(record, options).map((visit) => ({
      on: visit.visit.on,
      examiner: visit.visit.examiner,
      ages: agesJson(visit.ages),
      verdicts: visit.findings.map((found) => verdictJson(found, visit, record, options)),
    })),
    courses: coursesOf(record.visits, agesFor),
    sequences: checkSequences(ATLAS, record.visits, agesFor).map(sequenceJson),
  };
}

function caseText(record: Case, options: JudgeOptions): string {
  const { birth, label, invented } = record.child;
  const blocks = judgeCase(record, options).map((visit) => {
    const head = `${en.ages.dateWords(visit.visit.on)}  ${en.ages.countedWords(visit.ages, birth.born)}\n`;
    const rows = worstFirst(visit.findings).map((found) => [
      `  ${found.reflex.short}`,
      en.atlas.sides[found.finding.side],
      en.record.responses[found.finding.response],
      en.judge.verdicts[found.judged.verdict],
      en.judge.attentions[found.attention],
      reasonOf(found, visit, record, options).sentence,
    ]);
    return head + columns(rows);
  });
  const agesFor = (on: Parameters<typeof agesOn>[1]) => agesOn(birth, on, options.limits);
  const orders = checkSequences(ATLAS, record.visits, agesFor)
    .filter(({ order }) => order !== 'open')
    .map(({ sequence, order }) => [`  ${sequence.id}`, en.judge.orders[order]]);
  const name = `${label}${invented ? ' (invented)' : ''}\n`;
  const order = orders.length > 0 ? `Order of things\n${columns(orders)}` : '';
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
