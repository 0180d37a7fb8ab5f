/** English for questions: what is asked, and what can be answered. */
import { TERM_DAYS } from '../../age/axis.ts';
import { formatGestation } from '../../age/gestation.ts';
import type { Atlas } from '../../atlas/atlas.ts';
import type { Doing } from '../../atlas/does.ts';
import type { LimbPattern, Reflex, Station } from '../../atlas/types.ts';
import type {
  AskedAge,
  AskedPhase,
  Aspect,
  Choice,
  Difficulty,
  QuestionKind,
  Stem,
} from '../question.ts';
import { dateWords } from './ages.ts';
import { actWords, capital, listed, parts } from './body.ts';
import { verdicts } from './judge.ts';

export const kinds: Record<QuestionKind, string> = {
  first: 'What comes first',
  next: 'What comes next',
  order: 'In order',
  phase: 'Gone, there, or not yet',
  born: 'The same, born early',
  verdict: 'What a finding means',
  name: 'Name it from the figure',
  limb: 'What a limb does',
  does: 'Which response does it',
  apart: 'Telling look-alikes apart',
  arithmetic: 'Reckoning ages',
};

export const difficulties: Record<Difficulty, string> = {
  easy: 'easy',
  medium: 'medium',
  hard: 'hard',
};

export const nameOf = (id: string, atlas: Atlas): string =>
  atlas.reflexes.get(id)?.name ?? atlas.milestones.get(id)?.name ?? id;

const MIRROR: Readonly<Record<string, string>> = {
  left: 'right',
  right: 'left',
  Left: 'Right',
  Right: 'Left',
};

/** Left for right in a sentence, where a response is shown on the other side. */
export const onSide = (text: string, side: 'left' | 'right'): string =>
  side === 'left' ? text : text.replace(/\b(left|right)\b/gi, (word) => MIRROR[word] ?? word);

/** `Landau reaction comes`, `Walking alone`. */
export function stationWords(station: Station, atlas: Atlas): string {
  switch (station.event) {
    case 'appears':
      return `${nameOf(station.reflex, atlas)} comes`;
    case 'integrates':
      return `${nameOf(station.reflex, atlas)} goes`;
    case 'reached':
      return nameOf(station.milestone, atlas);
    case 'sets-apart':
      return station.apart === 'arms-from-legs'
        ? 'The arms come apart from the legs'
        : 'The arms come apart from each other';
  }
}

export const counted = (n: number, what: string): string =>
  n === 1 ? `1 ${what}` : `${n} ${what}s`;

/** `at 5 months after term`, `at 34 weeks of gestation`. */
const atAge = ({ unit, value, bornDays }: AskedAge): string => {
  if (unit === 'weeks') return `at ${value} weeks of gestation`;
  const months = counted(value, 'month');
  return bornDays === null ? `at ${months} after term` : `${months} after birth`;
};

const ASKED: Record<AskedPhase, string> = {
  'not-yet': 'Which of these has not come yet',
  established: 'Which of these is to be expected',
  integrated: 'Which of these has gone',
};

const DOES: Record<Doing, string> = {
  'arms bend': 'an arm bends',
  'arms straighten': 'an arm straightens',
  'arms spread': 'an arm spreads outward',
  'arms close-in': 'an arm is drawn in',
  'arms unlike': 'the two arms do different things',
  'legs bend': 'a leg bends',
  'legs straighten': 'a leg straightens',
  'legs spread': 'a leg spreads outward',
  'legs unlike': 'the two legs do different things',
  'hands open': 'a hand opens',
  'hands close': 'a hand closes',
  'feet fan': 'the toes fan',
  'feet curl': 'the toes curl',
  'head turns': 'the head turns',
  'head bends': 'the head bends',
  'head lifts': 'the head lifts',
  'head tilts': 'the head tilts',
  'trunk bends': 'the trunk bends',
  'trunk straightens': 'the trunk straightens',
  'trunk curves': 'the trunk curves',
  'trunk turns': 'the trunk turns',
  'face moves': 'the face moves',
};

const ASPECTS: Record<Aspect, string> = {
  stimulus: 'What elicits it',
  position: 'The position of the infant',
  head: 'What the head does',
  trunk: 'What the trunk does',
  arms: 'What the arms do',
  legs: 'What the legs do',
  hands: 'What the hands do',
  feet: 'What the feet do',
  face: 'What the face does',
};

/** A number of days in weeks and days: `14 wk 3 d`. */
export const weeksWords = (days: number): string => {
  const [weeks, rest] = [Math.floor(days / 7), days % 7];
  return [...(weeks > 0 ? [`${weeks} wk`] : []), ...(rest > 0 ? [`${rest} d`] : [])].join(' ');
};

export const patternOf = (reflex: Reflex | undefined, variant: string): LimbPattern | undefined =>
  reflex?.patterns.find((one) => one.variant === variant);

/** What is asked. */
export function stemWords(stem: Stem, atlas: Atlas): string {
  switch (stem.kind) {
    case 'first':
      return 'Which of these happens first?';
    case 'next':
      return `An infant is seen ${atAge(stem.age)}. Which of these happens next?`;
    case 'order':
      return 'Which order is right, the earliest first?';
    case 'phase':
      return `${ASKED[stem.phase]} ${atAge(stem.age)}?`;
    case 'born':
      return `An infant born at ${formatGestation(stem.age.bornDays ?? TERM_DAYS)} is seen ${atAge(stem.age)}. ${ASKED[stem.phase]}?`;
    case 'verdict': {
      const seen = stem.response === 'elicited' ? 'is elicited' : 'is not elicited';
      const born = stem.age.bornDays;
      const who =
        born === null
          ? `in a quiet, alert infant ${atAge(stem.age)}`
          : `in a quiet, alert infant born at ${formatGestation(born)}, ${atAge(stem.age)}`;
      return `${nameOf(stem.reflex, atlas)} ${seen} ${who}. What does that mean?`;
    }
    case 'name':
      return 'Which response does the figure show?';
    case 'limb': {
      const label = patternOf(atlas.reflexes.get(stem.reflex), stem.variant)?.label ?? '';
      const verb = stem.part === 'head' || stem.part === 'trunk' ? 'does' : 'do';
      return `${nameOf(stem.reflex, atlas)}. ${onSide(label, stem.side)}. What ${verb} the ${parts[stem.part]} do?`;
    }
    case 'does':
      return `In which of these responses can it be seen that ${DOES[stem.doing]}?`;
    case 'apart':
      return `${nameOf(stem.a, atlas)} and ${nameOf(stem.b, atlas)} look alike. What tells them apart?`;
    case 'arithmetic': {
      const born = `Born on ${dateWords(stem.born)} at ${formatGestation(stem.gestationalDays)}.`;
      switch (stem.asks) {
        case 'due':
          return `${born} On which day was the infant due?`;
        case 'corrected':
          return `${born} What is the corrected age on ${dateWords(stem.on)}?`;
        case 'postmenstrual':
          return `${born} What is the postmenstrual age on ${dateWords(stem.on)}?`;
      }
    }
  }
}

/** One answer that can be given. */
export function choiceWords(choice: Choice, atlas: Atlas): string {
  switch (choice.is) {
    case 'reflex':
      return nameOf(choice.reflex, atlas);
    case 'station':
      return stationWords(choice.station, atlas);
    case 'stations':
      return choice.stations
        .map((station, i) => {
          const words = stationWords(station, atlas);
          return i === 0 ? words : words.replace(/^The /, 'the ');
        })
        .join(', then ');
    case 'verdict':
      return capital(verdicts[choice.verdict]);
    case 'act':
      return capital(actWords(choice.part, choice.act));
    case 'aspect':
      return ASPECTS[choice.aspect];
    case 'days':
      return weeksWords(choice.days);
    case 'date':
      return dateWords(choice.on);
  }
}

/** What is to be reviewed, by kind and subject: `Gone, there, or not yet: Moro reflex`. */
export function subjectWords(subject: string, atlas: Atlas): string {
  const [kind = '', rest = ''] = subject.split('|');
  const names = rest
    .split(/[ :]/)
    .map((word) => atlas.reflexes.get(word)?.name ?? atlas.milestones.get(word)?.name)
    .filter((name) => name !== undefined);
  const title = kinds[kind as QuestionKind] as string | undefined;
  return [title ?? kind, ...(names.length > 0 ? [listed(names)] : [])].join(': ');
}
