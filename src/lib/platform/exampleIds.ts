/** By what an invented child of the collection is known, whatever has been changed in it. */

export const EXAMPLE_PREFIX = 'example-';

export const isExample = (id: string): boolean => id.startsWith(EXAMPLE_PREFIX);

/** How many there are, so that the page need not load them to know whether all are here. */
export const EXAMPLE_COUNT = 10;
