/** English for what is to be done about a finding, and for how many findings ask for how much. */
import type { Attention } from '../../judge/rules/rule.ts';
import type { CivilDate } from '../../age/civil.ts';
import type { Ages } from '../../age/clocks.ts';
import { formatGestation } from '../../age/gestation.ts';
import { BY_DATE, chronologicalWords, correctedWords } from './ages.ts';

/** A thing to do, as a code; `look` has its date. */
interface Todo {
  code: string;
  by?: CivilDate;
}

const DO: Readonly<Record<string, string>> = {
  doctor: 'have a doctor see the infant today, by your local pathway',
  agree: 'look again together and agree on one answer',
  again: 'try it a second time',
  calm: 'see it again when the infant is calm',
  alert: 'try it again when the infant is calm and alert',
  confirm: 'confirm it when the infant is calm and alert',
  sides: 'compare both sides in one go, head in midline',
  film: 'film it for the team',
  team: 'ask the team, and refer by your local pathway',
  carer: 'look again, and ask the carer',
  kept: 'nothing now; the finding is kept',
};

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** `Confirm it when the infant is calm and alert; ask the team. Look again by 25 May 2026.` */
export function todoSentence(todo: readonly Todo[], when = BY_DATE): string {
  const now = todo.flatMap(({ code }) => DO[code] ?? []);
  const look = todo.flatMap(({ by }) => (by ? [`Look again by ${when.bare(by)}.`] : []));
  return [...(now.length > 0 ? [`${upper(now.join('; '))}.`] : []), ...look].join(' ');
}

export const label = 'Do:';
export const chart = 'On the chart';
export const technique = 'Technique';
export const none = 'No finding is recorded at this visit yet.';
export const title = 'Findings to review';
export const clear = 'Nothing is flagged.';

/** In the order in which they are said. */
const COUNTED = {
  today: 'to see a doctor today',
  discuss: 'to discuss',
  watch: 'to recheck',
  fits: 'as expected',
  'not-judged': 'not judged',
} as const satisfies Record<Attention, string>;

/** `2 to discuss, 1 to recheck, 10 as expected`, in parts, so that what asks for most can be marked. */
export const countedParts = (
  counts: Readonly<Record<Attention, number>>,
): { of: Attention; text: string }[] =>
  (Object.keys(COUNTED) as Attention[])
    .filter((of) => counts[of] > 0)
    .map((of) => ({ of, text: `${counts[of]} ${COUNTED[of]}` }));

/** The ages in the clocks that count, the one that is judged by first. */
export function clocks(ages: Ages, born: CivilDate): { text: string; counts: boolean }[] {
  const isCorrected = ages.counts === 'corrected';
  const corrected = { text: `${correctedWords(ages)} corrected`, counts: isCorrected };
  const chronological = {
    text: `${chronologicalWords(ages, born)} chronological`,
    counts: !isCorrected,
  };
  const postmenstrual = {
    text: `${formatGestation(ages.postmenstrualDays)} postmenstrual`,
    counts: false,
  };
  return isCorrected
    ? [corrected, chronological, postmenstrual]
    : ages.why === 'born-at-term'
      ? [chronological, postmenstrual]
      : [chronological, corrected, postmenstrual];
}
