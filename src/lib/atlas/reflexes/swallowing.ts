import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'swallowing',
  name: 'Swallowing reflex',
  short: 'Swallowing',
  group: 'feeding',
  kind: 'primitive-reflex',
  testedPerSide: false,
  midline: true,
  position: 'supine',
  stimulus: 'touch',
  upsetting: false,
  cautions: ['stop-if-distress'],
  patterns: [
    {
      variant: 'swallow',
      label: 'Fluid at the back of the mouth',
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
      face: 'swallow',
    },
  ],
};
