import type { Reflex } from '../types.ts';

export const reflex: Reflex = {
  id: 'acoustic-startle',
  name: 'Acoustic startle reflex',
  short: 'Acoustic startle',
  group: 'startle-vestibular',
  kind: 'primitive-reflex',
  testedPerSide: true,
  midline: false,
  unequalIsCommon: false,
  position: 'supine',
  stimulus: 'sound',
  upsetting: true,
  cautions: ['few-repeats', 'stop-if-distress'],
  patterns: [
    {
      variant: 'sound',
      label: 'Sudden sound',
      stimulusSide: 'none',
      head: 'flexed',
      trunk: 'flexed',
      armL: 'flexed',
      armR: 'flexed',
      legL: 'flexed',
      legR: 'flexed',
      handL: 'closed',
      handR: 'closed',
      footL: 'none',
      footR: 'none',
      face: 'blink',
    },
  ],
};
