/** Mappings of a clinic's sheets, kept by name in the browser's small storage. No child's data is in them. */
import * as v from 'valibot';
import { FIELDS, type Columns, type SheetField } from '../store/sheet/columns.ts';
import { DATE_ORDERS } from '../store/sheet/dates.ts';
import type { Mapping } from '../store/sheet/plan.ts';
import { SHEETS } from './names.ts';
import { Small, type Shelf } from './small.svelte.ts';

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

export type Mappings = Small<readonly KeptMapping[], 'kept' | 'forgotten' | 'brought-back'>;

/** The mappings that are kept; what cannot be read is no mapping, and the next one that is kept replaces it. */
export const newMappings = (shelf: Shelf | undefined): Mappings =>
  new Small<readonly KeptMapping[], 'kept' | 'forgotten' | 'brought-back'>(shelf, {
    key: SHEETS,
    blank: [],
    read: (raw) => {
      const read = v.safeParse(shape, raw);
      return read.success ? read.output.slice(0, MAX_KEPT) : undefined;
    },
    stepped: (_now, _from, to) => to,
  });

/** Mappings with one under its name, in place of one of that name; the oldest makes room. */
export function withMapping(
  all: readonly KeptMapping[],
  name: string,
  mapping: Mapping,
  header: readonly string[],
): KeptMapping[] {
  const columns = Object.fromEntries(
    Object.entries(mapping.columns).map(([field, column]) => [field, header[column] ?? '']),
  );
  const { values, order } = mapping;
  return [{ name, columns, values, order }, ...withoutMapping(all, name)].slice(0, MAX_KEPT);
}

export const withoutMapping = (all: readonly KeptMapping[], name: string): KeptMapping[] =>
  all.filter((one) => one.name !== name);

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
