/** A question as data: codes and numbers. The sentences are in en/quiz.ts, the dealing in lecture/. */
import type { CivilDate } from '../age/civil.ts';
import type { Doing } from '../atlas/does.ts';
import type { Act, BodyPart } from '../atlas/moments.ts';
import type { Station } from '../atlas/types.ts';
import type { Phase } from '../judge/phases.ts';
import type { VerdictWord } from '../judge/verdict.ts';

/** What is asked, in the order in which the kinds are offered. */
export const KINDS = [
  'first',
  'next',
  'order',
  'phase',
  'born',
  'verdict',
  'name',
  'limb',
  'does',
  'apart',
  'arithmetic',
] as const;
export type QuestionKind = (typeof KINDS)[number];

/** How near the wrong choices lie. */
export const DIFFICULTIES = ['easy', 'medium', 'hard'] as const;
export type Difficulty = (typeof DIFFICULTIES)[number];

/** The phases that can be asked for by name: not there yet, there, gone. */
export type AskedPhase = 'not-yet' | 'established' | 'integrated';

/** An age at which something is asked. */
export interface AskedAge {
  axisDay: number;
  /** Standard deviation of the age, days; 0 when it is exact. */
  sdDays: number;
  /** How it is said: months after term (or birth), or weeks of gestation. */
  unit: 'months' | 'weeks';
  value: number;
  /** Gestation at birth in days of an infant born early, whose age is said since birth; else null. */
  bornDays: number | null;
}

/** What can tell two responses apart. */
export type Aspect = BodyPart | 'stimulus' | 'position';

export type ArithmeticAsk = 'corrected' | 'postmenstrual' | 'due';

export type Stem =
  | { kind: 'first' }
  | { kind: 'next'; age: AskedAge }
  | { kind: 'order' }
  | { kind: 'phase' | 'born'; phase: AskedPhase; age: AskedAge }
  | { kind: 'verdict'; reflex: string; response: 'elicited' | 'not-elicited'; age: AskedAge }
  | { kind: 'name'; reflex: string; variant: string; side: 'left' | 'right' }
  | { kind: 'limb'; reflex: string; variant: string; part: BodyPart; side: 'left' | 'right' }
  | { kind: 'does'; doing: Doing }
  | { kind: 'apart'; a: string; b: string }
  | {
      kind: 'arithmetic';
      asks: ArithmeticAsk;
      born: CivilDate;
      gestationalDays: number;
      /** The day on which the age is asked for. */
      on: CivilDate;
    };

export type Choice =
  | { is: 'reflex'; reflex: string }
  | { is: 'station'; station: Station }
  | { is: 'stations'; stations: readonly Station[] }
  | { is: 'verdict'; verdict: VerdictWord }
  | { is: 'act'; part: BodyPart; act: Act }
  | { is: 'aspect'; aspect: Aspect }
  | { is: 'days'; days: number }
  | { is: 'date'; on: CivilDate };

/** The sources whose windows bear on an answer, for one reflex or milestone, and what they say. */
export interface Rests {
  /** A reflex, or a milestone. */
  of: string;
  sources: readonly string[];
  /** The phase in which every one of them has it at the asked age. */
  says?: Phase;
  /** When they have it happen: axis days, -Infinity for "by term", Infinity for "later than". */
  happens?: { station: Station; from: number; to: number };
}

/** Why the answer is the answer: the lanes to draw, where the age line stands, what it rests on. */
export interface Why {
  reflexes: readonly string[];
  milestones: readonly string[];
  ageDays: number | null;
  rests: readonly Rests[];
}

export interface Question {
  /** Kind and subject: what is learnt, whatever the numbers. */
  subject: string;
  /** Kind, subject and rounded age: two questions with one key are the same question. */
  key: string;
  /** The seed it was made from, within its set. */
  seed: number;
  difficulty: Difficulty;
  stem: Stem;
  choices: readonly Choice[];
  /** Which choice is right, counted from 0. */
  right: number;
  why: Why;
}

export const kindOf = (question: Pick<Question, 'stem'>): QuestionKind => question.stem.kind;
