/** The family's chart as data: a few bands on one axis, words in the place of ticks. */
import { group } from 'd3';
import type { Reflex } from '../atlas/types.ts';
import { DAYS_PER_MONTH, TERM_DAYS, toAxisDay, type AxisDay } from '../age/axis.ts';
import { agesAt } from '../case/case.ts';
import { DEFAULT_LIMITS } from '../age/clocks.ts';
import { isAnswer, isElicited, testOf, type Finding } from '../case/finding.ts';
import { halfHeights, ridgeOf } from '../chart/ridge.ts';
import type { RidgePiece } from '../chart/model.ts';
import type { Compiled } from '../judge/expectation.ts';
import type { JudgedVisit } from '../judge/judge.ts';
import { changeBy, type ChangeBy } from '../judge/questions.ts';
import { dateOf, isBornEarly, isFedBy, whenOn } from './about.ts';
import type { FamilyBand, FamilyChart, FamilyMark, PageInput } from './model.ts';
import type { Speaker } from './speaker.ts';
import type { Stands } from './stands.ts';

/** Months that get a word, from the due date or birth on. */
const MONTHS = [3, 6, 9, 12, 18, 24, 36, 48, 60] as const;
/** The axis runs on past the visit by this much at least, days. */
const ROOM_DAYS = 60;
/** Bands are followed this far past the visit, days. */
const AHEAD_DAYS = 183;
/** A birth nearer to the due date than this gets no word of its own: the two would touch. */
const APART_DAYS = 21;

/** The child's birth on the axis. */
const startOf = (input: PageInput): AxisDay =>
  toAxisDay(isBornEarly(input) ? input.record.child.birth.gestationalDays : TERM_DAYS);

const monthDay = (months: number): AxisDay => toAxisDay(TERM_DAYS + months * DAYS_PER_MONTH);

/** What the answers of one day come to: of unlike answers on one side, nothing can be told. */
function markOf(found: readonly Finding[]): FamilyMark['mark'] {
  const answers = found.filter(isAnswer);
  const isThere = ({ response }: Finding): boolean => isElicited(response);
  const bySide = [...group(answers, ({ side }) => side).values()];
  if (answers.length === 0 || bySide.some((of) => of.some(isThere) && !of.every(isThere)))
    return 'cannot-tell';
  if (answers.every(isThere)) return 'there';
  return answers.some(isThere) ? 'one-side' : 'away';
}

function marksOf(
  say: Speaker,
  { reflex, told }: Stands,
  visits: readonly JudgedVisit[],
  { record, options }: PageInput,
): FamilyMark[] {
  const limits = options.limits ?? DEFAULT_LIMITS;
  const byDay = group(visits, ({ visit }) => visit.on);
  const test = testOf({ reflex: reflex.id, variant: told[0]?.found.finding.variant });
  return [...byDay].flatMap(([on, ofDay]): FamilyMark[] => {
    const found = ofDay.flatMap(({ read }) =>
      read.findings.filter((finding) => testOf(finding) === test),
    );
    if (found.length === 0) return [];
    const mark = markOf(found);
    const { axisDay } = agesAt(record, on, limits);
    return [{ on, axisDay, mark, words: say.words.chart.marks[mark] }];
  });
}

/** Past two years a figure in months says less than "for years". */
const isLong = (day: number): boolean => day > monthDay(24) + 1;

/** When the sources expect it to come and to fade, by the same reckoning as the dates of the sentences. */
function spanWords(say: Speaker, reflex: Reflex, compiled: Compiled, input: PageInput): string {
  const { chart } = say.words;
  const start = startOf(input);
  const said = (text: string, { most, day }: ChangeBy): string => {
    const [from, to] = [most ?? start, day ?? start].map((at) =>
      dateOf(input, toAxisDay(Math.max(at, start))),
    );
    return say.fill(text, { when: whenOn(say, input, to!, from) });
  };
  const { last } = halfHeights(ridgeOf(compiled));
  const comes = changeBy(compiled, 'to-appear');
  const fades = changeBy(compiled, 'to-integrate');
  const end = isLong(last)
    ? chart.thenStays
    : fades.day === null
      ? ''
      : said(isFedBy(reflex) ? chart.thenFeeds : chart.thenFades, fades);
  if (last === -Infinity || (comes.day === null && end === '')) return chart.bandNone;
  const begin =
    comes.day === null
      ? chart.comesUnsaid
      : comes.day <= start
        ? chart.fromBirth
        : comes.day <= TERM_DAYS
          ? chart.byDue
          : said(chart.comes, comes);
  return [begin, end].filter(Boolean).join(' ');
}

/** The last day of a band: where its shape has sunk to nothing. */
const endOf = (ridge: readonly RidgePiece[]): number => Math.max(...ridge.map(({ to }) => to));

function bandOf(
  say: Speaker,
  one: Stands,
  visits: readonly JudgedVisit[],
  input: PageInput,
): FamilyBand {
  const { reflex } = one;
  const variant = one.told[0]?.found.finding.variant;
  const compiled = input.options.sheet.get(testOf({ reflex: reflex.id, variant }));
  const marks = marksOf(say, one, visits, input);
  const seen = marks.map(({ on, words }) =>
    say.fill(say.words.chart.seen, { date: say.date(on), mark: words }),
  );
  const said = compiled ? spanWords(say, reflex, compiled, input) : say.words.chart.bandNone;
  return {
    reflex,
    name: say.nameOf(reflex),
    ridge: compiled ? ridgeOf(compiled) : [],
    marks,
    spoken: say.say(`chart.${reflex.id}`, [said, ...seen].join(' ')),
  };
}

export function chartOf(
  say: Speaker,
  input: PageInput,
  base: JudgedVisit | undefined,
  told: readonly Stands[],
): FamilyChart {
  const { record, visits } = input;
  const { birth } = record.child;
  const { chart, labels } = say.words;
  // before the first visit the axis is that of the day of birth
  const upTo = base?.visit.on ?? birth.born;
  const ages = agesAt(record, upTo, input.options.limits ?? DEFAULT_LIMITS);
  const isCorrected = ages.counts === 'corrected';
  const shown = visits.filter(({ visit }) => visit.on <= upTo);
  const bands = told.map((one) => bandOf(say, one, shown, input));
  const now = ages.axisDay;
  const ends = bands.map(({ ridge }) => endOf(ridge)).filter((day) => !isLong(day));
  const far = Math.max(now + ROOM_DAYS, Math.min(Math.max(now, ...ends), now + AHEAD_DAYS));
  const last = MONTHS.find((months) => monthDay(months) >= far) ?? MONTHS.at(-1)!;
  const start = isCorrected ? birth.gestationalDays : TERM_DAYS;
  const ticks = [
    ...(isCorrected && TERM_DAYS - start >= APART_DAYS
      ? [{ axisDay: toAxisDay(start), words: chart.birth }]
      : []),
    { axisDay: toAxisDay(TERM_DAYS), words: isCorrected ? chart.due : chart.birth },
    ...MONTHS.filter((months) => months <= last).map((months) => ({
      axisDay: monthDay(months),
      words: chart.months(months),
    })),
  ];
  return {
    label: say.fill(labels.chart),
    from: toAxisDay(Math.min(start, TERM_DAYS)),
    to: monthDay(last),
    ticks,
    today: { axisDay: now, words: input.shown ? chart.today : chart.last },
    shape: chart.shape,
    bands,
  };
}
