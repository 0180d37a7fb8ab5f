/**
 * A second reader of the age format, written from its specification (C2SP, age-encryption.org/v1) on
 * Node's OpenSSL: passphrase stanza, header MAC and payload, so that what is written is read by other
 * code than wrote it. Throws where anything is not as specified.
 */
import { createDecipheriv, createHmac, hkdfSync, scryptSync, timingSafeEqual } from 'node:crypto';

const CHUNK = 64 * 1024;

function open(key: Buffer, nonce: Buffer, sealed: Buffer): Buffer {
  const decipher = createDecipheriv('chacha20-poly1305', key, nonce, { authTagLength: 16 });
  decipher.setAuthTag(sealed.subarray(-16));
  return Buffer.concat([decipher.update(sealed.subarray(0, -16)), decipher.final()]);
}

export function readAge(file: Uint8Array, passphrase: string): string {
  const bytes = Buffer.from(file);
  const macLine = bytes.indexOf('\n--- ') + 1;
  const end = bytes.indexOf('\n', macLine);
  const [version, stanza, body] = bytes.toString('latin1', 0, macLine - 1).split('\n');
  if (version !== 'age-encryption.org/v1') throw new Error('version');
  const [, salt = '', logN = ''] = /^-> scrypt (\S{22}) (\d+)$/.exec(stanza ?? '') ?? [];
  const wrapKey = scryptSync(
    passphrase,
    Buffer.concat([Buffer.from('age-encryption.org/v1/scrypt'), Buffer.from(salt, 'base64')]),
    32,
    { N: 2 ** Number(logN), r: 8, p: 1, maxmem: 2 ** 30 },
  );
  const fileKey = open(wrapKey, Buffer.alloc(12), Buffer.from(body ?? '', 'base64'));
  const macKey = Buffer.from(hkdfSync('sha256', fileKey, '', 'header', 32));
  const mac = createHmac('sha256', macKey)
    .update(bytes.subarray(0, macLine + 3))
    .digest();
  const written = Buffer.from(bytes.toString('latin1', macLine + 4, end), 'base64');
  if (!timingSafeEqual(mac, written)) throw new Error('header');
  const rest = bytes.subarray(end + 1);
  const key = Buffer.from(hkdfSync('sha256', fileKey, rest.subarray(0, 16), 'payload', 32));
  const chunks: Buffer[] = [];
  const payload = rest.subarray(16);
  for (let at = 0, count = 0; at < payload.length; at += CHUNK + 16, count++) {
    const nonce = Buffer.alloc(12);
    nonce.writeUInt32BE(count, 7);
    nonce[11] = at + CHUNK + 16 >= payload.length ? 1 : 0;
    chunks.push(open(key, nonce, payload.subarray(at, at + CHUNK + 16)));
  }
  return Buffer.concat(chunks).toString('utf8');
}
