import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'equilibrium-quadruped',
  name: 'Equilibrium (tilting) reaction, four-point',
  short: 'Tilting, four-point',
  group: 'equilibrium',
  kind: 'postural-reaction',
  testedPerSide: true,
  midline: true,
  position: 'hands-and-knees',
  stimulus: 'tilt',
  upsetting: false,
  cautions: ['guard-fall', 'stop-if-distress'],
  patterns: [
    {
      variant: 'tilt-left',
      label: 'Support tilted down to the left',
      stimulusSide: 'left',
      head: 'tilted-right',
      trunk: 'curved-right',
      armL: 'none',
      armR: 'abducted',
      legL: 'none',
      legR: 'abducted',
      handL: 'none',
      handR: 'none',
      footL: 'none',
      footR: 'none',
      also: {
        armR: ['extended'],
        legR: ['extended'],
      },
    },
  ],
};
