/** The parts of a report that are of one visit: who, findings to review, what to do, answers, sources. */
import { group } from 'd3';
import { sourceCount } from '../atlas/families.ts';
import { testedName } from '../atlas/variants.ts';
import type { Case } from '../case/case.ts';
import { testOf, type Response } from '../case/finding.ts';
import { dayOf, type JudgedDay } from '../judge/day.ts';
import type { CaseJudge, JudgedVisit, JudgeOptions } from '../judge/judge.ts';
import { nextVisit } from '../judge/nextVisit.ts';
import { isAsking, type Attention } from '../judge/rules/rule.ts';
import type { When } from '../words/en/ages.ts';
import { en } from '../words/en.ts';
import { sidesTogether } from './course.ts';
import { differOn, type Disagreement } from './differ.ts';
import { entriesOf, isPlainlyUneven } from './verdictEntries.ts';
import { WAITS } from './plan.ts';
import { once } from '../platform/sets.ts';
import { countsOf, todoOf, todoOfMilestone } from './todo.ts';

/** A finding to review: why, and what is to be done about it. */
export interface ReviewRow {
  name: string;
  grade: Attention;
  said: string;
  todo: string;
}

/** What was recorded, with its sign. */
export interface SignedLine {
  response: Response;
  text: string;
}

export interface ReportSection {
  /** On which sheet: that of the visit, or that of the course. */
  on: 'visit' | 'course';
  heading: string;
  /** As plain text: what the rows or the signed lines say, too. */
  items: readonly string[];
  review?: readonly ReviewRow[];
  signed?: readonly SignedLine[];
}

export interface ReportInput {
  record: Case;
  visits: readonly JudgedVisit[];
  shown: JudgedVisit;
  options: JudgeOptions;
  withNames: boolean;
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const sided = (name: string, side: string): string => (side ? `${name}, ${side}` : name);

/** Who was seen, when, by whom, and how old. */
export function headOf({ record, visits, shown, withNames }: ReportInput, when: When): string[] {
  const t = en.reportPage;
  const { birth, invented } = record.child;
  const examiners = once(
    dayOf(shown, visits).visits.map(({ visit }) => visit.examiner || en.day.NO_NAME),
  );
  const ages = en.todo.clocks(shown.ages, birth.born).map(({ text }) => text);
  return [
    ...(invented ? [en.report.report.invented] : []),
    t.born(
      withNames ? birth.born : undefined,
      birth.gestationalDays,
      en.record.datings[birth.dating],
    ),
    t.seen(when.at(shown.visit.on), withNames ? examiners : []),
    t.ages(ages),
  ];
}

/** The sources whose windows the findings were judged by, how many they are and a line for each kind. */
export function sourceLines({ visits, options }: ReportInput): string[] {
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

/** Each row as plain text. */
const rowText = ({ name, grade, said, todo }: ReviewRow): string =>
  [`${name} (${en.report.grades[grade]}):`, said, ...(todo ? [en.todo.label, todo] : [])].join(' ');

/** Findings to review with their reasons and what to do, where examiners differ, and what is as expected. */
export function reviewSections(input: ReportInput, when: When): ReportSection[] {
  const { visits, shown, withNames } = input;
  const t = en.report.report;
  const day = dayOf(shown, visits);
  const entries = entriesOf(
    day.visits,
    visits.filter(({ visit }) => visit.on < day.on),
  );
  const milestones = day.milestones.filter(({ attention }) => isAsking(attention));
  const review: ReviewRow[] = [
    ...entries
      .filter(({ attention }) => isAsking(attention))
      .map((entry) => {
        const told = { ...entry, plainlyUneven: isPlainlyUneven(entry) };
        const differing = differOn(day.visits, entry.reflex.id);
        return {
          name: entry.reflex.name,
          grade: entry.attention,
          said: en.attention.entrySentences(told, when).join(' '),
          todo: en.todo.todoSentence(todoOf(entry, day.on, differing), when),
        };
      }),
    ...milestones.map((one) => ({
      name: one.milestone.short,
      grade: one.attention,
      said: en.judge.milestoneSentence(one, when),
      todo: en.todo.todoSentence(todoOfMilestone(one, day.on), when),
    })),
  ];
  const counts = en.todo.countedParts(countsOf(entries, milestones)).map(({ text }) => text);
  const differ = entries.flatMap(({ reflex }) => {
    const differing = differOn(day.visits, reflex.id);
    return en.day
      .differSentences(withNames ? differing : numbered(day, differing))
      .map((said) => `${reflex.short}: ${said}`);
  });
  const others = (['fits', 'not-judged'] as const).flatMap((attention) => {
    const names = entries.filter((e) => e.attention === attention).map((e) => e.reflex.short);
    const word = attention === 'fits' ? t.fits : t.unjudged;
    return names.length > 0 ? [`${word}: ${names.join(', ')}.`] : [];
  });
  return [
    {
      on: 'visit',
      heading: [en.todo.title, counts.join(', ')].filter(Boolean).join(': '),
      items: review.length > 0 ? review.map(rowText) : [en.todo.clear],
      ...(review.length > 0 ? { review } : {}),
    },
    { on: 'visit', heading: en.day.differTitle, items: differ },
    {
      on: 'visit',
      heading: en.reportPage.others,
      items: others,
    },
  ];
}

/** By when the child is seen again, and why; nothing on the report of a day that has others after it. */
export function planSection(input: ReportInput, judge: CaseJudge, when: When): ReportSection {
  const { record, visits, shown, options } = input;
  const { atlas } = options;
  const isLast = shown.visit.on === record.visits.at(-1)?.on;
  const next = isLast ? nextVisit(judge, options, visits) : undefined;
  const names = {
    reflex: (id: string) => atlas.reflexes.get(id)?.short ?? id,
    milestone: (id: string) => atlas.milestones.get(id)?.short ?? id,
    sequence: (id: string) => en.orderPages.orderNames[id] ?? id,
  };
  return {
    on: 'visit',
    heading: en.reportPage.plan,
    items: next
      ? [
          ...(input.withNames
            ? [`${en.nextVisit.nextTitle(next)}.`]
            : next.why.code === 'today'
              ? []
              : [en.reportPage.nextAt(when.at(next.by))]),
          ...en.nextVisit.whySentences(next.why, null, names, WAITS),
        ]
      : [],
  };
}

/** Everything that was recorded on the day, by each examiner, the sides together where they are alike. */
export function findingSection({ visits, shown, options, withNames }: ReportInput): ReportSection {
  const day = dayOf(shown, visits).visits;
  const signed = sidesTogether(
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
  ).map(({ one: { finding, examiner, found }, sides }): SignedLine => {
    const name = sided(testedName(options.atlas.reflexes, finding), en.course.sideWords(sides));
    const text = en.report.findingLine(name, finding, found, withNames);
    return { response: finding.response, text: `${text}${examiner && ` (${examiner})`}` };
  });
  return {
    on: 'visit',
    heading: en.report.report.findings,
    items: signed.map(({ text }) => text),
    signed,
  };
}

/** The question to the team and what it decided, with who and by when; both are free texts. */
export function textSections({ record, withNames }: ReportInput): ReportSection[] {
  if (!withNames) return [];
  const t = en.report.report;
  const d = en.table.decisions;
  return [
    { on: 'visit', heading: t.question, items: record.question ? [record.question] : [] },
    {
      on: 'visit',
      heading: t.decisions,
      items: record.decisions.map(({ text, who, by, on, done }) =>
        [text, who, by ? d.due(by) : '', d.taken(on), done ? d.done : '']
          .filter(Boolean)
          .join('; '),
      ),
    },
  ];
}
