/** Opens and closes encrypted files, apart from the page. */
import type { EnvelopeProblem } from '../../store/envelope.ts';
import { Ended, piecesOf, type Ways } from './pieces.ts';
import type { EnvelopeJob, Turned } from './turn.ts';

const ways: Ways<EnvelopeJob, Turned> = {
  worker: async () => new (await import('./envelopes.worker.ts?worker&inline')).default(),
  here: async () => (await import('./turn.ts')).turn,
};

/** What comes of a job. Throws `Ended` where it is given up or breaks off. */
async function turnedApart(job: EnvelopeJob, signal: AbortSignal): Promise<Turned> {
  for await (const piece of piecesOf(ways, job, signal)) return piece;
  throw new Ended('broke');
}

/** A file encrypted with a passphrase. */
export async function closedWith(
  file: Blob,
  passphrase: string,
  signal = new AbortController().signal,
): Promise<Blob> {
  const closed = await turnedApart({ to: 'close', file, passphrase }, signal);
  if (!closed.ok) throw new Error(closed.problem);
  return closed.file;
}

/** What is in an encrypted file, or why it was not opened. */
export async function openedWith(
  file: Blob,
  passphrase: string,
  signal: AbortSignal,
): Promise<Turned | { ok: false; problem: EnvelopeProblem | 'broke' | 'left' }> {
  try {
    return await turnedApart({ to: 'open', file, passphrase }, signal);
  } catch (error) {
    if (error instanceof Ended) return { ok: false, problem: error.why };
    throw error;
  }
}
