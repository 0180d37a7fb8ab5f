/** What a passphrase must be to be set. */

/** How short it may be, characters. NIST SP 800-63B-4, section 3.1.1.2, from memory. */
export const MIN_PASSPHRASE = 15;
/** How many different characters it must have: one key held down is long and no secret. Chosen by us. */
export const MIN_DIFFERENT = 5;
/** More than anybody types. */
export const MAX_PASSPHRASE = 1000;

export type PassphraseFault = 'short' | 'long' | 'same';

/** What is wrong with a passphrase to be set, as a code. */
export function passphraseFault(passphrase: string): PassphraseFault | undefined {
  const characters = Array.from(passphrase.normalize('NFC'));
  if (characters.length < MIN_PASSPHRASE) return 'short';
  if (characters.length > MAX_PASSPHRASE) return 'long';
  return new Set(characters).size < MIN_DIFFERENT ? 'same' : undefined;
}
