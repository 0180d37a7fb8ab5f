/**
 * A report of one visit as plain lines under headings: the page sets them, the text export joins them,
 * so that both say the same. Without names, ages stand in the place of dates and free texts are left out.
 */
import { isAsking } from '../judge/rules/rule.ts';
import { group } from 'd3';
import type { CivilDate } from '../age/civil.ts';
import { DEFAULT_LIMITS } from '../age/clocks.ts';
import { sourceCount } from '../atlas/families.ts';
import { testedName } from '../atlas/variants.ts';
import { agesAt, type Case } from '../case/case.ts';
import { testOf } from '../case/finding.ts';
import { CaseJudge, type JudgedVisit, type JudgeOptions } from '../judge/judge.ts';
import { dayOf, wholeOf, type JudgedDay } from '../judge/day.ts';
import { changesAt } from '../judge/changes.ts';
import { planFor } from '../judge/plan.ts';
import type { Said } from '../store/findingsTable.ts';
import { BY_DATE, byAge, type When } from '../words/en/ages.ts';
import { en } from '../words/en.ts';
import { changesTogether, leftOpenTogether, sidesTogether } from './course.ts';
import { differOn, type Disagreement } from './differ.ts';
import { entriesOf, isPlainlyUneven } from './entries.ts';
import { questionsTogether } from './plan.ts';
import { once } from './sets.ts';

export interface ReportSection {
  heading: string;
  items: readonly string[];
}

export interface Report {
  title: string;
  /** Who it is about and when, a line each. */
  head: readonly string[];
  sections: readonly ReportSection[];
  /** The caution and whether names are in it. */
  foot: readonly string[];
}

export interface ReportInput {
  record: Case;
  visits: readonly JudgedVisit[];
  shown: JudgedVisit;
  options: JudgeOptions;
  withNames: boolean;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const sided = (name: string, side: string): string => (side ? `${name}, ${side}` : name);

function headOf({ record, shown, withNames }: ReportInput, when: When): string[] {
  const t = en.report.report;
  const { birth, invented } = record.child;
  const counted = en.ages.countedWords(shown.ages, birth.born);
  return [
    ...(invented ? [t.invented] : []),
    t.born(
      withNames ? birth.born : undefined,
      birth.gestationalDays,
      en.record.datings[birth.dating],
    ),
    t.seen(
      when.at(shown.visit.on),
      withNames ? counted : '',
      withNames ? shown.visit.examiner : '',
    ),
    t.ages(shown.ages),
  ];
}

/** The sources whose windows the findings were judged by, how many they are and a line for each kind. */
function sourceLines({ visits, options }: ReportInput): string[] {
  const ids = once(
    visits.flatMap(({ findings }) =>
      findings.flatMap(({ reading }) =>
        reading.compiled.windows.map(({ claim }) => claim.source.id),
      ),
    ),
  );
  const sources = ids.flatMap((id) => options.atlas.sources.get(id) ?? []);
  if (sources.length === 0) return [];
  const byKind = [...group(sources, ({ tier }) => tier)].map(([tier, ofKind]) =>
    en.report.report.sources(
      capital(en.atlas.tiers[tier]),
      ofKind.map(({ short }) => short).sort(),
    ),
  );
  return [en.report.report.judgedBy(sourceCount(ids)), ...byKind];
}

/** Differences with numbers in the place of the examiners' names, the same throughout the day. */
const numbered = ({ visits }: JudgedDay, differing: readonly Disagreement[]): Disagreement[] => {
  const names = visits.map(({ visit }) => visit.examiner);
  return differing.map((one) => ({
    ...one,
    answers: one.answers.map((answer) => ({
      ...answer,
      examiner: en.day.numbered(names.indexOf(answer.examiner) + 1),
    })),
  }));
};

function verdictSections(input: ReportInput, when: When): ReportSection[] {
  const { visits, shown, withNames } = input;
  const t = en.report.report;
  const day = dayOf(shown, visits);
  const entries = entriesOf(
    day.visits,
    visits.filter(({ visit }) => visit.on < day.on),
  );
  const asking = entries.filter(({ attention }) => isAsking(attention));
  const namesOf = (attention: string): string[] => {
    const names = entries.filter((e) => e.attention === attention).map((e) => e.reflex.short);
    return names.length > 0 ? [`${names.join(', ')}.`] : [];
  };
  const asks = asking.map((entry) => {
    const said = en.attention.entrySentences(
      { ...entry, plainlyUneven: isPlainlyUneven(entry) },
      when,
    );
    return `${entry.reflex.name} (${en.judge.attentions[entry.attention]}): ${said.join(' ')}`;
  });
  const differ = entries.flatMap(({ reflex }) => {
    const differing = differOn(day.visits, reflex.id);
    return en.day
      .differSentences(withNames ? differing : numbered(day, differing))
      .map((said) => `${reflex.short}: ${said}`);
  });
  return [
    { heading: t.asks, items: asks.length > 0 ? asks : [t.asksNone] },
    { heading: en.day.differTitle, items: differ },
    { heading: t.fits, items: namesOf('fits') },
    { heading: t.unjudged, items: namesOf('not-judged') },
  ];
}

function courseSections(input: ReportInput, judge: CaseJudge, when: When): ReportSection[] {
  const { record, visits, shown, options } = input;
  const t = en.report.report;
  const { changed, leftOpen } = changesAt(shown, visits);
  const moved = changesTogether(changed.filter(({ move }) => move !== 'first'));
  const orders = judge.sequences;
  const { questions } = planFor(record, shown.visit.on, options);
  return [
    {
      heading: t.changed,
      items: moved.length
        ? moved.map(
            ({ one, sides }) =>
              `${sided(one.reflex.short, en.course.sideWords(sides))}: ${en.course.changeSentence(one, when)}`,
          )
        : [t.changedNone],
    },
    {
      heading: t.leftOpen,
      items: leftOpenTogether(leftOpen).map(
        ({ one, sides }) =>
          `${sided(one.reflex.short, en.course.sideWords(sides))}: ${en.course.leftOpenSentence(one, when)}`,
      ),
    },
    {
      heading: t.orders,
      items: orders
        .filter(({ stations }) => stations.filter(({ interval }) => interval).length > 1)
        .map((check) => {
          const { stations } = check;
          const told = stations.map(
            ({ station, interval }) =>
              `${en.attention.stationWords(station, options.atlas)} ${en.attention.intervalWords(interval, when)}`,
          );
          return `${capital(en.inferred.checkWords(check))}: ${told.join('; ')}.`;
        }),
    },
    {
      heading: t.awaited,
      items: questionsTogether(questions).map(
        ({ question, sides }) =>
          `${sided(testedName(options.atlas.reflexes, question), en.course.sideWords(sides))}: ${en.attention.questionSentence(question, shown.visit.on, when)}`,
      ),
    },
  ];
}

function textSections({ record, withNames }: ReportInput): ReportSection[] {
  if (!withNames) return [];
  const t = en.report.report;
  const d = en.table.decisions;
  return [
    { heading: t.question, items: record.question ? [record.question] : [] },
    {
      heading: t.decisions,
      items: record.decisions.map(({ text, who, by, on, done }) =>
        [text, who, by ? d.due(by) : '', d.taken(on), done ? d.done : '']
          .filter(Boolean)
          .join('; '),
      ),
    },
  ];
}

export function reportOf(input: ReportInput): Report {
  const { record, visits, shown, options, withNames } = input;
  const t = en.report.report;
  const { birth, label } = record.child;
  const limits = options.limits ?? DEFAULT_LIMITS;
  const when = withNames
    ? BY_DATE
    : byAge(birth.born, (on: CivilDate) => agesAt(record, on, limits));
  const judge = new CaseJudge(record, options);
  const [question, decisions] = textSections(input);
  const day = dayOf(shown, visits).visits;
  const findings = sidesTogether(
    day.flatMap(({ visit, findings: judged }) =>
      visit.findings.map((finding) => ({
        finding,
        examiner: day.length > 1 && withNames ? visit.examiner || en.day.NO_NAME : '',
        found: judged.find((found) => found.given === finding),
      })),
    ),
    ({ finding }) => finding.side,
    ({ finding: { response, state, note: text, ...of }, examiner, found }) =>
      [testOf(of), examiner, response, state, text, found && en.course.meansWords(found)].join(
        ' / ',
      ),
  ).map(
    ({ one: { finding, examiner, found }, sides }) =>
      en.report.findingLine(
        sided(testedName(options.atlas.reflexes, finding), en.course.sideWords(sides)),
        finding,
        found,
        withNames,
      ) + (examiner && ` (${examiner})`),
  );
  const note =
    withNames && shown.visit.note ? [{ heading: t.note, items: [shown.visit.note] }] : [];
  const sections: ReportSection[] = [
    ...(question ? [question] : []),
    {
      heading: t.whole,
      items: en.visit.visitSentences(
        wholeOf(dayOf(shown, visits)),
        judge.fits(shown.visit),
        options.atlas,
        when,
      ),
    },
    ...verdictSections(input, when),
    ...courseSections(input, judge, when),
    { heading: t.findings, items: findings },
    ...note,
    ...(decisions ? [decisions] : []),
    {
      heading: t.rests,
      items: [
        en.ages.whyCounts(shown.ages, limits.pretermBelowDays, limits.untilMonths),
        en.ages.doubtWords(shown.ages.sdDays),
        ...sourceLines(input),
        t.notMeasured,
      ],
    },
  ];
  return {
    title: t.heading(withNames ? label : t.nameless),
    head: headOf(input, when),
    sections: sections.filter(({ items }) => items.length > 0),
    foot: [en.judge.CAUTION, en.judge.READING_NOTE, withNames ? t.named : t.unnamed],
  };
}

/** The report as plain text, to be pasted into a record. */
export const reportText = ({ title, head, sections, foot }: Report): string =>
  [
    title,
    ...head,
    ...sections.flatMap(({ heading, items }) => ['', heading, ...items.map((item) => `- ${item}`)]),
    '',
    ...foot,
    '',
  ].join('\n');

/** What the table of findings must carry, in the words of the report. */
export function saidWith(input: ReportInput): Said {
  const { pretermBelowDays, untilMonths } = input.options.limits ?? DEFAULT_LIMITS;
  const t = en.report.report;
  return {
    sources: sourceLines(input).join(' '),
    rule: en.ui.inForce.limits(pretermBelowDays, untilMonths),
    names: input.withNames ? t.named : t.unnamed,
    caution: en.judge.CAUTION,
  };
}
