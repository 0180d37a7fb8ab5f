/** English for the pages of the atlas: one reflex, side by side, finding. */
import type { AxisDay } from '../../age/axis.ts';
import type { SourcedCount } from '../../atlas/atlas.ts';
import type { Doing } from '../../atlas/does.ts';
import type { AgeRelation, AgeSpans, TellApart } from '../../atlas/differences.ts';
import type { LimbPattern, Reflex } from '../../atlas/types.ts';
import { spanWords } from './ages.ts';
import { positions } from './atlas.ts';
import { actWords, capital, listed, momentWords, NOT_MOVED, parts, stimuli } from './body.ts';

/** One sentence on what tells the first from the second: `Same arms; hands open instead of closed; …` */
export function tellApartSentence(told: TellApart): string {
  const clauses: string[] = [];
  if (told.same.length > 0) clauses.push(`same ${listed(told.same.map((part) => parts[part]))}`);
  for (const { part, first, second } of told.parts) {
    const [a, b] = [actWords(part, first), actWords(part, second)];
    if (b === NOT_MOVED) clauses.push(`${parts[part]} ${a}, in the other not moved`);
    else if (a === NOT_MOVED) clauses.push(`${parts[part]} not moved, in the other ${b}`);
    else clauses.push(`${parts[part]} ${a} instead of ${b}`);
  }
  if (told.stimulus)
    clauses.push(`${stimuli[told.stimulus[0]]} instead of ${stimuli[told.stimulus[1]]}`);
  if (told.position)
    clauses.push(`${positions[told.position[0]]} instead of ${positions[told.position[1]]}`);
  const ages: Record<AgeRelation, string | undefined> = {
    'first-gone-before-second': 'integrated in every source before the other appears',
    'second-gone-before-first': 'appears when the other has integrated in every source',
    overlap: undefined,
  };
  const age = ages[told.ages];
  if (age) clauses.push(age);
  if (!told.stimulus && !told.position && told.parts.length === 0)
    clauses.push('elicited in the same position by the same kind of stimulus');
  return `${capital(clauses.join('; '))}.`;
}

/** Ages over all sources, in a line. */
export function agesWords({ appears, integrates, lifelong }: AgeSpans): string {
  const comes = appears
    ? `appears ${spanWords(appears.from as AxisDay, appears.to as AxisDay)}`
    : 'onset not dated';
  const goes = integrates
    ? `integrates ${spanWords(integrates.from as AxisDay, integrates.to as AxisDay)}${lifelong ? ', or stays for life' : ''}`
    : lifelong
      ? 'stays for life'
      : 'integration not dated';
  return `${comes}; ${goes}`;
}

const shortPhase = (label: string | undefined, index: number): string => {
  const head = label?.split(':')[0]?.trim() ?? '';
  return label?.includes(':') && head.length <= 14 ? head : index === 0 ? 'Response' : 'Then';
};

/** What a player of one response says. */
export function playerWords(reflex: Reflex, pattern: LimbPattern) {
  const phases = pattern.phases ?? [];
  const name = (moment: number): string =>
    moment === 0
      ? 'Rest'
      : moment === 1
        ? 'Stimulus'
        : shortPhase(phases[moment - 2]?.label, moment - 2);
  return {
    controls: `${reflex.name}: the moments`,
    play: 'Play',
    hold: 'Pause',
    name,
    describe: (moment: number): string => {
      if (moment === 0) return `${reflex.name}, at rest: the infant ${positions[reflex.position]}.`;
      if (moment === 1) return `${reflex.name}, the stimulus: ${stimuli[reflex.stimulus]}.`;
      const phase = phases[moment - 2] ?? pattern;
      return `${reflex.name}, ${phases.length > 1 ? `phase ${moment - 1}` : 'the response'}: ${momentWords(phase)}.`;
    },
  };
}

export const reflexPage = {
  also: 'also',
  sides: 'Side',
  variants: 'Variant',
  elicit: 'Technique',
  steps: { position: 'Position', stimulus: 'Stimulus', response: 'Look for', sides: 'Sides' },
  state:
    'The infant awake and quiet, some time after a feed: when asleep, drowsy or crying, a response that is not elicited does not count (common practice, no source).',
  cautions: 'Handling',
  upsetting: 'It may upset the infant, so it is examined last.',
  purpose: 'Purpose',
  pitfalls: 'Common errors of technique',
  verified: 'On examining it, checked with sources',
  own: 'Your own reflex.',
  ownNoProse: 'Only its limb pattern and ages are recorded.',
  when: 'When it appears and integrates, by source',
  whenNone: 'No source gives an age.',
  voices: 'Sources that share ages',
  variantsHelp:
    'Sources give different ages for the tests under this name. A finding that says which was done is judged by the sources on that test and by those that do not say which they mean. Any other finding is judged by all of them.',
  variantUnsaid: 'Sources that do not say which they mean',
  variantAges: (span: string, sources: string): string => `Appears ${span}; ${sources}.`,
  table: {
    source: 'Source',
    kind: 'Kind',
    basis: 'Read or recalled',
    appears: 'Appears',
    goes: 'Integrates',
    note: 'Notes',
  },
  context: 'Further context, not used for judging',
  contextHelp: 'Measured differently, in another group or on another question.',
  counts: 'Counted in real infants',
  countsHelp:
    'Each measure by itself; different measures are never pooled. The line is a 95 % interval (Wilson), drawn where the number of infants and an exact share were printed.',
  reported: 'Reported associations',
  reportedHelp: 'Associations only, none of them a diagnosis.',
  persistence: 'Persistence',
  absence: 'Absence',
  asymmetry: 'Asymmetry',
  notes: { read: 'read', mixed: 'partly from memory', memory: 'from memory' },
  noSources: 'no source',
  sequences: 'Its place in developmental sequences',
  mistaken: 'Easily mistaken for',
  compare: (name: string): string => `Side by side with ${name}`,
  atlas: 'All reflexes',
  neighbours: 'Next in the atlas',
  previous: 'Previous',
  next: 'Next',
  noSuch: 'There is no such reflex in the atlas.',
  setsApart: (words: string): string => `Limb dissociation: ${words}.`,
};

const SIGNS = { '=': '', '~': 'about ', '<': 'fewer than ', '>': 'more than ', '': '' } as const;

/** A count beside its dot: `42 % of 249`. */
export function countLabel(count: SourcedCount): string {
  const of = count.n === null ? '' : ` of ${count.n}`;
  if (count.percent === null) return count.n === null ? 'no share printed' : `${count.n}, no share`;
  if (count.qualifier === '>' && count.percent === 0) return `some${of}`;
  if (count.qualifier === '<' && count.percent === 100) return `not all${of}`;
  return `${SIGNS[count.qualifier]}${count.percent} %${of}`;
}

export const countMeasure = (measure: string): string =>
  measure === 'present' ? 'response present' : measure;

/** What limbs do, under the name of the part. */
export const doings: Record<Doing, string> = {
  'arms bend': 'flex',
  'arms straighten': 'extend',
  'arms spread': 'abduct',
  'arms close-in': 'adduct',
  'arms unlike': 'differ',
  'legs bend': 'flex',
  'legs straighten': 'extend',
  'legs spread': 'abduct',
  'legs unlike': 'differ',
  'hands open': 'open',
  'hands close': 'close',
  'feet fan': 'toes fan',
  'feet curl': 'toes curl',
  'head turns': 'turns',
  'head bends': 'flexes',
  'head lifts': 'extends',
  'head tilts': 'tilts',
  'trunk bends': 'flexes',
  'trunk straightens': 'extends',
  'trunk curves': 'curves',
  'trunk turns': 'turns',
  'face moves': 'moves',
};

export const findPage = {
  title: 'Reflexes and reactions',
  find: 'Name or synonym',
  findHelp: 'Small spelling mistakes are accepted.',
  at: 'At the age of',
  units: { months: 'months after term', weeks: 'weeks of gestation' },
  badAge: 'Write an age as a number, such as 4.',
  position: 'Position',
  group: 'Group',
  side: 'Side',
  any: 'any',
  sides: { pair: 'left and right', midline: 'on the midline' },
  does: 'By limb movement',
  clear: 'Show all',
  found: (n: number, of: number): string =>
    n === of ? `All ${of}, on one axis.` : n === 1 ? `1 of ${of}.` : `${n} of ${of}.`,
  none: 'No reflex matches all of that. Remove a filter, or type another name.',
  atAge: (age: string): string => `At ${age}`,
  headings: {
    there: 'Expected to be present',
    changing: 'Changing now',
    gone: 'Expected to be integrated',
    'not-yet': 'Not yet',
    unknown: 'No source gives an age',
  },
  ways: { coming: 'appearing', going: 'integrating' },
  counted: (sources: string, phases: string): string => `${sources}: ${phases}`,
  more: 'More of the atlas',
  links: {
    compare: 'Side by side',
    order: 'Developmental sequences',
    quarrels: 'Where sources disagree',
    own: 'Your own source or reflex',
  },
};

export const comparePage = {
  title: 'Side by side',
  lead: 'Choose two to four reflexes. They move together, and the table shows the differences.',
  suggested: 'Most easily mistaken for each other',
  suggestedHelp: 'Computed from the limb patterns: how much of the movement is the same.',
  add: 'Add another',
  takeOut: 'Remove',
  remove: (name: string): string => `Remove ${name}`,
  choose: 'Choose a reflex',
  play: 'Play',
  hold: 'Pause',
  moments: ['Rest', 'Stimulus', 'Response', 'Then', 'Then'],
  controls: 'The moments of all of them',
  differs: 'Differences',
  differsHelp: 'Where all are the same, the line is pale.',
  aspect: 'Aspect',
  stimulus: 'Elicited by',
  position: 'Position',
  ages: 'Ages, all sources',
  phase: (part: string, phase: number): string => (phase > 1 ? `${part}, then` : part),
  from: (a: string, b: string): string => `${a}, against ${b}`,
  unknown: (id: string): string => `“${id}” is not in the atlas and is left out.`,
  needTwo: 'One more is needed to compare.',
};

/** Names a table that scrolls by itself. */
export const asTable = (what: string): string => `${what}, as a table`;
