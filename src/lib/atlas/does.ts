/** What a response makes the limbs do, computed from its pattern, for finding a reflex by what is seen. */
import { bodyMoments, type BodyPart } from './moments.ts';
import type { Reflex } from './types.ts';

/** What can be seen of each part, in any moment of the response. */
export const DOINGS = {
  arms: ['bend', 'straighten', 'spread', 'close-in', 'unlike'],
  legs: ['bend', 'straighten', 'spread', 'unlike'],
  hands: ['open', 'close'],
  feet: ['fan', 'curl'],
  head: ['turns', 'bends', 'lifts', 'tilts'],
  trunk: ['bends', 'straightens', 'curves', 'turns'],
  face: ['moves'],
} as const satisfies Record<BodyPart, readonly string[]>;

/** A part with what it does: `arms unlike`, `hands close`. */
export type Doing = { [P in BodyPart]: `${P} ${(typeof DOINGS)[P][number]}` }[BodyPart];

const LIMB: Readonly<Record<string, string>> = {
  flexed: 'bend',
  extended: 'straighten',
  abducted: 'spread',
  adducted: 'close-in',
};
const HAND: Readonly<Record<string, string>> = { open: 'open', closed: 'close' };
const FOOT: Readonly<Record<string, string>> = { open: 'fan', closed: 'curl' };
const HEAD: Readonly<Record<string, string>> = {
  flexed: 'bends',
  extended: 'lifts',
  'turned-left': 'turns',
  'turned-right': 'turns',
  'tilted-left': 'tilts',
  'tilted-right': 'tilts',
};
const TRUNK: Readonly<Record<string, string>> = {
  flexed: 'bends',
  extended: 'straightens',
  'curved-left': 'curves',
  'curved-right': 'curves',
  'turned-left': 'turns',
  'turned-right': 'turns',
};

const WORDS: Readonly<Record<BodyPart, Readonly<Record<string, string>>>> = {
  head: HEAD,
  trunk: TRUNK,
  arms: LIMB,
  legs: LIMB,
  hands: HAND,
  feet: FOOT,
  face: {},
};

/** All that a response makes the parts of the body do, in any variant and phase, on either side. */
export function doesOf(reflex: Pick<Reflex, 'patterns'>): ReadonlySet<Doing> {
  const found = new Set<string>();
  for (const { acts } of bodyMoments(reflex))
    for (const [part, { left, right }] of Object.entries(acts) as [
      BodyPart,
      (typeof acts)[BodyPart],
    ][]) {
      for (const token of [...left, ...(right ?? [])]) {
        const word = part === 'face' ? 'moves' : WORDS[part][token];
        if (word && (DOINGS[part] as readonly string[]).includes(word))
          found.add(`${part} ${word}`);
      }
      const [l] = left;
      const [r] = right ?? [];
      const unlike = l !== undefined && r !== undefined && left.join() !== right?.join();
      if (unlike && (part === 'arms' || part === 'legs')) found.add(`${part} unlike`);
    }
  return found as Set<Doing>;
}
