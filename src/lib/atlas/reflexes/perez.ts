import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'perez',
  name: 'Perez reflex',
  short: 'Perez',
  group: 'spinal-withdrawal',
  kind: 'primitive-reflex',
  testedPerSide: false,
  midline: true,
  position: 'prone-suspension',
  stimulus: 'stroke',
  upsetting: true,
  cautions: ['airway-clear', 'light-touch', 'few-repeats', 'only-if-stable', 'stop-if-distress'],
  patterns: [
    {
      variant: 'stroke-up',
      label: 'Stroke up the spine',
      stimulusSide: 'none',
      head: 'extended',
      trunk: 'extended',
      armL: 'flexed',
      armR: 'flexed',
      legL: 'flexed',
      legR: 'flexed',
      handL: 'none',
      handR: 'none',
      footL: 'none',
      footR: 'none',
      face: 'cry',
    },
  ],
};
