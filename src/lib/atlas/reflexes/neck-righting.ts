import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'neck-righting',
  name: 'Neonatal neck-on-body righting reaction',
  short: 'Neck on body',
  group: 'righting',
  kind: 'primitive-reflex',
  testedPerSide: true,
  midline: false,
  position: 'supine',
  stimulus: 'head-turn',
  upsetting: false,
  cautions: ['support-head', 'skip-if-injury', 'stop-if-distress'],
  patterns: [
    {
      variant: 'head-left',
      label: 'Head turned to the left',
      stimulusSide: 'left',
      head: 'turned-left',
      trunk: 'turned-left',
      armL: 'none',
      armR: 'none',
      legL: 'none',
      legR: 'none',
      handL: 'none',
      handR: 'none',
      footL: 'none',
      footR: 'none',
    },
  ],
};
