import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['pull-to-sit flexor response', 'arm traction response'],
  sides:
    'Drawn up by both arms at once; the pull of each arm is recorded by side. The midline entry is for a response that was not told apart by side.',
  position: 'Supine, head in midline.',
  stimulus: 'Hold the forearms and draw the infant slowly up toward sitting.',
  positive:
    'In each arm shoulder, elbow, wrist and fingers flex and pull against the examiner. Head lag is not part of the response: note it separately.',
  pitfalls: [
    'Holding the hands, which adds the palmar grasp.',
    'Pulling fast, or letting the head drop back.',
    'Recording head lag as the answer: the arms may pull well while the head lags, and the other way round.',
    'Recording one answer for two unlike arms.',
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
  verified: [
    {
      text: 'In the arm traction response the examiner feels each arm pull back and sees the elbows flex; in a hypotonic newborn the arms stay extended and no pull is felt.',
      sources: ['alfonso-traction'],
      basis: 'read',
    },
    {
      text: 'Arms and head need not go together: at term age preterm infants pulled less with the arms than term newborns, yet another group of low-risk very preterm infants had less head lag than term newborns.',
      sources: ['palmer-1982', 'cameron-2006'],
      basis: 'read',
    },
  ],
  patternNotes: {
    'pull-up': 'Head lags in the newborn, later comes forward.',
  },
};
