/** Whether all that was changed is kept: what the page says of it, and why where it is not. */
import type { Rows, Trouble } from '../store/rows.ts';
import { isTypedWaiting } from '../drafts/typedField.svelte.ts';

export type Standing = 'opening' | 'saved' | 'saving' | 'not-saved';

export class Keeping {
  /** How what is kept is kept; undefined until the store has answered. */
  kind = $state<Rows['kind'] | undefined>(undefined);
  /** Whether an older page holds the store, so that it cannot be opened yet. */
  blocked = $state(false);
  /** Whether a newer page has taken the store over. */
  outdated = $state(false);
  #troubles = $state.raw<readonly { who: object; trouble: Trouble }[]>([]);
  /** Whether the browser promised not to clear what is kept; undefined until it was asked. */
  promised = $state<boolean | undefined>(undefined);
  /** How many changes are on their way. */
  #going = $state(0);
  /** Whether anything was written since the page was opened. */
  #once = $state(false);
  readonly #again: (() => void)[] = [];

  /** Why what was changed last could not be kept. */
  get trouble(): Trouble | undefined {
    return this.#troubles.at(-1)?.trouble;
  }

  troubleOf(who: object): Trouble | undefined {
    return this.#troubles.find((one) => one.who === who)?.trouble;
  }

  get standing(): Standing | undefined {
    if (this.trouble) return 'not-saved';
    if (this.#going > 0) return this.kind ? 'saving' : 'opening';
    if (isTypedWaiting()) return 'saving';
    return this.#once ? 'saved' : undefined;
  }

  /** Takes part in what is tried again. */
  add(again: () => void): void {
    this.#again.push(again);
  }

  begin(): void {
    this.#going += 1;
  }

  /** All that was changed by one who writes is kept, as far as the store keeps anything. */
  done(who: object, kind: Rows['kind']): void {
    this.#going -= 1;
    this.#once = true;
    this.#set(who, kind === 'memory' ? 'denied' : undefined);
  }

  refused(who: object, trouble: Trouble): void {
    this.#going -= 1;
    this.#set(who, trouble);
  }

  #set(who: object, trouble: Trouble | undefined): void {
    if (this.troubleOf(who) === trouble) return;
    const others = this.#troubles.filter((one) => one.who !== who);
    this.#troubles = trouble ? [...others, { who, trouble }] : others;
  }

  /** Asks what the browser has promised before, without asking for it. */
  async lookUp(storage: StorageManager | undefined): Promise<void> {
    try {
      if (await storage?.persisted()) this.promised = true;
    } catch {
      // a browser that cannot say has promised nothing
    }
  }

  /** Asks the browser to keep what is stored even when the disk runs short; once in a page's life. */
  async askToKeep(storage: StorageManager | undefined): Promise<void> {
    if (this.promised === undefined) await this.askAgain(storage);
  }

  async askAgain(storage: StorageManager | undefined): Promise<void> {
    this.promised = false;
    try {
      this.promised = (await storage?.persist()) ?? false;
    } catch {
      // as if it had said no
    }
  }

  /** Writes anew what could not be written. */
  tryAgain(): void {
    for (const again of this.#again) again();
  }
}
