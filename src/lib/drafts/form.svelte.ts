/** A form that is being filled in: what it began with, what it says now, and every step between. */
import { History } from '../platform/history.svelte.ts';

export class Typing<T extends object> {
  readonly #history = new History<T, 'typed'>();
  readonly #beginning: () => T;
  #typed = $state.raw<T>();

  constructor(beginning: () => T) {
    this.#beginning = beginning;
  }

  get now(): T {
    return this.#typed ?? this.#beginning();
  }

  get canUndo(): boolean {
    return this.#history.canUndo;
  }

  get canRedo(): boolean {
    return this.#history.canRedo;
  }

  change(part: Partial<T>): void {
    const before = this.now;
    const after = { ...before, ...part };
    this.#typed = after;
    this.#history.record(before, after, 'typed');
  }

  undo(): void {
    this.#typed = this.#history.undo()?.value ?? this.#typed;
  }

  redo(): void {
    this.#typed = this.#history.redo()?.value ?? this.#typed;
  }
}
