/**
 * Cells that a spreadsheet would run instead of show. OWASP, "CSV Injection": those that begin with one
 * of `= + - @`, a tab, a carriage return or a line feed; OWASP ASVS 5, 1.2.10: also a null character.
 * The full-width forms are read as the plain ones by some spreadsheets (common practice, no source).
 * Such a cell is written with an apostrophe before it. The pattern looks at the first character alone,
 * so that a formula with a second line is caught as well (Papa Parse's own misses it).
 */
export const FORMULA = /^[=+\-@\t\r\n\0\uff1d\uff0b\uff0d\uff20]/;
