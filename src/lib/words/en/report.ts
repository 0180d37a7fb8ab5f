/** English for the report: on paper, and as plain text for a record. */
import type { SourceCount } from '../../atlas/families.ts';
import type { Finding } from '../../case/finding.ts';
import type { JudgedFinding } from '../../judge/judge.ts';
import { sourcesWords } from './atlas.ts';
import { responses, states } from './case.ts';
import { meansWords } from './course.ts';

export const report = {
  title: 'Report',
  names: 'With names: label, dates, examiners and free texts',
  namesHelp:
    'Off, ages stand in the place of dates, and label, examiners and free texts are left out; a FHIR bundle needs dates, so it is saved with names only. To hand over a file without a name, use Hand over.',
  copy: 'Copy as plain text',
  copied: 'Copied.',
  notCopied: 'The browser refused to copy. Save the text instead.',
  saveText: 'Save as plain text',
  saved: (name: string): string => `Handed to the browser as ${name}.`,
  saveTable: 'Save the findings as CSV',
  print: 'Print',
  heading: (name: string): string => `${name}: developmental reflexes and reactions`,
  nameless: 'A child',
  invented: 'An invented child, for teaching.',
  question: 'Question to the team',
  fits: 'Fits this age',
  unjudged: 'Not judged',
  findings: 'Findings',
  note: 'Note',
  changed: 'What changed',
  changedNone: 'Nothing has changed, or nothing was seen before.',
  leftOpen: 'Not looked at again',
  whole: 'The visit as a whole',
  orders: 'Sequences',
  awaited: 'What is awaited',
  decisions: 'Decisions',
  judgedBy: (count: SourceCount): string => `Judged by ${sourcesWords(count)}.`,
  sources: (kind: string, names: readonly string[]): string => `${kind}: ${names.join(', ')}.`,
  named: 'Names are in it: keep it as you keep the record.',
  unnamed: 'Names are left out: label, dates, examiners, notes, question and decisions.',
  notMeasured: 'A count of sources is a count of what is taught, not of evidence.',
};

/** One finding in a line: `Moro, left: weak (quiet alert); fits, uneven`. */
export function findingLine(
  name: string,
  finding: Finding,
  found: JudgedFinding | undefined,
  withNote: boolean,
): string {
  const state = finding.state === 'not-recorded' ? '' : ` (${states[finding.state]})`;
  const means = found ? meansWords(found) : 'not judged: the reflex is not at hand';
  const note = withNote && finding.note ? ` Note: ${finding.note}` : '';
  return `${name}: ${responses[finding.response]}${state}; ${means}.${note}`;
}
