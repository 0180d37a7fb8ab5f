/** Saving a case to a file of the reader's own. */
import type { Case } from '../case/case.ts';
import { caseText } from '../case/file.ts';

/** A file name made of a label, without anything a file system could refuse. */
export const fileName = (label: string): string =>
  `${
    label
      .normalize('NFC')
      .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
      .replaceAll(/^-+|-+$/g, '')
      .toLowerCase() || 'case'
  }.tidemark.json`;

export function saveCase(record: Case): void {
  const url = URL.createObjectURL(new Blob([caseText(record)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = fileName(record.child.label);
  link.click();
  // some browsers read the address only after the click has been dealt with
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
