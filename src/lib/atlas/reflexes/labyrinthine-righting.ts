import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'labyrinthine-righting',
  name: 'Labyrinthine head righting',
  short: 'Labyrinthine righting',
  group: 'righting',
  kind: 'postural-reaction',
  testedPerSide: true,
  midline: true,
  position: 'upright-held',
  stimulus: 'tip',
  upsetting: false,
  cautions: ['trunk-support', 'skip-if-injury', 'stop-if-distress'],
  patterns: [
    {
      variant: 'tip-left',
      label: 'Body tipped to the left',
      stimulusSide: 'left',
      head: 'tilted-right',
      trunk: 'none',
      armL: 'none',
      armR: 'none',
      legL: 'none',
      legR: 'none',
      handL: 'none',
      handR: 'none',
      footL: 'none',
      footR: 'none',
    },
  ],
};
