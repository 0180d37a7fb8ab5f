import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'galant',
  name: 'Galant reflex',
  short: 'Galant',
  group: 'spinal-withdrawal',
  kind: 'primitive-reflex',
  testedPerSide: true,
  midline: false,
  position: 'prone',
  stimulus: 'stroke',
  upsetting: false,
  cautions: ['airway-clear', 'light-touch', 'stop-if-distress'],
  patterns: [
    {
      variant: 'left-side',
      label: 'Stroke down the left of the spine',
      stimulusSide: 'left',
      head: 'none',
      trunk: 'curved-left',
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
