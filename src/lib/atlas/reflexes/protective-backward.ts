import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'protective-backward',
  name: 'Protective extension, backward',
  short: 'Protective, backward',
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
      variant: 'back',
      label: 'Pushed backward',
      stimulusSide: 'none',
      head: 'none',
      trunk: 'none',
      armL: 'extended',
      armR: 'extended',
      legL: 'none',
      legR: 'none',
      handL: 'open',
      handR: 'open',
      footL: 'none',
      footR: 'none',
    },
  ],
};
