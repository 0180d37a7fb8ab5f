/** The parts of a family's page that are about the child as a whole: ages, today, help, when to call. */
import { DAYS_PER_MONTH, DAYS_PER_WEEK, TERM_DAYS } from '../age/axis.ts';
import { DEFAULT_LIMITS, type Ages } from '../age/clocks.ts';
import { spokenAge, type SpokenAge } from '../age/spoken.ts';
import type { CivilDate } from '../age/civil.ts';
import { isAnswer } from '../case/finding.ts';
import type { JudgedVisit } from '../judge/judge.ts';
import type { FamilyItem, FamilySection, PageInput, Sentence } from './model.ts';
import type { Speaker } from './speaker.ts';
import type { Stands } from './stands.ts';
import type { SectionId } from '../words/family.ts';

/** With fewer reflexes that gave an answer than this, a page says that little was tested. Ours. */
export const LITTLE = 5;

/** A due date that can be off by this many days or more is said to be in doubt. Ours. */
const DOUBT_DAYS = 7;

/** From this age on a floor to move on is of more use than lying on the tummy. Ours. */
const FLOOR_FROM_DAY = TERM_DAYS + 213;

/** Advice on sleep is for the first year: common practice, no source. */
const SLEEP_UNTIL_DAY = TERM_DAYS + 365;

export const section = (
  say: Speaker,
  id: SectionId,
  sentences: readonly Sentence[],
  items: readonly FamilyItem[] = [],
): FamilySection => ({
  id,
  heading: say.say(`heading.${id}`, say.words.headings[id]),
  sentences,
  items,
});

/** Age in full words from an origin. */
export const ageOf = (say: Speaker, origin: CivilDate, on: CivilDate, days: number): string =>
  say.words.span(spokenAge(origin, on, days));

const inWeeks = (days: number): SpokenAge => ({
  before: false,
  unit: 'weeks',
  months: 0,
  weeks: Math.floor(days / DAYS_PER_WEEK),
  days: days % DAYS_PER_WEEK,
});

/** Whole weeks below this, whole months from it on. */
const WEEKS_BELOW_DAYS = 8 * DAYS_PER_WEEK;

/** About how old: in whole weeks or months, 1 at least. */
const aboutAge = (say: Speaker, days: number): string =>
  say.words.span(
    days < WEEKS_BELOW_DAYS
      ? inWeeks(Math.max(1, Math.round(days / DAYS_PER_WEEK)) * DAYS_PER_WEEK)
      : {
          before: false,
          unit: 'months',
          months: Math.round(days / DAYS_PER_MONTH),
          weeks: 0,
          days: 0,
        },
  );

/**
 * About the age that counts on a date ahead. Counted from the due date it says so, and until a week
 * after that date it is the age since birth.
 */
export const ageAhead = (say: Speaker, ages: Ages): string =>
  ages.counts === 'corrected' && ages.correctedDays >= DAYS_PER_WEEK
    ? say.words.fromDue(aboutAge(say, ages.correctedDays))
    : aboutAge(say, ages.chronologicalDays);

const bornEarly = (say: Speaker, { due, gestationalDays }: Ages): Sentence =>
  say.one('who.born-early', {
    span: say.words.span(inWeeks(TERM_DAYS - gestationalDays)),
    date: say.date(due),
  });

/** The age counted from birth and from the due date, and which of them is used. */
function agesTwoWays(say: Speaker, ages: Ages, born: CivilDate): Sentence[] {
  const { correctedDays, due, on } = ages;
  const told = [say.one('who.age-birth', { age: ageOf(say, born, on, ages.chronologicalDays) })];
  if (ages.counts === 'chronological') return [...told, say.one('who.past')];
  const byDue =
    correctedDays > 0
      ? say.one('who.age-due', { age: ageOf(say, due, on, correctedDays) })
      : correctedDays < 0
        ? say.one('who.age-before-due', { age: ageOf(say, due, on, correctedDays) })
        : say.one('who.age-at-due');
  return [...told, byDue, say.one('who.why')];
}

function doubt(say: Speaker, ages: Ages): Sentence[] {
  const days = Math.round(1.96 * ages.sdDays);
  if (days < DOUBT_DAYS) return [];
  const weeks = Math.ceil(days / DAYS_PER_WEEK);
  const span = say.words.span({ before: false, unit: 'weeks', months: 0, weeks, days: 0 });
  return [say.one('who.doubt', { span })];
}

export function whoSection(say: Speaker, input: PageInput, base: JudgedVisit): FamilySection {
  const { record, visits, shown, options } = input;
  const { birth } = record.child;
  const { pretermBelowDays } = options.limits ?? DEFAULT_LIMITS;
  const { ages } = base;
  const on = base.visit.on;
  const days = new Set(visits.map(({ visit }) => visit.on));
  const [first = on] = [...days].sort();
  const seen =
    shown || days.size === 1
      ? say.one('who.seen', { date: say.date(on) })
      : say.one('who.course', {
          times: say.words.times(days.size),
          from: say.date(first),
          to: say.date(on),
        });
  const early = birth.gestationalDays < pretermBelowDays;
  return section(say, 'who', [
    say.one('who.born', { date: say.date(birth.born) }),
    ...(early ? [bornEarly(say, ages)] : []),
    seen,
    ...(early
      ? agesTwoWays(say, ages, birth.born)
      : [say.one('who.age', { age: ageOf(say, birth.born, on, ages.chronologicalDays) })]),
    ...doubt(say, ages),
    ...([...days].some((day) => day > on) ? [say.one('who.newer')] : []),
  ]);
}

/** How many reflexes gave an answer. */
const answered = (stands: readonly Stands[]): number =>
  stands.filter(({ told }) => told.some(({ found }) => isAnswer(found.finding))).length;

/** How the page begins to tell what was looked at, and whether it can tell much. */
export function lookedSentences(say: Speaker, stands: readonly Stands[], told: number): Sentence[] {
  if (stands.length === 0) return [say.one('looked.nothing')];
  return [
    say.one('looked.intro'),
    ...(answered(stands) < LITTLE ? [say.one('looked.few')] : []),
    ...(stands.length > told ? [say.one('looked.more')] : []),
  ];
}

export function todaySection(say: Speaker, stands: readonly Stands[]): FamilySection {
  const asks = new Set(stands.map(({ attention }) => attention));
  const overall = asks.has('discuss')
    ? 'today.talk'
    : asks.has('watch')
      ? 'today.watch'
      : asks.has('fits')
        ? 'today.fits'
        : 'today.cannot-tell';
  return section(say, 'today', [say.one(overall), say.one('today.one-sign')]);
}

const ofIds = (say: Speaker, ...ids: readonly Parameters<Speaker['one']>[0][]): Sentence[] =>
  ids.map((id) => say.one(id));

export function helpSection(say: Speaker, ages: Ages | undefined): FamilySection {
  const day = ages?.axisDay ?? TERM_DAYS;
  const atHome =
    day < TERM_DAYS
      ? []
      : [day < FLOOR_FROM_DAY ? 'tummy' : 'floor', ...(day < SLEEP_UNTIL_DAY ? ['sleep'] : [])];
  return section(say, 'help', [
    ...ofIds(say, 'help.no-practice', 'help.daily'),
    ...atHome.map((id) => say.one(`help.${id as 'tummy' | 'floor' | 'sleep'}`)),
    ...ofIds(say, 'help.pace'),
  ]);
}

/** What stands on every page, whatever was seen. */
export const closingSections = (say: Speaker): FamilySection[] => [
  section(say, 'call', ofIds(say, 'call.any', 'call.ask')),
  section(
    say,
    'urgent',
    ofIds(
      say,
      'urgent.intro',
      'urgent.skills',
      'urgent.feeding',
      'urgent.tone',
      'urgent.fit',
      'urgent.side',
      'urgent.number',
    ),
  ),
  section(say, 'clinic', []),
  section(say, 'caution', ofIds(say, 'caution.instead', 'caution.limits', 'caution.guides')),
];
