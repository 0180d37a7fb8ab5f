/**
 * Cells that a spreadsheet would run instead of show: those that begin with one of `= + - @`, a tab or
 * a line end. Such a cell is written with an apostrophe before it. The pattern looks at the first
 * character alone, so that a formula with a second line is caught as well (Papa Parse's own misses it).
 * Common practice, no source.
 */
export const FORMULA = /^[=+\-@\t\r\n]/;
