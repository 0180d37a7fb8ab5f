/** What is known: reflexes, sources, their claims, limb patterns, milestones and sequences. */
import type { Count } from './count.ts';
import type { Absence, UnlikeSides } from './weight.ts';

/** Where a source stands: the kind is always shown, since sources are of unequal weight. */
export type Tier =
  | 'primary-study'
  | 'review'
  | 'textbook'
  | 'encyclopaedia'
  | 'government-health'
  | 'course-notes'
  | 'common-practice';

/** Whether a figure was seen in the source or recalled from memory. */
export type Basis = 'read' | 'memory';

/**
 * Units a source prints ages in. `wkPMA` = postmenstrual weeks, counted up from the last period;
 * `mo`, `wk`, `d`, `y` = months, weeks, days, years after term (after birth where uncorrected).
 */
export type PrintedUnit = 'wkPMA' | 'mo' | 'wk' | 'd' | 'y';

/** An age or range of ages as one source prints it. `high` is null only for "later than". */
export interface Printed {
  asPrinted: string;
  unit: PrintedUnit;
  low: number;
  high: number | null;
  /** Of an end: only its latest age is printed ("by", "up to", "until"), so it may come before. */
  atLatest?: true;
  /** Of an appearance: at `high` it is not there in every infant ("the majority by 30 weeks"). */
  notYetAll?: true;
}

/** How the appearance is stated. `implied` = the newborn is meant but no age is printed. */
export type AppearsStatus = 'given' | 'implied' | 'vague' | 'not-stated';

/** How the end is stated. `persists` = for life; `later-than` gives `low` only. */
export type IntegratesStatus = 'given' | 'persists' | 'later-than' | 'vague' | 'not-stated';

/** What one source says of one reflex. A `context` claim is shown with its note, never judged by. */
export interface Claim {
  reflex: string;
  /** Of which variant of the response it speaks, where they differ in age; left out where it does not say. */
  variant?: string;
  role: 'window' | 'context';
  basis: Basis;
  appearsStatus: AppearsStatus;
  appears?: Printed;
  /** The printed words of an appearance that gives no age. */
  appearsWords?: string;
  integratesStatus: IntegratesStatus;
  integrates?: Printed;
  integratesWords?: string;
  population?: string;
  note?: string;
  /** What was corrected against the printed words, and why. */
  correction?: string;
}

/** A source with everything it says: its claims, and its counts of real infants. */
export interface SourceData {
  id: string;
  /** A name short enough for a chart: authors and year. */
  short: string;
  year: number | null;
  tier: Tier;
  basis: Basis;
  claims: readonly Claim[];
  counts: readonly Count[];
}

/** The full citation of a source, loaded when it is first asked for. */
export interface Citation {
  citation: string;
  authors?: string;
  title?: string;
  container?: string;
  doi?: string;
  pmid?: string;
  pmcid?: string;
  url?: string;
  licence?: string;
  note?: string;
}

export type Group =
  | 'feeding'
  | 'grasp'
  | 'startle-vestibular'
  | 'tonic-postural'
  | 'spinal-withdrawal'
  | 'support-locomotor'
  | 'righting'
  | 'protective'
  | 'equilibrium'
  | 'other';

export type Kind = 'primitive-reflex' | 'postural-reaction';

export type Side = 'left' | 'right' | 'midline';

export type TrunkToken =
  | 'flexed'
  | 'extended'
  | 'turned-left'
  | 'turned-right'
  | 'tilted-left'
  | 'tilted-right'
  | 'curved-left'
  | 'curved-right'
  | 'none';
export type LimbToken = 'flexed' | 'extended' | 'abducted' | 'adducted' | 'none';
export type EndToken = 'open' | 'closed' | 'none';

/** What each part of the body does. `none` = no movement is part of the pattern. */
export interface LimbTokens {
  head: TrunkToken;
  trunk: TrunkToken;
  armL: LimbToken;
  armR: LimbToken;
  legL: LimbToken;
  legR: LimbToken;
  handL: EndToken;
  handR: EndToken;
  footL: EndToken;
  footR: EndToken;
  face?: string;
  /** Second tokens of a limb: an arm extended and abducted. */
  also?: Partial<Record<'armL' | 'armR' | 'legL' | 'legR', readonly LimbToken[]>>;
}

export interface PatternPhase extends LimbTokens {
  label: string;
}

/** One variant of a response. A one-sided stimulus is always on the left here. */
export interface LimbPattern extends LimbTokens {
  variant: string;
  label: string;
  stimulusSide: 'left' | 'right' | 'none';
  /** The same stimulus as the first pattern: sources describe the response to it in two ways. */
  otherAccount?: true;
  /** Of a variant that is tested otherwise than the reflex: in this position, by this stimulus. */
  position?: Position;
  stimulus?: StimulusKind;
  /** Ordered phases, where the response has them. */
  phases?: readonly PatternPhase[];
  /** 1-based: the phase that the tokens above repeat. */
  mainPhase?: number;
  /** The phases alternate rhythmically. */
  phasesRepeat?: boolean;
}

/** The position an infant must be in, coarse enough to group an examination by. */
export type Position =
  | 'supine'
  | 'prone'
  | 'prone-suspension'
  | 'upright-held'
  | 'sitting'
  | 'hands-and-knees'
  | 'standing'
  | 'side-lying';

/** What elicits a response, coarse enough to tell look-alikes apart by. */
export type StimulusKind =
  | 'touch'
  | 'stroke'
  | 'pressure'
  | 'tap'
  | 'sound'
  | 'head-drop'
  | 'head-turn'
  | 'neck-bend'
  | 'position'
  | 'pull'
  | 'sole-contact'
  | 'edge-contact'
  | 'surface-contact'
  | 'suspension'
  | 'lowering'
  | 'push'
  | 'tip'
  | 'tilt'
  | 'roll'
  | 'lift';

/** Handling cautions; the sentences are in words. */
export type Caution =
  | 'support-head'
  | 'no-drop'
  | 'skip-if-injury'
  | 'no-pull'
  | 'trunk-support'
  | 'gentle-push'
  | 'guard-fall'
  | 'few-repeats'
  | 'stop-if-distress'
  | 'light-touch'
  | 'firm-touch'
  | 'only-if-stable'
  | 'no-water'
  | 'airway-clear';

/** One primitive reflex or postural reaction, without prose. */
export interface Reflex extends ReflexData {
  /** How far a response that was not elicited counts. */
  absence: Absence;
  /** The ages at which unlike sides are common in healthy infants, so that uneven alone weighs little. */
  unlikeSides: readonly UnlikeSides[];
}

/** What a reflex's own file says of it. */
export interface ReflexData {
  id: string;
  name: string;
  /** A name short enough to stand beside a lane. */
  short: string;
  group: Group;
  kind: Kind;
  testedPerSide: boolean;
  midline: boolean;
  position: Position;
  stimulus: StimulusKind;
  /** Likely to upset the infant, so examined last. */
  upsetting: boolean;
  cautions: readonly Caution[];
  patterns: readonly LimbPattern[];
}

export interface ReportedNote {
  text: string;
  sources: readonly string[];
  basis: 'read' | 'mixed' | 'memory';
}

/** The prose of a reflex, loaded when it is first opened. */
export interface ReflexProse {
  synonyms: readonly string[];
  sides: string;
  position: string;
  stimulus: string;
  positive: string;
  pitfalls: readonly string[];
  purpose: string;
  /** What persistence, absence and asymmetry have been associated with. Associations only. */
  reported: { persistence: ReportedNote; absence: ReportedNote; asymmetry: ReportedNote };
  /** What sources say of eliciting, reading and mistaking it, checked one statement at a time. */
  verified?: readonly ReportedNote[];
  patternNotes: Readonly<Record<string, string>>;
}

/** The published ages of achieving a milestone: first and 99th percentile, months. */
export interface MilestoneWindow {
  p1Months: number;
  p99Months: number;
}

/** A motor milestone. One without a published window has only the age by which most do it. */
export interface Milestone {
  id: string;
  name: string;
  short: string;
  window: MilestoneWindow | null;
  /** The age in months by which at least 75 of 100 children do it, where no window is published. */
  mostByMonths?: number;
  source: string;
  basis: Basis;
}

/** What limbs a response sets apart from each other: computed from its pattern. */
export type Dissociation = 'arms-from-each-other' | 'arms-from-legs';

/** A place in a sequence: a reflex appearing or integrating, a dissociation, or a milestone reached. */
export type Station =
  | { event: 'appears' | 'integrates'; reflex: string }
  | { event: 'sets-apart'; apart: Dissociation }
  | { event: 'reached'; milestone: string };

/** An order the trade expects: each station before the next. */
export interface Sequence {
  id: string;
  kind: 'dissociation' | 'protective' | 'closing';
  stations: readonly Station[];
  sources: readonly string[];
  contradictedBy: readonly string[];
  basis: Basis;
}

/** What an atlas is built from. */
export interface AtlasParts {
  reflexes: readonly Reflex[];
  sources: readonly SourceData[];
  milestones: readonly Milestone[];
  sequences: readonly Sequence[];
}
