/** English for developmental sequences and for where sources disagree. */
import type { AxisDay } from '../../age/axis.ts';
import type { Atlas } from '../../atlas/atlas.ts';
import type { SourceCount } from '../../atlas/families.ts';
import type { Support } from '../../judge/support.ts';
import { axisWords, spanWords } from './ages.ts';
import { sourcesWords } from './atlas.ts';
import { capital, listed } from './body.ts';

/** Pairs of windows that say one thing of an order: for one, for several. */
const TALLY: Record<Support, readonly [string, string]> = {
  supports: ['supports it', 'support it'],
  overlaps: ['overlaps', 'overlap'],
  contradicts: ['contradicts it', 'contradict it'],
};

export const orderPage = {
  title: 'Developmental sequences',
  lead: 'Which step is usually taught to come before which, with the windows of the sources for each. Which limbs a response dissociates is computed from its limb pattern.',
  question: 'Which comes first: arms dissociated from each other, or arms dissociated from legs?',
  answerFirst: (pairs: number): string =>
    `The arms dissociate from each other first. The windows of the sources show this in all ${pairs} pairs: each has it appear before any has the arms dissociate from the legs.`,
  answerMixed: (supports: number, overlaps: number, contradicts: number): string =>
    `In most windows the arms dissociate from each other first: ${supports} pairs support it, ${overlaps} overlap, ${contradicts} contradict it.`,
  answerAgainst: (supports: number, contradicts: number): string =>
    `The windows held here do not support the usual order: in ${supports} pairs the arms dissociate from each other first, in ${contradicts} the arms from the legs.`,
  apart: {
    'arms-from-each-other': 'The two arms do different things: one extends, the other flexes.',
    'arms-from-legs': 'The two arms do the same, and the legs do the opposite.',
  },
  by: 'Shown by:',
  step: (before: string, after: string): string => `${capital(before)} before ${after}`,
  tally: (n: number, of: Support): string =>
    n === 0 ? `none ${TALLY[of][0]}` : `${n} ${TALLY[of][n === 1 ? 0 : 1]}`,
  pairs: (n: number): string => (n === 1 ? 'The 1 pair of windows' : `All ${n} pairs of windows`),
  noPairs: 'No two windows can be compared.',
  oneSource: 'one source',
  before: 'Before',
  after: 'After',
  source: 'Source',
  says: 'Says',
  said: { supports: 'supports', overlaps: 'overlaps', contradicts: 'contradicts' },
  standing: 'How it is taught',
  all: 'All sequences on one axis',
  window: (source: string, reflex: string, from: AxisDay, to: AxisDay): string =>
    `${source}, ${reflex}: ${Math.round(from) === Math.round(to) ? axisWords(from) : spanWords(from, to)}`,
};

/** Sequences by names short enough for a margin. */
export const orderNames: Readonly<Record<string, string>> = {
  'arms-then-legs': 'Limb dissociation',
  'protective-directions': 'Protective reactions',
  'downward-then-forward': 'Legs, then arms',
  'moro-before-sitting': 'Moro and sitting',
  'stnr-before-crawling': 'Tonic neck and crawling',
  'plantar-before-standing': 'Plantar grasp and standing',
  'forward-before-walking': 'Protection and walking',
};

/** Sources by their short names. */
export const sourceNames = (ids: readonly string[], atlas: Atlas): string =>
  ids.map((id) => atlas.sources.get(id)?.short ?? id).join(', ');

/** A window that comes or goes first or last among the sources. */
interface Outermost {
  short: string;
  from: AxisDay;
  to: AxisDay;
}

/** How far the sources of one reflex are apart, as numbers. */
interface QuarrelTold {
  name: string;
  quarrelDays: number;
  spokenDays: number;
  /** The age at which most of them differ, and how many have it in each phase there. */
  at: AxisDay;
  sources: SourceCount;
  phases: readonly number[];
  firstGone: Outermost | undefined;
  lastGone: Outermost | undefined;
  /** Sources that have it stay for life, while others expect integration. */
  stays: readonly string[];
  firstCome: Outermost | undefined;
  lastCome: Outermost | undefined;
}

const PHASE_VERBS = [
  'not present yet',
  'emerging',
  'established',
  'integrating',
  'integrated',
] as const;

/** A disagreement in sentences, from its windows. */
export function quarrelSentence(told: QuarrelTold): string {
  const { quarrelDays, spokenDays, at, sources, phases, firstGone, lastGone, stays } = told;
  const { firstCome, lastCome } = told;
  const counted = phases.flatMap((n, i) =>
    n > 0 ? [`${n} ${n === 1 ? 'has' : 'have'} it ${PHASE_VERBS[i] ?? ''}`] : [],
  );
  const said = [
    `On ${Math.round(quarrelDays)} of the ${Math.round(spokenDays)} days for which two or more sources give an age, they place it in different phases.`,
    `At ${axisWords(at)}, of ${sourcesWords(sources)}, ${listed(counted)}.`,
  ];
  if (stays.length > 0 && firstGone)
    said.push(
      `${firstGone.short} expects integration by ${axisWords(firstGone.to)}; ${listed(stays)} ${stays.length === 1 ? 'has' : 'have'} it stay for life.`,
    );
  else if (firstGone && lastGone && lastGone.from - firstGone.to > 15)
    said.push(
      `${firstGone.short} expects integration by ${axisWords(firstGone.to)}, ${lastGone.short} not before ${axisWords(lastGone.from)}.`,
    );
  if (firstCome && lastCome && lastCome.from - firstCome.to > 30)
    said.push(
      `${firstCome.short} has it present by ${axisWords(firstCome.to)}, ${lastCome.short} from ${axisWords(lastCome.from)} on.`,
    );
  return said.join(' ');
}

export const quarrelsPage = {
  title: 'Where sources disagree',
  lead: 'Reflexes sorted by how much of the time the sources that give an age place them in different phases. Each window is one source, and the tone is deeper where windows overlap. The line below is drawn where any two differ, darker where more of them do.',
  agree: 'No two sources disagree',
  days: (quarrel: number, spoken: number): string =>
    `${Math.round(quarrel)} of ${Math.round(spoken)} days`,
  share: (share: number): string => `${Math.round(share * 100)} % of pairs differ`,
  plot: (name: string, days: string): string => `${name}: the windows of its sources; ${days}`,
  head: { reflex: 'Reflex', windows: 'Windows', apart: 'Days in disagreement' },
};
