/** An unfinished visit in the tab's own storage, so that a reload does not lose what was entered. */
import * as v from 'valibot';
import { visitShape } from '../case/shape.ts';
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import type { LockCodec } from '../store/lockCodec.ts';
import type { Draft } from './drafts.svelte.ts';

const KEY = 'tidemark-draft';

const shape = v.object({
  childId: v.string(),
  number: v.optional(v.number()),
  visit: visitShape,
});

type Tab = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

function draftOf(text: string | null | undefined): Draft | undefined {
  try {
    const read = v.safeParse(shape, JSON.parse(text ?? 'null'));
    return read.success ? { number: undefined, ...read.output } : undefined;
  } catch {
    return undefined;
  }
}

/** What was left unfinished; undefined when nothing was, or it is not understood. */
export const readDraft = (tab: Tab | undefined): Draft | undefined => draftOf(tab?.getItem(KEY));

export function writeDraft(tab: Tab | undefined, draft: Draft | undefined): void {
  try {
    if (draft) tab?.setItem(KEY, JSON.stringify(draft));
    else tab?.removeItem(KEY);
  } catch {
    // a full or denied storage only means that a reload loses the draft
  }
}

/** The tab's storage is written to the disk too: under a lock the draft is sealed like a row. */
const PLACE = { table: 'small', id: 'draft' } as const;
let latest = 0;

export async function keepSealed(
  tab: Tab | undefined,
  draft: Draft | undefined,
  codec: LockCodec,
): Promise<void> {
  const turn = (latest += 1);
  if (!draft) {
    writeDraft(tab, undefined);
    return;
  }
  const sealed = await codec.encode(JSON.stringify(draft), PLACE);
  if (turn !== latest || !(sealed instanceof Uint8Array)) return; // a later one is on its way
  try {
    tab?.setItem(KEY, bytesToHex(sealed));
  } catch {
    // as above
  }
}

export async function readSealed(
  tab: Tab | undefined,
  codec: LockCodec,
): Promise<Draft | undefined> {
  const text = tab?.getItem(KEY) ?? '';
  try {
    return draftOf(await codec.decode(hexToBytes(text), PLACE));
  } catch {
    return draftOf(text); // left by a time before the lock
  }
}
