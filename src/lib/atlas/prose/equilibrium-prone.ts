import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['tilting reaction, prone'],
  sides: 'Tilt to each side; the raised side is read.',
  position: 'Prone on a tilt board, ball or bolster: on a base that can be tilted.',
  stimulus: 'Tilt the support slowly to one side.',
  positive:
    'The trunk curves with the hollow toward the raised side, the raised arm and leg extend and abduct, and the head comes back to vertical.',
  pitfalls: [
    'Tilting too fast, which brings out protective extension instead.',
    'Tilting too far, so the infant slides.',
    'Supporting the trunk, which hides the response.',
    'Testing in ventral suspension: without a base to tilt it is righting that is seen, not equilibrium.',
  ],
  purpose: 'Automatic balance that keeps the body over its base in prone.',
  reported: {
    persistence: {
      text: 'Stays for life.',
      sources: ['dreeben-2008'],
      basis: 'read',
    },
    absence: {
      text: 'Late or one-sided reactions are read with the whole of motor development, not alone. In 40 typically developing infants the order of the righting, protective and balance reactions was fairly but not wholly predictable.',
      sources: ['haley-1986'],
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
    {
      text: 'The infant lies prone on a tilt board that is tilted slowly; the trunk curves against the displacement.',
      sources: ['tilting-howto'],
      basis: 'read',
    },
  ],
  patternNotes: {
    'tilt-left':
      'The right side is the raised side. The left arm and leg may prop as a protective reaction.',
  },
};
