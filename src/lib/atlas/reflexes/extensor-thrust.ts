import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'extensor-thrust',
  name: 'Extensor thrust reflex',
  short: 'Extensor thrust',
  group: 'spinal-withdrawal',
  kind: 'primitive-reflex',
  testedPerSide: true,
  midline: false,
  position: 'supine',
  stimulus: 'pressure',
  upsetting: true,
  cautions: ['light-touch', 'few-repeats', 'only-if-stable', 'stop-if-distress'],
  patterns: [
    {
      variant: 'left-foot',
      label: 'Sharp touch on the left sole, left leg flexed',
      stimulusSide: 'left',
      head: 'none',
      trunk: 'none',
      armL: 'none',
      armR: 'none',
      legL: 'extended',
      legR: 'none',
      handL: 'none',
      handR: 'none',
      footL: 'none',
      footR: 'none',
    },
  ],
};
