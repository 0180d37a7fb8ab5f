/** Ids by chance, that nothing else has. */

/** So many bytes of chance, hexadecimal. */
const chance = (bytes: number): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(bytes)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');

/** For a new record. */
export const newId = (): string => chance(12);

/**
 * A random uuid (RFC 9562, version 4), for a visit or a decision that is made here. The browser's own
 * `randomUUID` is missing on a page that came over plain http, and a library for it weighs on the first view.
 */
export const newPartId = (): string => {
  const hex = chance(16);
  const rest = `${hex.slice(0, 8)}-${hex.slice(8, 12)}-4${hex.slice(13, 16)}`;
  return `${rest}-a${hex.slice(17, 20)}-${hex.slice(20)}`;
};
