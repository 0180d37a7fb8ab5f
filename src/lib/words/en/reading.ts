/** English for a file that is read for a while or not to its end, and for a long list of what is in it. */

export const title = 'A file that is being read';
export const now = (name: string): string => `Reading the file “${name}”…`;
export const leave = 'Cancel';
/** What reads broke off by itself, as where memory runs out. */
export const broke =
  'The file could not be read to its end: it may take more memory than the browser has. Close other pages and windows and try again. Nothing has changed.';

/** Beside how many lines of a list are not shown yet. */
export const more = 'List more';
