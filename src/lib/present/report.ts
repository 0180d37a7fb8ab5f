/**
 * A report of one visit as plain lines under headings: the page sets them, the text export joins them,
 * so that both say the same. One sheet holds the visit, a second the course. Without names, ages stand in the
 * place of dates and free texts are left out.
 */
import type { CivilDate } from '../age/civil.ts';
import { DEFAULT_LIMITS } from '../age/clocks.ts';
import { agesAt } from '../case/case.ts';
import { dayOf, wholeOf } from '../judge/day.ts';
import { CaseJudge } from '../judge/judge.ts';
import type { Said } from '../store/findingsTable.ts';
import { BY_DATE, byAge } from '../words/en/ages.ts';
import { en } from '../words/en.ts';
import { courseSections } from './reportCourse.ts';
import {
  findingSection,
  headOf,
  planSection,
  reviewSections,
  sourceLines,
  textSections,
  type ReportInput,
  type ReportSection,
} from './reportParts.ts';

export interface Report {
  title: string;
  /** Who it is about and when, a line each. */
  head: readonly string[];
  /** In order: those of the visit, then those of the course. */
  sections: readonly ReportSection[];
  /** The rule of the age, the sources, the caution and whether names are in it. */
  foot: readonly string[];
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
  const note = dayOf(shown, visits).visits.flatMap(({ visit }) => visit.note || []);
  const sections: ReportSection[] = [
    ...reviewSections(input, when),
    planSection(input, judge, when),
    ...textSections(input),
    findingSection(input),
    { on: 'visit', heading: t.note, items: withNames ? note : [] },
    {
      on: 'course',
      heading: t.whole,
      items: en.visit.visitSentences(
        wholeOf(dayOf(shown, visits)),
        judge.fits(shown.visit),
        options.atlas,
        when,
      ),
    },
    ...courseSections(input, judge, when),
  ];
  return {
    title: t.heading(withNames ? label : t.nameless),
    head: headOf(input, when),
    sections: sections.filter(({ items }) => items.length > 0),
    foot: [
      en.ages.whyCounts(shown.ages, limits.pretermBelowDays, limits.untilMonths),
      en.ages.doubtWords(shown.ages.sdDays),
      ...sourceLines(input),
      t.notMeasured,
      en.judge.CAUTION,
      en.judge.READING_NOTE,
      withNames ? t.named : t.unnamed,
    ],
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
