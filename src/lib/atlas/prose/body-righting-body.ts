import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['segmental rolling', 'body derotative righting', 'body righting acting on body'],
  sides: 'Rotate from the pelvis or shoulders to each side.',
  position: 'Supine, head in midline.',
  stimulus:
    'Flex one hip and knee and turn the leg slowly across the body, letting the infant finish the roll.',
  positive:
    'The roll comes in segments: pelvis, trunk, shoulders and last the head, or the reverse.',
  pitfalls: [
    'Turning the head at the same time, which gives the log roll.',
    'Forcing the roll all the way round.',
  ],
  purpose: 'Rotation within the body axis, needed for rolling, sitting up and gait.',
  reported: {
    persistence: {
      text: 'Usual into early childhood.',
      sources: [],
      basis: 'memory',
    },
    absence: {
      text: 'A block roll at this age suggests the earlier neck-on-body pattern has not softened.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'Rolling to one side only was linked with one-sided head righting in 5 of 33 healthy infants.',
      sources: ['tachibana-1983'],
      basis: 'read',
    },
  },
  patternNotes: {
    'roll-left': 'Pelvis leads, then trunk, then shoulders; the upper leg is the right one.',
  },
};
