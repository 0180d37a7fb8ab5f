/** Saving to a file of the reader's own. */
import type { Case } from '../case/case.ts';
import { caseText } from '../case/raw.ts';

/** A label without anything a file system could refuse. */
const plainName = (label: string): string =>
  label
    .normalize('NFC')
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '')
    .toLowerCase() || 'case';

/** A file name made of a label and an ending, such as `csv`. */
export const fileName = (label: string, ending = 'tidemark.json'): string =>
  `${plainName(label)}.${ending}`;

/** Hands a file to the browser to be saved. */
export function saveBlob(name: string, blob: Blob): void {
  const url = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // some browsers read the address only after the click has been dealt with
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

export const saveText = (name: string, text: string, type: string): void =>
  saveBlob(name, new Blob([text], { type }));

export const saveCase = (record: Case): void =>
  saveText(fileName(record.child.label), caseText(record), 'application/json');
