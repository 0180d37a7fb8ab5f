/** A file that was chosen, read as it is or, where it is encrypted, once its passphrase was given. */
import type { EnvelopeProblem } from '../store/envelope.ts';

/** What is asked for a file: it settles with the file's text, or undefined where it is left. */
interface Asking {
  name: string;
  size: number;
  bytes: Uint8Array;
  settle: (text: string | undefined) => void;
}

/** The first bytes say what a file is. */
const HEAD_BYTES = 64;

class Opening {
  asking = $state.raw<Asking | undefined>(undefined);

  /** Tries a passphrase; the problem where it was not opened. */
  async answer(passphrase: string): Promise<EnvelopeProblem | undefined> {
    const { asking } = this;
    if (!asking) return undefined;
    const { openEnvelope } = await import('../store/envelope.ts');
    const opened = await openEnvelope(asking.bytes, passphrase);
    if (!opened.ok) return opened.problem;
    this.asking = undefined;
    asking.settle(opened.text);
    return undefined;
  }

  leave(): void {
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
  const bytes = new Uint8Array(await file.arrayBuffer());
  const text = await new Promise<string | undefined>((settle) => {
    opening.asking = { name: file.name, size: file.size, bytes, settle };
  });
  if (text === undefined) return undefined;
  return new File([text], file.name.replace(/\.age$/i, ''));
}
