import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'protective-downward',
  name: 'Protective extension, downward (legs)',
  short: 'Protective, downward',
  group: 'protective',
  kind: 'postural-reaction',
  testedPerSide: true,
  midline: false,
  position: 'upright-held',
  stimulus: 'lowering',
  upsetting: true,
  cautions: ['trunk-support', 'no-drop', 'skip-if-injury', 'stop-if-distress'],
  patterns: [
    {
      variant: 'lowered',
      label: 'Lowered quickly toward the surface',
      stimulusSide: 'none',
      head: 'none',
      trunk: 'none',
      armL: 'none',
      armR: 'none',
      legL: 'extended',
      legR: 'extended',
      handL: 'none',
      handR: 'none',
      footL: 'none',
      footR: 'none',
      also: {
        legL: ['abducted'],
        legR: ['abducted'],
      },
    },
  ],
};
