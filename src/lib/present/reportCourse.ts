/** The course in a report: what changed, what was left open, sequences, what is expected to change. */
import { testedName } from '../atlas/variants.ts';
import { changesAt } from '../judge/changes.ts';
import { dayOf } from '../judge/day.ts';
import type { CaseJudge } from '../judge/judge.ts';
import { planFor } from '../judge/plan.ts';
import type { When } from '../words/en/ages.ts';
import { en } from '../words/en.ts';
import { changesTogether, leftOpenTogether } from './course.ts';
import { questionsTogether } from './plan.ts';
import { capital, sided, type ReportInput, type ReportSection } from './reportParts.ts';

export function courseSections(input: ReportInput, judge: CaseJudge, when: When): ReportSection[] {
  const { record, visits, shown, options } = input;
  const t = en.report.report;
  const { findings } = dayOf(shown, visits);
  const { changed, leftOpen } = changesAt({ ...shown, findings }, visits);
  const moved = changesTogether(changed.filter(({ move }) => move !== 'first'));
  const orders = judge.sequences;
  const { questions } = planFor(record, shown.visit.on, options);
  return [
    {
      on: 'course' as const,
      heading: t.changed,
      items: moved.length
        ? moved.map(
            ({ one, sides }) =>
              `${sided(one.reflex.short, en.course.sideWords(sides))}: ${en.course.changeSentence(one, when)}`,
          )
        : [t.changedNone],
    },
    {
      on: 'course' as const,
      heading: t.leftOpen,
      items: leftOpenTogether(leftOpen).map(
        ({ one, sides }) =>
          `${sided(one.reflex.short, en.course.sideWords(sides))}: ${en.course.leftOpenSentence(one, when)}`,
      ),
    },
    {
      on: 'course' as const,
      heading: t.orders,
      items: orders
        .filter(({ stations }) => stations.filter(({ interval }) => interval).length > 1)
        .map((check) => {
          const { stations } = check;
          const told = stations.map(
            ({ station, interval }) =>
              `${en.stations.stationWords(station, options.atlas)} ${en.stations.intervalWords(interval, when)}`,
          );
          return `${capital(en.inferred.checkWords(check))}: ${told.join('; ')}.`;
        }),
    },
    {
      on: 'course' as const,
      heading: t.awaited,
      items: questionsTogether(questions).map(
        ({ question, sides }) =>
          `${sided(testedName(options.atlas.reflexes, question), en.course.sideWords(sides))}: ${en.plan.questionSentence(question, shown.visit.on, when)}`,
      ),
    },
  ];
}
