import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'atnr',
  name: 'Asymmetrical tonic neck reflex',
  short: 'Asymmetrical tonic neck',
  group: 'tonic-postural',
  kind: 'primitive-reflex',
  testedPerSide: true,
  midline: false,
  position: 'supine',
  stimulus: 'head-turn',
  upsetting: false,
  cautions: ['support-head', 'skip-if-injury', 'stop-if-distress'],
  patterns: [
    {
      variant: 'face-left',
      label: 'Head turned to the left',
      stimulusSide: 'left',
      head: 'turned-left',
      trunk: 'curved-right',
      armL: 'extended',
      armR: 'flexed',
      legL: 'extended',
      legR: 'flexed',
      handL: 'open',
      handR: 'closed',
      footL: 'none',
      footR: 'none',
    },
  ],
};
