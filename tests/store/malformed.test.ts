/**
 * Ten thousand malformed files of each format (a tenth of them every day), by a fixed seed: each is refused with a sentence or read
 * as something that is sound, and nothing outside the reader is changed.
 */
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { parseCaseText } from '../../src/lib/case/file.ts';
import { caseText } from '../../src/lib/case/raw.ts';
import { parseTalkText, talkText } from '../../src/lib/lecture/talkFile.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { openEnvelope } from '../../src/lib/store/envelope.ts';
import { readLock } from '../../src/lib/store/lock.ts';
import { ownRow, readOwnRow } from '../../src/lib/store/own.ts';
import { readCsv, TEMPLATE, writeCsv } from '../../src/lib/store/table.ts';
import { en } from '../../src/lib/words/en.ts';
import { malformedJson, malformedText } from '../support/malform.ts';
import { runs, written } from '../support/runs.ts';
import { reading } from '../support/slowest.ts';

const RUNS = { numRuns: runs(10_000), seed: 2026 };

const CASE = caseText(demoCase(ATLAS));
const SHORT_CASE = caseText({ ...demoCase(ATLAS), visits: demoCase(ATLAS).visits.slice(0, 1) });
const CSV = writeCsv(TEMPLATE);
const OWN = ownRow({
  kind: 'source',
  id: 'own-1',
  name: 'A table',
  tier: 'textbook',
  on: true,
  rows: [...TEMPLATE],
}).text;
const TALK = JSON.stringify({
  format: 'tidemark-talk',
  version: 1,
  title: 'A talk',
  steps: [
    { caption: 'First', lanes: ['moro'], ageDays: 300, fromDays: 200, toDays: 500 },
    { caption: 'Then', lanes: ['moro', 'rooting'], ageDays: 320, fromDays: 200, toDays: 500 },
  ],
});

afterEach(() => {
  vi.restoreAllMocks();
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  expect((globalThis as Record<string, unknown>).polluted).toBeUndefined();
});

/** Sentences, each of which says something. */
const said = (sentences: readonly string[]): void => {
  expect(sentences.length).toBeGreaterThan(0);
  for (const sentence of sentences) expect(sentence.trim().length).toBeGreaterThan(10);
};

const refusals = { count: 0 };
const counted = (isRead: boolean): void => {
  if (!isRead) refusals.count += 1;
};

describe(`${written(RUNS.numRuns)} malformed files`, () => {
  it.each([
    ['letters', malformedText([CASE, SHORT_CASE])],
    ['values', malformedJson([SHORT_CASE])],
  ])('of a case, in its %s', (_, files) => {
    refusals.count = 0;
    fc.assert(
      fc.property(files, (text) => {
        const parsed = reading('case', () => parseCaseText(text, ATLAS));
        counted(parsed.ok);
        if (parsed.ok) {
          // what is read is sound: it opens again as the same
          const again = parseCaseText(caseText(parsed.value), ATLAS);
          expect(again.ok && again.value).toEqual(parsed.value);
        } else said(parsed.problems.map(en.problems.problemWords));
      }),
      RUNS,
    );
    expect(refusals.count).toBeGreaterThan(0);
  });

  it.each([
    ['letters', malformedText([TALK])],
    ['values', malformedJson([TALK])],
  ])('of a talk, in its %s', (_, files) => {
    refusals.count = 0;
    fc.assert(
      fc.property(files, (text) => {
        const parsed = reading('talk', () => parseTalkText(text));
        counted(parsed.ok);
        if (parsed.ok) {
          const again = parseTalkText(talkText(parsed.talk));
          expect(again.ok && again.talk).toEqual(parsed.talk);
        } else said(parsed.problems.map(en.talks.faultSentence));
      }),
      RUNS,
    );
    expect(refusals.count).toBeGreaterThan(0);
  });

  it('of a source of one’s own as CSV', () => {
    vi.spyOn(console, 'warn').mockReturnValue(); // Papa Parse tells of every column named twice
    refusals.count = 0;
    fc.assert(
      fc.property(malformedText([CSV]), (text) => {
        const read = reading('own table', () => readCsv(text));
        counted(read.ok);
        if (!read.ok) said([en.ownPages.tableSentence(read.problem)]);
        else
          for (const row of read.rows)
            for (const cell of Object.values(row)) expect(typeof cell).toBe('string');
      }),
      RUNS,
    );
    expect(refusals.count).toBeGreaterThan(0);
  });

  it.each([
    ['letters', malformedText([OWN])],
    ['values', malformedJson([OWN])],
  ])('of an entry of one’s own, in its %s', (_, files) => {
    refusals.count = 0;
    fc.assert(
      fc.property(files, (text) => {
        const entry = reading('own entry', () => readOwnRow({ id: 'own-1', text }));
        counted(entry !== undefined);
        if (entry) expect(readOwnRow(ownRow(entry))).toEqual(entry);
      }),
      RUNS,
    );
    expect(refusals.count).toBeGreaterThan(0);
  });

  it('of a lock’s record', () => {
    const lock = JSON.stringify({
      format: 'tidemark-lock',
      version: 1,
      derivation: {
        algorithm: 'argon2id',
        memoryKiB: 47104,
        passes: 2,
        lanes: 1,
        salt: '00'.repeat(16),
      },
      wrapped: 'ab'.repeat(60),
    });
    refusals.count = 0;
    fc.assert(
      fc.property(malformedJson([lock]), (text) => {
        const read = reading('lock', () => readLock(text));
        counted(read !== undefined);
        if (!read) return;
        // whatever it asks for can be paid
        expect(read.derivation.memoryKiB * read.derivation.passes).toBeLessThan(3e6);
      }),
      RUNS,
    );
    expect(refusals.count).toBeGreaterThan(0);
  });

  it('of an encrypted file, before its passphrase is stretched', async () => {
    // a work factor of 1: what is tried is the reader, not the stretching
    const file = [
      'age-encryption.org/v1',
      '-> scrypt rF0/NwblUHHTpgQgRpe5CQ 1',
      'gUjEymFKMVXQEKdMMHL24oYexjE3TIC0O0zGSqJ2aUY',
      '--- IOXiQYStkoT1mvZW2tFOqZdhRVvj58egABx/sWfZQbc',
      'x'.repeat(60),
    ].join('\n');
    let tried = 0;
    const heavy = /-> scrypt \S* (?:1\d|20)\n/; // an honest wait, not a fault
    await fc.assert(
      fc.asyncProperty(malformedText([file]), async (text) => {
        if (heavy.test(text)) return;
        tried += 1;
        const bytes = new TextEncoder().encode(text);
        const opened = await reading('encrypted', () => openEnvelope(bytes, 'a passphrase'));
        expect(opened.ok).toBe(false);
        if (!opened.ok) said([en.lock.envelopeWords[opened.problem]]);
      }),
      RUNS,
    );
    expect(tried).toBeGreaterThan(0);
  });
});
