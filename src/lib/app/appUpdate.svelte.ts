/**
 * A new version of Tidemark: it is fetched beside the one in use, waits, and takes over when the user
 * says so. A page never reloads by itself but for the one in which it was asked for.
 */

/** Of a waiting version, what is used here. */
export interface Waiting {
  readonly state: string;
  postMessage(message: string): void;
  addEventListener(type: 'statechange', heard: () => void): void;
}

/** Of the browser's registration of the worker, what is used here. */
export interface Registration {
  readonly waiting: Waiting | null;
  readonly installing: Waiting | null;
  addEventListener(type: 'updatefound', heard: () => void): void;
  update(): Promise<unknown>;
}

/** Of the browser's container of workers, what is used here. */
export interface Container {
  readonly controller: unknown;
  readonly ready: Promise<Registration>;
  addEventListener(type: 'controllerchange', heard: () => void): void;
}

/** How often a page that stays open asks for a new version, ms. */
const ASKS_EVERY_MS = 3_600_000;

/** Pages on which nobody is to be disturbed: a talk, questions before a class, a visit, an exercise. */
const UNDISTURBED = /^\/(?:stage|quiz|axis|\(child\)\/visits\/\[visit\])(?:\/|$)/;

/** Whether the page is one that is not to be disturbed. `route` is the page's own name, with its parameters. */
export const isUndisturbed = (route: string | null): boolean => UNDISTURBED.test(route ?? '');

export class Renewal {
  /** Whether a new version waits for the user's word. */
  isReady = $state(false);
  /** Whether the user put it off on this page. */
  isPutOff = $state(false);
  /** Whether another window has gone over to a new version while this page is of the one before. */
  isReplaced = $state(false);
  /** Whether a part of the page could not be fetched. */
  isLacking = $state(false);
  #registration: Registration | undefined;
  #isAsked = false;
  #lastAskedMs = 0;
  readonly #reload: () => void;

  constructor(reload: () => void) {
    this.#reload = reload;
  }

  /** Watches for new versions. Where there is no worker, as in the single file, nothing is watched. */
  async watch(container: Container | undefined, nowMs: number): Promise<void> {
    if (!container) return;
    let hadVersion = Boolean(container.controller);
    container.addEventListener('controllerchange', () => {
      if (this.#isAsked) this.#reload();
      else if (hadVersion) this.#replaced();
      hadVersion = true;
    });
    const registration = await container.ready;
    this.#registration = registration;
    this.#lastAskedMs = nowMs;
    this.#look();
    this.#follow(registration.installing);
    registration.addEventListener('updatefound', () => this.#follow(registration.installing));
  }

  /** Asks for a new version, at most once an hour; with no network there is none. */
  async ask(nowMs: number): Promise<void> {
    if (!this.#registration || nowMs - this.#lastAskedMs < ASKS_EVERY_MS) return;
    this.#lastAskedMs = nowMs;
    await this.#registration.update().catch(() => undefined);
  }

  /** Uses the waiting version, once all that was changed is written; the page is then loaded anew. */
  async useNow(written: Promise<unknown>): Promise<void> {
    await written;
    const waiting = this.#registration?.waiting;
    if (!waiting) return this.#reload();
    this.#isAsked = true;
    waiting.postMessage('use-now');
  }

  /** Not on this page. It is used when all windows have been closed, or from the page about Tidemark. */
  putOff(): void {
    this.isPutOff = true;
  }

  #follow(worker: Waiting | null): void {
    worker?.addEventListener('statechange', () => this.#look());
  }

  #look(): void {
    const isReady = Boolean(this.#registration?.waiting);
    if (isReady && !this.isReady) this.isPutOff = false;
    this.isReady = isReady;
  }

  #replaced(): void {
    this.isReplaced = true;
    this.isReady = false;
    this.isPutOff = false;
  }
}
