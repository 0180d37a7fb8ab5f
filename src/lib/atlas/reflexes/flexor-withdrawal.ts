import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'flexor-withdrawal',
  name: 'Flexor withdrawal reflex',
  short: 'Flexor withdrawal',
  group: 'spinal-withdrawal',
  kind: 'primitive-reflex',
  testedPerSide: true,
  midline: false,
  position: 'supine',
  stimulus: 'touch',
  upsetting: true,
  cautions: ['light-touch', 'few-repeats', 'only-if-stable', 'stop-if-distress'],
  patterns: [
    {
      variant: 'left-foot',
      label: 'Flick of the left sole',
      stimulusSide: 'left',
      head: 'none',
      trunk: 'none',
      armL: 'none',
      armR: 'none',
      legL: 'flexed',
      legR: 'none',
      handL: 'none',
      handR: 'none',
      footL: 'open',
      footR: 'none',
    },
  ],
};
