/**
 * English, whole: the keys every other language has to fill. It is a name for the files and no object made of
 * them, so that the build sees which page uses which file, and lets a file load with its page.
 */
export * as en from './en/all.ts';
