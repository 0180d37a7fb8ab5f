/** One reflex on the page: what was done, what was seen, what that means today, what comes next. */
import { group, max } from 'd3';
import { DEFAULT_LIMITS } from '../age/clocks.ts';
import type { CivilDate } from '../age/civil.ts';
import type { Reflex } from '../atlas/types.ts';
import { agesAt } from '../case/case.ts';
import { answersOf, courseOf, lastTests } from '../case/course.ts';
import { settled } from '../case/settled.ts';
import { isUnfitState, testOf, type Response } from '../case/finding.ts';
import type { JudgedFinding } from '../judge/judge.ts';
import { isFedBy } from './about.ts';
import { meantBy, type MeantOf } from './meaning.ts';
import type { FamilyItem, Sentence } from './model.ts';
import { nextOf, type Ahead } from './next.ts';
import type { Speaker } from './speaker.ts';
import { isTalked, type Stands } from './stands.ts';

/** How a finding is told: one that was missing in a state that does not allow judging does not count. */
const codeOf = ({ finding }: JudgedFinding): Response | 'not-counted' =>
  finding.response === 'not-elicited' && isUnfitState(finding.state)
    ? 'not-counted'
    : finding.response;

function sawText(say: Speaker, found: readonly JudgedFinding[]): string {
  const [first] = found;
  if (!first) return '';
  const { saw, sides, states } = say.words;
  const state = states[first.finding.state];
  const alike = found.every((one) => codeOf(one) === codeOf(first));
  const both = found.length > 1;
  if (alike && (both || first.finding.side === 'midline'))
    return say.fill(saw[codeOf(first)][both ? 'both' : 'one'], { state });
  return found
    .map((one) =>
      say.fill(saw[codeOf(one)][one.finding.side === 'midline' ? 'one' : 'side'], {
        side: sides[one.finding.side],
        state: states[one.finding.state],
      }),
    )
    .join(' ');
}

/** What was seen, a sentence for each date; a date other than the page's own is said. */
function sawOf(say: Speaker, { reflex, told, othersDiffer, triedOn }: Stands, on: CivilDate) {
  // that examiners differ is for the team, until they agree on one answer
  if (othersDiffer) return [say.about(reflex, 'other')];
  const said: Sentence[] = [];
  const byDate = group(told, (one) => one.on);
  for (const [date, ofDate] of [...byDate].sort(([a], [b]) => (a < b ? 1 : -1))) {
    const later = said.length > 0 ? `.${said.length}` : '';
    const text = sawText(
      say,
      ofDate.map(({ found }) => found),
    );
    if (date !== on)
      said.push(
        say.say(`item.${reflex.id}.when${later}`, say.words.aboutReflex.when, {
          date: say.date(date),
        }),
      );
    said.push(say.say(`item.${reflex.id}.saw${later}`, text));
  }
  if (triedOn) said.push(say.about(reflex, 'tried', { date: say.date(triedOn) }));
  return said;
}

/** Over a course: between which visits it came or went. */
function movedOf(say: Speaker, { reflex }: Stands, { input }: Ahead): Sentence[] {
  const { shown, options } = input;
  if (shown) return [];
  const record = settled(input.record);
  const limits = options.limits ?? DEFAULT_LIMITS;
  const test = lastTests(record.visits).get(reflex.id);
  const { state, appeared, integrated } = courseOf(
    answersOf(
      record.visits,
      (on) => agesAt(record, on, limits),
      (finding) => testOf(finding) === test,
    ),
  );
  const between = (id: 'came' | 'went', after: CivilDate, by: CivilDate): Sentence[] => [
    say.about(reflex, id, { from: say.date(after), to: say.date(by) }),
  ];
  if (state === 'gone' && integrated?.after && integrated.by)
    return between('went', integrated.after.on, integrated.by.on);
  if (state === 'present' && appeared.after && appeared.by)
    return between('came', appeared.after.on, appeared.by.on);
  return [];
}

/** A meaning in words; where it is true of one side alone, that side is named. */
function meansText(
  say: Speaker,
  { meaning, firm, sides }: MeantOf,
  reflex: Reflex,
  tense: 'now' | 'then',
): string {
  const whole = say.words.means[meaning];
  const graded = (isFedBy(reflex) && whole.ofFeeding) || whole;
  const [side, ...others] = sides;
  const isOneSide = side !== undefined && side !== 'midline' && others.length === 0;
  const { [firm ? 'firm' : 'open']: text } = (isOneSide && graded.oneSide) || graded;
  return say.fill(text, { ...say.words.tense[tense], side: say.words.sides[side ?? 'midline'] });
}

/**
 * What it means, worst first. What was last looked at on an earlier day means what it meant then: told
 * in that day's tense, and that it has not been looked at since.
 */
function meansOf(say: Speaker, one: Stands, on: CivilDate) {
  const { reflex, attention, told, triedOn, othersDiffer } = one;
  if (othersDiffer) {
    const meaning = 'cannot-tell-tried' as const;
    const said = [say.say(`item.${reflex.id}.means`, say.words.means[meaning].firm)];
    if (isTalked(attention)) said.push(say.about(reflex, 'why-talk'));
    return { meaning, firm: true, means: said };
  }
  const [now, then] = [told.filter((of) => of.on === on), told.filter((of) => of.on !== on)];
  // beside what was seen today, of an earlier day only what is still to be talked about
  const older = now.length > 0 ? then.filter(({ found }) => isTalked(found.attention)) : then;
  const meant = [
    ...meantBy(older).map((of) => ({ ...of, tense: 'then' as const })),
    ...meantBy(now).map((of) => ({ ...of, tense: 'now' as const })),
  ];
  const [first = { meaning: 'cannot-tell-tried' as const, firm: true }] = meant;
  const said = meant.map((of, index) =>
    say.say(
      `item.${reflex.id}.means${index > 0 ? `.${index}` : ''}`,
      meansText(say, of, reflex, of.tense),
    ),
  );
  if (now.length === 0 && then.length > 0 && !triedOn) said.push(say.about(reflex, 'since'));
  if (isTalked(attention)) said.push(say.about(reflex, 'why-talk'));
  return { meaning: first.meaning, firm: first.firm, means: said };
}

/** The variant of the reflex that is drawn: its first. */
const patternOf = ({ reflex }: Stands) => reflex.patterns[0];

/** From no answer to one that holds the child: how strongly a side answered. */
const STRENGTH: readonly Response[] = ['not-elicited', 'weak', 'elicited', 'brisk', 'obligatory'];

/** The side that is drawn: the one that answered the most, the left where both did alike. */
function sideOf({ told }: Stands): 'left' | 'right' {
  const strongest = max(told, ({ found }) => STRENGTH.indexOf(found.finding.response));
  const drawn = told
    .map(({ found }) => found.finding)
    .filter(({ response }) => STRENGTH.indexOf(response) === strongest);
  return drawn.every(({ side }) => side === 'right') ? 'right' : 'left';
}

export function itemOf(say: Speaker, one: Stands, ahead: Ahead): FamilyItem {
  const { reflex, attention } = one;
  const plain = say.plainOf(reflex);
  return {
    reflex,
    pattern: patternOf(one) ?? null,
    side: sideOf(one),
    name: say.name(reflex),
    did: say.say(`item.${reflex.id}.did`, plain.did),
    saw: [...sawOf(say, one, ahead.on), ...(one.othersDiffer ? [] : movedOf(say, one, ahead))],
    ...meansOf(say, one, ahead.on),
    next: one.othersDiffer ? [] : nextOf(say, one, ahead),
    attention,
  };
}
