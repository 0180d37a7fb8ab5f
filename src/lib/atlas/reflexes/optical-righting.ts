import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'optical-righting',
  name: 'Optical head righting',
  short: 'Optical righting',
  group: 'righting',
  kind: 'postural-reaction',
  testedPerSide: true,
  midline: true,
  position: 'upright-held',
  stimulus: 'tip',
  upsetting: false,
  cautions: ['trunk-support', 'skip-if-injury', 'stop-if-distress'],
  patterns: [
    {
      variant: 'tip-left',
      label: 'Body tipped to the left, eyes open',
      stimulusSide: 'left',
      head: 'tilted-right',
      trunk: 'none',
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
