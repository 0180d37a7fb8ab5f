/**
 * Cells that a spreadsheet would run instead of show. OWASP, "CSV Injection": those that begin with one
 * of `= + - @`, a tab, a carriage return or a line feed; OWASP ASVS 5, 1.2.10: also a null character.
 * The full-width forms are read as the plain ones by some spreadsheets (common practice, no source).
 *
 * Such a cell is written with an apostrophe before it. A program that splits at semicolons, tabs or bars
 * makes cells of its own out of the middle of a text, and quotation marks that do not stand where a cell
 * begins for it stop it neither there nor at a line's end: so what follows one of these is disarmed as
 * well. Where apostrophes stand already one more is put before them, so that the way back is exact.
 */
const FORMULA = String.raw`=+\-@\t\r\n\0\uff1d\uff0b\uff0d\uff20`;
/** At the beginning; blanks and quotation marks before a formula may be taken away by who reads it. */
const AT_START = String.raw`(?<=^)A(?=[ "]{0,3}[${FORMULA}])`;
/** Where another separator would begin a cell, also one that would begin with a quotation mark. */
const WITHIN = String.raw`(?<=[;\t|\r\n])A(?= {0,3}["${FORMULA}])`;

const pattern = (apostrophes: string): RegExp =>
  new RegExp(`${AT_START}|${WITHIN}`.replaceAll('A', apostrophes), 'g');
const ARMED = pattern("'*");
const DISARMED = pattern("'+");

/** The text as it is written into a cell. */
export const disarmed = (text: string): string => text.replace(ARMED, "'$&");

/** A cell as it was meant: without the apostrophes that kept a spreadsheet from running it. */
export const rearmed = (cell: string): string =>
  cell.replace(DISARMED, (apostrophes) => apostrophes.slice(1));
