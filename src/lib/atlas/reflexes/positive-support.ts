import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'positive-support',
  name: 'Positive support reaction',
  short: 'Positive support',
  group: 'support-locomotor',
  kind: 'primitive-reflex',
  testedPerSide: true,
  midline: true,
  position: 'upright-held',
  stimulus: 'sole-contact',
  upsetting: false,
  cautions: ['trunk-support', 'few-repeats', 'skip-if-injury', 'stop-if-distress'],
  patterns: [
    {
      variant: 'both-feet',
      label: 'Balls of both feet touch down',
      stimulusSide: 'none',
      head: 'none',
      trunk: 'extended',
      armL: 'none',
      armR: 'none',
      legL: 'extended',
      legR: 'extended',
      handL: 'none',
      handR: 'none',
      footL: 'none',
      footR: 'none',
    },
  ],
};
