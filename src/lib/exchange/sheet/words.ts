/** The words that a sheet uses, kind by kind, wherever its shape has them stand. */
import type { Mapping } from './lines.ts';
import type { Sheet } from './read.ts';
import { guessValue, type FindReflex, type Valued, type Values } from './values.ts';

/** Where things stand, before anything is said of the words. */
type Places = Pick<Mapping, 'columns' | 'answers'>;

/** The columns in which the words of a kind stand. */
function columnsOf(kind: Valued, { columns, answers }: Places): number[] {
  if (answers && kind === 'reflex') return [];
  if (answers && kind === 'response') return answers.map(({ column }) => column);
  // the names of the columns have said it all
  if (kind === 'side' && answers?.every(({ side }) => side !== undefined)) return [];
  const column = columns[kind];
  return column === undefined ? [] : [column];
}

/** The different words in some columns, in the order in which they are met. An empty cell is none. */
export function wordsIn(sheet: Sheet, ...columns: readonly (number | undefined)[]): string[] {
  const words = new Set<string>();
  for (const { cells } of sheet.rows)
    for (const column of columns) {
      const word = column === undefined ? '' : (cells[column] ?? '');
      if (word !== '') words.add(word);
    }
  return [...words];
}

/** The first words of a column, by which it is recognised. */
export function exampleOf({ rows }: Sheet, column: number | undefined): string {
  const words = new Set<string>();
  for (const { cells } of rows) {
    if (column === undefined || words.size === 3) break;
    words.add(cells[column] ?? '');
    words.delete('');
  }
  return [...words].join(', ').slice(0, 60);
}

/** The different words of a kind. */
export const wordsOf = (sheet: Sheet, kind: Valued, places: Places): string[] =>
  wordsIn(sheet, ...columnsOf(kind, places));

/** Every word of a sheet with what it is read as, where that is known. */
export function guessValues(sheet: Sheet, places: Places, findReflex: FindReflex): Values {
  const of = (kind: Valued): Record<string, string> =>
    Object.fromEntries(
      wordsOf(sheet, kind, places).flatMap((word) => {
        const code = guessValue(kind, word, findReflex);
        return code === undefined ? [] : [[word, code]];
      }),
    );
  return { reflex: of('reflex'), side: of('side'), response: of('response'), state: of('state') };
}
