/** Text as it is typed, brought into the form that the parser reads. Nothing is decided here. */

const PARTS = /^(\d{4})[-./ ]?(\d{2})[-./ ]?(\d{2})$/;

/** A date typed with other separators or none, as `YYYY-MM-DD`; other text is left as it is. */
export function tidyDate(text: string): string {
  const parts = PARTS.exec(text.trim());
  return parts ? parts.slice(1).join('-') : text.trim();
}
