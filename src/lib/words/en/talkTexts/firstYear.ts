/** The first year at a glance, in words. */
import type { TalkText } from './facts.ts';

export const firstYear: TalkText = {
  title: 'The first year at a glance',
  about:
    'One axis from before term to the first birthday: what appears, what integrates and what stays for life.',
  steps: [
    (f) => ({
      caption: 'Every response has its time on one age axis',
      note: `A lane is a ridge. Its height says how far the sources lead one to expect the response at that age; where it is deeper, every source that gives an age says established. It is a reading of published ages, not a percentile of infants. Begin with the Moro: the sources have it appear at ${f.comes('moro')} and integrate at ${f.goes('moro')}.`,
    }),
    (f) => ({
      caption: 'Many are present before term',
      note: `The palmar grasp is dated from ${f.comes('palmar-grasp')}, the rooting reflex from ${f.comes('rooting')}, sucking from ${f.comes('sucking')}. An infant born early shows only some of them, so a response not elicited before term may simply not be due yet.`,
    }),
    (f) => ({
      caption: 'Feeding: rooting and sucking',
      note: `${f.prints('statpearls-rooting', 'rooting')}. ${f.prints('nelson', 'rooting')}. A just-fed or sleepy infant may not root, and that does not count. Touch lightly, on one cheek at a time.`,
    }),
    (f) => ({
      caption: 'The grasp of the hand integrates before that of the foot',
      note: `The palmar grasp integrates at ${f.goes('palmar-grasp')}, the plantar grasp at ${f.goes('plantar-grasp')}. The two ranges meet, so the sequence is a tendency. Never lift an infant by the grasp.`,
    }),
    (f) => ({
      caption: 'Startle: the Moro reflex fades by about half a year',
      note: `${f.prints('nelson', 'moro')}. ${f.prints('statpearls-moro', 'moro')}. It is the suddenness that elicits it, not the height: lower a little within your own hands, the head and neck supported, never drop, never shake. Leave it out with a suspected fracture or plexus injury.`,
    }),
    (f) => ({
      caption: 'Tonic postures: the head steers the limbs',
      note: `The asymmetrical tonic neck reflex is present by term or soon after; the symmetrical one is dated only from ${f.comes('stnr')}. Move the head slowly, never force it, and stop at distress. What matters is whether the infant can break the posture.`,
    }),
    (f) => ({
      caption: 'Righting: the head finds upright',
      note: `Labyrinthine and optical righting stay for life. The Landau reaction appears at ${f.comes('landau')} and integrates at ${f.goes('landau')}. Hold the trunk firmly with both hands and keep it brief.`,
    }),
    (f) => ({
      caption: 'Protective reactions appear late, and stay',
      note: `Forward from ${f.comes('protective-forward')}, backward from ${f.comes('protective-backward')}. Their ridges run off the right edge: they stay for life. Keep a hand ready to catch, and a soft surface on every side.`,
    }),
    () => ({
      caption: 'At six months: some fade, some appear',
      note: 'Read down the age marker. On the left the early responses are expected to fade; on the right the lifelong ones are expected to appear. One response out of time is a reason to recheck, never a diagnosis; follow local pathways and licensed practice.',
    }),
  ],
};
