/** Words that something else has overtaken: brought together with it, as two changes in two windows are. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Case } from '../case/case.ts';
import { parseRaw } from '../case/parse.ts';
import type { Parsed } from '../case/problem.ts';
import type { RawCase } from '../case/shape.ts';
import type { Change } from '../store/rows.ts';
import type { Kept } from '../store/store.ts';
import { mergeKept } from './conflicts.ts';

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
