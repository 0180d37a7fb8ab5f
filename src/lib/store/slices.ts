/** Long work in slices, between which the page answers. */

/** The longest slice, ms: shorter than a person notices. */
const SLICE_MS = 30;

/**
 * Asked after each step of long work: where a slice is full, what to wait for before the next step. Work
 * that is short is done at one go.
 */
export function slices(): () => Promise<void> | undefined {
  let began = performance.now();
  return () => {
    if (performance.now() - began < SLICE_MS) return undefined;
    return new Promise((resolve) => {
      setTimeout(() => {
        began = performance.now();
        resolve();
      });
    });
  };
}

/** A list through something that may take time at each step, in order. */
export async function inSlices<T, R>(
  list: readonly T[],
  each: (one: T) => R | Promise<R>,
): Promise<R[]> {
  const pause = slices();
  const results: R[] = [];
  for (const one of list) {
    results.push(await each(one));
    await pause();
  }
  return results;
}
