/** What is typed in and not kept yet, in the tab's own storage, so that a reload does not lose it. */
import * as v from 'valibot';
import { visitFields } from '../case/shape.ts';
import type { LockCodec } from '../store/lockCodec.ts';
import type { DecisionDraft, Draft, FormDraft } from './visitDrafts.svelte.ts';
import { newPartId } from '../platform/ids.ts';

type Tab = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Needed under a lock alone, so the first view does without it. */
const hex = () => import('@noble/hashes/utils.js');

/** One place in the tab's storage. */
export class TabPlace<T> {
  readonly #id: string;
  readonly #understood: (value: unknown) => T | undefined;
  #latest = 0;
  #sealing: Promise<void> = Promise.resolve();

  constructor(id: string, understood: (value: unknown) => T | undefined) {
    this.#id = id;
    this.#understood = understood;
  }

  get key(): string {
    return `tidemark-${this.#id}`;
  }

  #of(text: string | null | undefined): T | undefined {
    try {
      return this.#understood(JSON.parse(text ?? 'null'));
    } catch {
      return undefined;
    }
  }

  /** What was left unfinished; undefined when nothing was, or it is not understood. */
  read(tab: Tab | undefined): T | undefined {
    return this.#of(tab?.getItem(this.key));
  }

  write(tab: Tab | undefined, value: T | undefined): void {
    this.#put(tab, value === undefined ? undefined : JSON.stringify(value));
  }

  /** The tab's storage is written to the disk too: under a lock it is sealed like a row. */
  async seal(tab: Tab | undefined, value: T | undefined, codec: LockCodec): Promise<void> {
    this.#sealing = this.#seal(tab, value, codec);
    // one that began later takes the place of this one: it is done when that is
    for (let last; last !== this.#sealing;) {
      last = this.#sealing;
      await last;
    }
  }

  async #seal(tab: Tab | undefined, value: T | undefined, codec: LockCodec): Promise<void> {
    const turn = (this.#latest += 1);
    if (value === undefined) {
      this.#put(tab, undefined);
      return;
    }
    const [sealed, { bytesToHex }] = await Promise.all([
      codec.encode(JSON.stringify(value), { table: 'small', id: this.#id }),
      hex(),
    ]);
    if (turn !== this.#latest || !(sealed instanceof Uint8Array)) return; // a later one is on its way
    this.#put(tab, bytesToHex(sealed));
  }

  async unseal(tab: Tab | undefined, codec: LockCodec): Promise<T | undefined> {
    const text = tab?.getItem(this.key) ?? '';
    const { hexToBytes } = await hex();
    try {
      const bytes = hexToBytes(text);
      return this.#of(await codec.decode(bytes, { table: 'small', id: this.#id }));
    } catch {
      return this.#of(text); // left by a time before the lock
    }
  }

  #put(tab: Tab | undefined, text: string | undefined): void {
    try {
      if (text === undefined) tab?.removeItem(this.key);
      else tab?.setItem(this.key, text);
    } catch {
      // a full or denied storage only means that a reload loses what is typed
    }
  }
}

const draftShape = v.object({
  childId: v.string(),
  of: v.optional(v.string()),
  visit: v.object({ id: v.optional(v.string(), newPartId), ...visitFields }),
});

/** An unfinished visit. One that was left before visits had ids is taken for a new one. */
export const visitPlace = new TabPlace<Draft>('draft', (value) => {
  const read = v.safeParse(draftShape, value);
  return read.success ? { of: undefined, ...read.output } : undefined;
});

const formsShape = v.array(
  v.object({
    childId: v.optional(v.string()),
    by: v.picklist(['gestation', 'due']),
    label: v.string(),
    born: v.string(),
    gestation: v.string(),
    due: v.string(),
    dating: v.string(),
  }),
);

/** Details of children that are typed in and not saved. */
export const formsPlace = new TabPlace<readonly FormDraft[]>('forms', (value) => {
  const read = v.safeParse(formsShape, value);
  return read.success ? read.output.map((one) => ({ childId: undefined, ...one })) : undefined;
});

const decisionsShape = v.array(
  v.object({ childId: v.string(), text: v.string(), who: v.string(), by: v.string() }),
);

/** Decisions that are typed in and not added. */
export const decisionsPlace = new TabPlace<readonly DecisionDraft[]>('decisions', (value) => {
  const read = v.safeParse(decisionsShape, value);
  return read.success ? read.output : undefined;
});
