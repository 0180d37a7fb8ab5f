import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: [
    'ATNR',
    'asymmetric tonic neck reflex',
    'fencing posture',
    'fencer reflex',
    'Magnus-de Kleijn reflex',
  ],
  sides: 'Turn to each side and compare; note whether the infant can break the posture.',
  position: 'Supine, shoulders flat, head in midline.',
  stimulus:
    'Turn the head slowly to one side and hold it there for several seconds; in young infants also watch during a spontaneous turn.',
  positive: 'The arm (and often the leg) on the face side extends while the skull-side arm flexes.',
  pitfalls: [
    'Letting the shoulders roll with the head.',
    'Holding too briefly: the response can take seconds to build.',
    'Reading only the legs; arms and legs follow different time courses.',
    'Calling a brief, breakable posture abnormal: what matters is whether it is fixed.',
  ],
  purpose: 'Brings the hand into view and begins hand regard; breaks up symmetrical flexion.',
  reported: {
    persistence: {
      text: 'Retention was a feature of the athetoid cerebral palsy group in one high-risk cohort, and it is increased or persistent in severe cerebral palsy. A fixed posture the infant cannot break is treated as abnormal at any age (recalled from teaching). Residual traces are common in healthy school-age children. Among 249 infants 8 percent still showed some response at 12 months. In 156 term infants with normal outcome, reflex scores at 6 weeks, 3 and 5 months were unrelated to motor scores.',
      sources: [
        'zafeiriou-1995',
        'gpnotebook-atnr',
        'parmenter-1975',
        'shapiro-1981',
        'bartlett-1997',
      ],
      basis: 'mixed',
    },
    absence: {
      text: 'Arm and leg parts follow different time courses in healthy infants, so a partial response is usual. In 42 newborns in the first 5 days, face-side extension followed passive head turning more often than chance, yet it was rare after spontaneous turns in 30 term newborns. It is easier to elicit, and held longer, at term age in infants born preterm. Absence at one examination is not read alone (recalled from teaching).',
      sources: [
        'coryell-cardinali-1979',
        'clopton-2000',
        'kranen-1997',
        'forslund-1983',
        'majnemer-1992',
      ],
      basis: 'mixed',
    },
    asymmetry: {
      text: 'A lasting side preference prompts a look for a head-turn preference, hip or one-sided motor problem.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'face-left': 'Trunk is convex toward the face side, that is concave to the right.',
  },
};
