import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'palmar-grasp',
  name: 'Palmar grasp reflex',
  short: 'Palmar grasp',
  group: 'grasp',
  kind: 'primitive-reflex',
  testedPerSide: true,
  midline: false,
  position: 'supine',
  stimulus: 'pressure',
  upsetting: false,
  cautions: ['no-pull', 'few-repeats', 'stop-if-distress'],
  patterns: [
    {
      variant: 'left-palm',
      label: 'Pressure on the left palm',
      stimulusSide: 'left',
      head: 'none',
      trunk: 'none',
      armL: 'none',
      armR: 'none',
      legL: 'none',
      legR: 'none',
      handL: 'closed',
      handR: 'none',
      footL: 'none',
      footR: 'none',
      also: {
        armL: ['flexed'],
      },
    },
  ],
};
