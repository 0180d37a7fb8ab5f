/** English for the report: on paper, and as plain text for a record. */
import type { SourceCount } from '../../atlas/families.ts';
import type { Finding } from '../../case/finding.ts';
import type { JudgedFinding } from '../../judge/judge.ts';
import type { Attention } from '../../judge/rules/rule.ts';
import { sourcesWords } from './atlas.ts';
import { responses, states } from './case.ts';
import { meansWords } from './course.ts';
import { attentions } from './judge.ts';

export const report = {
  title: 'Report',
  names: 'With names: name or code, dates, examiners and free text',
  namesHelp:
    'If off, ages replace dates, and name or code, examiners and free text are left out. A FHIR bundle needs dates, so it is saved only with names. To pass on a file without a name, use Share file.',
  copy: 'Copy as plain text',
  copied: 'Copied.',
  notCopied: 'The browser refused to copy. Save the text instead.',
  saveText: 'Save as plain text',
  saved: (name: string): string => `Passed to the browser as ${name}.`,
  saveTable: 'Save the findings as CSV',
  print: 'Print',
  heading: (name: string): string => `${name}: developmental reflexes and reactions`,
  nameless: 'A child',
  invented: 'A fictional child, for teaching.',
  question: 'Question to the team',
  fits: 'Not flagged',
  unjudged: 'Not judged',
  findings: 'Findings',
  note: 'Note',
  changed: 'Changes since the last visit',
  changedNone: 'Nothing has changed, or nothing was tested before.',
  leftOpen: 'Not tested again',
  whole: 'The visit as a whole',
  orders: 'Sequences',
  awaited: 'Expected changes',
  decisions: 'Decisions',
  judgedBy: (count: SourceCount): string => `Judged by ${sourcesWords(count)}.`,
  sources: (kind: string, names: readonly string[]): string => `${kind}: ${names.join(', ')}.`,
  named: 'Contains names: store it as you store the record.',
  unnamed: 'Left out: name or code, dates, examiners, notes, question and decisions.',
  notMeasured: 'A count of sources shows what is taught, not how strong the evidence is.',
};

/** A grade said in full, where there is room for it. */
export const grades: Readonly<Record<Attention, string>> = {
  ...attentions,
  today: 'see a doctor today',
  discuss: 'discuss with the team',
};

/** One finding in a line: `Moro, left: weak (quiet alert); as expected, asymmetric`. */
export function findingLine(
  name: string,
  finding: Finding,
  found: JudgedFinding | undefined,
  withNote: boolean,
): string {
  const state = finding.state === 'not-recorded' ? '' : ` (${states[finding.state]})`;
  const means = found ? meansWords(found) : 'not judged: the reflex is not in the atlas';
  const note = withNote && finding.note ? ` Note: ${finding.note}` : '';
  return `${name}: ${responses[finding.response]}${state}; ${means}.${note}`;
}
