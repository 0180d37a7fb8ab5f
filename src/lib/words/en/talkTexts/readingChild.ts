/** Reading a child, in words. */
import type { TalkText } from './facts.ts';

export const readingChild: TalkText = {
  title: 'Reading a child',
  about: 'An invented child, visit by visit: the hall judges first, then the sources speak.',
  steps: [
    () => ({
      caption: 'Kestrel: invented, born at 31 weeks',
      note: 'An invented child, born on 4 October 2025 at 31w2d, dated by a first-trimester ultrasound. Ask the hall: which age will you read by, and until when?',
    }),
    () => ({
      caption: 'First visit: what do you say?',
      note: 'The marks are what was seen, left and right apart; the kind of answer is told by its shape. Let the hall judge each lane before you go on: fits the age, or asks for a second look?',
    }),
    () => ({
      caption: 'First visit: what the sources say',
      note: 'Compare with what the hall said. Each line is a reading of published ages over the sources in force. Where the sides differ, ask what could make one arm weaker: a turned head, a held object, an injury at birth.',
    }),
    () => ({
      caption: 'Second visit: what has changed?',
      note: 'Two months on. Which responses were looked at again, and which not? Not tested is not absent. Let the hall say which lanes they would now expect to be closing.',
    }),
    () => ({
      caption: 'Second visit: what the sources say',
      note: 'Look for what is the same at both visits. A difference between the sides that stays weighs more than one seen once.',
    }),
    () => ({
      caption: 'Third visit: what would you discuss?',
      note: 'One answer was taken while the infant cried: is a missing answer then an answer? Let the hall name what they would take to the team, before the next step.',
    }),
    () => ({
      caption: 'Third visit: what the sources say',
      note: 'What asks to be discussed stands first. Each line rests on sources that can be opened from the child\u2019s own page. The answer taken while crying is not judged.',
    }),
    () => ({
      caption: 'A reason to look again, never a diagnosis',
      note: 'Close with what you would do next: look again with both sides, awake and calm; choose the date by the windows; talk with the family. Follow local pathways and licensed practice.',
    }),
  ],
};
