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
  first: 'First event',
  next: 'Next event',
  order: 'Order of events',
  phase: 'Integrated, present, or not yet',
  born: 'The same, born preterm',
  verdict: 'Meaning of a finding',
  name: 'Name the response from the figure',
  limb: 'Movement of a limb',
  does: 'Response with a given movement',
  apart: 'Telling look-alikes apart',
  arithmetic: 'Calculating ages',
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

/** `Landau reaction appears`, `Walking alone`. */
export function stationWords(station: Station, atlas: Atlas): string {
  switch (station.event) {
    case 'appears':
      return `${nameOf(station.reflex, atlas)} appears`;
    case 'integrates':
      return `${nameOf(station.reflex, atlas)} integrates`;
    case 'reached':
      return nameOf(station.milestone, atlas);
    case 'sets-apart':
      return station.apart === 'arms-from-legs'
        ? 'The arms dissociate from the legs'
        : 'The arms dissociate from each other';
  }
}

export const counted = (n: number, what: string): string =>
  n === 1 ? `1 ${what}` : `${n} ${what}s`;

/** `at 5 months after term`, `at 34 weeks of gestation`. */
const atAge = ({ unit, value, bornDays }: AskedAge): string => {
  if (unit === 'weeks') return `at ${value} weeks of gestation`;
  const months = counted(value, 'month');
  return bornDays === null ? `at ${months} after term` : `at a chronological age of ${months}`;
};

const ASKED: Record<AskedPhase, string> = {
  'not-yet': 'Which of these has not appeared yet',
  established: 'Which of these is expected to be present',
  integrated: 'Which of these has integrated',
};

const DOES: Record<Doing, string> = {
  'arms bend': 'an arm flexes',
  'arms straighten': 'an arm extends',
  'arms spread': 'an arm abducts',
  'arms close-in': 'an arm adducts',
  'arms unlike': 'the two arms do different things',
  'legs bend': 'a leg flexes',
  'legs straighten': 'a leg extends',
  'legs spread': 'a leg abducts',
  'legs unlike': 'the two legs do different things',
  'hands open': 'a hand opens',
  'hands close': 'a hand closes',
  'feet fan': 'the toes fan',
  'feet curl': 'the toes curl',
  'head turns': 'the head turns',
  'head bends': 'the head flexes',
  'head lifts': 'the head extends',
  'head tilts': 'the head tilts',
  'trunk bends': 'the trunk flexes',
  'trunk straightens': 'the trunk extends',
  'trunk curves': 'the trunk curves',
  'trunk turns': 'the trunk turns',
  'face moves': 'the face moves',
};

const ASPECTS: Record<Aspect, string> = {
  stimulus: 'The stimulus',
  position: 'The position of the infant',
  head: 'The movement of the head',
  trunk: 'The movement of the trunk',
  arms: 'The movement of the arms',
  legs: 'The movement of the legs',
  hands: 'The movement of the hands',
  feet: 'The movement of the feet',
  face: 'The movement of the face',
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

/** What is to be reviewed, by kind and subject: `Integrated, present, or not yet: Moro reflex`. */
export function subjectWords(subject: string, atlas: Atlas): string {
  const [kind = '', rest = ''] = subject.split('|');
  const names = rest
    .split(/[ :]/)
    .map((word) => atlas.reflexes.get(word)?.name ?? atlas.milestones.get(word)?.name)
    .filter((name) => name !== undefined);
  const title = kinds[kind as QuestionKind] as string | undefined;
  return [title ?? kind, ...(names.length > 0 ? [listed(names)] : [])].join(': ');
}
