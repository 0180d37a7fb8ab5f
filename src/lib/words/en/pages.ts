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
    `The atlas holds ${n.sources} sources. ${n.dating.sources} of them (${voicesWords(n.dating)}) give an age window of at least one reflex, ${n.claims} claims in all; ${n.judging.sources} of these (${voicesWords(n.judging)}) are used for judging unless others are chosen. ${n.counting} hold ${n.counts} counts of infants. The others give context, evidence or method.`,
  voices: 'Sources that share ages',
  counting:
    'Tables copy one another, so the number of sources shows what is taught, not how good the evidence is. The kind of each source is always shown.',
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
  sources: 'Sources used for judging',
  defaultSources: (n: SourceCount): string => `The default (${sourcesWords(n)})`,
  defaultHelp:
    'Studies in infants, reviews, textbooks and health bodies. Course notes, encyclopaedias and common practice are used only for a reflex on which fewer than three independent voices of those give an age.',
  all: (n: SourceCount): string => `All (${sourcesWords(n)})`,
  kinds: 'By kind',
  one: 'One source',
  oneLabel: 'Which source',
  noKinds: 'No kind is chosen, so nothing is judged.',
  limits: 'When the corrected age counts',
  preterm: 'Born before',
  pretermHelp: 'Weeks and days of gestation. Default: 37w0d.',
  until: 'Up to a chronological age of, months',
  untilHelp: 'Whole months. Default: 24.',
  badUntil: 'Write whole months from 0 to 60, such as 24.',
  badPreterm: 'Write weeks and days between 22w0d and 44w6d, such as 37w0d.',
  theme: 'Colours',
  themes: { system: 'match the system', light: 'light', dark: 'dark' },
  text: 'Text size',
  custom: 'Reset to default',
  undo: 'Undo',
  redo: 'Redo',
};

export const about = {
  title: 'About Tidemark',
  lead: 'Tidemark places infant reflexes and postural reactions on one age axis, before and after term, lays over it what was seen in one child, and says, with reasons and sources, what is as expected for the age, what is not, and what to test next.',
  sections: [
    {
      title: 'Computation',
      paragraphs: [
        'Ages are counted in whole days of the calendar from the birth date and the gestation or due date. In a child born early the corrected age counts, up to a limit that is a setting; the screen says which age was used and why.',
        'A due date is not exact. Each way of dating has a spread, and every verdict is computed over that spread. Where it depends on the due date, it says so.',
        'Each source is read as a window in which a response appears and one in which it integrates. Where a source gives no age it is silent, and silence is not agreement. The height of a ridge is the mean expectation of the sources that give an age.',
        'A verdict is the phase in which the sources, for the most part, place a finding: as expected; expected to fade; may still appear; early; expected, not elicited; persisting. Flags are added for sides that differ, for weak, brisk, obligatory and re-emerged responses, and for responses seen before and not now. From all visits together it is inferred when each response appeared and integrated, and in which order.',
      ],
    },
    {
      title: 'Limits of use',
      paragraphs: [
        'It is a reading of published ages, not a diagnosis and not a test result. A share is a share of what the sources say, not a percentile of infants. Where infants have been counted near an age, the count is shown beside the verdict, never mixed into it.',
        'Follow local pathways and licensed practice. Handling cautions are given with each way of eliciting a response. Most of them are common practice without a source.',
      ],
    },
    {
      title: 'Where the data is stored',
      paragraphs: [
        'Everything runs in this browser, also without a network. Nothing leaves this machine unless you save a case file. The child shown first is fictional.',
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
