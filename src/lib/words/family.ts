/**
 * What a family's page needs said, in every language it is written in. A sentence holds places in
 * braces, filled when the page is made: {name} {names} {they} {them} {their} for the child (with a
 * capital where they begin a sentence), and others such as {date} where the page has them to give.
 */
import type { SpokenAge } from '../age/spoken.ts';
import type { Language, Pronoun } from '../case/family.ts';
import type { InfantState, Response } from '../case/finding.ts';
import type { FamilyReflex } from './familyReflexes.ts';
import { family as en } from './en/family.ts';
import { family as es } from './es/family.ts';

/** How the child is spoken of; an empty name is "your baby". */
export interface Who {
  calledName: string;
  pronoun: Pronoun;
}

/** What fills the places for the child. */
export type ChildPlaces = Readonly<
  Record<'name' | 'Name' | 'names' | 'Names' | 'they' | 'They' | 'them' | 'their' | 'Their', string>
>;

/** A reflex in plain words: what it is called, and what was done and looked for. */
export interface ReflexPlain {
  name: string;
  did: string;
}

/** What a finding means today, as far as the page tells it apart. */
export const MEANINGS = [
  'talk-held',
  'talk-returned',
  'talk-sides',
  'talk-still-there',
  'talk-not-seen',
  'talk-gone',
  'talk-lost',
  'watch-sides',
  'watch-sides-common',
  'watch-faint',
  'watch-strong',
  'watch-still-there',
  'watch-not-seen',
  'watch-may-lack',
  'watch-gone',
  'watch-lost',
  'watch-again',
  'watch-soon',
  'there',
  'away',
  'fading',
  'may-come',
  'gone-may-come',
  'soon',
  'cannot-tell-state',
  'cannot-tell-tried',
  'cannot-tell-silent',
] as const;
export type Meaning = (typeof MEANINGS)[number];

/** A meaning said when the sources agree, and when they do not. */
export interface Graded {
  firm: string;
  open: string;
}

/** The same where it is true of one side alone, which is named in the place {side}. */
export interface Meant extends Graded {
  oneSide?: Graded;
  /** The same of what a child feeds by: to a family, that it fades is a child that feeds no more. */
  ofFeeding?: Omit<Meant, 'ofFeeding'>;
}

/** About how old, from when it is counted: of a child born at term nothing needs to be said of that. */
export interface AboutAge {
  unit: 'weeks' | 'months';
  /** Whole; less than nothing before the day it is counted from. */
  count: number;
  clock: 'age' | 'birth' | 'due';
}

export type SectionId =
  'who' | 'looked' | 'talk' | 'today' | 'next' | 'help' | 'call' | 'urgent' | 'clinic' | 'caution';

/** Sentences that stand by themselves; the key is the stable part of the sentence's own. */
export const SENTENCES = [
  'who.born',
  'who.born-early',
  'who.age',
  'who.age-birth',
  'who.age-due',
  'who.age-before-due',
  'who.age-at-due',
  'who.why',
  'who.past',
  'who.doubt',
  'who.seen',
  'who.course',
  'who.newer',
  'looked.intro',
  'looked.nothing',
  'looked.few',
  'looked.more',
  'looked.few-more',
  'talk.intro',
  'today.talk',
  'today.doctor',
  'today.watch',
  'today.fits',
  'today.fits-open',
  'today.fits-so-far',
  'today.fits-so-far-open',
  'today.cannot-tell',
  'next.doctor',
  'next.team',
  'next.visit',
  'next.by',
  'next.due',
  'next.none',
  'help.no-practice',
  'help.daily',
  'help.tummy',
  'help.floor',
  'help.sleep',
  'help.sleep-home',
  'help.pace',
  'call.any',
  'call.ask',
  'urgent.intro',
  'urgent.skills',
  'urgent.feeding',
  'urgent.tone',
  'urgent.fit',
  'urgent.spasms',
  'urgent.side',
  'urgent.number',
  'caution.instead',
  'caution.limits',
  'caution.guides',
] as const;
export type SentenceId = (typeof SENTENCES)[number];

/** Sentences about one reflex; {reflex} holds its plain name. */
export const REFLEX_SENTENCES = [
  'when',
  'since',
  'other',
  'tried',
  'came',
  'went',
  'talk',
  'goes-by',
  'goes-between',
  'goes-later',
  'comes-by',
  'comes-between',
  'look-again',
  'why-talk',
  'no-date',
  'soon-by',
] as const;
export type ReflexSentence = (typeof REFLEX_SENTENCES)[number];

export interface FamilyWords {
  /** The language's tag (BCP 47): for the page's own mark, the voice and the dates. */
  tag: string;
  /** What the language is called in itself. */
  ownName: string;
  /** The child's places. */
  child: (who: Who) => ChildPlaces;
  title: { visit: string; course: string };
  headings: Readonly<Record<SectionId, string>>;
  /** In the place of what it means today, on the page of a visit that was not the last. */
  meantThen: string;
  /** The heading of what it comes to, on such a page. */
  thoughtThen: string;
  labels: Readonly<
    Record<
      | 'did'
      | 'saw'
      | 'means'
      | 'next'
      | 'phone'
      | 'clinic'
      | 'chart'
      | 'edited'
      | 'write'
      | 'invented',
      string
    >
  >;
  sentences: Readonly<Record<SentenceId, string>>;
  aboutReflex: Readonly<Record<ReflexSentence, string>>;
  reflexes: Readonly<Record<FamilyReflex, ReflexPlain>>;
  /** A reflex the clinician added: it is known by its name alone. */
  ownReflex: ReflexPlain;
  saw: Readonly<Record<Response | 'not-counted', { one: string; both: string; side: string }>>;
  sides: Readonly<Record<'left' | 'right' | 'midline', string>>;
  /** Within a place {state}: how the infant was. */
  states: Readonly<Record<InfantState, string>>;
  means: Readonly<Record<Meaning, Meant>>;
  /** What stands in the other places of a meaning: of the day told of, or of a day before it. */
  tense: Readonly<Record<'now' | 'then', Readonly<Record<string, string>>>>;
  /** An age or a span in full words: `3 months and 2 weeks`. */
  span: (spoken: SpokenAge) => string;
  /** About when, within a sentence: `at about 6 to 9 months`, or at one age where both are the same. */
  when: (from: AboutAge, to: AboutAge) => string;
  /** How often: `3 times`. */
  times: (count: number) => string;
  /** Controls of the page as it is shown; `of` tells how far it has come. */
  show: Readonly<
    Record<
      'next' | 'back' | 'close' | 'aloud' | 'quiet' | 'shows' | 'move' | 'hold' | 'full',
      string
    >
  > & { of: (at: number, all: number) => string };
  chart: {
    birth: string;
    due: string;
    months: (months: number) => string;
    today: string;
    /** The same for the whole course. */
    last: string;
    /** What the shape of a band is. */
    shape: string;
    marks: Readonly<Record<'there' | 'away' | 'one-side' | 'cannot-tell', string>>;
    /** A band read aloud: how it begins and how it ends. {when} is filled by `when`. */
    fromBirth: string;
    /** Of a child born before the due date. */
    byDue: string;
    comes: string;
    comesUnsaid: string;
    thenFades: string;
    /** Of what feeding takes the place of. */
    thenFeeds: string;
    thenStays: string;
    bandNone: string;
    /** What was seen on a band, read aloud: {date} and {mark}. */
    seen: string;
  };
}

/** Every language a page can be made in. A further one is its file, its line here and in case/family.ts. */
export const FAMILY_WORDS: Readonly<Record<Language, FamilyWords>> = { en, es };
