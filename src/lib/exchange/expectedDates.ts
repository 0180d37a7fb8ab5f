/** What is awaited, as calendar entries: one all-day entry for each date of an open question. */
import type { CivilDate } from '../age/civil.ts';
import type { Atlas } from '../atlas/atlas.ts';
import type { Side } from '../atlas/types.ts';
import { testedName } from '../atlas/variants.ts';
import { testOf } from '../case/finding.ts';
import type { OpenQuestion } from '../judge/plan.ts';
import { calendarText, uidOf, type CalendarEntry } from '../store/calendar.ts';
import { en } from '../words/en.ts';
import { saveText } from '../platform/download.ts';

export interface Asked {
  question: OpenQuestion;
  sides: readonly Side[];
}

/** The entries: the date for most sources, and the date for every source where that is another. */
export function awaitedEntries(
  childId: string,
  asked: readonly Asked[],
  atlas: Atlas,
): CalendarEntry[] {
  const t = en.course.coursePage;
  return asked.flatMap(({ question, sides }) => {
    const { side, most, every, awaits } = question;
    const name = testedName(atlas.reflexes, question);
    const title = t.entryTitle(name, en.course.sideWords(sides));
    const entry = (on: CivilDate, kind: 'most' | 'every', text: string): CalendarEntry => ({
      uid: uidOf(childId, testOf(question), side, awaits, kind),
      on,
      title,
      description: `${text} ${en.judge.CAUTION}`,
    });
    return [
      ...(most && most !== every ? [entry(most, 'most', t.entryMost)] : []),
      ...(every ? [entry(every, 'every', t.entryEvery)] : []),
    ];
  });
}

/** Saves the entries as a calendar file, stamped with the moment of saving. */
export const saveAwaited = (
  childId: string,
  asked: readonly Asked[],
  atlas: Atlas,
  now: Date,
): void =>
  saveText(
    'tidemark-awaited.ics',
    calendarText(awaitedEntries(childId, asked, atlas), now),
    'text/calendar',
  );
