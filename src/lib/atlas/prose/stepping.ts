import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['automatic walking', 'walking reflex', 'dance reflex'],
  sides: 'Alternating; watch the two legs equally.',
  position: 'Held upright under the arms, tilted slightly forward.',
  stimulus: 'Soles touch the surface while the infant is moved gently forward.',
  positive: 'Alternate lifting and placing of the feet, as if walking.',
  pitfalls: [
    'Upright rather than tilted forward.',
    'Testing after a feed or in a drowsy infant.',
    'Heavier or older infants may need to be lightened in water or with support; a lost response is then not truly lost.',
  ],
  purpose: 'Newborn stepping pattern, taken up again as supported and then independent walking.',
  reported: {
    persistence: {
      text: 'Loss around 2-3 months is partly mechanical: stepping depended on arousal and on leg mass rather than only on maturing control.',
      sources: ['thelen-1982', 'lancaster-glossary'],
      basis: 'read',
    },
    absence: {
      text: 'Not uniform even at term in preterm infants; absence is not read alone.',
      sources: ['allen-capute-1986'],
      basis: 'read',
    },
    asymmetry: {
      text: 'A leg that never steps prompts a look at hip and one-sided motor function.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'left-swing': 'The roles change with each step.',
  },
};
