/** The side of the page: the pieces of a job that a worker does, so that the page goes on meanwhile. */
import type { Asked, Said } from './serve.ts';

/** The work ended before it was done: given up here, or broken off there, as where memory runs out. */
export class Ended extends Error {
  readonly why: 'left' | 'broke';

  constructor(why: 'left' | 'broke') {
    super(why);
    this.why = why;
  }
}

/** How a job is done: by a worker, or where there is none, on the page. */
export interface Ways<J, P> {
  worker: () => Promise<Worker>;
  here: () => Promise<(job: J) => AsyncGenerator<P, undefined>>;
}

/** A worker that has begun; undefined where the browser lets none begin. */
async function begun(make: () => Promise<Worker>): Promise<Worker | undefined> {
  try {
    const worker = await make();
    return await new Promise((settle) => {
      worker.onmessage = () => settle(worker);
      worker.onerror = (event) => {
        event.preventDefault(); // it is read on the page instead
        settle(undefined);
      };
    });
  } catch {
    return undefined;
  }
}

/** Asks a worker something; rejects when it breaks off or is given up. */
function answer<J, P>(
  worker: Worker,
  asked: Asked<J>,
  signal: AbortSignal,
): Promise<IteratorResult<P, undefined>> {
  return new Promise((resolve, reject) => {
    const broke = (event: Event): void => {
      event.preventDefault();
      reject(new Ended('broke'));
    };
    worker.onmessage = ({ data }: MessageEvent<Said<P>>) => {
      if ('next' in data) resolve(data.next);
      else reject(new Ended('broke'));
    };
    worker.onerror = broke;
    worker.onmessageerror = broke;
    signal.onabort = () => reject(new Ended('left'));
    worker.postMessage(asked);
  });
}

const hold = (signal: AbortSignal): void => {
  if (signal.aborted) throw new Ended('left');
};

/** The pieces of a job, one after another. Throws `Ended` where it is given up or breaks off. */
export async function* piecesOf<J, P>(
  ways: Ways<J, P>,
  job: J,
  signal: AbortSignal,
): AsyncGenerator<P, undefined> {
  const worker = await begun(ways.worker);
  if (!worker) {
    hold(signal);
    for await (const piece of (await ways.here())(job)) {
      hold(signal);
      yield piece;
    }
    return;
  }
  try {
    hold(signal);
    let next = await answer<J, P>(worker, { job }, signal);
    while (!next.done) {
      yield next.value;
      hold(signal);
      next = await answer<J, P>(worker, { more: true }, signal);
    }
  } finally {
    signal.onabort = null;
    worker.terminate();
  }
}
