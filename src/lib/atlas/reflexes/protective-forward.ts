import type { Reflex } from '../types.ts';

export const reflex: Reflex = {
  id: 'protective-forward',
  name: 'Protective extension, forward',
  short: 'Protective, forward',
  group: 'protective',
  kind: 'postural-reaction',
  testedPerSide: true,
  midline: false,
  unequalIsCommon: false,
  position: 'prone-suspension',
  stimulus: 'lowering',
  upsetting: true,
  cautions: ['trunk-support', 'no-drop', 'skip-if-injury'],
  patterns: [
    {
      variant: 'forward',
      label: 'Tipped forward',
      stimulusSide: 'none',
      head: 'extended',
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
