/** Is this finding early, fitting, closing or persisting; or missing, or still to appear. */
import { readAt } from '../../judge/expectation.ts';
import { verdictOf, type VerdictWord } from '../../judge/verdict.ts';
import type { Maker } from './deal.ts';
import {
  datedReflexes,
  bornEarly,
  CLEAR_DAYS,
  countedAgainst,
  EDGE_DAYS,
  edgeDays,
  PLAIN_AGES,
  speakers,
  type Ground,
} from './ground.ts';
import type { Phase } from '../../judge/phases.ts';
import type { AskedAge, Choice } from '../../words/question.ts';

type Seen = 'elicited' | 'not-elicited';

/** The verdicts a response can get, in the order in which an infant passes through them. */
export const POSSIBLE: Readonly<Record<Seen, readonly VerdictWord[]>> = {
  elicited: ['early', 'fits', 'closing', 'persisting'],
  'not-elicited': ['fits', 'may-still-appear', 'missing'],
};

/** The phase whose counts would speak against a verdict; fitting and changing have none. */
const CLAIMS: Partial<Record<VerdictWord, Phase>> = {
  early: 'not-yet',
  persisting: 'integrated',
  missing: 'established',
};

/** The firm verdict on a response at an age, with who speaks; undefined where it could be argued with. */
function sureAt(ground: Ground, reflex: string, response: Seen, age: AskedAge) {
  const compiled = ground.sheet.get(reflex);
  if (!compiled) return undefined;
  const edge = edgeDays(compiled, age.axisDay);
  if (edge < CLEAR_DAYS) return undefined;
  const reading = readAt(compiled, age.axisDay, age.sdDays);
  const sources = speakers(reading);
  if (sources.length < ground.leastSources) return undefined;
  const judged = verdictOf({ response, state: 'quiet-alert' }, reading);
  if (judged.verdict === 'not-judged' || !judged.firm) return undefined;
  // firm passes over sources that hardly speak; here they must not say otherwise either
  if (judged.share < 0.95) return undefined;
  const claimed = CLAIMS[judged.verdict];
  if (claimed && countedAgainst(ground, reflex, claimed, age.axisDay)) return undefined;
  return { verdict: judged.verdict, sources, edge };
}

const EARLY_BIRTHS = 40;

export const verdict: Maker = {
  subjects: (ground) =>
    datedReflexes(ground).flatMap(({ id }) =>
      (['elicited', 'not-elicited'] as const).flatMap((response) =>
        POSSIBLE[response].map((word) => `${id} ${response} ${word}`),
      ),
    ),
  make(subject, ground, chance, difficulty) {
    const [reflex, response, word] = subject.split(' ') as [string, Seen, VerdictWord];
    const [low, high] = EDGE_DAYS[difficulty];
    // a window that opens or closes is narrow: no age in it lies far from an edge
    const isNarrow = word === 'closing' || word === 'may-still-appear';
    const early =
      difficulty === 'hard'
        ? Array.from({ length: EARLY_BIRTHS }, () =>
            bornEarly(ground, chance.whole(175, 244), chance.whole(2, 20)),
          ).filter((age) => age !== undefined)
        : [];
    const ages = chance.shuffled([...PLAIN_AGES, ...early]).flatMap((age) => {
      const sure = sureAt(ground, reflex, response, age);
      if (sure?.verdict !== word || sure.edge > high) return [];
      return sure.edge >= (isNarrow ? CLEAR_DAYS : low) ? [{ age, sure }] : [];
    });
    const [found] = ages;
    if (!found) return undefined;
    const choices = POSSIBLE[response].map((one): Choice => ({ is: 'verdict', verdict: one }));
    const { age, sure } = found;
    return {
      stem: { kind: 'verdict', reflex, response, age },
      choices,
      right: POSSIBLE[response].indexOf(word),
      why: {
        reflexes: [reflex],
        milestones: [],
        ageDays: age.axisDay,
        rests: [{ of: reflex, sources: sure.sources }],
      },
      round: `${age.bornDays === null ? age.unit : Math.round(age.bornDays / 7)} ${age.value}`,
    };
  },
};
