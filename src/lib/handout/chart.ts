/** The family's chart as data: a few bands on one axis, words in the place of ticks. */
import { group } from 'd3';
import { DAYS_PER_MONTH, TERM_DAYS, toAxisDay, type AxisDay } from '../age/axis.ts';
import { agesAt } from '../case/case.ts';
import { DEFAULT_LIMITS } from '../age/clocks.ts';
import { isAnswer, isElicited, type Finding } from '../case/finding.ts';
import { halfHeights, ridgeOf } from '../chart/ridge.ts';
import type { JudgedVisit } from '../judge/judge.ts';
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

const monthDay = (months: number): AxisDay => toAxisDay(TERM_DAYS + months * DAYS_PER_MONTH);

/** A place on the axis in words: weeks before the due date or birth, months after. */
function placeWords(say: Speaker, day: number, isCorrected: boolean): string {
  const { chart, span } = say.words;
  const after = day - TERM_DAYS;
  if (Math.abs(after) < DAYS_PER_MONTH / 2) return isCorrected ? chart.dueAt : chart.birthAt;
  if (after > 0) return chart.months(Math.max(1, Math.round(after / DAYS_PER_MONTH)));
  const weeks = Math.round(-after / 7);
  return chart.before(span({ before: false, unit: 'weeks', months: 0, weeks, days: 0 }));
}

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
  { reflex }: Stands,
  visits: readonly JudgedVisit[],
  { record, options }: PageInput,
): FamilyMark[] {
  const limits = options.limits ?? DEFAULT_LIMITS;
  const byDay = group(visits, ({ visit }) => visit.on);
  return [...byDay].flatMap(([on, ofDay]): FamilyMark[] => {
    const found = ofDay.flatMap(({ visit }) =>
      visit.findings.filter((finding) => finding.reflex === reflex.id),
    );
    if (found.length === 0) return [];
    const mark = markOf(found);
    const { axisDay } = agesAt(record, on, limits);
    return [{ on, axisDay, mark, words: say.words.chart.marks[mark] }];
  });
}

/** When a band rises past one half and falls below it again, as days; null where it never does. */
interface Span {
  from: number;
  to: number;
}

/** Past two years a figure in months says less than "for years". */
const isLong = ({ to }: Span): boolean => to > monthDay(24) + 1;

function bandOf(
  say: Speaker,
  one: Stands,
  visits: readonly JudgedVisit[],
  input: PageInput,
  isCorrected: boolean,
): FamilyBand & { span: Span | null } {
  const compiled = input.options.sheet.get(one.reflex.id);
  const ridge = compiled ? ridgeOf(compiled) : [];
  const { first, last } = halfHeights(ridge);
  const span = last === -Infinity ? null : { from: first, to: last };
  const { chart } = say.words;
  const said = !span
    ? chart.bandNone
    : say.fill(isLong(span) ? chart.bandForYears : chart.band, {
        from: placeWords(say, span.from, isCorrected),
        to: isLong(span) ? '' : placeWords(say, span.to, isCorrected),
      });
  const marks = marksOf(say, one, visits, input);
  const seen = marks.map(({ on, words }) =>
    say.fill(chart.seen, { date: say.date(on), mark: words }),
  );
  return {
    reflex: one.reflex,
    name: say.nameOf(one.reflex),
    ridge,
    marks,
    spoken: say.say(`chart.${one.reflex.id}`, [said, ...seen].join(' ')),
    span,
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
  const bands = told.map((one) => bandOf(say, one, shown, input, isCorrected));
  const now = ages.axisDay;
  const ends = bands.flatMap(({ span }) => (span && Number.isFinite(span.to) ? [span.to] : []));
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
    today: { axisDay: now, words: chart.today },
    bands: bands.map(({ span: _, ...band }) => band),
  };
}
