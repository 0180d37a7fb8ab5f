/** Text without what a typist leaves out: accents and case. */

const bare = (text: string): string => text.normalize('NFKD').replaceAll(/\p{Mark}/gu, '');

/**
 * Two texts that differ in accents, case or in how their letters are composed fold to one. Upper case
 * comes first since it spells out letters that have no single capital (ß becomes SS, as it is typed).
 */
export const folded = (text: string): string => bare(bare(text).toUpperCase()).toLowerCase();
