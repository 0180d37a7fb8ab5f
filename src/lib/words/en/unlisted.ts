/** English for findings on a reflex that is not in the atlas now. */

/** Findings on what is not in the atlas now: kept, and not judged. */
export const kept = {
  removed: (id: string): string =>
    `Recorded for “${id}”, which is no longer in the atlas. It stays in the record and is not judged.`,
  off: (name: string): string =>
    `${name} is switched off at present. What was recorded stays in the record and is not judged.`,
  bring: 'Sources and reflexes of your own',
};
