import type { Reflex } from '../types.ts';

export const reflex: Reflex = {
  id: 'amphibian',
  name: 'Amphibian reaction',
  short: 'Amphibian',
  group: 'righting',
  kind: 'postural-reaction',
  testedPerSide: true,
  midline: false,
  unequalIsCommon: false,
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
