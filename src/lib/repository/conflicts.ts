/** What two windows did to one child, and what an undo does to a child that has changed since. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Case } from '../case/case.ts';
import { caseText, rawOf } from '../case/raw.ts';
import { differences, mergeCases, type Point } from '../case/merge.ts';
import { parseRaw } from '../case/parse.ts';
import type { Problem } from '../case/problem.ts';
import { newRev, type Change } from '../store/rows.ts';
import type { Kept } from '../store/store.ts';
import { byId, settled } from '../platform/lists.ts';
import type { Both, Outcome } from './entryKind.ts';

/** Records by the id they are kept under. */
export const recordsOf = (shelf: readonly Kept[]): ReadonlyMap<string, Case> =>
  new Map(shelf.map(({ id, record }) => [id, record]));

/** A shelf with records put in place by id, added, or (undefined) taken out. */
export const settledRecords = (
  shelf: readonly Kept[],
  records: ReadonlyMap<string, Case | undefined>,
): Kept[] =>
  settled(
    shelf,
    new Map([...records].map(([id, record]) => [id, record && { id, record }] as const)),
  );

export const settledKept = (shelf: readonly Kept[], children: readonly Kept[]): Kept[] =>
  settled(shelf, byId(children));

/** A place for what is wrong with each stored record that cannot be read. */
export const problemsById = (): Map<string, readonly Problem[]> => new Map();

/** What was done to one child in two windows, each otherwise, for a person to decide. */
export interface ClashText {
  child: string;
  points: readonly Point[];
}

const clashRow = (clash: ClashText): Change => ({
  table: 'clashes',
  id: newRev(),
  base: undefined,
  text: JSON.stringify(clash),
});

/**
 * Brings two changes to a child together. Points on which they clash are as in the store, and kept
 * beside it as they are here; a child removed in one window and changed in the other stays.
 */
export function mergeKept({ id, base, mine, theirs }: Both<Case>, atlas: Atlas): Outcome<Case> {
  if (!mine || !theirs) return { value: mine ?? theirs };
  const [mineRaw, theirsRaw] = [rawOf(mine), rawOf(theirs)];
  const { raw, points } = base
    ? mergeCases(rawOf(base), mineRaw, theirsRaw)
    : { raw: theirsRaw, points: differences(mineRaw, theirsRaw) };
  const parsed = parseRaw(raw, atlas);
  // what fits together part by part may not as a whole, as a birth date moved past a new visit
  const asked = parsed.ok ? points : differences(mineRaw, theirsRaw);
  return {
    value: parsed.ok ? parsed.value : theirs,
    ...(asked.length > 0 ? { beside: [clashRow({ child: id, points: asked })] } : {}),
  };
}

const isSame = (a: Kept, b: Kept): boolean =>
  a.record === b.record || caseText(a.record) === caseText(b.record);

/** What a step of undo or redo leads to. */
interface Replayed {
  shelf: Kept[];
  /** Whether the step met something that was changed since, which stays as it is. */
  stays: boolean;
}

/**
 * A shelf after a step from one state to another, on which other windows may have changed things
 * since: the step goes over the children it is about, part by part, and leaves the rest. What was
 * changed since is another window's, and a step never takes it away.
 */
export function replayed(
  from: readonly Kept[],
  to: readonly Kept[],
  now: readonly Kept[],
  atlas: Atlas,
): Replayed {
  const [was, will, here] = [byId(from), byId(to), byId(now)];
  let stays = false;
  const over = (kept: Kept): Kept[] => {
    const [before, after] = [was.get(kept.id), will.get(kept.id)];
    if (before === after) return [kept];
    if (before && isSame(before, kept)) return after ? [after] : [];
    const { raw, points } =
      before && after
        ? mergeCases(rawOf(before.record), rawOf(kept.record), rawOf(after.record), 'mine')
        : { raw: undefined, points: [] };
    const parsed = raw && parseRaw(raw, atlas);
    if (!parsed?.ok || points.length > 0) stays = true;
    return [parsed?.ok ? { id: kept.id, record: parsed.value } : kept];
  };
  const shelf = now.flatMap(over);
  const gone = to.filter(({ id }) => !here.has(id));
  if (gone.some((kept) => was.has(kept.id) && was.get(kept.id) !== kept)) stays = true;
  const back = gone.filter(({ id }) => !was.has(id));
  // in the order of the state that is gone to, what has come since behind it
  const order = new Map(to.map(({ id }, index) => [id, index]));
  const place = ({ id }: Kept): number => order.get(id) ?? to.length;
  return { shelf: [...shelf, ...back].sort((a, b) => place(a) - place(b)), stays };
}
