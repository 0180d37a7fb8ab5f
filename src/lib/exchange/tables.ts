/** Opening and saving the table of a source. */
import { OWN_PREFIX } from '../atlas/ownId.ts';
import type { Row } from '../atlas/ownTable.ts';
import { fileName, saveText } from '../platform/download.ts';
import { newId } from '../platform/ids.ts';

export const BLANK_ROW: Row = { reflex: '', appears: '', integrates: '', note: '' };

export const newOwnId = (): string => OWN_PREFIX + newId();

/** A file's name without its ending, for naming what it holds. */
export const nameOfFile = (name: string): string => name.replace(/\.[^.]+$/, '').trim();

/** Saves rows as a CSV file, which `readCsv` opens again. */
export async function saveTable(name: string, rows: readonly Row[]): Promise<void> {
  const { writeCsv } = await import('../store/table.ts');
  // a name of nothing but signs leaves no file name
  const label = /[\p{L}\p{N}]/u.test(name) ? name : 'source';
  saveText(fileName(label, 'csv'), writeCsv(rows), 'text/csv;charset=utf-8');
}

export async function saveTemplate(): Promise<void> {
  const { TEMPLATE } = await import('../store/table.ts');
  await saveTable('tidemark source', TEMPLATE);
}
