import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'babkin',
  name: 'Babkin reflex',
  short: 'Babkin',
  group: 'feeding',
  kind: 'primitive-reflex',
  testedPerSide: false,
  midline: true,
  position: 'supine',
  stimulus: 'pressure',
  upsetting: false,
  cautions: ['firm-touch', 'stop-if-distress'],
  patterns: [
    {
      variant: 'both-palms',
      label: 'Pressure in both palms',
      stimulusSide: 'none',
      head: 'flexed',
      trunk: 'none',
      armL: 'flexed',
      armR: 'flexed',
      legL: 'none',
      legR: 'none',
      handL: 'none',
      handR: 'none',
      footL: 'none',
      footR: 'none',
      face: 'mouth-open',
    },
  ],
};
