/**
 * Files made to exhaust whoever reads them: endless text, brackets without end, numbers without measure,
 * lists of nothing, names in masses, packed zeros. Each is refused with a sentence or read, and what is
 * read is sound. They fill what their format allows in a thorough run, and a fiftieth of it in the everyday
 * one, but for the first of each. How long each takes is measured by the table of faults.
 */
import { gzipSync } from 'node:zlib';
import { afterAll, describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { parseCaseText, sizeProblem } from '../../src/lib/case/file.ts';
import { caseText } from '../../src/lib/case/raw.ts';
import { MAX_FILE_BYTES } from '../../src/lib/case/shape.ts';
import { MAX_TALK_BYTES, parseTalkText } from '../../src/lib/lecture/talkFile.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { readIncoming } from '../../src/lib/exchange/receive.ts';
import { readBackup } from '../../src/lib/store/backupFile.ts';
import { openEnvelope } from '../../src/lib/store/envelope.ts';
import { MAX_BUNDLE_BYTES, openBundleText } from '../../src/lib/exchange/fhir/open.ts';
import {
  MAX_SHEET_BYTES,
  MAX_SHEET_COLUMNS,
  MAX_SHEET_ROWS,
  readSheet,
} from '../../src/lib/exchange/sheet/read.ts';
import { MAX_ROWS, MAX_TABLE_BYTES, readCsv } from '../../src/lib/store/table.ts';
import { tableSentence } from '../../src/lib/words/en/ownPages.ts';
import { sheetSentence } from '../../src/lib/words/en/sheets.ts';
import { bytesOf, runs } from '../support/runs.ts';
import { reading } from '../support/slowest.ts';

afterAll(() => {
  expect({}).not.toHaveProperty('polluted');
});

/** So many copies of a piece as fit into a file of a size. */
const filled = (piece: string, bytes: number): string =>
  piece.repeat(Math.max(1, Math.floor(bytes / piece.length)));

const PIECES = [
  'x',
  '<',
  '<a ',
  '< ',
  '<!-- ',
  '&',
  '"',
  '\\',
  '\\u0041',
  '=',
  '\u202e',
  '\r\n',
  '\ufeff',
];
const NUMBERS = ['9'.repeat(100_000), '1e999999999', '-1e-999999999', `0.${'0'.repeat(100_000)}1`];

/** JSON that opens as a format does, with something without measure in the place of each of its fields. */
function* bombs(
  head: string,
  fields: readonly string[],
  bytes: number,
): Generator<[string, string]> {
  const room = bytesOf(bytes - 1000);
  yield ['[ without end, as large as can be', filled('[', bytes - 1000)];
  for (const open of ['[', '{"a":', '[{"visits":']) {
    yield [`${open} without end`, filled(open, room)];
    const close = open.replaceAll(/[^[{]/g, '').replaceAll('[', ']').replaceAll('{', '}');
    const depth = Math.floor(room / (open.length + close.length));
    const turned = close.split('').reverse().join('');
    const deep = `${open.repeat(depth)}1${turned.repeat(depth)}`;
    yield [`${open} to the bottom`, deep];
    for (const field of fields) yield [`${open} in ${field}`, `{${head},"${field}":${deep}}`];
  }
  for (const field of fields) {
    for (const piece of PIECES.slice(0, 4)) {
      const text = filled(JSON.stringify(piece).slice(1, -1), room);
      yield [`${JSON.stringify(piece)} in ${field}`, `{${head},"${field}":"${text}"}`];
    }
    for (const number of NUMBERS) yield [`a number in ${field}`, `{${head},"${field}":${number}}`];
    for (const one of ['0', '{}', '""', '{"on":"2026-01-01","findings":[]}', '{"resource":0}'])
      yield [`${one} in masses in ${field}`, `{${head},"${field}":[${filled(`${one},`, room)}0]}`];
    let names = '';
    for (let n = 0; names.length < room - 20; n++) names += `"${n.toString(36)}":0,`;
    yield [
      `names in masses in ${field}`,
      `{${head},"${field}":{${names}"__proto__":{"polluted":1}}}`,
    ];
  }
}

const CASE = caseText(demoCase(ATLAS));
const ZEROS = gzipSync(Buffer.alloc(50_000_000));

describe('made to exhaust', () => {
  test('a case', () => {
    const head = '"format":"tidemark-case","version":1';
    const child = '"child":{"label":"a","born":"2026-01-04","gestation":"39w0d"}';
    const finding = '{"reflex":"moro","side":"left","response":"weak"}';
    const visit = (n: number): string =>
      `{"on":"2026-03-01","examiner":"${n}","findings":[${filled(`${finding},`, 5000)}${finding}]}`;
    function* all(): Generator<[string, string]> {
      yield* bombs(head, ['child', 'visits', 'family'], MAX_FILE_BYTES);
      yield* bombs(`${head},${child}`, ['visits'], MAX_FILE_BYTES);
      yield* bombs(`${head},${child},"visits":[]`, ['question', 'tags'], MAX_FILE_BYTES);
      yield [
        'findings',
        `{${head},${child},"visits":[${Array.from({ length: 400 }, (_, n) => visit(n)).join()}]}`,
      ];
      const unknown =
        '{"reflex":"mooro and so on and on and on and on","side":"left","response":"weak"}';
      yield [
        'unknown names',
        `{${head},${child},"visits":[${Array.from({ length: 200 }, (_, n) => `{"on":"2026-03-01","examiner":"${n}","findings":[${filled(`${unknown},`, 24_000)}${unknown}]}`).join()}]}`,
      ];
      yield ['blanks', CASE + ' '.repeat(MAX_FILE_BYTES - CASE.length)];
    }
    let read = 0;
    for (const [name, text] of all()) {
      const parsed = reading('case', () => parseCaseText(text, ATLAS));
      if (parsed.ok) read += 1;
      else expect(parsed.problems.length, name).toBeGreaterThan(0);
    }
    expect(read).toBeGreaterThan(0); // the whole case with blanks behind it, at least
    expect(sizeProblem(MAX_FILE_BYTES + 1)).toMatchObject({ code: 'too-large' });
  });

  test('a talk', () => {
    const head = '"format":"tidemark-talk","version":1';
    function* all(): Generator<[string, string]> {
      yield* bombs(head, ['title', 'steps'], MAX_TALK_BYTES);
      yield* bombs(`${head},"title":"a"`, ['steps'], MAX_TALK_BYTES);
    }
    for (const [name, text] of all())
      expect(reading('talk', () => parseTalkText(text)).ok, name).toBe(false);
  });

  test('a FHIR bundle', () => {
    const bundle = '"resourceType":"Bundle","type":"collection"';
    const born = '"resourceType":"Patient","birthDate":"2026-01-05"';
    const patient = (more: string): string => `{"resource":{${born},${more}}}`;
    const moro =
      '{"resource":{"resourceType":"Observation","subject":{"reference":"Patient/p"},"code":{"coding":[{"system":"urn:tidemark:reflex","code":"moro"}]},"effectiveDateTime":"2026-05-18","bodySite":{"coding":[{"system":"urn:tidemark:side","code":"left"}]},"valueCodeableConcept":{"coding":[{"system":"urn:tidemark:response","code":"weak"}]}}}';
    const MANY = runs(19_990);
    const whole = (...entries: string[]): string => `{${bundle},"entry":[${entries.join()}]}`;
    function* all(): Generator<[string, string]> {
      yield* bombs(bundle, ['entry'], MAX_BUNDLE_BYTES);
      for (const field of ['identifier', 'name', 'extension'])
        for (const one of ['0', '{}', '{"system":"urn:ietf:rfc:3986","value":"a"}']) {
          const many = `"${field}":[${filled(`${one},`, bytesOf(MAX_BUNDLE_BYTES - 1000))}0]`;
          yield [`${one} in masses in ${field}`, whole(patient(many))];
        }
      yield ['findings', whole(patient('"id":"p"'), ...Array.from({ length: MANY }, () => moro))];
      yield ['children', whole(...Array.from({ length: MANY }, (_, n) => patient(`"id":"p${n}"`)))];
    }
    for (const [name, text] of all())
      expect(reading('FHIR bundle', () => openBundleText(text, ATLAS)).ok, name).toBe(false);
  });

  test("a clinic's sheet and a table of one's own", () => {
    const table = 'reflex,appears,integrates,note\n';
    let [refused, tried] = [0, 0];
    for (const piece of [
      ...PIECES,
      ...NUMBERS,
      ',',
      ';',
      '\t',
      '|',
      ',\n',
      '"\n',
      '",',
      '""',
      "'=",
    ])
      for (const before of ['', table, 'a,b\n1,"', 'Child;Date;Reflex;Side;Result\n']) {
        const name = JSON.stringify([before, piece.slice(0, 20)]);
        const sheetText = before + filled(piece, bytesOf(MAX_SHEET_BYTES) - before.length);
        const sheet = reading("a clinic's sheet", () => readSheet(sheetText));
        if (!sheet.ok) expect(sheetSentence(sheet.problem), name).toMatch(/^[^\n]+\.$/);
        else {
          expect(sheet.sheet.rows.length, name).toBeLessThanOrEqual(MAX_SHEET_ROWS);
          expect(sheet.sheet.header.length, name).toBeLessThanOrEqual(MAX_SHEET_COLUMNS);
        }
        const ownText = before + filled(piece, bytesOf(MAX_TABLE_BYTES) - before.length);
        const own = reading("one's own table", () => readCsv(ownText));
        if (!own.ok) expect(tableSentence(own.problem), name).toMatch(/^[^\n]+\.$/);
        else expect(own.rows.length, name).toBeLessThanOrEqual(MAX_ROWS);
        refused += [sheet, own].filter(({ ok }) => !ok).length;
        tried += 2;
      }
    // nearly all of it is no table, and hardly anything may be read
    expect(refused / tried).toBeGreaterThan(0.8);
  });

  test('a backup', () => {
    const LARGE_BACKUP = 20_000_000;
    const head = '"format":"tidemark-backup","version":1,"at":"2026-06-08T10:00:00.000Z"';
    function* all(): Generator<[string, string]> {
      yield* bombs(head, ['items'], LARGE_BACKUP);
      yield* bombs(`${head},"items":[]`, ['small'], LARGE_BACKUP);
    }
    for (const [name, text] of all()) {
      const bytes = new TextEncoder().encode(text);
      expect(reading('backup', () => readBackup(bytes)).ok, name).toBe(false);
    }
  });

  test('an encrypted file', async () => {
    for (const piece of PIECES)
      for (const before of [
        'age-encryption.org/v1\n',
        '-----BEGIN AGE ENCRYPTED FILE-----\n',
        'age-encryption.org/v1\n-> scrypt a 1\n',
      ]) {
        const bytes = new TextEncoder().encode(before + filled(piece, bytesOf(5_000_000)));
        const opened = await reading('encrypted file', () => openEnvelope(bytes, 'a passphrase'));
        expect(opened.ok).toBe(false);
      }
  });

  test('packed zeros, which nothing here unpacks', async () => {
    const zip = Buffer.concat([Buffer.from('PK\u0003\u0004'), ZEROS]);
    for (const [name, bytes] of [
      ['case.json', ZEROS],
      ['sheet.csv', zip],
      ['sheet.xlsx', zip],
    ] as const) {
      const file = {
        name,
        size: bytes.length,
        arrayBuffer: () => Promise.resolve(Uint8Array.from(bytes).buffer),
      };
      const read = await reading('any file', () => readIncoming(file, ATLAS, []));
      expect(read.kind, name).toBe('refused');
    }
  });
});
