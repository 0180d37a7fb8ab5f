/** English for a body and what it does: parts, stimuli, acts, and the moments of a response. */
import type { Act, BodyPart } from '../../atlas/moments.ts';
import type { LimbTokens, StimulusKind } from '../../atlas/types.ts';

export const parts: Record<BodyPart, string> = {
  head: 'head',
  trunk: 'trunk',
  arms: 'arms',
  legs: 'legs',
  hands: 'hands',
  feet: 'feet',
  face: 'face',
};

export const stimuli: Record<StimulusKind, string> = {
  touch: 'a touch',
  stroke: 'a stroke',
  pressure: 'pressure',
  tap: 'a tap',
  sound: 'a sound',
  'head-drop': 'a supported head drop',
  'head-turn': 'the head turned',
  'neck-bend': 'the neck flexed',
  position: 'the position itself',
  pull: 'a pull',
  'sole-contact': 'soles set down',
  'edge-contact': 'an edge touched',
  'surface-contact': 'a surface touched',
  suspension: 'suspension',
  lowering: 'being lowered',
  push: 'a push',
  tip: 'the body tipped',
  tilt: 'the support tilted',
  roll: 'being rolled',
  lift: 'a hip lifted',
};

const LIMB: Readonly<Record<string, string>> = {
  flexed: 'flexed',
  extended: 'extended',
  abducted: 'abducted',
  adducted: 'adducted',
};
const TOKENS: Readonly<Record<BodyPart, Readonly<Record<string, string>>>> = {
  head: {
    flexed: 'flexed',
    extended: 'extended',
    'turned-left': 'turned left',
    'turned-right': 'turned right',
    'tilted-left': 'tilted left',
    'tilted-right': 'tilted right',
  },
  trunk: {
    flexed: 'flexed',
    extended: 'extended',
    'curved-left': 'curved left',
    'curved-right': 'curved right',
    'turned-left': 'turned left',
    'turned-right': 'turned right',
    'tilted-left': 'tilted left',
    'tilted-right': 'tilted right',
  },
  arms: LIMB,
  legs: LIMB,
  hands: { open: 'open', closed: 'closed' },
  feet: { open: 'toes fanned', closed: 'toes curled' },
  face: {
    cry: 'crying',
    blink: 'blinking',
    'mouth-open': 'mouth open',
    'mouth-closed-rhythmic': 'sucking',
    swallow: 'swallowing',
    'eyes-right': 'eyes to the right',
    'eyes-left': 'eyes to the left',
    'eyes-closed': 'eyes closed',
    'lips-pursed': 'lips pursed',
  },
};

const tokenWords = (part: BodyPart, tokens: readonly string[]): string =>
  tokens.map((token) => TOKENS[part][token] ?? token.replaceAll('-', ' ')).join(' and ');

/** What a part that stays as it is does. */
export const NOT_MOVED = 'not moved';

/** What a part does: `flexed`, `left extended, right flexed`, `not moved`. */
export function actWords(part: BodyPart, act: Act | null): string {
  if (!act) return 'over by then';
  const left = tokenWords(part, act.left);
  if (act.right === null) return left || NOT_MOVED;
  const right = tokenWords(part, act.right);
  if (left === right) return left || NOT_MOVED;
  return [...(left ? [`left ${left}`] : []), ...(right ? [`right ${right}`] : [])].join(', ');
}

/** `arms, legs and hands`. */
export const listed = (words: readonly string[]): string =>
  words.length < 2
    ? (words[0] ?? '')
    : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;

/** With its first letter large. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What a moment shows, limb by limb, for whoever cannot see the picture. */
export function momentWords(moment: LimbTokens): string {
  const both = (part: BodyPart, left: string, right: string | null): string[] => {
    const act: Act = {
      left: left === 'none' ? [] : [left],
      right: right === null ? null : right === 'none' ? [] : [right],
    };
    const words = actWords(part, act);
    return words === NOT_MOVED ? [] : [`${parts[part]} ${words}`];
  };
  return [
    ...both('head', moment.head, null),
    ...both('trunk', moment.trunk, null),
    ...both('arms', moment.armL, moment.armR),
    ...both('legs', moment.legL, moment.legR),
    ...both('hands', moment.handL, moment.handR),
    ...both('feet', moment.footL, moment.footR),
    ...both('face', moment.face ?? 'none', null),
  ].join(', ');
}
