/** Mappings of a clinic's sheets, kept by name in the browser's small storage. No child's data is in them. */
import * as v from 'valibot';
import type { Answers } from './sheet/answers.ts';
import { FIELDS, type SheetField } from './sheet/columns.ts';
import { DATE_ORDERS } from './sheet/dates.ts';
import type { Mapping } from './sheet/lines.ts';
import { SHEET_SIDES } from './sheet/values.ts';
import { SHEETS } from '../platform/storageKeys.ts';
import { Small, type Shelf } from '../platform/persisted.svelte.ts';

const MAX_KEPT = 20;

const words = v.record(v.string(), v.string());
const shape = v.array(
  v.object({
    name: v.string(),
    /** By the names of the columns, which may stand in another order next time. */
    columns: v.record(v.string(), v.string()),
    /** The columns that answer, where a row is a visit. What was kept before there were any has none. */
    answers: v.optional(
      v.array(
        v.object({
          name: v.string(),
          /** Which of the columns that share the name, from 0. */
          nth: v.number(),
          reflex: v.string(),
          side: v.optional(v.picklist(SHEET_SIDES)),
        }),
      ),
    ),
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
  const answers = mapping.answers && {
    answers: mapping.answers.map(({ column, reflex, side }) => ({
      name: header[column] ?? '',
      nth: header.slice(0, column).filter((one) => one === header[column]).length,
      reflex,
      ...(side && { side }),
    })),
  };
  return [{ name, columns, ...answers, values, order }, ...withoutMapping(all, name)].slice(
    0,
    MAX_KEPT,
  );
}

export const withoutMapping = (all: readonly KeptMapping[], name: string): KeptMapping[] =>
  all.filter((one) => one.name !== name);

/** The number of the column of a name, or of a later one that shares it; undefined when there is none. */
function columnOf(header: readonly string[], name: string, nth = 0): number | undefined {
  return header.flatMap((one, column) => (one === name ? [column] : []))[nth];
}

/** The columns of a kept mapping in a sheet; undefined when one of them is not there. */
export function placesFor(
  kept: KeptMapping,
  header: readonly string[],
): Pick<Mapping, 'columns' | 'answers'> | undefined {
  const found: Partial<Record<SheetField, number>> = {};
  for (const field of FIELDS) {
    const name = kept.columns[field];
    if (name === undefined) continue;
    const column = columnOf(header, name);
    if (column === undefined) return undefined;
    found[field] = column;
  }
  if (!kept.answers) return { columns: found, answers: undefined };
  const answers: Answers[] = [];
  for (const { name, nth, reflex, side } of kept.answers) {
    const column = columnOf(header, name, nth);
    if (column === undefined) return undefined;
    answers.push({ column, reflex, side });
  }
  return { columns: found, answers };
}
