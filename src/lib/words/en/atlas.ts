/** English for the codes of the atlas. */
import type { SourceCount } from '../../atlas/families.ts';
import type {
  Basis,
  Caution,
  Dissociation,
  Group,
  Kind,
  LimbPattern,
  Position,
  Side,
  Tier,
} from '../../atlas/types.ts';

export const groups: Record<Group, string> = {
  feeding: 'Feeding',
  grasp: 'Grasp and traction',
  'startle-vestibular': 'Startle and vestibular',
  'tonic-postural': 'Tonic postures',
  'spinal-withdrawal': 'Spinal and withdrawal',
  'support-locomotor': 'Support and locomotion',
  righting: 'Righting',
  protective: 'Protective',
  equilibrium: 'Equilibrium',
  other: 'Other',
};

/** A variant of a response: "Propping, tipped forward in sitting". */
export const variantWords = ({ label }: LimbPattern): string => label.replace(': ', ', ');

export const kinds: Record<Kind, string> = {
  'primitive-reflex': 'primitive reflex',
  'postural-reaction': 'postural reaction',
};

export const tiers: Record<Tier, string> = {
  'primary-study': 'measured in infants',
  review: 'review',
  textbook: 'textbook',
  encyclopaedia: 'encyclopaedia',
  'government-health': 'health body',
  'course-notes': 'course notes',
  'common-practice': 'common practice, no source',
};

export const bases: Record<Basis, string> = { read: 'read', memory: 'from memory' };

const times = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`;

/** `8 voices`, where the sources are said beside it. */
export const voicesWords = ({ voices }: SourceCount): string => times(voices, 'voice');

/** `12 sources, 8 voices`: sources that copy one another are one voice. */
export const sourcesWords = ({ sources, voices }: SourceCount): string =>
  `${times(sources, 'source')}, ${times(voices, 'voice')}`;

/** `5 of 12 sources, 4 of 8 voices`. */
export const sourcesOfWords = (part: SourceCount, of: SourceCount): string =>
  `${part.sources} of ${times(of.sources, 'source')}, ${part.voices} of ${times(of.voices, 'voice')}`;

export const sides: Record<Side, string> = { left: 'left', right: 'right', midline: 'midline' };

export const positions: Record<Position, string> = {
  supine: 'supine',
  prone: 'prone',
  'prone-suspension': 'in ventral suspension',
  'upright-held': 'held upright',
  sitting: 'sitting',
  'hands-and-knees': 'on hands and knees',
  standing: 'standing',
  'side-lying': 'side-lying',
};

export const apart: Record<Dissociation, string> = {
  'arms-from-each-other': 'arms dissociated from each other',
  'arms-from-legs': 'arms dissociated from legs',
};

/**
 * Handling cautions, beside each way of eliciting. Handling: common practice, no source; Moro: Edwards & Al
 * Khalili 2023; distress and stability: Sweeney & Blackburn 2013 (every handling of an assessment destabilised
 * 36 preterm and 36 term newborns), Allinson et al. 2017 (undisturbed where medically stable).
 */
export const cautions: Record<Caution, string> = {
  'support-head':
    'Keep the head and neck supported throughout, a soft surface beneath, both hands ready.',
  'no-drop':
    'It is the suddenness that elicits it, not the height: lower a little within your own hands, never drop freely, never shake.',
  'skip-if-injury':
    'Leave it out with a suspected fracture, plexus injury, unstable neck, hip treatment, lines or recent surgery.',
  'no-pull':
    'Never lift the infant by the grasp or pull at the wrists of an arm that may be injured.',
  'trunk-support': 'Hold the trunk firmly with both hands; keep it brief.',
  'gentle-push': 'Push just far enough to unbalance; be ready to catch.',
  'guard-fall': 'Guard against a fall on every side, over a soft surface.',
  'few-repeats': 'Few repetitions: responses may fade, and each tires the infant.',
  'stop-if-distress': 'Stop at distress, a change of colour or a pause in breathing.',
  'light-touch': 'A light touch is enough; it should never hurt.',
  'firm-touch': 'Firm pressure, and never so firm that it hurts.',
  'only-if-stable': 'Not in an infant who is ill or not yet stable.',
  'no-water': 'Do not test in water: observe the response in ventral suspension or not at all.',
  'airway-clear': 'Keep nose and mouth free, and never leave the infant face down.',
};
