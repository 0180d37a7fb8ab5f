/** Mappings of a clinic's sheets, kept by name in the browser's small storage. No child's data is in them. */
import * as v from 'valibot';
import { FIELDS, type Columns, type SheetField } from '../store/sheet/columns.ts';
import { DATE_ORDERS } from '../store/sheet/dates.ts';
import type { Mapping } from '../store/sheet/plan.ts';
import type { Shelf } from './settings.svelte.ts';

const KEY = 'tidemark-sheets';
const MAX_KEPT = 20;

const words = v.record(v.string(), v.string());
const shape = v.array(
  v.object({
    name: v.string(),
    /** By the names of the columns, which may stand in another order next time. */
    columns: v.record(v.string(), v.string()),
    values: v.object({ reflex: words, side: words, response: words, state: words }),
    order: v.picklist(DATE_ORDERS),
  }),
);

export type KeptMapping = v.InferOutput<typeof shape>[number];

export function keptMappings(shelf: Shelf | undefined): KeptMapping[] {
  try {
    const read = v.safeParse(shape, JSON.parse(shelf?.getItem(KEY) ?? '[]'));
    return read.success ? read.output : [];
  } catch {
    return []; // what cannot be read is no mapping, and the next one that is kept replaces it
  }
}

/** Keeps a mapping under its name, in place of one of that name; false where the browser refuses. */
export function keepMapping(
  shelf: Shelf | undefined,
  name: string,
  mapping: Mapping,
  header: readonly string[],
): boolean {
  const columns = Object.fromEntries(
    Object.entries(mapping.columns).map(([field, column]) => [field, header[column] ?? '']),
  );
  const others = keptMappings(shelf).filter((one) => one.name !== name);
  const { values, order } = mapping;
  const all = [{ name, columns, values, order }, ...others].slice(0, MAX_KEPT);
  return write(shelf, all);
}

export const forgetMapping = (shelf: Shelf | undefined, name: string): boolean =>
  write(
    shelf,
    keptMappings(shelf).filter((one) => one.name !== name),
  );

function write(shelf: Shelf | undefined, all: unknown): boolean {
  try {
    shelf?.setItem(KEY, JSON.stringify(all));
    return shelf !== undefined;
  } catch {
    return false;
  }
}

/** The columns of a kept mapping in a sheet; undefined when one of them is not there. */
export function columnsFor(kept: KeptMapping, header: readonly string[]): Columns | undefined {
  const found: Partial<Record<SheetField, number>> = {};
  for (const field of FIELDS) {
    const name = kept.columns[field];
    if (name === undefined) continue;
    const column = header.indexOf(name);
    if (column < 0) return undefined;
    found[field] = column;
  }
  return found;
}
