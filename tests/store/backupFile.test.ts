/** The backup file: out and in again, sealed or not, and whatever a hostile file may hold. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  backupBytes,
  backupTooLarge,
  MAX_BACKUP_BYTES,
  readBackup,
  type Backup,
} from '../../src/lib/store/backupFile.ts';
import { BACKUP_TABLES } from '../../src/lib/store/names.ts';
import { malformedJson, malformedText } from '../support/malform.ts';
import { runs, written } from '../support/runs.ts';
import { reading } from '../support/slowest.ts';

const MALFORMED = runs(10_000);
/** Every reason for which a file is refused once it is small enough to be read. */
const CODES = ['not-a-backup', 'blank', 'cut-short', 'newer-backup', 'too-deep', 'twice'];

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
const code = (text: string): string => {
  const read = readBackup(bytesOf(text));
  return read.ok ? 'read' : read.problem.code;
};

const item = fc.record({
  table: fc.constantFrom(...BACKUP_TABLES),
  id: fc.stringMatching(/^[\w-]{1,20}$/),
  text: fc.string({ unit: 'grapheme' }).filter((text) => text.isWellFormed()),
});
const backups: fc.Arbitrary<Backup> = fc.record({
  at: fc
    .date({ noInvalidDate: true, min: new Date(0), max: new Date('2100-01-01') })
    .map((d) => d.toISOString()),
  items: fc.uniqueArray(item, { selector: ({ table, id }) => `${table} ${id}`, maxLength: 20 }),
  small: fc.constant({ 'tidemark-settings': '{}' }),
});

const GOOD: Backup = {
  at: '2026-06-08T10:00:00.000Z',
  items: [{ table: 'cases', id: 'a', text: 'one' }],
  small: {},
};
const text = (): string => new TextDecoder().decode(backupBytes(GOOD));

describe('a backup', () => {
  test('out and in again is the same', () => {
    fc.assert(
      fc.property(backups, (backup) => {
        expect(readBackup(backupBytes(backup))).toEqual({ ok: true, backup });
      }),
    );
  });

  test('of a newer version, cut short, or naming an entry twice is refused as such', () => {
    const whole = text();
    expect(code(whole.replace('"version": 1', '"version": 2'))).toBe('newer-backup');
    expect(code(whole.slice(0, whole.length - 20))).toBe('cut-short');
    const twice = backupBytes({ ...GOOD, items: [...GOOD.items, ...GOOD.items] });
    expect(readBackup(twice)).toEqual({ ok: false, problem: { code: 'twice', id: 'a' } });
  });
});

describe('a hostile file', () => {
  test.each([
    ['another program’s', '{"format":"other"}'],
    ['a case file', '{"format":"tidemark-case","version":1}'],
    [
      'a table that is not ours',
      '{"format":"tidemark-backup","version":1,"at":"2026-06-08T10:00:00Z","items":[{"table":"small","id":"a","text":""}]}',
    ],
    [
      'an id that is a path',
      '{"format":"tidemark-backup","version":1,"at":"2026-06-08T10:00:00Z","items":[{"table":"cases","id":"../a","text":""}]}',
    ],
    [
      'a name that reaches into every object',
      '{"format":"tidemark-backup","version":1,"__proto__":{"x":1},"at":"2026-06-08T10:00:00Z","items":[]}',
    ],
    [
      'a constructor',
      '{"format":"tidemark-backup","version":1,"at":"2026-06-08T10:00:00Z","items":[],"small":{"constructor":"x"}}',
    ],
  ])('%s is no backup', (_, given) => {
    expect(code(given)).toBe('not-a-backup');
    expect(({} as Record<string, unknown>)['x']).toBeUndefined();
  });

  test('an empty file, and another of our own, are named as what they are', () => {
    expect(code(' ')).toBe('blank');
    for (const kind of ['case', 'talk'])
      expect(readBackup(new TextEncoder().encode(`{\n "format": "tidemark-${kind}"}`))).toEqual({
        ok: false,
        problem: { code: 'not-a-backup', kind },
      });
  });

  test('nested without end, or in another encoding, is refused', () => {
    const deep = `{"format":"tidemark-backup","a":${'['.repeat(100_000)}${']'.repeat(100_000)}}`;
    expect(code(deep)).toBe('too-deep');
    const wide = new Uint8Array([0xff, 0xfe, ...bytesOf('{"format":"tidemark-backup"}')]);
    expect(readBackup(wide)).toEqual({ ok: false, problem: { code: 'not-a-backup' } });
  });

  test('larger than any honest one is refused before it is read', () => {
    expect(backupTooLarge(MAX_BACKUP_BYTES)).toBeUndefined();
    expect(backupTooLarge(MAX_BACKUP_BYTES + 1)).toMatchObject({ code: 'too-large' });
  });

  test('with any change to its bytes is refused by a code or read as a backup', () => {
    const whole = bytesOf(text());
    let refused = 0;
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat({ max: whole.length - 1 }), fc.nat({ max: 255 })), {
          maxLength: 8,
        }),
        fc.nat({ max: whole.length }),
        (changes, length) => {
          const bytes = whole.slice(0, length);
          for (const [at, byte] of changes) if (at < length) bytes[at] = byte;
          const read = readBackup(bytes);
          if (!read.ok) {
            refused += 1;
            expect(CODES).toContain(read.problem.code);
          } else {
            // what is read is sound: it is written and read again as the same
            expect(readBackup(backupBytes(read.backup))).toEqual(read);
          }
        },
      ),
      { numRuns: MALFORMED },
    );
    // nearly every one is cut short
    expect(refused).toBeGreaterThan(0);
  });

  test(`malformed, ${written(MALFORMED)} times, is refused by a code or read as a backup`, () => {
    const whole = text();
    let refused = 0;
    fc.assert(
      fc.property(fc.oneof(malformedText([whole]), malformedJson([whole])), (malformed) => {
        const read = reading('backup', () => readBackup(bytesOf(malformed)));
        if (!read.ok) {
          refused += 1;
          expect(CODES).toContain(read.problem.code);
          return;
        }
        for (const { table, id, text: held } of read.backup.items) {
          expect(BACKUP_TABLES).toContain(table);
          expect([typeof id, typeof held]).toEqual(['string', 'string']);
        }
      }),
      { numRuns: MALFORMED, seed: 2026 },
    );
    expect(refused).toBeGreaterThan(0);
    expect({}).not.toHaveProperty('items');
  });
});
