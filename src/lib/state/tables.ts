/** Opening and saving the table of a source. */
import { OWN_PREFIX } from '../atlas/ownId.ts';
import type { Row } from '../atlas/ownTable.ts';
import { newId } from './ids.ts';

export const BLANK_ROW: Row = { reflex: '', appears: '', integrates: '', note: '' };

export const newOwnId = (): string => OWN_PREFIX + newId();

/** A file's name without its ending, for naming what it holds. */
export const nameOfFile = (name: string): string => name.replace(/\.[^.]+$/, '').trim();

/** A name as a file name that no file system refuses. */
const fileName = (name: string): string =>
  `${
    name
      .normalize('NFC')
      .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
      .replaceAll(/^-+|-+$/g, '')
      .toLowerCase() || 'source'
  }.csv`;

/** Saves rows as a CSV file, which `readCsv` opens again. */
export async function saveTable(name: string, rows: readonly Row[]): Promise<void> {
  const { writeCsv } = await import('../store/table.ts');
  const url = URL.createObjectURL(new Blob([writeCsv(rows)], { type: 'text/csv;charset=utf-8' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = fileName(name);
  link.click();
  URL.revokeObjectURL(url);
}

export async function saveTemplate(): Promise<void> {
  const { TEMPLATE } = await import('../store/table.ts');
  await saveTable('tidemark source', TEMPLATE);
}
