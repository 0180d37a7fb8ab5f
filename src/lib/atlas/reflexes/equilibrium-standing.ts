import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'equilibrium-standing',
  name: 'Equilibrium (tilting) reaction, standing',
  short: 'Tilting, standing',
  group: 'equilibrium',
  kind: 'postural-reaction',
  testedPerSide: true,
  midline: true,
  position: 'standing',
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
      legL: 'extended',
      legR: 'flexed',
      handL: 'none',
      handR: 'none',
      footL: 'none',
      footR: 'none',
      also: {
        armR: ['extended'],
        armL: ['abducted'],
      },
    },
  ],
};
