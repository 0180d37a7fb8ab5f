/** English for findings on a reflex that is not in the atlas now. */

/** Findings on what is not in the atlas now: kept, and not judged. */
export const kept = {
  removed: (id: string): string =>
    `Recorded for “${id}”, which is no longer in the atlas. It stays in the record and is not judged.`,
  off: (name: string): string =>
    `${name} is switched off at present. Its findings stay in the record and are not judged.`,
  bring: 'Your own sources and reflexes',
};
