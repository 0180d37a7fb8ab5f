/** An unfinished visit in the tab's own storage, so that a reload does not lose what was entered. */
import * as v from 'valibot';
import { visitShape } from '../case/shape.ts';
import type { Draft } from './desk.svelte.ts';

const KEY = 'tidemark-draft';

const shape = v.object({
  childId: v.string(),
  number: v.optional(v.number()),
  visit: visitShape,
});

type Tab = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** What was left unfinished; undefined when nothing was, or it is not understood. */
export function readDraft(tab: Tab | undefined): Draft | undefined {
  try {
    const read = v.safeParse(shape, JSON.parse(tab?.getItem(KEY) ?? 'null'));
    return read.success ? { number: undefined, ...read.output } : undefined;
  } catch {
    return undefined;
  }
}

export function writeDraft(tab: Tab | undefined, draft: Draft | undefined): void {
  try {
    if (draft) tab?.setItem(KEY, JSON.stringify(draft));
    else tab?.removeItem(KEY);
  } catch {
    // a full or denied storage only means that a reload loses the draft
  }
}
