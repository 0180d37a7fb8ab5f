/** English for the pages about the sources, the settings, and Tidemark itself. */

import type { SourceCount } from '../../atlas/families.ts';
import { sourcesWords, voicesWords } from './atlas.ts';

/** What is held, by what each number counts. */
interface HeldNumbers {
  sources: number;
  claims: number;
  /** Sources with at least one window. */
  dating: SourceCount;
  /** Sources that judge by default. */
  judging: SourceCount;
  /** Sources with counts of infants. */
  counting: number;
  counts: number;
}

export const sourcesPage = {
  title: 'Sources',
  lead: (n: HeldNumbers): string =>
    `${n.sources} sources are held. ${n.dating.sources} of them (${voicesWords(n.dating)}) give an age window of at least one reflex, ${n.claims} claims in all; ${n.judging.sources} of these (${voicesWords(n.judging)}) judge where nothing else is chosen. ${n.counting} hold ${n.counts} counts of infants. The others give context, evidence or method.`,
  voices: 'Sources that share ages',
  counting:
    'Tables copy one another, so counting sources counts what is taught, not how good the evidence is. The kind of each source is always shown.',
  read: (n: number): string => `${n} read`,
  memory: (n: number): string => `${n} from memory`,
  counts: (n: number): string => (n === 1 ? '1 count of infants' : `${n} counts of infants`),
  noClaims: 'no claims; used for method or context',
  covers: 'Covers',
  licence: 'Licence',
  doi: 'DOI',
};

export const settingsPage = {
  title: 'Settings',
  sources: 'Sources judged by',
  defaultSources: (n: SourceCount): string => `The default (${sourcesWords(n)})`,
  defaultHelp:
    'What was measured in infants, reviews, textbooks and health bodies. Course notes, encyclopaedias and common practice are judged by only for a reflex on which fewer than three independent voices of those give an age.',
  all: (n: SourceCount): string => `All (${sourcesWords(n)})`,
  kinds: 'By kind',
  one: 'One source',
  oneLabel: 'Which source',
  noKinds: 'No kind is chosen, so nothing is judged.',
  limits: 'When the corrected age counts',
  preterm: 'Born before',
  pretermHelp: 'Weeks and days of gestation; 37w0d by custom.',
  until: 'Up to months since birth',
  untilHelp: 'Whole months; 24 by custom.',
  badUntil: 'Write whole months from 0 to 60, such as 24.',
  badPreterm: 'Write weeks and days between 22w0d and 44w6d, such as 37w0d.',
  theme: 'Colours',
  themes: { system: 'as the machine', light: 'light', dark: 'dark' },
  text: 'Text size',
  custom: 'As by custom',
  undo: 'Undo',
  redo: 'Redo',
};

export const about = {
  title: 'About Tidemark',
  lead: 'Tidemark places infant reflexes and postural reactions on one age axis, before and after term, lays over it what was seen in one child, and says, with reasons and sources, what fits the age, what does not, and what to look at next.',
  sections: [
    {
      title: 'What it computes',
      paragraphs: [
        'Ages are counted in whole days of the calendar from the birth date and the gestation or due date. In a child born early the corrected age counts, up to a limit that is a setting; the screen says which age was used and why.',
        'A due date is not exact. Each way of dating has a spread, and every verdict is computed over that spread: where it hangs on the due date, it says so.',
        'Each source is read as a window in which a response appears and one in which it goes. Where a source says nothing of an age it is silent, and silence is not agreement. The height of a ridge is the mean expectation of the sources that speak.',
        'A verdict is the phase a finding falls in under most of what the sources say: fits, closing, may still appear, early, missing, persisting. Sides that differ, weak, brisk, obligatory and re-emerged responses, and what was seen before and is not now, are said on top of it. From all visits together it is inferred when each response came and went, and in which order.',
      ],
    },
    {
      title: 'What it is not',
      paragraphs: [
        'It is a reading of published ages, not a diagnosis and not a test result. A share is a share of what the sources say, not a percentile of infants. Where infants have been counted near an age, the count is shown beside the verdict, never mixed into it.',
        'Follow local pathways and licensed practice. Handling cautions stand beside each way of eliciting a response; most of them are common practice without a source.',
      ],
    },
    {
      title: 'Where the data stays',
      paragraphs: [
        'Everything runs in this browser, also without a network. Nothing leaves this machine unless you save a case file. The child that is shown first is invented.',
      ],
    },
    {
      title: 'Licences',
      paragraphs: [
        'Tidemark is under the MIT licence. Source Sans 3 and Source Serif 4 are under the SIL Open Font License. Ages and counts are facts carried over from the sources named with each; their texts and pictures are not copied.',
      ],
    },
  ],
  thresholds: 'Thresholds',
};

/** What is shown to a family, where there is nothing to show. */
export const shown = { none: 'There is no child here to show a page of. Add one first.' };
