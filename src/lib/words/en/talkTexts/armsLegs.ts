/** The arms before the legs, in words. */
import type { TalkText } from './facts.ts';

export const armsLegs: TalkText = {
  title: 'The arms before the legs',
  about: 'Two kinds of limb dissociation: the figure, the sequence, and how firmly it is taught.',
  steps: [
    () => ({
      caption: 'Two tonic postures dissociate the limbs',
      note: 'Which limbs a response dissociates is computed from what each limb does. The lanes are the asymmetrical and the symmetrical tonic neck reflex.',
    }),
    (f) => ({
      caption: 'Head turned: arms dissociated from each other',
      note: `The arm on the face side extends, the other flexes. ${f.prints('zafeiriou-2004', 'atnr')}. ${f.prints('kumc-2012', 'atnr')}. Turn slowly, keep the shoulders flat, stop at distress.`,
    }),
    (f) => ({
      caption: 'Head flexed: arms dissociated from legs',
      note: `With the chin to the chest the arms flex and the legs extend. With the head back it is the reverse. ${f.prints('osullivan-handout', 'stnr')}. It is seldom seen in typical infants, and its absence means nothing by itself. Support the trunk.`,
    }),
    (f) => {
      const { supports, overlaps, contradicts } = f.tally('arms-then-legs', 1);
      return {
        caption: 'First arm from arm, then arms from legs',
        note: `Every source's window for the first set beside every source's for the second: ${supports} pairs support the order, ${overlaps} overlap, ${contradicts} contradict it. ${f.standing('arms-then-legs')} Counting tables counts what is taught, not how often it is seen.`,
      };
    },
    (f) => ({
      caption: 'The asymmetrical one fades as the other comes',
      note: `The first integrates at ${f.goes('atnr')}, the second appears at ${f.comes('stnr')}. The ranges overlap: an infant may show both for a while.`,
    }),
    (f) => ({
      caption: 'When the arms oppose each other less',
      note: `The hand in view can come to the midline. That the asymmetrical tonic neck reflex integrates before rolling is taught, and disputed: ${f.standing('atnr-before-rolling')}`,
    }),
    () => ({
      caption: 'A sequence is a question, not a verdict',
      note: 'Which came first is inferred from all visits, together with the sources. Visits that begin after both have happened cannot show it. Where the visits show the reverse order, recheck both sides in a calm infant. It is not a diagnosis; follow local pathways and licensed practice.',
    }),
  ],
};
