/** Reading a child, in words. */
import type { TalkText } from './facts.ts';

export const readingChild: TalkText = {
  title: 'Reading a child',
  about:
    'A fictional child, visit by visit: the audience judges first, then the sources are shown.',
  steps: [
    () => ({
      caption: 'Kestrel: fictional, born at 31 weeks',
      note: 'A fictional child, born on 4 October 2025 at 31w2d, dated by a first-trimester ultrasound. Ask the audience: which age will you use, and until when?',
    }),
    () => ({
      caption: 'First visit: what do you say?',
      note: 'The marks are the findings, left and right separately, and the shape of a mark shows the response. Let the audience judge each lane before you go on: as expected for the age, or to be reviewed?',
    }),
    () => ({
      caption: 'First visit: the sources',
      note: 'Compare with what the audience said. Each line is a reading of published ages over the sources in force. Where the sides differ, ask what could make one arm weaker: a turned head, a held object, an injury at birth.',
    }),
    () => ({
      caption: 'Second visit: what has changed?',
      note: 'Two months on. Which responses were tested again, and which not? Not tested does not mean not elicited. Ask the audience which responses they would now expect to fade.',
    }),
    () => ({
      caption: 'Second visit: the sources',
      note: 'Look for findings that are the same at both visits. A difference between the sides that stays weighs more than one seen once.',
    }),
    () => ({
      caption: 'Third visit: what would you discuss?',
      note: 'One response was tested while the infant cried: if it was not elicited, does that count? Ask the audience what they would discuss with the team, before the next step.',
    }),
    () => ({
      caption: 'Third visit: the sources',
      note: 'Findings to discuss come first. The sources behind each line can be opened from the child\u2019s own page. The response tested while crying is not judged.',
    }),
    () => ({
      caption: 'A reason to recheck, never a diagnosis',
      note: 'Close with what you would do next: recheck both sides with the infant awake and calm, choose the date by the windows, and talk with the family. Follow local pathways and licensed practice.',
    }),
  ],
};
