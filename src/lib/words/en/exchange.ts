/** English for what comes from other systems and goes to them: bundles, a clinic's own sheets, servers. */
import type { BundleProblem } from '../../exchange/fhir/open.ts';
import type { LeftOut } from '../../exchange/fhir/entry.ts';
import { problemWords } from './problems.ts';

const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** What is wrong with an entry of a bundle. */
function entryFault(problem: BundleProblem & { code: 'entry' }): string {
  switch (problem.fault) {
    case 'missing':
      return `${problem.field} is missing or not understood`;
    case 'no-gestation':
      return 'the gestation must be a whole number of days, in days (d) or weeks (wk)';
  }
}

/** Why a bundle is not read, with what to correct. */
export function bundleSentence(problem: BundleProblem): string {
  switch (problem.code) {
    case 'too-large':
      return `The file is about ${problem.megabytes} MB; a bundle is at most ${problem.limitMegabytes} MB. Take out one child at a time.`;
    case 'not-json':
      return 'The file is not JSON, so it cannot be a FHIR bundle. Save it again as JSON, not as XML.';
    case 'cut-short':
      return 'The file ends in the middle, as if a copy was cut short. Copy or save it again, whole.';
    case 'too-deep':
      return `The file is nested more than ${problem.limit} levels deep, as no bundle is. Save it again.`;
    case 'no-bundle':
      return problem.type
        ? `The file holds a single resource (${problem.type}), not a bundle. Save the child with all that belongs to it, as a Bundle.`
        : 'The file is not a FHIR bundle: "resourceType" must be "Bundle".';
    case 'too-many-entries':
      return `The bundle holds more than ${problem.limit} entries. Take out one child at a time.`;
    case 'no-patient':
      return 'The bundle holds no Patient, so nobody knows whose findings these are. Save it again with the Patient in it.';
    case 'entry':
      return `Entry ${problem.entry} (${problem.type}): ${entryFault(problem)}. Correct it where the bundle comes from.`;
    case 'record':
      return `${problem.child ? `${problem.child}: ` : ''}${problemWords(problem.problem)}`;
  }
}

const WHY: Readonly<Record<LeftOut['why'], string>> = {
  'not-used': 'not used here',
  'unknown-code': 'of a code that is not known here',
  'entered-in-error': 'entered in error or cancelled',
  'no-child': 'belonging to no child in the bundle',
};

/** What a bundle holds and is not read, in a sentence; undefined when all of it is. */
export function leftOutSentence(leftOut: readonly LeftOut[]): string | undefined {
  if (leftOut.length === 0) return undefined;
  const groups = new Map<string, number>();
  for (const { type, why } of leftOut) {
    const group = `${type}, ${WHY[why]}`;
    groups.set(group, (groups.get(group) ?? 0) + 1);
  }
  const parts = [...groups].slice(0, 6).map(([group, n]) => `${n} × ${group}`);
  const more = groups.size > 6 ? '; and others' : '';
  const are = leftOut.length === 1 ? 'entry is' : 'entries are';
  return `${leftOut.length} ${are} not read: ${parts.join('; ')}${more}.`;
}

export const incoming = {
  none: 'Nothing has been opened.',
  noneHelp: 'Open a FHIR bundle or a sheet of findings on the page of children.',
  noneWay: 'To the children',
  from: (name: string): string => `From ${name}. Nothing has changed yet.`,
  bundle: 'A FHIR bundle',
  child: (born: string, visits: number, findings: number): string =>
    `born ${born}, ${counted(visits, 'visit', 'visits')}, ${counted(findings, 'finding', 'findings')}`,
  how: 'Action',
  rest: (n: number): string =>
    `${n} more are not listed yet. Of these, new ones are added, and those already here are left out.`,
  standing: {
    new: 'not here yet',
    same: 'here already, and the same',
    changed: 'here already, and different',
  },
  ways: {
    add: 'Add as another child',
    replace: 'Replace the one here',
    leave: 'Leave it out',
  },
  /** Where a child is here already, and different. */
  waysChanged: { add: 'Keep both', replace: 'Use theirs', leave: 'Keep mine' },
  differs: (n: number): string => `Differences: ${counted(n, 'point', 'points')}`,
  point: 'Point',
  mine: 'Here',
  theirs: 'In the file',
  onlyOrder: 'Only the order of entries differs.',
  morePoints: (n: number): string => `and ${counted(n, 'more point', 'more points')}`,
  takeHelp: 'All is saved in one step, and Undo restores what was here.',
  take: 'Save',
  cancel: 'Cancel',
  nothing: 'Nothing is selected.',
  saveBundle: 'Save as FHIR R4 bundle',
  server: 'A FHIR server',
};
