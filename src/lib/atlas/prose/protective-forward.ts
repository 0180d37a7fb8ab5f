import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['parachute reaction', 'forward parachute', 'forward propping', 'anterior propping'],
  sides: 'Both arms together; compare them.',
  position:
    'Two tests. Propping: seated on the floor, legs apart, hands free. Parachute: in ventral suspension, held firmly by the trunk.',
  stimulus:
    'Propping: a push or tip forward that unbalances. Parachute: the head end tipped toward a surface, quickly and a short way.',
  positive:
    'In both the arms extend forward, hands open, wrists extended, fingers abducted; in propping they take weight at once, in the parachute when they reach the surface.',
  pitfalls: [
    'Plunging so fast the infant startles.',
    'Recording the one for the other: propping in sitting is taught from about 6 months, while the complete parachute was measured at about 9.',
    'Testing with the infant already leaning on the arms.',
    'Counting fisted hands as complete.',
  ],
  purpose: 'Saves the face and head when falling forward.',
  reported: {
    persistence: {
      text: 'Stays for life.',
      sources: ['dreeben-2008'],
      basis: 'read',
    },
    absence: {
      text: 'A complete response at 12 months was a good predictor of walking in infants with brain lesions, and late appearance predicted later walking. In near-term infants, those with only an incomplete response walked about a month later.',
      sources: ['romeo-2011', 'romeo-2009'],
      basis: 'read',
    },
    asymmetry: {
      text: 'One arm that does not reach suggests a one-sided problem.',
      sources: [],
      basis: 'memory',
    },
  },
  verified: [
    {
      text: 'Parachute: held in ventral suspension and tilted abruptly forward; arms abduct, elbows and wrists extend, fingers spread.',
      sources: ['dict-parachute'],
      basis: 'read',
    },
    {
      text: 'Parachute measured: mean 8.9 months in 190 healthy infants; complete most often at 9 months corrected in 484 near-term infants, most of whom showed an incomplete form first; begins at about 4 months and is fully developed from 9 on when the infant is moved quickly toward a large surface.',
      sources: ['jaffe-1994', 'romeo-2009', 'wenzel-1978'],
      basis: 'read',
    },
    {
      text: 'Propping: sits without support for a moment, and on falling forward extends the arms to the floor.',
      sources: ['ncdpi-2015'],
      basis: 'read',
    },
  ],
  patternNotes: {
    forward: 'Fingers spread, wrists extended.',
  },
};
