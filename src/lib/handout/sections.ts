/** The parts of a family's page that are about the child as a whole: ages, today, help, when to call. */
import { DAYS_PER_WEEK, TERM_DAYS } from '../age/axis.ts';
import type { Ages } from '../age/clocks.ts';
import { spokenAge, type SpokenAge } from '../age/spoken.ts';
import type { CivilDate } from '../age/civil.ts';
import { isAnswer } from '../case/finding.ts';
import type { JudgedVisit } from '../judge/judge.ts';
import { isBornEarly, isPast } from './about.ts';
import type { FamilyItem, FamilySection, PageInput, Sentence } from './model.ts';
import { meantBy } from './meaning.ts';
import type { Ahead } from './next.ts';
import type { Speaker } from './speaker.ts';
import { isTalked, type Stands } from './stands.ts';
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
  const { record, visits, shown } = input;
  const { birth } = record.child;
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
  const early = isBornEarly(input);
  return section(say, 'who', [
    say.one('who.born', { date: say.date(birth.born) }),
    ...(early ? [bornEarly(say, ages)] : []),
    seen,
    ...(early
      ? agesTwoWays(say, ages, birth.born)
      : [say.one('who.age', { age: ageOf(say, birth.born, on, ages.chronologicalDays) })]),
    ...doubt(say, ages),
    ...(isPast(input) ? [say.one('who.newer')] : []),
  ]);
}

/** How many reflexes gave an answer. */
const answered = (stands: readonly Stands[]): number =>
  stands.filter(({ told }) => told.some(({ found }) => isAnswer(found.finding))).length;

/** How the page begins to tell what was looked at, and whether it can tell much. */
export function lookedSentences(say: Speaker, stands: readonly Stands[], told: number): Sentence[] {
  if (stands.length === 0) return [say.one('looked.nothing')];
  const isFew = answered(stands) < LITTLE;
  return [
    say.one('looked.intro'),
    ...(isFew ? [say.one('looked.few')] : []),
    ...(stands.length > told ? [say.one(isFew ? 'looked.few-more' : 'looked.more')] : []),
  ];
}

/** What is to be discussed and not told of: a sentence, and the names as its list. */
export const talkSection = (say: Speaker, toTalkAbout: readonly Stands[]): FamilySection =>
  section(say, 'talk', [
    say.one('talk.intro'),
    ...toTalkAbout.map(({ reflex }) => say.about(reflex, 'talk')),
  ]);

/**
 * What all of it comes to, in one sentence. Nothing is said to be as expected of what could not be told, nor of what was
 * not looked at on the day told of.
 */
export function todaySection(
  say: Speaker,
  stands: readonly Stands[],
  { on, input }: Ahead,
): FamilySection {
  const fresh = stands.filter(({ told }) => told.some((one) => one.on === on));
  const asks = new Set([
    ...stands.map(({ attention }) => attention).filter((attention) => attention !== 'fits'),
    ...fresh.map(({ attention }) => attention),
  ]);
  const isWhole = !asks.has('not-judged') && answered(fresh) >= LITTLE;
  const isOpen = fresh.some(
    ({ attention, told }) => attention === 'fits' && meantBy(told).some(({ firm }) => !firm),
  );
  const overall = asks.has('today')
    ? 'today.doctor'
    : [...asks].some(isTalked)
      ? 'today.talk'
      : asks.has('watch')
        ? 'today.watch'
        : !asks.has('fits')
          ? 'today.cannot-tell'
          : isWhole
            ? (`today.fits${isOpen ? '-open' : ''}` as const)
            : (`today.fits-so-far${isOpen ? '-open' : ''}` as const);
  const said = section(say, 'today', [say.one(overall)]);
  return isPast(input)
    ? { ...said, heading: say.say('heading.today', say.words.thoughtThen) }
    : said;
}

const ofIds = (say: Speaker, ...ids: readonly Parameters<Speaker['one']>[0][]): Sentence[] =>
  ids.map((id) => say.one(id));

/** @param looked whether anything was looked at: else there is nothing to be practised */
export function helpSection(say: Speaker, ages: Ages | undefined, looked: boolean): FamilySection {
  const day = ages?.axisDay ?? TERM_DAYS;
  const atHome =
    day < TERM_DAYS
      ? (['sleep-home'] as const)
      : ([
          day < FLOOR_FROM_DAY ? 'tummy' : 'floor',
          ...(day < SLEEP_UNTIL_DAY ? (['sleep'] as const) : []),
        ] as const);
  return section(say, 'help', [
    ...(looked ? [say.one('help.no-practice')] : []),
    say.one('help.daily'),
    ...atHome.map((id) => say.one(`help.${id}`)),
    ...ofIds(say, 'help.pace'),
  ]);
}

/**
 * What stands on every page, whatever was seen.
 * @param looked whether anything was looked at: else the page names no guides
 */
export const closingSections = (say: Speaker, looked: boolean): FamilySection[] => [
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
      'urgent.spasms',
      'urgent.side',
      'urgent.number',
    ),
  ),
  section(say, 'clinic', []),
  section(say, 'caution', [
    ...ofIds(say, 'caution.instead', 'caution.limits'),
    ...(looked ? [say.one('caution.guides')] : []),
  ]),
];
