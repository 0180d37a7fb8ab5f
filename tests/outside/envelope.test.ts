/** Encrypted files against the published vectors of the age format and against other readers of it. */
import { createHash } from 'node:crypto';
import * as vectors from 'cctv-age';
import { describe, expect, it } from 'vitest';
import { closeEnvelope, looksEncrypted, openEnvelope } from '../../src/lib/store/envelope.ts';
import { readAge } from '../support/age.ts';

const PASSPHRASE = 'three dunlins on the mud';

interface Vector {
  name: string;
  expect: string;
  passphrase: string | undefined;
  payload: string | undefined;
  file: Uint8Array;
}

/** C2SP CCTV, age: lines of `name: value`, an empty line, then the file. */
function read(name: string, bytes: Uint8Array): Vector {
  const all = Buffer.from(bytes);
  const end = all.indexOf('\n\n');
  const lines = all
    .toString('utf8', 0, end)
    .split('\n')
    .map((line) => line.split(': ') as [string, string]);
  const head = new Map(lines);
  return {
    name,
    expect: head.get('expect') ?? '',
    passphrase: head.get('passphrase'),
    payload: head.get('payload'),
    file: new Uint8Array(all.subarray(end + 2)),
  };
}

const ALL = Object.entries<Uint8Array>(vectors).map(([name, bytes]) => read(name, bytes));
const BY_PASSPHRASE = ALL.filter(({ passphrase }) => passphrase !== undefined);
const sha = (text: string): string => createHash('sha256').update(text, 'utf8').digest('hex');

describe('the vectors of the age format (C2SP CCTV)', () => {
  it('has enough of them to tell something', () => {
    expect(ALL.length).toBeGreaterThan(100);
    expect(BY_PASSPHRASE.length).toBeGreaterThan(20);
    expect(BY_PASSPHRASE.filter((one) => one.expect === 'success').length).toBeGreaterThan(0);
  });

  it.each(BY_PASSPHRASE)('$name: $expect', async ({ expect: told, passphrase, payload, file }) => {
    const opened = await openEnvelope(file, passphrase!);
    expect(opened.ok).toBe(told === 'success');
    if (opened.ok) expect(sha(opened.text)).toBe(payload);
  });

  it.each(ALL.filter(({ passphrase }) => passphrase === undefined))(
    '$name: opened by no passphrase',
    async ({ file }) => {
      expect((await openEnvelope(file, PASSPHRASE)).ok).toBe(false);
    },
  );
});

/** Written by the program `age` 1.1.1 as Debian 12 ships it, with the passphrase above. */
const BY_ANOTHER = `-----BEGIN AGE ENCRYPTED FILE-----
YWdlLWVuY3J5cHRpb24ub3JnL3YxCi0+IHNjcnlwdCBYK0h4TmdFenE4QUMzZERp
RDF6K0xRIDE4ClplbFV2cW41Y3R5anU0c2F2Zjg5SyttakVrQTVVbnAwaWQxdmtM
MlM0M28KLS0tIEVKQm5oanZEVlJRbnJxMkZ3dkRNNzhORlJYRnVIZk1GYXNMQmVz
V3RkOUkKzZ9X8LjvTBNk3M0v9YBzGPm5D1E/aKVdet5OBDydR/cQD3bv9am3dY9A
Hgk2Z2/uUUYEUyanuzweb2Yrc6DGJ9h7P6fdUrl+KU69IQIS
-----END AGE ENCRYPTED FILE-----
`;

describe('other programs', () => {
  it('write files that are opened here', async () => {
    const file = new TextEncoder().encode(BY_ANOTHER);
    expect(looksEncrypted(file)).toBe(true);
    expect(await openEnvelope(file, PASSPHRASE)).toEqual({
      ok: true,
      text: 'Made by another program: é, ≥ 2 responses.\n',
    });
  });

  it.each([
    ['short, stretched as in use', 'a note', undefined],
    ['empty', '', 10],
    ['of exactly one chunk', 'x'.repeat(65_536), 10],
    ['of several chunks', 'é'.repeat(100_000), 10],
  ])('open a file written here that is %s', async (_, text, work) => {
    const file = await closeEnvelope(text, PASSPHRASE, work);
    expect(looksEncrypted(file)).toBe(true);
    expect(readAge(file, PASSPHRASE)).toBe(text);
    expect(() => readAge(file, 'another passphrase')).toThrow();
  });

  // OWASP Password Storage Cheat Sheet, scrypt: "N=2^17 (128 MiB), r=8 (1024 bytes), p=1"
  it('find a work factor of 17', async () => {
    const file = await closeEnvelope('', PASSPHRASE);
    expect(Buffer.from(file).toString('latin1')).toMatch(/^.*\n-> scrypt \S{22} 17\n/);
  });
});
