/** When the tables disagree, in words. */
import type { TalkText } from './facts.ts';

export const tables: TalkText = {
  title: 'When the tables disagree',
  about: 'Why two textbooks give two ages, what silence means, and how to read a ridge.',
  steps: [
    (f) => ({
      caption: 'One reflex, many tables',
      note: `On the palmar grasp there are windows of ${f.sources('palmar-grasp')}, on the asymmetrical tonic neck reflex of ${f.sources('atnr')}: sources that copy one another are one voice. The ridge is the mean of those that give an age, so it falls where they disagree.`,
    }),
    (f) => ({
      caption: 'When does the palmar grasp integrate? It depends on the table',
      note: `Opened, a lane shows each source by itself. ${f.prints('garcia-sanchez', 'palmar-grasp')}. ${f.prints('nelson', 'palmar-grasp')}. ${f.prints('beststart', 'palmar-grasp')}. ${f.prints('kumc-2012', 'palmar-grasp')}. ${f.prints('zafeiriou-2004', 'palmar-grasp')}.`,
    }),
    (f) => ({
      caption: 'The head turn: from two months to seven',
      note: `${f.prints('bates', 'atnr')}. ${f.prints('zafeiriou-2004', 'atnr')}. ${f.prints('osullivan-handout', 'atnr')}. ${f.prints('nelson', 'atnr')}. Some give the age by which most infants have lost it, some the age by which no trace remains; few say which they mean.`,
    }),
    (f) => ({
      caption: 'Counts of infants differ again',
      note: `${f.prints('shapiro-1981', 'atnr')} of 249 infants at routine visits; any response counted. A count is not a window, and a window is not a percentile. See both before saying that an age is late.`,
    }),
    (f) => ({
      caption: 'The foot: half a year apart',
      note: `${f.prints('bates', 'plantar-grasp')}. ${f.prints('osullivan-handout', 'plantar-grasp')}. ${f.prints('molnar-handout', 'plantar-grasp')}. ${f.prints('zafeiriou-2004', 'plantar-grasp')}.`,
    }),
    () => ({
      caption: 'Silence is not agreement',
      note: 'Many sources print only one age: when a response appears, or when it integrates. Such a source is used over the span that no other disputes, and is silent beyond it. Its row ends with a vertical edge where it falls silent. Where all are silent, nothing is judged.',
    }),
    () => ({
      caption: 'Say which table you use',
      note: 'Tables copy one another, so counting them counts what is taught. Choose all, some kinds or one; the screen says which are in force. Where they disagree, say so to the parents and to the team. No table is a diagnosis.',
    }),
  ],
};
