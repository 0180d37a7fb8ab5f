/** The findings of judged records, gathered as rows of a table. Nothing is judged here. */
import { TERM_DAYS } from '../age/axis.ts';
import { sourceCount, type SourceCount } from '../atlas/families.ts';
import { agreedKey, findingKey, type Case } from '../case/case.ts';
import { triesOf, type Finding } from '../case/finding.ts';
import type { JudgedFinding, JudgedVisit } from '../judge/judge.ts';
import { SPEAKS_AT_LEAST } from '../judge/thresholds.ts';
import { voicesOf } from '../judge/verdict.ts';
import type { FindingRow } from '../store/findingsTable.ts';

/** A record with its visits as they were judged. */
export interface JudgedRecord {
  record: Case;
  visits: readonly JudgedVisit[];
}

type Meaning = Pick<
  FindingRow,
  | 'reflexName'
  | 'verdict'
  | 'whyNot'
  | 'share'
  | 'firm'
  | 'flags'
  | 'attention'
  | 'sources'
  | 'voices'
>;

/** Of a reflex that the atlas at hand does not hold: it is in the record, and nothing is said of it. */
const UNKNOWN: Meaning = {
  reflexName: '',
  verdict: 'not-judged',
  whyNot: 'unknown-reflex',
  share: null,
  firm: null,
  flags: [],
  attention: 'not-judged',
  sources: 0,
  voices: 0,
};

/** How many sources, and voices, speak of a response at the age it was seen. */
const speaking = ({ finding, reading }: JudgedFinding): SourceCount =>
  sourceCount(
    voicesOf(finding.response, reading)
      .filter((voice) => voice.speaks >= SPEAKS_AT_LEAST)
      .map((voice) => voice.source),
  );

function meaningOf(found: JudgedFinding): Meaning {
  const { judged, reflex, raised, attention } = found;
  const known = judged.verdict === 'not-judged' ? undefined : judged;
  return {
    reflexName: reflex.name,
    verdict: judged.verdict,
    whyNot: judged.verdict === 'not-judged' ? judged.why.code : '',
    share: known?.share ?? null,
    firm: known?.firm ?? null,
    flags: raised.map(({ flag }) => flag),
    attention,
    ...speaking(found),
  };
}

/** The answers that examiners agreed on, by what each is of. */
const agreedIn = ({ agreed }: Case): ReadonlyMap<string, string> =>
  new Map(agreed.map((one) => [agreedKey(one), one.response]));

/** One row a finding, in the order of the records, their visits, and the findings of each. */
export function findingRows(judged: readonly JudgedRecord[]): FindingRow[] {
  return judged.flatMap(({ record, visits }, index) =>
    visits.flatMap(({ visit, read, ages, findings }) => {
      const agreed = read === visit ? undefined : agreedIn(record);
      const found = new Map(findings.map((one) => [findingKey(one.finding), one]));
      return visit.findings.map((finding: Finding): FindingRow => {
        const one = found.get(findingKey(finding));
        return {
          child: record.child.label,
          childNumber: index + 1,
          invented: record.child.invented,
          on: visit.on,
          examiner: visit.examiner,
          gestationalDays: ages.gestationalDays,
          chronologicalDays: ages.chronologicalDays,
          postmenstrualDays: ages.postmenstrualDays,
          correctedDays: ages.correctedDays,
          usedDays: ages.axisDay - TERM_DAYS,
          counts: ages.counts,
          reflex: finding.reflex,
          side: finding.side,
          response: finding.response,
          state: finding.state,
          tries: triesOf(finding),
          variant: finding.variant ?? '',
          note: finding.note,
          agreed: agreed?.get(agreedKey({ ...finding, on: visit.on })) ?? '',
          ...(one ? meaningOf(one) : UNKNOWN),
        };
      });
    }),
  );
}
