/** Encrypted files as jobs. What goes in and comes out are files: no copy of them lies on the page. */
import {
  closeEnvelope,
  MAX_ENVELOPE_BYTES,
  openEnvelope,
  type EnvelopeProblem,
} from '../../store/envelope.ts';

export interface EnvelopeJob {
  to: 'open' | 'close';
  file: Blob;
  passphrase: string;
}

export type Turned = { ok: true; file: Blob } | { ok: false; problem: EnvelopeProblem };

async function turned({ to, file, passphrase }: EnvelopeJob): Promise<Turned> {
  if (to === 'close')
    return { ok: true, file: new Blob([await closeEnvelope(await file.text(), passphrase)]) };
  if (file.size > MAX_ENVELOPE_BYTES) return { ok: false, problem: 'too-large' };
  const opened = await openEnvelope(new Uint8Array(await file.arrayBuffer()), passphrase);
  return opened.ok ? { ok: true, file: new Blob([opened.text]) } : opened;
}

export async function* turn(job: EnvelopeJob): AsyncGenerator<Turned, undefined> {
  yield await turned(job);
}
