import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'amphibian',
  name: 'Amphibian reaction',
  short: 'Amphibian',
  group: 'righting',
  kind: 'postural-reaction',
  testedPerSide: true,
  midline: false,
  position: 'prone',
  stimulus: 'lift',
  upsetting: false,
  cautions: ['airway-clear', 'stop-if-distress'],
  patterns: [
    {
      variant: 'left-hip',
      label: 'Left side of the pelvis lifted',
      stimulusSide: 'left',
      head: 'none',
      trunk: 'curved-left',
      armL: 'flexed',
      armR: 'none',
      legL: 'flexed',
      legR: 'none',
      handL: 'none',
      handR: 'none',
      footL: 'none',
      footR: 'none',
    },
  ],
};
