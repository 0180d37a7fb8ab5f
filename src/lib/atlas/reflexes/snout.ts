import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'snout',
  name: 'Snout reflex',
  short: 'Snout',
  group: 'feeding',
  kind: 'primitive-reflex',
  testedPerSide: false,
  midline: true,
  position: 'supine',
  stimulus: 'tap',
  upsetting: false,
  cautions: ['light-touch', 'stop-if-distress'],
  patterns: [
    {
      variant: 'lip-tap',
      label: 'Tap on the closed lips',
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
      face: 'lips-pursed',
    },
  ],
};
