import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['TLR', 'symmetric tonic labyrinthine reflex'],
  sides: 'Midline, two positions. Some authors test by neck flexion and extension in suspension.',
  position: 'Lay the infant prone, then supine, head in midline.',
  stimulus: 'The position of the head in space itself; no touch is added.',
  positive:
    'Prone: flexor tone rises and the limbs draw under. Supine: extensor tone rises, shoulders pull back and legs extend.',
  pitfalls: [
    'Head turned, which adds the asymmetrical pattern.',
    'Taking it for the Landau reaction: prone, this reflex flexes, and the Landau extends.',
    'Judging from posture without feeling resistance to movement.',
    'Fear or crying, which stiffens the infant.',
  ],
  purpose:
    'First linking of body tone to gravity; must yield before rolling, sitting and pulling up.',
  reported: {
    persistence: {
      text: 'A strong response at 4 months corrected was linked with motor delay in very low birth weight infants. Persistence is described as blocking rolling, propping and sitting balance. In 177 healthy infants, fading of the ATNR, supine TLR and Moro went along with the start of rolling and sitting.',
      sources: ['marquis-1984', 'dreeben-2008', 'capute-1982-motor'],
      basis: 'read',
    },
    absence: {
      text: 'Not treated as abnormal on its own.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'Midline stimulus; asymmetry points to a side difference in tone.',
      sources: [],
      basis: 'memory',
    },
  },
  verified: [
    {
      text: 'Prone, neck and limbs flex; supine, they extend.',
      sources: ['physiopedia-tlr'],
      basis: 'read',
    },
  ],
  patternNotes: {
    prone: 'Flexor tone rises; the infant may not be able to lift the head.',
    supine:
      'Many texts describe the arms as retracted at the shoulder with elbows flexed; extension is the tone that rises.',
  },
};
