/**
 * Something small that the browser keeps beside the records, under one name of its local storage: read
 * as hostile, written at every change, in step with other windows, with every change undone in turn.
 */
import { canonical } from '../case/merge.ts';
import { History } from './history.svelte.ts';

/** Where small things are kept: the browser's local storage, or nothing where that is denied. */
export interface Shelf {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

export interface SmallShape<T> {
  key: string;
  /** What stands where nothing was kept. */
  blank: T;
  /** What can be believed of something kept; undefined where it is nothing of the kind. */
  read: (raw: unknown) => T | undefined;
  /** A value after a step from one to another, where it may have changed since. */
  stepped: (now: T, from: T, to: T) => T;
}

export class Small<T, Did extends string> {
  #now = $state.raw<T>() as T;
  /** Whether the browser kept what was changed last. */
  isKept = $state(true);
  readonly history = new History<T, Did>();
  readonly #shape: SmallShape<T>;
  readonly #shelf: Shelf | undefined;

  constructor(shelf: Shelf | undefined, shape: SmallShape<T>) {
    this.#shape = shape;
    this.#shelf = shelf;
    this.#now = this.#read(this.#held()) ?? shape.blank;
    if (typeof addEventListener === 'undefined') return;
    // another window wrote: what it says holds here too, so that neither writes over the other
    addEventListener('storage', ({ key, newValue }) => {
      if (key === shape.key) this.#now = this.#read(newValue) ?? shape.blank;
    });
  }

  get now(): T {
    return this.#now;
  }

  /** All of it as text, the same however it came about; undefined where nothing was ever chosen. */
  get text(): string | undefined {
    const text = canonical(this.#now);
    return text === canonical(this.#shape.blank) ? undefined : text;
  }

  /** A text as it would be kept; undefined where it is not understood. */
  understood(text: string): string | undefined {
    const read = this.#read(text);
    return read && canonical(read);
  }

  /** A change that is not undone, such as an answer that was given. */
  set(next: T): void {
    this.#now = next;
    this.#keep();
  }

  /** A change that can be undone. */
  become(next: T, did: Did, stroke?: number): void {
    if (canonical(next) === canonical(this.#now)) return;
    this.history.record(this.#now, next, did, stroke);
    this.set(next);
  }

  /** Takes in what was kept elsewhere; what is not understood changes nothing. */
  takeIn(text: string, did: Did, stroke?: number): void {
    const next = this.#read(text);
    if (next) this.become(next, did, stroke);
  }

  /** Answers with what was undone; undefined where there was nothing. */
  undo(): Did | undefined {
    const step = this.history.undo();
    if (step) this.set(this.#shape.stepped(this.#now, step.from, step.value));
    return step?.did;
  }

  /** Answers with what was redone; undefined where there was nothing. */
  redo(): Did | undefined {
    const step = this.history.redo();
    if (step) this.set(this.#shape.stepped(this.#now, step.from, step.value));
    return step?.did;
  }

  #held(): string | null {
    try {
      return this.#shelf?.getItem(this.#shape.key) ?? null;
    } catch {
      return null;
    }
  }

  #read(text: string | null): T | undefined {
    if (text === null) return undefined;
    try {
      return this.#shape.read(JSON.parse(text));
    } catch {
      return undefined;
    }
  }

  #keep(): void {
    this.isKept = this.#shelf !== undefined;
    try {
      this.#shelf?.setItem(this.#shape.key, JSON.stringify(this.#now));
    } catch {
      this.isKept = false; // a full or denied storage only means that it is forgotten with the page
    }
  }
}
