import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'body-righting-head',
  name: 'Body-on-head righting reaction',
  short: 'Body on head',
  group: 'righting',
  kind: 'postural-reaction',
  testedPerSide: false,
  midline: true,
  position: 'side-lying',
  stimulus: 'surface-contact',
  upsetting: false,
  cautions: ['airway-clear', 'stop-if-distress'],
  patterns: [
    {
      variant: 'prone',
      label: 'Prone on a firm surface',
      stimulusSide: 'none',
      head: 'extended',
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
