/** English for the search that goes anywhere; fetched when it is first used. */
import type { PlaceName } from './places.ts';

export const finder = {
  none: 'Nothing is found by that. A child is found by its name or code, a reflex by name or synonym.',
  results: 'Found',
  kinds: { child: 'Child', reflex: 'Reflex', page: 'Page' },
  keys: 'Up and down to choose, Enter to go there, Escape to leave.',
  of: (page: string, child: string): string => `${page} of ${child}`,
};

/** Other words by which a page is looked for. */
export const alsoCalled: Readonly<Partial<Record<PlaceName, string>>> = {
  everyChild: 'list patients infants',
  newChild: 'add child',
  sheet: 'blank sheet print form',
  everyReflex: 'atlas list reactions',
  plainChart: 'timeline ages',
  order: 'order developmental sequence',
  disagreements: 'where sources disagree',
  compare: 'look-alikes side by side',
  sources: 'references literature evidence',
  reading: 'method rules thresholds constants',
  own: 'textbook table own reflex',
  talks: 'lecture slides presentation',
  quiz: 'questions self-test exam paper',
  axis: 'empty exercise',
  preferences: 'settings sources corrected age dark text size',
  keeping: 'storage backups bin restore',
  lock: 'passphrase encrypt security',
  about: 'version licence download',
  chart: 'timeline findings verdicts',
  visits: 'record examination',
  plan: 'next visit what to test sheet',
  progress: 'course changes fit',
  conference: 'team meeting decisions agreement',
  file: 'case file copy',
  report: 'print csv fhir bundle export',
  family: 'parents plain words spanish',
  details: 'birth date gestation due date dating edit',
};
