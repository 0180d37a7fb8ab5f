/** Changes that something else has overtaken: brought together with it, as two changes in two windows are. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Case } from '../case/case.ts';
import { caseText, parseCaseText } from '../case/file.ts';
import { parseRaw } from '../case/parse.ts';
import type { Parsed } from '../case/problem.ts';
import type { RawCase } from '../case/shape.ts';
import type { Change } from '../store/rows.ts';
import type { Kept } from '../store/store.ts';
import { mergeKept, settledKept } from './clash.ts';
import type { Unwritten } from './unwritten.ts';

/** What comes of it: the children as they stand then, and the rows that ask which is right. */
export interface Overtaken {
  shelf: readonly Kept[];
  beside: readonly Change[];
}

/** What a page that has gone could not write any more, over what has come since. */
export function caughtUp(
  entries: readonly Unwritten[],
  before: readonly Kept[],
  atlas: Atlas,
): Overtaken {
  let shelf = before;
  const asked: Change[] = [];
  for (const { id, base, text } of entries) {
    const mine = parseCaseText(text, atlas);
    const was = base === undefined ? undefined : parseCaseText(base, atlas);
    if (!mine.ok) continue;
    const theirs = shelf.find((kept) => kept.id === id)?.record;
    if (theirs && caseText(theirs) === text) continue;
    const both = { id, base: was?.ok ? was.value : undefined, mine: mine.value, theirs };
    const { value, beside = [] } = mergeKept(both, atlas);
    shelf = settledKept(shelf, value ? [{ id, record: value }] : []);
    asked.push(...beside);
  }
  return { shelf, beside: asked };
}

/**
 * Words that were typed over an earlier reading, while something else came to stand there.
 * @param before the record as it was when the typing began
 * @param after the record with what was typed
 */
export function typedOver(
  { id, record }: Kept,
  before: (record: Case) => RawCase,
  after: (record: Case) => RawCase,
  atlas: Atlas,
): { parsed: Parsed<Case>; beside: readonly Change[] } {
  const [base, mine] = [parseRaw(before(record), atlas), parseRaw(after(record), atlas)];
  if (!base.ok || !mine.ok) return { parsed: mine, beside: [] };
  const { beside = [] } = mergeKept(
    { id, base: base.value, mine: mine.value, theirs: record },
    atlas,
  );
  return { parsed: mine, beside };
}
