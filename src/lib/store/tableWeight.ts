/** What a table would come to before it is parsed: quotation marks and columns in masses are no table. */

const QUOTE = 0x22;
/** A cell with quotation marks around it takes this many letters at least, on the average of a sheet. */
const LETTERS_PER_QUOTE = 3;
/** More letters than this in the first line name no columns. */
const MAX_HEAD = 20_000;
/** A short text is no work, whatever stands in it. */
const LIGHT = 100_000;

export function isHeavyTable(text: string): boolean {
  if (text.length < LIGHT) return false;
  const end = text.search(/[\r\n]/);
  if (end < 0 || end > MAX_HEAD) return true;
  let quotes = 0;
  for (let at = 0; at < text.length; at++) if (text.charCodeAt(at) === QUOTE) quotes += 1;
  return quotes > text.length / LETTERS_PER_QUOTE;
}
