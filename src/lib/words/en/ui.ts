/** English for the frame of the pages: navigation, the child's head, the chart's controls, a file that came in. */
import { formatGestation } from '../../age/gestation.ts';
import type { SourceCount } from '../../atlas/families.ts';
import type { Tier } from '../../atlas/types.ts';
import { sourcesWords, tiers, voicesWords } from './atlas.ts';

export const shell = {
  lock: 'Lock',
  name: 'Tidemark',
  skip: 'Skip to the page',
  loading: 'Opening…',
  title: (page: string): string => `${page} · Tidemark`,
};

export const child = {
  chart: 'Chart',
  born: (gestationalDays: number): string => `born at ${formatGestation(gestationalDays)}`,
  seen: (date: string): string => `seen ${date}`,
  invented: 'fictional',
  none: 'No child is open.',
  addVisit: 'Add a visit',
};

export const chartPage = {
  controls: 'Chart options',
  lanes: 'Lanes',
  laneChoices: { asking: 'flagged', tested: 'tested', all: 'all' },
  order: 'Sort by',
  orders: { group: 'group', appearing: 'age of onset', integrating: 'age of integration' },
  sources: 'Sources',
  milestones: 'Milestones',
  table: 'Table',
  reset: 'Whole axis',
};

/** Which sources are used for judging, in words. */
export const sourceWords = {
  byDefault: (n: SourceCount): string => `the ${n.sources} default sources, ${voicesWords(n)}`,
  all: (n: SourceCount): string => `all ${sourcesWords(n)}`,
  /** Both beside a label that says sources, where there is little room. */
  byDefaultShort: (n: SourceCount): string => `${n.sources} default, ${voicesWords(n)}`,
  allShort: (n: SourceCount): string => `all ${n.sources}, ${voicesWords(n)}`,
  kinds: (kinds: readonly Tier[]): string =>
    kinds.length === 0 ? 'none' : kinds.map((kind) => tiers[kind]).join(', '),
};

/** Said wherever the sources or limits in force differ from the default. */
export const inForce = {
  sources: (what: string): string => `Judged by: ${what}.`,
  limits: (pretermBelowDays: number, untilMonths: number): string =>
    `Corrected when born before ${formatGestation(pretermBelowDays)}, up to a chronological age of ${untilMonths} months.`,
  change: 'Change',
};

/** Of a file that was dropped on the page, or chosen. */
export const received = {
  refusedFile: 'The file was not opened; nothing has changed.',
  isHere: (label: string): string =>
    `${label} is already here, exactly as in this file. For a second one, duplicate it.`,
};

export const errors = {
  notFound: 'There is no such page.',
  notFoundHelp: 'The address may be mistyped.',
  broken: 'Something went wrong on this page.',
  brokenHelp: 'Your records are safe. Go back, or reload the page.',
  back: 'Back to the chart',
};

/** How a chart is exported, as far as it is said before that is opened; the rest is in takeaway.ts. */
export const takeAway = {
  open: 'Export figure',
  openNamed: (title: string): string => `Export figure: ${title}`,
  chart: 'Infant reflexes and reactions by age',
  child: (label: string, invented: boolean): string =>
    `${label}${invented ? ' (fictional)' : ''}: reflexes and reactions by age`,
};

export const openFile = 'Open a case file';
