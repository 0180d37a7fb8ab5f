/** Which is gone, which is there, which has not come yet: at an age, or in an infant born early. */
import { fromMonths } from '../../age/axis.ts';
import type { Phase } from '../../judge/phases.ts';
import type { Chance } from '../random.ts';
import { band, dealt, WRONG, type Draft, type Maker } from './deal.ts';
import {
  agreedAt,
  datedReflexes,
  bornEarly,
  EDGE_DAYS,
  PLAIN_AGES,
  type Agreed,
  type Ground,
} from './ground.ts';
import type { AskedAge, AskedPhase, Choice, Difficulty } from '../../words/question.ts';

const ASKED: readonly AskedPhase[] = ['not-yet', 'established', 'integrated'];

/** Emerging and integrating are neither there nor away, so they are no choices. */
const OTHERS: Readonly<Record<AskedPhase, readonly Phase[]>> = {
  'not-yet': ['established', 'integrated'],
  established: ['not-yet', 'integrated'],
  integrated: ['not-yet', 'established'],
};

/** A wrong choice this far from any change would be absurd, days. A choice of ours. */
const ABSURD_DAYS = 365;

interface Placed {
  reflex: string;
  agreed: Agreed;
}

function wrongAt(ground: Ground, reflex: string, phase: AskedPhase, age: AskedAge): Placed[] {
  return [...ground.atlas.reflexes.keys()]
    .flatMap((id): Placed[] => {
      if (id === reflex) return [];
      const agreed = agreedAt(ground, id, age);
      if (!agreed || !OTHERS[phase].includes(agreed.phase)) return [];
      return agreed.edgeDays > ABSURD_DAYS ? [] : [{ reflex: id, agreed }];
    })
    .sort((a, b) => a.agreed.edgeDays - b.agreed.edgeDays);
}

/** The same infant as if born at term: what a reader who forgets to correct would answer by. */
const uncorrected = (age: AskedAge): AskedAge => ({
  axisDay: fromMonths(age.value),
  sdDays: 0,
  unit: 'months',
  value: age.value,
  bornDays: null,
});

function draftAt(
  kind: 'phase' | 'born',
  reflex: string,
  phase: AskedPhase,
  age: AskedAge,
  ground: Ground,
  chance: Chance,
  difficulty: Difficulty,
): Draft | undefined {
  const own = agreedAt(ground, reflex, age);
  if (own?.phase !== phase) return undefined;
  let wrong = wrongAt(ground, reflex, phase, age);
  let chosen = chance.shuffled(band(wrong, difficulty, WRONG)).slice(0, WRONG);
  if (kind === 'born') {
    // those that would be right, were the age not corrected, come first
    const late = uncorrected(age);
    const traps = wrong.filter((w) => agreedAt(ground, w.reflex, late)?.phase === phase);
    const turns = agreedAt(ground, reflex, late)?.phase !== phase;
    if (difficulty === 'hard' && traps.length === 0 && !turns) return undefined;
    if (difficulty !== 'easy') {
      wrong = [...chance.shuffled(traps), ...chosen];
      chosen = wrong.filter((w, i) => wrong.findIndex((x) => x.reflex === w.reflex) === i);
      chosen = chosen.slice(0, WRONG);
    }
  }
  const choice = (id: string): Choice => ({ is: 'reflex', reflex: id });
  const deal = dealt(
    choice(reflex),
    chosen.map((w) => choice(w.reflex)),
    chance,
  );
  return (
    deal && {
      stem: { kind, phase, age },
      ...deal,
      why: {
        reflexes: [reflex, ...chosen.map((w) => w.reflex)],
        milestones: [],
        ageDays: age.axisDay,
        rests: [
          { of: reflex, sources: own.sources, says: own.phase },
          ...chosen.map((w) => ({ of: w.reflex, sources: w.agreed.sources, says: w.agreed.phase })),
        ],
      },
      round: `${age.bornDays === null ? age.unit : Math.round(age.bornDays / 7)} ${age.value}`,
    }
  );
}

const subjects = (ground: Ground): string[] =>
  datedReflexes(ground).flatMap(({ id }) => ASKED.map((phase) => `${id} ${phase}`));

const read = (subject: string): [string, AskedPhase] => subject.split(' ') as [string, AskedPhase];

/** Ages at which a reflex is surely in a phase, as far from any change as the difficulty wants. */
function fit(
  ages: readonly AskedAge[],
  reflex: string,
  phase: AskedPhase,
  ground: Ground,
  difficulty: Difficulty,
): AskedAge[] {
  const [low, high] = EDGE_DAYS[difficulty];
  return ages.filter((age) => {
    const agreed = agreedAt(ground, reflex, age);
    return agreed?.phase === phase && agreed.edgeDays >= low && agreed.edgeDays <= high;
  });
}

export const phase: Maker = {
  subjects,
  make(subject, ground, chance, difficulty) {
    const [reflex, asked] = read(subject);
    for (const age of chance.shuffled(fit(PLAIN_AGES, reflex, asked, ground, difficulty))) {
      const draft = draftAt('phase', reflex, asked, age, ground, chance, difficulty);
      if (draft) return draft;
    }
    return undefined;
  },
};

/** Gestations at birth that are asked about, days: 25w0d to 34w6d. */
const EARLIEST_BORN = 25 * 7;
const LATEST_BORN = 34 * 7 + 6;
const TRIES = 24;

export const born: Maker = {
  subjects,
  make(subject, ground, chance, difficulty) {
    const [reflex, asked] = read(subject);
    const ages = Array.from({ length: TRIES }, () =>
      bornEarly(ground, chance.whole(EARLIEST_BORN, LATEST_BORN), chance.whole(2, 20)),
    ).filter((age) => age !== undefined);
    for (const age of fit(ages, reflex, asked, ground, difficulty)) {
      const draft = draftAt('born', reflex, asked, age, ground, chance, difficulty);
      if (draft) return draft;
    }
    return undefined;
  },
};
