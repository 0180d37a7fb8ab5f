import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'protective-sideways',
  name: 'Protective extension, sideways',
  short: 'Protective, sideways',
  group: 'protective',
  kind: 'postural-reaction',
  testedPerSide: true,
  midline: false,
  position: 'sitting',
  stimulus: 'push',
  upsetting: false,
  cautions: ['gentle-push', 'guard-fall', 'stop-if-distress'],
  patterns: [
    {
      variant: 'fall-left',
      label: 'Infant tips to the left',
      stimulusSide: 'left',
      head: 'tilted-right',
      trunk: 'curved-right',
      armL: 'extended',
      armR: 'none',
      legL: 'none',
      legR: 'none',
      handL: 'open',
      handR: 'none',
      footL: 'none',
      footR: 'none',
      also: {
        armL: ['abducted'],
      },
    },
  ],
};
