/** What a page that has gone could not write any more, over what has come since. */
import type { Change } from '../store/rows.ts';
import type { Shape } from './entryKind.ts';
import type { Unwritten } from './unwritten.ts';

interface CaughtUp<T> {
  /** What is to be shown by id; undefined: it goes. */
  settled: ReadonlyMap<string, T | undefined>;
  /** Rows that ask which is right. */
  asked: readonly Change[];
}

export function caughtUp<T extends object>(
  entries: readonly Unwritten[],
  { read, write, merge, shown }: Pick<Shape<T>, 'read' | 'write' | 'merge' | 'shown'>,
): CaughtUp<T> {
  const now = new Map<string, T | undefined>(shown());
  const settled = new Map<string, T | undefined>();
  const asked: Change[] = [];
  for (const { id, base, text } of entries) {
    const mine = text === undefined ? undefined : read(id, text);
    if (text !== undefined && mine === undefined) continue;
    const was = base === undefined ? undefined : read(id, base);
    const theirs = now.get(id);
    const here = theirs && write(theirs);
    if (here === text) continue; // it was written in time
    const isAsItWas = here === (was && write(was));
    const outcome = isAsItWas ? { value: mine } : merge({ id, base: was, mine, theirs });
    const { value, beside = [], also } = outcome;
    for (const [of, one] of [
      [id, value] as const,
      ...(also ? [[also.id, also.value] as const] : []),
    ]) {
      now.set(of, one);
      settled.set(of, one);
    }
    asked.push(...beside);
  }
  return { settled, asked };
}
