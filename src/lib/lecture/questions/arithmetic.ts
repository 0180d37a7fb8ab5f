/** Reckoning ages: corrected, postmenstrual, and the due date. Definitions: AAP 2004, in age/clocks.ts. */
import { DAYS_PER_WEEK, TERM_DAYS } from '../../age/axis.ts';
import { addDays, type CivilDate } from '../../age/civil.ts';
import { agesOn, birthFromGestation } from '../../age/clocks.ts';
import { dealt, type Maker } from './deal.ts';
import type { ArithmeticAsk, Choice, Difficulty } from '../../words/question.ts';

const ASKS: readonly ArithmeticAsk[] = ['corrected', 'postmenstrual', 'due'];

/** The first of the days on which an invented infant is born; others lie up to two years later. */
const FROM = '2024-01-01' as CivilDate;
const DAYS_OF_BIRTH = 730;

/** Weeks 24 to 36 of gestation; whole weeks where it is to be easy. */
const GESTATION_WEEKS = [24, 36] as const;

/** Slips of the pen, added to the right answer in days: a week wrong, and days taken for tenths of a week. */
const SLIPS: Readonly<Record<Difficulty, readonly number[]>> = {
  easy: [14, -14, 28, -28],
  medium: [7, -7, 14, -14],
  hard: [7, -7, 3, -3, 4],
};

export const arithmetic: Maker = {
  subjects: () => ASKS,
  make(subject, ground, chance, difficulty) {
    const asks = subject as ArithmeticAsk;
    const weeks = chance.whole(...GESTATION_WEEKS);
    const gestationalDays =
      weeks * DAYS_PER_WEEK + (difficulty === 'easy' ? 0 : chance.whole(1, 6));
    const born = addDays(FROM, chance.whole(0, DAYS_OF_BIRTH - 1));
    const since = TERM_DAYS - gestationalDays + chance.whole(21, 300);
    const old = difficulty === 'easy' ? since - (since % DAYS_PER_WEEK) : since;
    const birth = birthFromGestation(born, gestationalDays, 'ultrasound-first-trimester');
    if ('code' in birth) return undefined;
    const on = addDays(born, old);
    const ages = agesOn(birth, on, ground.limits);
    const right =
      asks === 'due'
        ? TERM_DAYS - gestationalDays
        : asks === 'corrected'
          ? ages.correctedDays
          : ages.postmenstrualDays;
    // what comes out when it is not corrected, corrected twice, or reckoned from 38 or 39 weeks
    const missing = TERM_DAYS - gestationalDays;
    const misreckoned: Readonly<Record<ArithmeticAsk, readonly number[]>> = {
      corrected: [old, old - 2 * missing, right + 14, right + 7],
      postmenstrual: [old + TERM_DAYS, right - 14, right + 7],
      due: [missing - 14, missing - 7, missing + 7],
    };
    const [trap, ...others] = misreckoned[asks];
    const slips = chance.shuffled(SLIPS[difficulty].map((slip) => right + slip));
    const wrong = [trap ?? right, ...chance.shuffled([...slips, ...others])]
      .filter((days, i, all) => days !== right && days > 0 && all.indexOf(days) === i)
      .slice(0, 3);
    const choice = (days: number): Choice =>
      asks === 'due' ? { is: 'date', on: addDays(born, days) } : { is: 'days', days };
    const deal = dealt(choice(right), wrong.map(choice), chance);
    return (
      deal && {
        stem: { kind: 'arithmetic', asks, born, gestationalDays, on },
        ...deal,
        why: { reflexes: [], milestones: [], ageDays: null, rests: [] },
        round: `${gestationalDays} ${old} ${asks === 'due' ? born : ''}`,
      }
    );
  },
};
