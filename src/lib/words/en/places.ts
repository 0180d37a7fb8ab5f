/** English for the places of the app, the way between them, and what the first view says of itself. */

export const nav = {
  pages: 'Pages',
  child: 'This child',
  below: (section: string): string => `${section}: pages`,
  where: (place: string): string => `${place}: other pages`,
  find: 'Find a child, reflex or page',
  print: 'Print',
  details: 'Child details',
  unsaved: (place: string): string => `${place}: not saved`,
  fictional: 'fictional',
  visit: 'visit',
  newVisit: 'new visit',
  noVisit: 'no visit yet',
};

/** What the app is for, in one line over its first sight. */
export const purpose =
  'Published ages on one axis, one child’s findings in ink: what fits the age, what does not, and by which sources.';

/** The name of each place, short enough for a row of links. */
export const names = {
  children: 'Children',
  everyChild: 'All children',
  newChild: 'New child',
  sheet: 'Plan for an age',
  reflexes: 'Reflexes',
  everyReflex: 'All reflexes',
  plainChart: 'Chart',
  order: 'Sequences',
  disagreements: 'Disagreements',
  compare: 'Compare',
  sources: 'Sources',
  reading: 'How it is read',
  own: 'Your own',
  teach: 'Teach',
  talks: 'Talks',
  quiz: 'Practice',
  axis: 'Timeline exercise',
  settings: 'Settings',
  preferences: 'Preferences',
  keeping: 'Storage and backup',
  lock: 'Lock',
  about: 'About',
  chart: 'Chart',
  visits: 'Visits',
  plan: 'Plan',
  progress: 'Progress',
  conference: 'Conference',
  share: 'Share',
  file: 'Case file',
  report: 'Report',
  family: 'For the family',
  details: 'Child details',
};

export type PlaceName = keyof typeof names;
