import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['crossed extensor reflex'],
  sides: 'Stimulate one foot, read the other leg; repeat on the other side.',
  position: 'Supine, the stimulated leg held extended at the knee.',
  stimulus: 'Firm pressure or a firm rub to the sole of the held foot; never a pin.',
  positive:
    'The free leg flexes, then adducts and extends as if to push the hand away; toes may fan.',
  pitfalls: [
    'Not fixing the knee of the stimulated leg.',
    'Holding the other leg, which is the one that should move.',
    'Counting flexion alone as a full response.',
    'Too light a touch, which brings out nothing or a tickle.',
  ],
  purpose:
    'A supporting push from the other leg while one withdraws; later used in one-leg support.',
  reported: {
    persistence: {
      text: 'Retention was a feature of spastic cerebral palsy in one high-risk cohort of 204. In 458 typical infants and 159 with later cerebral palsy or intellectual disability its course by age differed between groups.',
      sources: ['zafeiriou-1995', 'futagi-1992'],
      basis: 'read',
    },
    absence: {
      text: 'Inconsistent in healthy newborns, so absence is not read alone. Its presence depends on maturity in preterm infants.',
      sources: ['robinson-1966'],
      basis: 'read',
    },
    asymmetry: {
      text: 'A lasting difference suggests a one-sided motor disorder.',
      sources: [],
      basis: 'memory',
    },
  },
  verified: [
    {
      text: 'The leg is held extended and firm pressure is applied to the sole of that foot.',
      sources: ['gpnotebook-crossed'],
      basis: 'read',
    },
  ],
  patternNotes: {
    'left-foot':
      'Free (right) leg flexes, adducts, then extends; one author puts the extension before the adduction. The stimulated leg is held extended.',
  },
};
