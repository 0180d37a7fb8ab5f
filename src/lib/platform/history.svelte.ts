/** Undo and redo over whole values: a step back gives what stood before, a step forward what came after. */

/** A value before and after a change, with what the change was. */
interface Step<T, Did> {
  before: T;
  after: T;
  did: Did;
  /** When it was done: higher than that of every change before it, of this value or another. */
  stroke: number;
}

const DEEPEST = 200;
let strokes = 0;

/** A number for a change. Values that are changed together are given the same, and are undone together. */
export const newStroke = (): number => (strokes += 1);

export class History<T, Did> {
  #past = $state.raw<readonly Step<T, Did>[]>([]);
  #future = $state.raw<readonly Step<T, Did>[]>([]);

  get canUndo(): boolean {
    return this.#past.length > 0;
  }

  get canRedo(): boolean {
    return this.#future.length > 0;
  }

  /** The stroke that would be undone next; 0 where there is none. */
  get lastStroke(): number {
    return this.#past.at(-1)?.stroke ?? 0;
  }

  /** The stroke that would be redone next; Infinity where there is none. */
  get nextStroke(): number {
    return this.#future.at(-1)?.stroke ?? Infinity;
  }

  /** What was done last in the same stroke, as words typed on and on, becomes one step with it. */
  record(before: T, after: T, did: Did, stroke = newStroke()): void {
    const last = this.#past.at(-1);
    const first = last?.stroke === stroke ? last : { before, did };
    const past = first === last ? this.#past.slice(0, -1) : this.#past.slice(1 - DEEPEST);
    this.#past = [...past, { ...first, after, stroke }];
    this.#future = [];
  }

  /** The value before the last change, the one after it, and what is thereby undone. */
  undo(): { value: T; from: T; did: Did } | undefined {
    const step = this.#past.at(-1);
    if (!step) return undefined;
    this.#past = this.#past.slice(0, -1);
    this.#future = [...this.#future, step];
    return { value: step.before, from: step.after, did: step.did };
  }

  redo(): { value: T; from: T; did: Did } | undefined {
    const step = this.#future.at(-1);
    if (!step) return undefined;
    this.#future = this.#future.slice(0, -1);
    this.#past = [...this.#past, step];
    return { value: step.after, from: step.before, did: step.did };
  }

  forget(): void {
    this.#past = [];
    this.#future = [];
  }
}
