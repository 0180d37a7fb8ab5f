/**
 * The side of a worker: one job, whose pieces are given one at a time as they are asked for, so that none
 * waits in masses on the page.
 */

/** What a worker says: that it has begun, a piece or the end, or that the work broke off. */
export type Said<P> = { ready: true } | { next: IteratorResult<P, undefined> } | { broke: true };

/** What a page says to a worker: the job with the first question, and then that it wants more. */
export type Asked<J> = { job: J } | { more: true };

export function serve(work: (job: never) => AsyncGenerator<unknown, undefined>): void {
  const say = (said: Said<unknown>): void => self.postMessage(said);
  let pieces: AsyncGenerator<unknown, undefined> | undefined;
  const hear = ({ data }: MessageEvent<Asked<never>>): void => {
    if ('job' in data) pieces = work(data.job);
    void pieces?.next().then(
      (next) => say({ next }),
      () => say({ broke: true }),
    );
  };
  self.addEventListener('message', hear);
  say({ ready: true });
}
