/** When what is told of may change: the dates that judgement awaits, and no other. */
import { addDays, type CivilDate } from '../age/civil.ts';
import { isAnswer, isElicited } from '../case/finding.ts';
import { CaseJudge } from '../judge/judge.ts';
import { nextVisit, type NextVisit } from '../judge/nextVisit.ts';
import { planFor, type Plan, type PlanLine } from '../judge/plan.ts';
import { changeBy, type OpenQuestion } from '../judge/questions.ts';
import { dateOf, isFedBy, isPast, overBy, whenOn } from './about.ts';
import { section } from './sections.ts';
import type { FamilySection, PageInput, Sentence } from './model.ts';
import type { Speaker } from './speaker.ts';
import { isTalked, type Stands } from './stands.ts';

/** So many reflexes that are about to come are named ahead. A choice of ours. */
const AHEAD = 2;

/** A date nearer than this is no use to wait for, days. A choice of ours. */
const NEAR_DAYS = 14;

/** The ways to put a date, by what is awaited. */
const WORDS = {
  'to-integrate': { by: 'goes-by', between: 'goes-between' },
  'to-appear': { by: 'comes-by', between: 'comes-between' },
} as const;

/** What is known of the dates when a page is made. */
export interface Ahead {
  input: PageInput;
  on: CivilDate;
  /** What lies no later than this is over by now. */
  over: CivilDate;
  plan: Plan;
  /** By when the child is to be seen again, counted from the last visit. */
  next: NextVisit | undefined;
}

export const aheadOf = (input: PageInput, on: CivilDate): Ahead => ({
  input,
  on,
  over: overBy(input, on),
  plan: planFor(input.record, on, input.options),
  next: nextVisit(new CaseJudge(input.record, input.options), input.options, input.visits),
});

/** Whether a date is of use to wait for, then and now. */
const isAhead = (date: CivilDate, { on, over }: Ahead): boolean =>
  date >= addDays(on, NEAR_DAYS) && date > over;

/** Of several sides the question that is answered last. */
const latest = (questions: readonly OpenQuestion[]): OpenQuestion | undefined =>
  questions.toSorted((a, b) => ((a.every ?? '') < (b.every ?? '') ? 1 : -1))[0];

function asked(say: Speaker, one: Stands, question: OpenQuestion, ahead: Ahead): Sentence[] {
  const { most, every, awaits } = question;
  if (awaits === 'to-integrate' && isFedBy(one.reflex)) return []; // what takes its place is feeding
  if (!every) return [say.about(one.reflex, 'no-date')];
  if (!isAhead(every, ahead)) return []; // the time is past: what it means has been said
  const { by, between } = WORDS[awaits];
  const from = most && most > ahead.over && most < every ? most : every;
  const when = whenOn(say, ahead.input, every, from);
  return from < every
    ? [say.about(one.reflex, between, { from: say.date(from), to: say.date(every), when })]
    : [say.about(one.reflex, by, { date: say.date(every), when })];
}

/** Seen and expected: by when it goes, if every source that dates it lets it go and none keeps it for life. */
function goesLater(say: Speaker, one: Stands, ahead: Ahead): Sentence[] {
  const lead = one.told[0]?.found;
  if (!lead || lead.judged.verdict !== 'fits' || !isElicited(lead.finding.response)) return [];
  if (isFedBy(one.reflex)) return [];
  const { compiled } = lead.reading;
  if (compiled.windows.some(({ lifelong }) => lifelong)) return [];
  const { day, most } = changeBy(compiled, 'to-integrate');
  if (day === null || most === null) return [];
  const [from, date] = [dateOf(ahead.input, most), dateOf(ahead.input, day)];
  if (date <= ahead.over) return [];
  const when = whenOn(say, ahead.input, date, from > ahead.over ? from : date);
  return [say.about(one.reflex, 'goes-later', { date: say.date(date), when })];
}

/** What comes next for one reflex. */
export function nextOf(say: Speaker, one: Stands, ahead: Ahead): Sentence[] {
  const question = latest(
    ahead.plan.questions.filter(
      (question) =>
        question.reflex === one.reflex.id &&
        one.told.some(
          ({ found: { finding } }) =>
            finding.side === question.side &&
            finding.variant === question.variant &&
            isAnswer(finding),
        ),
    ),
  );
  // a date beside what is to be talked about would soothe, or press, before anyone has looked closer
  if (isTalked(one.attention)) return [];
  const dated = question ? asked(say, one, question, ahead) : goesLater(say, one, ahead);
  return one.attention === 'watch' && !isPast(ahead.input)
    ? [...dated, say.about(one.reflex, 'look-again')]
    : dated;
}

/** Reflexes that begin to come now and are not told of yet, with the date by which sources have them. */
function comingOf(ahead: Ahead, told: ReadonlySet<string>): { line: PlanLine; date: CivilDate }[] {
  const { plan, input } = ahead;
  if (isPast(input)) return []; // what was to come then is a matter of a later page
  return [...plan.lines, ...plan.rest]
    .flatMap((line) => {
      const opening = line.why.find((why) => why.code === 'opening');
      const known = line.why.some(({ code }) => code === 'open-question');
      const date = opening?.code === 'opening' ? opening.date : null;
      return date && isAhead(date, ahead) && !told.has(line.reflex.id) && !known
        ? [{ line, date }]
        : [];
    })
    .sort((a, b) => (a.date < b.date ? -1 : Number(a.date > b.date)))
    .slice(0, AHEAD);
}

export function nextSection(say: Speaker, ahead: Ahead, stands: readonly Stands[]): FamilySection {
  const { over, input } = ahead;
  const { sheet } = input.record;
  const seen = new Set(stands.map(({ reflex }) => reflex.id));
  const asks = new Set(stands.map(({ attention }) => attention));
  const next = isPast(input) ? undefined : ahead.next;
  const isDoctor = next?.why.code === 'today';
  const first = isPast(input)
    ? []
    : [
        ...(isDoctor ? [say.one('next.doctor')] : []),
        ...(asks.has('discuss') ? [say.one('next.team')] : []),
      ];
  const date = (on: CivilDate) => ({ date: say.date(on) });
  const visit: Sentence[] =
    sheet && sheet.on > over
      ? [say.one('next.visit', date(sheet.on))]
      : isDoctor || isPast(input)
        ? []
        : !next
          ? [say.one('next.none')]
          : [next.by > over ? say.one('next.by', date(next.by)) : say.one('next.due')];
  // beside what is to be talked about, what else is to come would only be in the way
  const coming = (asks.has('discuss') || isDoctor ? [] : comingOf(ahead, seen)).map(
    ({ line, date }) =>
      say.about(line.reflex, 'soon-by', { date: say.date(date), when: whenOn(say, input, date) }),
  );
  return section(say, 'next', [...first, ...visit, ...coming]);
}
