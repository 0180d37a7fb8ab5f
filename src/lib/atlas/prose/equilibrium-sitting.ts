import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['tilting reaction, sitting'],
  sides: 'Tilt to each side; the raised side is read.',
  position: 'Sitting on a tilt board, hands free.',
  stimulus: 'Tilt the support slowly to one side.',
  positive:
    'The trunk curves with the hollow toward the raised side, the raised arm and leg extend and abduct, and the head comes back to vertical.',
  pitfalls: [
    'Tilting too fast, which brings out protective extension instead.',
    'Tilting too far, so the infant slides.',
    'Supporting the trunk, which hides the response.',
  ],
  purpose: 'Automatic balance that keeps the body over its base in sitting.',
  reported: {
    persistence: {
      text: 'Stays for life.',
      sources: ['dreeben-2008'],
      basis: 'read',
    },
    absence: {
      text: 'Late or one-sided reactions are read with the whole of motor development, not alone. In 40 typically developing infants the order of the righting, protective and balance reactions was fairly but not wholly predictable. Muscle responses in the right direction can be recorded from 1 month, long before the visible reaction.',
      sources: ['haley-1986', 'hedberg-2005'],
      basis: 'read',
    },
    asymmetry: {
      text: 'A side that reacts less is noted for one-sided motor disorder.',
      sources: [],
      basis: 'memory',
    },
  },
  verified: [
    {
      text: 'Tilting reactions are elicited on a surface that moves.',
      sources: ['ot-glossary'],
      basis: 'read',
    },
  ],
  patternNotes: {
    'tilt-left':
      'The right side is the raised side. The left arm and leg may prop as a protective reaction.',
  },
};
