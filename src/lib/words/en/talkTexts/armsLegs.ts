/** The arms before the legs, in words. */
import type { TalkText } from './facts.ts';

export const armsLegs: TalkText = {
  title: 'The arms before the legs',
  about: 'Two ways in which limbs come apart: the figure, the order, and how firmly it is taught.',
  steps: [
    () => ({
      caption: 'Two tonic postures set limbs apart',
      note: 'Which limbs a response sets apart is computed from what each limb does. The lanes are the asymmetrical and the symmetrical tonic neck reflex.',
    }),
    (f) => ({
      caption: 'Head turned: one arm apart from the other',
      note: `The arm on the face side straightens, the other bends. ${f.prints('zafeiriou-2004', 'atnr')}. ${f.prints('kumc-2012', 'atnr')}. Turn slowly, keep the shoulders flat, stop at distress.`,
    }),
    (f) => ({
      caption: 'Head bent: the arms apart from the legs',
      note: `Chin to chest: the arms bend, the legs straighten; head back: the other way round. ${f.prints('osullivan-handout', 'stnr')}. It is seldom seen in typical infants, and its absence tells nothing by itself. Support the trunk.`,
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
      note: `The first goes from ${f.goes('atnr')}; the second comes from ${f.comes('stnr')}. The stretches overlap: an infant may show both for a while.`,
    }),
    (f) => ({
      caption: 'When the arms work against each other less',
      note: `The hand that is looked at can come to the middle. That the asymmetrical tonic neck reflex goes before rolling is taught, and in dispute: ${f.standing('atnr-before-rolling')}`,
    }),
    () => ({
      caption: 'An order is a question, not a verdict',
      note: 'What came first is inferred from all visits, beside what the sources say. Visits that begin after both have happened leave it open. Where the visits show the other way round, look again: both sides, in a calm infant. No diagnosis; follow local pathways and licensed practice.',
    }),
  ],
};
