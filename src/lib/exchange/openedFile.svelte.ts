/** A file that was chosen, read as it is or, where it is encrypted, once its passphrase was given. */
import type { EnvelopeProblem } from '../store/envelope.ts';

/** What is asked for a file: it settles with what is in it, or undefined where it is left. */
interface Asking {
  file: File;
  settle: (inside: Blob | undefined) => void;
}

/** The first bytes say what a file is. */
const HEAD_BYTES = 64;

class Opening {
  asking = $state.raw<Asking | undefined>(undefined);
  #trying: AbortController | undefined;

  /** Tries a passphrase; the problem where it was not opened. */
  async answer(passphrase: string): Promise<EnvelopeProblem | 'broke' | undefined> {
    const { asking } = this;
    if (!asking) return undefined;
    const { openedWith } = await import('./worker/envelopes.ts');
    this.#trying = new AbortController();
    const opened = await openedWith(asking.file, passphrase, this.#trying.signal);
    if (opened.ok) {
      this.asking = undefined;
      asking.settle(opened.file);
    }
    return opened.ok || opened.problem === 'left' ? undefined : opened.problem;
  }

  leave(): void {
    this.#trying?.abort();
    this.asking?.settle(undefined);
    this.asking = undefined;
  }
}

export const opening = new Opening();

/** Twice what the largest plain file may have: more is not even read. */
const MAX_ENCRYPTED_BYTES = 60_000_000;

/** The file as it can be read; undefined where it is encrypted and was left closed. */
export async function opened(file: File): Promise<File | undefined> {
  if (file.size > MAX_ENCRYPTED_BYTES) return file; // refused by its size, unread
  const head = new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer());
  const begin = new TextDecoder('latin1').decode(head);
  if (!/^(?:age-encryption\.org\/|-----BEGIN AGE ENCRYPTED FILE-----)/.test(begin)) return file;
  opening.leave();
  const inside = await new Promise<Blob | undefined>((settle) => {
    opening.asking = { file, settle };
  });
  return inside && new File([inside], file.name.replace(/\.age$/i, ''));
}
