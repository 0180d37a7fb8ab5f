/** A number stays on one line with the word it counts: for what is shown or printed, not for what is kept. */
export const together = (text: string): string => text.replace(/(\d) (?=\p{L})/gu, '$1\u00a0');
