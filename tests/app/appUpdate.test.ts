/** When a new version is offered and used: with a worker that only says what a browser's would. */
import { describe, expect, test, vi } from 'vitest';
import {
  isUndisturbed,
  Renewal,
  type Container,
  type Registration,
  type Waiting,
} from '../../src/lib/app/appUpdate.svelte.ts';

class Heard {
  readonly #heard = new Map<string, (() => void)[]>();
  addEventListener(type: string, heard: () => void): void {
    this.#heard.set(type, [...(this.#heard.get(type) ?? []), heard]);
  }
  say(type: string): void {
    for (const heard of this.#heard.get(type) ?? []) heard();
  }
}

class Worker extends Heard implements Waiting {
  state = 'installing';
  readonly told: string[] = [];
  postMessage(message: string): void {
    this.told.push(message);
  }
}

class Registered extends Heard implements Registration {
  waiting: Worker | null = null;
  installing: Worker | null = null;
  asked = 0;
  update(): Promise<unknown> {
    this.asked++;
    return this.asked > 1 ? Promise.reject(new Error('no network')) : Promise.resolve();
  }
  /** A new version comes, and has been fetched. */
  bring(): void {
    const worker = new Worker();
    this.installing = worker;
    this.say('updatefound');
    this.installing = null;
    this.waiting = worker;
    worker.state = 'installed';
    worker.say('statechange');
  }
}

class Workers extends Heard implements Container {
  controller: unknown;
  readonly registered = new Registered();
  readonly ready = Promise.resolve(this.registered);
  constructor(hasVersion: boolean) {
    super();
    this.controller = hasVersion ? {} : null;
  }
}

async function watched(hasVersion = true) {
  const reload = vi.fn();
  const workers = new Workers(hasVersion);
  const renewal = new Renewal(reload);
  await renewal.watch(workers, 0);
  return { reload, workers, renewal, registered: workers.registered };
}

describe('a new version', () => {
  test('is offered once it is there, and used only when asked for', async () => {
    const { reload, workers, renewal, registered } = await watched();
    expect(renewal.isReady).toBe(false);
    registered.bring();
    expect(renewal.isReady).toBe(true);
    const worker = registered.waiting!;
    expect(worker.told).toEqual([]);
    await renewal.useNow(Promise.resolve());
    expect(worker.told).toEqual(['use-now']);
    expect(reload).not.toHaveBeenCalled();
    workers.say('controllerchange');
    expect(reload).toHaveBeenCalledOnce();
  });

  test('that waited before the page was opened is offered too', async () => {
    const workers = new Workers(true);
    workers.registered.waiting = new Worker();
    const renewal = new Renewal(() => undefined);
    await renewal.watch(workers, 0);
    expect(renewal.isReady).toBe(true);
  });

  test('is not used before all is written', async () => {
    const { renewal, registered } = await watched();
    registered.bring();
    let written: () => void = () => undefined;
    const using = renewal.useNow(new Promise<void>((resolve) => (written = resolve)));
    await Promise.resolve();
    expect(registered.waiting!.told).toEqual([]);
    written();
    await using;
    expect(registered.waiting!.told).toEqual(['use-now']);
  });

  test('used in another window never reloads this one', async () => {
    const { reload, workers, renewal, registered } = await watched();
    registered.bring();
    registered.waiting = null;
    workers.say('controllerchange');
    expect(reload).not.toHaveBeenCalled();
    expect(renewal.isReplaced).toBe(true);
    expect(renewal.isReady).toBe(false);
  });

  test('the first worker of all replaces nothing', async () => {
    const { reload, workers, renewal } = await watched(false);
    workers.say('controllerchange');
    expect(renewal.isReplaced).toBe(false);
    workers.say('controllerchange');
    expect(renewal.isReplaced).toBe(true);
    expect(reload).not.toHaveBeenCalled();
  });

  test('put off stays so, until another window has used it', async () => {
    const { workers, renewal, registered } = await watched();
    registered.bring();
    renewal.putOff();
    expect(renewal.isPutOff).toBe(true);
    workers.say('controllerchange');
    expect(renewal.isPutOff).toBe(false);
  });

  test('is asked for once an hour, and no network is no fault', async () => {
    const { renewal, registered } = await watched();
    await renewal.ask(3_599_999);
    expect(registered.asked).toBe(0);
    await renewal.ask(3_600_000);
    await renewal.ask(3_600_001);
    expect(registered.asked).toBe(1);
    await renewal.ask(7_200_000);
    expect(registered.asked).toBe(2);
  });

  test('where there are no workers there is nothing to watch', async () => {
    const renewal = new Renewal(() => undefined);
    await renewal.watch(undefined, 0);
    await renewal.ask(Number.MAX_SAFE_INTEGER);
    expect(renewal.isReady).toBe(false);
  });
});

test.each([
  ['/stage/[talk]', true],
  ['/stage/[talk]/speaker', true],
  ['/quiz', true],
  ['/quiz/stage/[seed]', true],
  ['/axis', true],
  ['/(child)/visits/[visit]', true],
  ['/(child)/visits/[visit]/record', true],
  ['/(child)/visits', false],
  ['/(child)', false],
  ['/talks', false],
  ['/about', false],
  [null, false],
])('the page %s is left undisturbed: %s', (route, expected) => {
  expect(isUndisturbed(route)).toBe(expected);
});
