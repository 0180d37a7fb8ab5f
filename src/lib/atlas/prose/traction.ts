import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['pull-to-sit flexor response', 'arm traction response'],
  sides: 'Both arms together; compare the pull of each side.',
  position: 'Supine, head in midline.',
  stimulus: 'Hold the forearms and draw the infant slowly up toward sitting.',
  positive:
    'Shoulders, elbows, wrists and fingers bend and pull against the examiner; the head follows with lag that shortens with age.',
  pitfalls: [
    'Holding the hands, which adds the palmar grasp.',
    'Pulling fast, or letting the head drop back.',
    'Judging head lag alone: this test is about the arms.',
  ],
  purpose: 'Early whole-arm flexion linked with grasp; feeds into pull to sit.',
  reported: {
    persistence: {
      text: 'Taught as making voluntary grasp and release harder if it stays strong.',
      sources: [],
      basis: 'memory',
    },
    absence: {
      text: 'Appears only late in pregnancy, so absence below about 33 weeks is expected. At 40 weeks PMA infants born at 27-35 weeks pulled less than term newborns on day 1; the gap was smaller by day 5.',
      sources: ['robinson-1966', 'palmer-1982'],
      basis: 'read',
    },
    asymmetry: {
      text: 'An arm that does not pull suggests brachial plexus injury.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'pull-up': 'Head lags in the newborn, later comes forward.',
  },
};
