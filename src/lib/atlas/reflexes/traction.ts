import type { ReflexData } from '../types.ts';

export const reflex: ReflexData = {
  id: 'traction',
  name: 'Traction response',
  short: 'Traction',
  group: 'grasp',
  kind: 'primitive-reflex',
  testedPerSide: true,
  midline: true,
  position: 'supine',
  stimulus: 'pull',
  upsetting: true,
  cautions: ['no-pull', 'support-head', 'skip-if-injury', 'only-if-stable', 'stop-if-distress'],
  patterns: [
    {
      variant: 'pull-up',
      label: 'Forearms drawn toward sitting',
      stimulusSide: 'none',
      head: 'none',
      trunk: 'none',
      armL: 'flexed',
      armR: 'flexed',
      legL: 'none',
      legR: 'none',
      handL: 'closed',
      handR: 'closed',
      footL: 'none',
      footR: 'none',
    },
  ],
};
