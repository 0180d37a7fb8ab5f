/** What a passphrase must be to be set. */

/** How short it may be, characters. NIST SP 800-63B-4, section 3.1.1.2, from memory. */
export const MIN_PASSPHRASE = 15;
/** More than anybody types. */
export const MAX_PASSPHRASE = 1000;

/** What is wrong with a passphrase to be set, as a code. */
export function passphraseFault(passphrase: string): 'short' | 'long' | undefined {
  const { length } = Array.from(passphrase.normalize('NFC'));
  return length < MIN_PASSPHRASE ? 'short' : length > MAX_PASSPHRASE ? 'long' : undefined;
}
