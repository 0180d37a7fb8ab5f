import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'glabellar',
  name: 'Glabellar tap reflex',
  short: 'Glabellar tap',
  group: 'other',
  kind: 'primitive-reflex',
  testedPerSide: true,
  midline: true,
  position: 'supine',
  stimulus: 'tap',
  upsetting: true,
  cautions: ['light-touch', 'few-repeats', 'only-if-stable', 'stop-if-distress'],
  patterns: [
    {
      variant: 'glabella',
      label: 'Tap between the eyebrows',
      stimulusSide: 'none',
      head: 'none',
      trunk: 'none',
      armL: 'none',
      armR: 'none',
      legL: 'none',
      legR: 'none',
      handL: 'none',
      handR: 'none',
      footL: 'none',
      footR: 'none',
      face: 'eyes-closed',
    },
  ],
};
