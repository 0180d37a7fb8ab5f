/** The store as tests look into it: children read through the parser. */
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { parseCaseText } from '../../src/lib/case/file.ts';
import { caseText } from '../../src/lib/case/raw.ts';
import { memoryRows } from '../../src/lib/store/memory.ts';
import { ANY, type Rows } from '../../src/lib/store/rows.ts';
import type { Kept } from '../../src/lib/store/store.ts';

export const seedOf = (kept: readonly Kept[]): { id: string; text: string }[] =>
  kept.map(({ id, record }) => ({ id, text: caseText(record) }));

export const memoryWith = (kept: readonly Kept[] = []): Rows => memoryRows(seedOf(kept));

/** Every child in the store that can be read. */
export async function keptIn(rows: Rows): Promise<Kept[]> {
  return (await rows.read('cases')).flatMap(({ id, text }) => {
    const parsed = parseCaseText(text, ATLAS);
    return parsed.ok ? [{ id, record: parsed.value }] : [];
  });
}

/** Writes a child over whatever is there, as another window would. */
export async function putKept(rows: Rows, { id, record }: Kept): Promise<void> {
  await rows.write([{ table: 'cases', id, base: ANY, text: caseText(record) }]);
}
