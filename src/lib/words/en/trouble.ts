/** English for whether what was entered is kept, which every page says. The page of storage is in keeping.ts. */
import type { Trouble } from '../../store/rows.ts';

/** Beside the name, in a word; the page of storage says more. */
export const standing = {
  opening: 'Opening…',
  saved: 'Saved',
  saving: 'Saving…',
  'not-saved': 'Not saved',
};

/** Why nothing can be written, and what to do. */
export const troubles: Record<Trouble, string> = {
  full: 'Not saved: the browser has no room left. Save everything to a file now; then free some room on the disk and try again.',
  denied:
    'Not saved: this browser keeps nothing for the page, as in a private window. Entries are lost when the page is closed. Save everything to a file before that.',
  newer:
    'Shown, not changed: these records were kept by a newer Tidemark. Reload the page to get the newer one, or save everything to a file.',
  outdated:
    'Not saved: a newer Tidemark has been opened in another window. Save everything to a file, then reload this page.',
  busy: 'Not saved yet: another window keeps changing the same records. It is tried again every second; close the other window, or save everything to a file.',
  failed: 'Not saved: the browser refused to write. Try again, or save everything to a file.',
};

export const trouble = {
  blocked:
    'Waiting: Tidemark is open in another window in an older version. Close that window, and this page goes on. What is entered here meanwhile can be saved to a file.',
  again: 'Try again',
  save: 'Save everything to a file',
};

/** What was going on when the page was closed, and has to be done again. */
export const unfinished = {
  file: 'A file was being read when the page was closed. That was not finished: nothing of it was taken in. Open it again.',
  examples:
    'The sample children were being added when the page was closed. That was not finished: none was added. Add them again.',
  lock: 'The lock was being changed when the page was closed. That was not finished: everything is locked, or not, as it was before.',
  writing:
    'When the page was closed, writing was not finished. Check whether your last changes are there. Any that are missing were not saved.',
};

/** Where two windows changed one child. */
export const clashes = (n: number): string =>
  `${n === 1 ? '1 record was' : `${n} records were`} changed differently in two windows: choose`;
