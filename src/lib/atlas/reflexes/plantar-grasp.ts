import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'plantar-grasp',
  name: 'Plantar grasp reflex',
  short: 'Plantar grasp',
  group: 'grasp',
  kind: 'primitive-reflex',
  testedPerSide: true,
  midline: false,
  position: 'supine',
  stimulus: 'pressure',
  upsetting: false,
  cautions: ['firm-touch', 'stop-if-distress'],
  patterns: [
    {
      variant: 'left-foot',
      label: 'Pressure on the ball of the left foot',
      stimulusSide: 'left',
      head: 'none',
      trunk: 'none',
      armL: 'none',
      armR: 'none',
      legL: 'none',
      legR: 'none',
      handL: 'none',
      handR: 'none',
      footL: 'closed',
      footR: 'none',
    },
  ],
};
