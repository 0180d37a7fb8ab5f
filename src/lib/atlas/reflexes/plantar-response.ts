import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'plantar-response',
  name: 'Extensor plantar response',
  short: 'Extensor plantar',
  group: 'spinal-withdrawal',
  kind: 'primitive-reflex',
  testedPerSide: true,
  midline: false,
  position: 'supine',
  stimulus: 'stroke',
  upsetting: true,
  cautions: ['light-touch', 'few-repeats', 'only-if-stable', 'stop-if-distress'],
  patterns: [
    {
      variant: 'left-sole',
      label: 'Stroke along the outer left sole',
      stimulusSide: 'left',
      head: 'none',
      trunk: 'none',
      armL: 'none',
      armR: 'none',
      legL: 'none',
      legR: 'none',
      handL: 'none',
      handR: 'none',
      footL: 'open',
      footR: 'none',
    },
  ],
};
