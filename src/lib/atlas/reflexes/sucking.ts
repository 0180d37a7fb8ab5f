import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'sucking',
  name: 'Sucking reflex',
  short: 'Sucking',
  group: 'feeding',
  kind: 'primitive-reflex',
  testedPerSide: false,
  midline: true,
  position: 'supine',
  stimulus: 'touch',
  upsetting: false,
  cautions: ['light-touch', 'stop-if-distress'],
  patterns: [
    {
      variant: 'suck',
      label: 'Touch inside the mouth',
      stimulusSide: 'none',
      head: 'none',
      trunk: 'none',
      armL: 'none',
      armR: 'none',
      legL: 'none',
      legR: 'none',
      handL: 'none',
      handR: 'none',
      footL: 'none',
      footR: 'none',
      face: 'mouth-closed-rhythmic',
    },
  ],
};
