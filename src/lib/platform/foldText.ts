/** Text without what a typist leaves out: accents and case. */

const bare = (text: string): string => text.normalize('NFKD').replaceAll(/\p{Mark}/gu, '');

/**
 * Two texts that differ in accents, case or in how their letters are composed fold to one. Upper case
 * spells out letters that have no single capital (ß becomes SS, as it is typed); lower case comes before
 * it, since a letter that is a capital already, as ẞ, would stay as it is.
 */
export const folded = (text: string): string =>
  bare(bare(text).toLowerCase().toUpperCase()).toLowerCase();
