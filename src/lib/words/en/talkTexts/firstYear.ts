/** The first year at a glance, in words. */
import type { TalkText } from './facts.ts';

export const firstYear: TalkText = {
  title: 'The first year at a glance',
  about: 'One axis from before term to the first birthday: what comes, what goes and what stays.',
  steps: [
    (f) => ({
      caption: 'Every response has its time on one age axis',
      note: `A lane is a ridge. Its height says how far the sources lead one to expect the response at that age; where it is deeper, every source that speaks says established. It is a reading of published ages, not a percentile of infants. Begin with the Moro: the sources have it come from ${f.comes('moro')} and go from ${f.goes('moro')}.`,
    }),
    (f) => ({
      caption: 'Many are there before term',
      note: `The palmar grasp is dated from ${f.comes('palmar-grasp')}, the rooting reflex from ${f.comes('rooting')}, sucking from ${f.comes('sucking')}. An infant born early brings only part of them along, so what is missing before term may simply not be due yet.`,
    }),
    (f) => ({
      caption: 'Feeding: rooting and sucking',
      note: `${f.prints('statpearls-rooting', 'rooting')}. ${f.prints('nelson', 'rooting')}. A just-fed or sleepy infant may not root; that is no answer. Touch lightly, on one cheek at a time.`,
    }),
    (f) => ({
      caption: 'The hand lets go before the foot',
      note: `The palmar grasp goes from ${f.goes('palmar-grasp')}, the plantar grasp from ${f.goes('plantar-grasp')}; the two stretches meet, so the order is a tendency. Never lift an infant by the grasp.`,
    }),
    (f) => ({
      caption: 'Startle: the Moro reflex fades by about half a year',
      note: `${f.prints('nelson', 'moro')}. ${f.prints('statpearls-moro', 'moro')}. It is the suddenness that elicits it, not the height: lower a little within your own hands, the head and neck supported, never drop, never shake. Leave it out with a suspected fracture or plexus injury.`,
    }),
    (f) => ({
      caption: 'Tonic postures: the head steers the limbs',
      note: `The asymmetrical tonic neck reflex is there by term or soon after; the symmetrical one is dated only from ${f.comes('stnr')}. Move the head slowly, never force it, and stop at distress. What matters is whether the infant can break the posture.`,
    }),
    (f) => ({
      caption: 'Righting: the head finds upright',
      note: `Labyrinthine and optical righting stay for life. The Landau reaction comes from ${f.comes('landau')} and goes from ${f.goes('landau')}. Hold the trunk firmly with both hands and keep it brief.`,
    }),
    (f) => ({
      caption: 'Protective reactions come late, and stay',
      note: `Forward from ${f.comes('protective-forward')}, backward from ${f.comes('protective-backward')}. Their ridges run off the right edge: they stay for life. A hand always ready to catch, a soft surface on every side.`,
    }),
    () => ({
      caption: 'At six months: some closing, some opening',
      note: 'Read down the age line. On the left the early responses are closing; on the right the lifelong ones are opening. One answer out of time is a reason to look again, never a diagnosis; follow local pathways and licensed practice.',
    }),
  ],
};
