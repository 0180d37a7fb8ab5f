/**
 * A day's verdicts as a reader takes them in: one entry a reflex, the sides and the examiners told together,
 * worst first. Nothing is judged here; findings already judged are gathered.
 */
import { group } from 'd3';
import type { Reflex } from '../atlas/types.ts';
import { isElicited, strengthOf, testOf, type Response } from '../case/finding.ts';
import { agreementOn, type Agreement } from '../judge/hangs.ts';
import { worstFirst, type JudgedFinding, type JudgedVisit } from '../judge/judge.ts';
import { answersForSide } from '../judge/reading/days.ts';
import { sideTrends, type SideTrend, type Trend } from '../judge/reading/sides.ts';
import type { Attention } from '../judge/rules/rule.ts';
import { indexOf } from '../platform/sets.ts';

/** The weaker side of an uneven pair, and at how many visits in a row it was the weaker one. */
export interface Weaker {
  side: 'left' | 'right';
  response: Response;
  other: Response;
  visits: number;
  /** How the difference moved since the day before on which both sides answered. */
  trend: Trend;
}

export interface Entry {
  reflex: Reflex;
  /** Left, right, midline: those that were looked at, of each examiner. */
  sides: readonly JudgedFinding[];
  /** Findings that say different things, the one that asks for most first. */
  distinct: readonly JudgedFinding[];
  lead: JudgedFinding;
  attention: Attention;
  weaker: Weaker | undefined;
  agreement: Agreement | undefined;
}

const ORDER = ['left', 'right', 'midline'] as const;

/** The weaker side at a visit; how long it has been so is that of the trend, which counts days. */
function weakerAt(
  { read }: JudgedVisit,
  test: string,
  trend: SideTrend | undefined,
): Weaker | undefined {
  const of = (side: 'left' | 'right') =>
    read.findings.find(
      (f) => testOf(f) === test && f.side === side && answersForSide(f, read.findings),
    )?.response;
  const [left, right] = [of('left'), of('right')];
  if (!left || !right || left === right || !trend) return undefined;
  const { stays: visits, trend: moved } = trend;
  return strengthOf(left) < strengthOf(right)
    ? { side: 'left', response: left, other: right, visits, trend: moved }
    : { side: 'right', response: right, other: left, visits, trend: moved };
}

/** Sides that say the same thing are told once. */
function distinctOf(findings: readonly JudgedFinding[]): JudgedFinding[] {
  const said = new Map<string, JudgedFinding>();
  for (const one of worstFirst(findings)) {
    const key = `${testOf(one.finding)} ${one.finding.response} ${one.judged.verdict}`;
    if (!said.has(key)) said.set(key, one);
  }
  return [...said.values()];
}

/** The entries of a day, of one visit or of all its examiners'; `earlier` are the judged visits before it, oldest first. */
export function entriesOf(day: readonly JudgedVisit[], earlier: readonly JudgedVisit[]): Entry[] {
  const trends = indexOf(
    sideTrends([...earlier, ...day].map((judged) => judged.read)),
    ({ test }) => test,
  );
  const found = day.flatMap((visit) => visit.findings.map((one) => ({ found: one, visit })));
  const byReflex = group(found, (of) => of.found.reflex.id);
  const entries = [...byReflex.values()].flatMap((all): Entry[] => {
    const findings = all.map((of) => of.found);
    const distinct = distinctOf(findings);
    const [lead] = distinct;
    if (!lead) return [];
    const { judged, finding, reflex } = lead;
    const spoken = judged.verdict === 'not-judged' ? undefined : judged.verdict;
    const at = all.find((of) => of.found === lead)!.visit;
    return [
      {
        reflex,
        sides: ORDER.flatMap((side) => findings.filter((f) => f.finding.side === side)),
        distinct,
        lead,
        attention: lead.attention,
        weaker: weakerAt(at, testOf(finding), trends.get(testOf(finding))),
        agreement: spoken && agreementOn(finding, spoken, lead.reading),
      },
    ];
  });
  const leads = worstFirst(entries.map((entry) => entry.lead));
  return entries.sort((a, b) => leads.indexOf(a.lead) - leads.indexOf(b.lead));
}

/** Whether the pair differs for another reason than an answer that is obligatory on one side. */
export const isPlainlyUneven = ({ weaker }: Entry): boolean =>
  weaker !== undefined && (weaker.other !== 'obligatory' || !isElicited(weaker.response));
