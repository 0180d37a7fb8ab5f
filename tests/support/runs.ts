/**
 * How many cases a test tries and how large its files are. In the everyday run a part, so that it is over
 * in a minute; all of it with THOROUGH=1 in the environment, which the table of faults sets too.
 */
const isThorough = process.env.THOROUGH === '1';

/** A tenth of a count, or the whole of it in a thorough run; never below `least` unless `full` is. */
export const runs = (full: number, least = 50): number =>
  isThorough ? full : Math.min(full, Math.max(least, Math.round(full / 10)));

/** A fiftieth of so many bytes, or all of them in a thorough run. */
export const bytesOf = (full: number): number => (isThorough ? full : Math.round(full / 50));

/** A count as the title of a test says it: 6,000. */
export const written = (count: number): string => count.toLocaleString('en');
