/** Bundles as they should not be: each is read rightly or refused with a sentence, and nothing is thrown. */
import fc from 'fast-check';
import { beforeEach, expect, test } from 'vitest';
import { ATLAS } from '../../../src/lib/atlas/atlas.ts';
import { parseCaseText } from '../../../src/lib/case/file.ts';
import { caseText } from '../../../src/lib/case/raw.ts';
import { codeNames } from '../../../src/lib/exchange/codeNames.ts';
import { openBundleText, type OpenedBundle } from '../../../src/lib/exchange/fhir/open.ts';
import { caseBundle } from '../../../src/lib/exchange/fhir/write.ts';
import { bundleSentence, leftOutSentence } from '../../../src/lib/words/en/exchange.ts';
import { hostileBytes, hostileJson, hostileText } from '../../support/hostile.ts';
import { record } from '../../support/records.ts';
import { runs, written } from '../../support/runs.ts';
import { reading } from '../../support/slowest.ts';

const [SWAPPED, CUT, CODED] = [runs(6000), runs(4000), runs(1000)];
const NAMES = codeNames(ATLAS);
const [some] = [fc.sample(record, { numRuns: 40, seed: 7 })];
const bundles = some.map((one, index) =>
  caseBundle(`k${index}`, one, NAMES, '2026-06-08T10:00:00Z'),
);
/** Without the code systems, which are most of a bundle's text and are read over. */
const valid = fc.constantFrom(
  ...bundles.map(({ entry = [], ...bundle }) => ({
    ...bundle,
    entry: entry.filter(({ resource }) => resource?.resourceType !== 'CodeSystem'),
  })),
);

const read = (text: string): OpenedBundle =>
  reading('FHIR bundle', () => openBundleText(text, ATLAS));

const seen = { read: 0, refused: 0 };
beforeEach(() => {
  Object.assign(seen, { read: 0, refused: 0 });
});
/** Both happen, or nothing is learned of one of them. */
const bothSeen = (): void => {
  expect(seen.read).toBeGreaterThan(0);
  expect(seen.refused).toBeGreaterThan(0);
};

/** What must hold of any answer: a sentence for each problem, or records that pass their own door. */
function holds(opened: OpenedBundle): void {
  seen[opened.ok ? 'read' : 'refused'] += 1;
  if (opened.ok) {
    expect(leftOutSentence(opened.leftOut) ?? 'x').not.toMatch(/undefined|NaN|\[object/);
    for (const { record: one } of opened.children)
      expect(parseCaseText(caseText(one), ATLAS)).toEqual({ ok: true, value: one });
  } else {
    expect(opened.problems.length).toBeGreaterThan(0);
    for (const problem of opened.problems) {
      const sentence = bundleSentence(problem);
      expect(sentence).toMatch(/^\S.*[.?]$/s);
      expect(sentence).not.toMatch(/undefined|NaN|\[object/);
      expect(sentence.length).toBeLessThan(2000);
    }
  }
  expect({}).not.toHaveProperty('entry');
}

test(`${written(SWAPPED)} bundles with parts swapped, renamed, doubled, nested or taken away`, () => {
  fc.assert(
    fc.property(hostileJson(valid), (text) => holds(read(text))),
    { numRuns: SWAPPED },
  );
  bothSeen();
});

test(`${written(CUT)} bundles with their text cut, flipped and swollen`, () => {
  fc.assert(
    fc.property(hostileText(valid.map((one) => JSON.stringify(one))), (text) => holds(read(text))),
    { numRuns: CUT },
  );
  bothSeen();
});

test(`${written(CODED)} bundles in wrong encodings`, () => {
  fc.assert(
    fc.property(hostileBytes(valid.map((one) => JSON.stringify(one))), (bytes) =>
      holds(read(new TextDecoder().decode(bytes))),
    ),
    { numRuns: CODED },
  );
  bothSeen();
});

test('what is too large, too deep or too long is refused before it is looked into', () => {
  const first = (text: string): string => {
    const opened = openBundleText(text, ATLAS);
    return opened.ok ? '' : bundleSentence(opened.problems[0]!);
  };
  expect(first(' '.repeat(20_000_001))).toMatch(/at most 20 MB/);
  expect(first(`${'['.repeat(200_000)}${']'.repeat(200_000)}`)).toMatch(/levels deep|not JSON/);
  expect(
    first(`{"resourceType":"Bundle","entry":${'{"a":'.repeat(50_000)}1${'}'.repeat(50_000)}}`),
  ).toMatch(/levels deep|not JSON/);
  expect(
    first(
      JSON.stringify({ resourceType: 'Bundle', entry: Array.from({ length: 20_001 }, () => 0) }),
    ),
  ).toMatch(/more than 20000 entries/);
  expect(first('{"resourceType":"Bundle","type":"collection"}')).toMatch(/holds no Patient/);
  expect(first('{"resourceType":"Patient"}')).toMatch(/single resource \(Patient\)/);
});
