/** A family's page as plain data: what stands on it, in order, every sentence with its key. */
import type { AxisDay } from '../age/axis.ts';
import type { CivilDate } from '../age/civil.ts';
import type { LimbPattern, Reflex } from '../atlas/types.ts';
import type { Clinic, FamilyEdit, Language, PageChoice } from '../case/family.ts';
import type { Case } from '../case/case.ts';
import type { RidgePiece } from '../chart/model.ts';
import type { JudgedVisit, JudgeOptions } from '../judge/judge.ts';
import type { Attention } from '../judge/rules/rule.ts';
import type { Meaning, SectionId } from '../words/family.ts';

/** A sentence, or a few that belong together. It is edited as a whole, under its key. */
export interface Sentence {
  /** Stable: the same place of the page has the same key on every page and in every language. */
  key: string;
  /** As shown. */
  text: string;
  /** What the page says by itself. */
  ours: string;
  /** Whether the text is the clinician's. */
  theirs: boolean;
  /** Edited, and what the page says by itself has changed since: the edit has to be read again. */
  changedBeneath: boolean;
}

/** One reflex on the page. */
export interface FamilyItem {
  reflex: Reflex;
  /** Plain name, beginning small. */
  name: Sentence;
  /** The variant that is drawn; null where the reflex has none. */
  pattern: LimbPattern | null;
  /** The side a one-sided stimulus is drawn on: that of the answer, or of the stronger of two. */
  side: 'left' | 'right';
  did: Sentence;
  /** One or more: sides alike in one, dates apart in several. */
  saw: readonly Sentence[];
  meaning: Meaning;
  firm: boolean;
  means: readonly Sentence[];
  /** When it may change, with dates; empty where nothing is awaited. */
  next: readonly Sentence[];
  /** What it asks for. Never shown to a family; for the clinician's own list. */
  attention: Attention;
}

export interface FamilySection {
  id: SectionId;
  heading: Sentence;
  sentences: readonly Sentence[];
  /** Only in `looked`. */
  items: readonly FamilyItem[];
}

/** What was seen at one visit, on a band of the chart. */
export interface FamilyMark {
  on: CivilDate;
  axisDay: AxisDay;
  mark: 'there' | 'away' | 'one-side' | 'cannot-tell';
  words: string;
}

export interface FamilyBand {
  reflex: Reflex;
  name: string;
  /** The ridge of the sources: its height is how far they lead one to expect it, 0 to 1. */
  ridge: readonly RidgePiece[];
  marks: readonly FamilyMark[];
  /** The band read aloud, marks and all. */
  spoken: Sentence;
}

export interface FamilyChart {
  label: string;
  from: AxisDay;
  to: AxisDay;
  ticks: readonly { axisDay: AxisDay; words: string }[];
  today: { axisDay: AxisDay; words: string };
  /** What the shape of a band is, for its legend. */
  shape: string;
  bands: readonly FamilyBand[];
}

/** A reflex that could be told of, for the clinician to choose from. */
export interface Candidate {
  reflex: Reflex;
  name: string;
  attention: Attention;
  /** Whether it is on the page. */
  isTold: boolean;
}

export interface FamilyPage {
  language: Language;
  /** The tag for the page's `lang` and for the voice. */
  tag: string;
  /** The visit by its id; empty for the whole course. */
  visit: string;
  /** Invented children are marked as such wherever they are shown. */
  invented: boolean;
  title: Sentence;
  sections: readonly FamilySection[];
  chart: FamilyChart;
  /** Null where none is set: the page keeps a place to write in. */
  clinic: Clinic | null;
  labels: {
    did: string;
    saw: string;
    means: string;
    next: string;
    clinic: string;
    phone: string;
    edited: string;
    /** Above the lines to write on. */
    write: string;
    /** Said on the page of an invented child. */
    invented: string;
  };
  candidates: readonly Candidate[];
  /** Whether the clinician chose what is told; else it was computed. */
  isChosen: boolean;
  /** Edits of this page, in this language, whose sentence no longer stands on it. */
  unused: readonly FamilyEdit[];
  /** Edits that stand on the page of another visit or in another language, and so not here. */
  elsewhere: readonly { visit: string; language: Language; count: number }[];
  /** Choices made for visits the record no longer has. */
  orphans: readonly PageChoice[];
}

export interface PageInput {
  record: Case;
  /** All visits, judged, in the record's order. */
  visits: readonly JudgedVisit[];
  options: JudgeOptions;
  /** The visit told of, one of `visits`; null for the whole course. */
  shown: JudgedVisit | null;
  /** The clinic set on this machine; one kept with the case goes before it. */
  clinic: Clinic | null;
  /** Another language than the one kept with the case. */
  language?: Language;
  /** The day on which the page is made: what it awaited before is over. */
  today?: CivilDate;
}
