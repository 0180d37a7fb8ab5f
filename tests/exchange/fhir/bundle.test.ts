/**
 * A record as an HL7 FHIR R4 bundle and back. Form and codes are checked by a FHIR validator, dates and
 * the single value of an observation by assertions of our own (FHIR R4, "Date/Time" and "Observation").
 */
import fc from 'fast-check';
import { Fhir } from 'fhir';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../../src/lib/atlas/atlas.ts';
import type { Case } from '../../../src/lib/case/case.ts';
import { latest, OLDER_VERSION } from '../../../src/lib/case/older.ts';
import { caseText, rawOf } from '../../../src/lib/case/raw.ts';
import { codeNames } from '../../../src/lib/exchange/codeNames.ts';
import { openBundleText } from '../../../src/lib/exchange/fhir/open.ts';
import { carried } from '../../../src/lib/exchange/fhir/carried.ts';
import { readEntries } from '../../../src/lib/exchange/fhir/read.ts';
import { caseBundle } from '../../../src/lib/exchange/fhir/write.ts';
import { record } from '../../support/records.ts';
import { childCase } from '../../support/kestrel.ts';

const NAMES = codeNames(ATLAS);
const NOW = '2026-06-08T10:00:00Z';
const bundleText = (one: Case): string => JSON.stringify(caseBundle('k1', one, NAMES, NOW));

const read = (text: string): Case => {
  const opened = openBundleText(text, ATLAS);
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  expect(opened.leftOut).toEqual([]);
  return opened.children[0]!.record;
};

const KESTREL = childCase({ born: '2026-01-05', gestation: '33w1d', dating: 'last-period' }, [
  {
    on: '2026-05-18',
    examiner: 'PT 1',
    findings: [
      ['moro', 'left', 'weak'],
      ['moro', 'right', 'not-assessable', 'crying'],
    ],
    milestones: { sitting: false },
  },
]);

test('out and in is the same case', () => {
  fc.assert(
    fc.property(record, (one) => {
      expect(caseText(read(bundleText(one)))).toBe(caseText(one));
    }),
    { numRuns: 300 },
  );
});

test('which variant was tested goes out and comes in with its finding', () => {
  const one = childCase({ born: '2026-01-05', gestation: '40w0d' }, [
    {
      on: '2026-10-05',
      findings: [['protective-forward', 'left', 'elicited', 'quiet-alert', undefined, 'propping']],
    },
  ]);
  expect(bundleText(one)).toContain('"valueString":"\\"propping\\""');
  expect(read(bundleText(one)).visits[0]!.findings[0]!.variant).toBe('propping');
});

test('without ids, as bundles once were, has those of a child who is kept under its name', () => {
  const bundle = caseBundle('k1', KESTREL, NAMES, NOW);
  const isId = (one: unknown): boolean => JSON.stringify(one).includes('"valueString":"id"');
  const text = JSON.stringify(bundle, (name, value: unknown) =>
    name === 'extension' ? (value as unknown[]).filter((one) => !isId(one)) : value,
  );
  expect(text).not.toContain(rawOf(KESTREL).visits[0]!.id);
  const visits = rawOf(KESTREL).visits.map((visit) => ({ ...visit, id: undefined }));
  const raw = latest({ ...rawOf(KESTREL), version: OLDER_VERSION, visits }, 'k1');
  expect(rawOf(read(text)).visits).toEqual(raw.visits);
  expect(rawOf(read(bundleText(KESTREL))).visits).toEqual(rawOf(KESTREL).visits);
});

test('in whatever order a server gives it back, it is the same case', () => {
  fc.assert(
    fc.property(record, fc.infiniteStream(fc.nat()), (one, chance) => {
      const bundle = caseBundle('k1', one, NAMES, NOW);
      const entry = (bundle.entry ?? [])
        .map((part) => ({ part, by: chance.next().value as number }))
        .toSorted((a, b) => a.by - b.by)
        .map(({ part }) => part);
      expect(caseText(read(JSON.stringify({ ...bundle, entry })))).toBe(caseText(one));
    }),
    { numRuns: 100 },
  );
});

/** Every object within a value. */
function* objects(value: unknown): Generator<Record<string, unknown>> {
  if (typeof value !== 'object' || value === null) return;
  if (!Array.isArray(value)) yield value as Record<string, unknown>;
  for (const part of Object.values(value)) yield* objects(part);
}

/** FHIR R4, "Date/Time": the forms of date, dateTime and instant, as its tables print them. */
const DATE = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;
const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)$/;

/** What a validator calls wrong, as text. */
const faults = (messages: readonly { severity?: string | undefined }[]): string[] =>
  messages
    .filter(({ severity }) => severity === 'error' || severity === 'fatal')
    .map((message) => JSON.stringify(message));

test('every bundle is valid, with dates as FHIR writes them and one value at most', () => {
  const validator = new Fhir();
  fc.assert(
    fc.property(record, (one) => {
      const bundle = caseBundle('k1', one, NAMES, NOW);
      const { messages } = validator.validate(bundle, { errorOnUnexpected: true });
      expect(faults(messages)).toEqual([]);
      expect(bundle.timestamp).toMatch(INSTANT);
      for (const part of objects(bundle)) {
        for (const name of ['birthDate', 'effectiveDateTime', 'valueDateTime', 'authoredOn'])
          if (name in part) expect(part[name], name).toMatch(DATE);
        const values = Object.keys(part).filter((name) => /^value[A-Z]/.test(name));
        expect(values.length).toBeLessThanOrEqual(1);
        for (const text of Object.values(part))
          if (typeof text === 'string') expect(text).toMatch(/^[ \r\n\t\S]+$/);
      }
      const urls = (bundle.entry ?? []).map(({ fullUrl }) => fullUrl);
      expect(new Set(urls).size).toBe(urls.length);
      for (const { reference } of [...objects(bundle)])
        if (typeof reference === 'string') expect(urls).toContain(reference);
    }),
    { numRuns: 40 },
  );
});

test('the validator is not blind: what is broken is found', () => {
  const validator = new Fhir();
  const broken = structuredClone(caseBundle('k1', KESTREL, NAMES, NOW)) as unknown as {
    entry: { resource: Record<string, unknown> }[];
  };
  broken.entry[0]!.resource.colour = 'red';
  delete broken.entry[1]!.resource.status;
  const { messages } = validator.validate(broken, { errorOnUnexpected: true });
  expect(faults(messages).length).toBeGreaterThanOrEqual(2);
});

test('a finding says side, response, state, method and date with codes that are known', () => {
  const bundle = caseBundle('k1', KESTREL, NAMES, NOW);
  const observation = (bundle.entry ?? [])
    .map(({ resource }) => resource)
    .find((one) => one?.resourceType === 'Observation' && one.bodySite !== undefined);
  expect(observation).toMatchObject({
    status: 'final',
    effectiveDateTime: '2026-05-18',
    code: { coding: [{ system: 'urn:tidemark:reflex', code: 'moro', display: 'Moro reflex' }] },
    // SNOMED CT 7771000 is Left: HL7 Europe, value set of body structure laterality
    bodySite: {
      coding: [
        { system: 'urn:tidemark:side', code: 'left' },
        { system: 'http://snomed.info/sct', code: '7771000' },
      ],
    },
    valueCodeableConcept: { coding: [{ system: 'urn:tidemark:response', code: 'weak' }] },
    method: { coding: [{ system: 'urn:tidemark:record', code: 'examination' }] },
    component: [{ valueCodeableConcept: { coding: [{ code: 'quiet-alert' }] } }],
  });
});

test('gestation is told in days, the due date as derived from it', () => {
  const text = bundleText(KESTREL);
  const bundle = JSON.parse(text) as ReturnType<typeof caseBundle>;
  const coded = (code: string) =>
    (bundle.entry ?? [])
      .map(({ resource }) => resource)
      .find((one) => one?.resourceType === 'Observation' && one.code.coding?.[0]?.code === code);
  // LOINC 11884-4 and 11778-8: HL7, birth and fetal death reporting; International Patient Summary
  expect(coded('11884-4')).toMatchObject({ valueQuantity: { value: 232, code: 'd' } });
  expect(coded('11778-8')).toMatchObject({ valueDateTime: '2026-02-22' });
  expect(coded('11778-8')).toHaveProperty('derivedFrom');
  expect(coded('11884-4')).not.toHaveProperty('derivedFrom');
});

describe("a bundle of somebody else's", () => {
  const subject = { reference: 'Patient/p1' };
  const loinc = (code: string) => ({ coding: [{ system: 'http://loinc.org', code }] });
  const foreign = (...more: object[]) =>
    JSON.stringify({
      resourceType: 'Bundle',
      type: 'searchset',
      entry: [
        {
          resource: {
            resourceType: 'Patient',
            id: 'p1',
            birthDate: '2026-01-05',
            name: [{ given: ['Little'], family: 'Plover' }],
          },
        },
        {
          resource: {
            resourceType: 'Observation',
            status: 'final',
            subject,
            code: loinc('11884-4'),
            valueQuantity: { value: 36, code: 'wk', system: 'http://unitsofmeasure.org' },
          },
        },
        ...more.map((resource) => ({ resource })),
      ],
    });
  const finding = (more: object) => ({
    resourceType: 'Observation',
    status: 'final',
    subject,
    effectiveDateTime: '2026-05-18T23:30:00-05:00',
    performer: [{ display: 'PT 2' }],
    code: { coding: [{ system: 'urn:tidemark:reflex', code: 'moro' }] },
    bodySite: { coding: [{ system: 'http://snomed.info/sct', code: '24028007' }] },
    valueCodeableConcept: { coding: [{ system: 'urn:tidemark:response', code: 'weak' }] },
    ...more,
  });

  test('is read as far as it is understood; the rest is told', () => {
    const opened = openBundleText(
      foreign(
        finding({}),
        finding({ status: 'entered-in-error' }),
        { resourceType: 'Immunization', status: 'completed' },
        { ...finding({}), code: { text: 'Head circumference' } },
        finding({ subject: { reference: 'Patient/other' } }),
      ),
      ATLAS,
    );
    if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
    const { child, visits } = opened.children[0]!.record;
    expect(child).toMatchObject({ label: 'Little Plover', birth: { gestationalDays: 252 } });
    // the day as it was written there, whatever the zone
    expect(visits).toMatchObject([
      { on: '2026-05-18', examiner: 'PT 2', findings: [{ side: 'right', response: 'weak' }] },
    ]);
    expect(opened.leftOut.map(({ entry, why }) => [entry, why])).toEqual([
      [4, 'entered-in-error'],
      [5, 'not-used'],
      [6, 'unknown-code'],
      [7, 'no-child'],
    ]);
  });

  test.each([
    [{ bodySite: undefined }, { code: 'entry', entry: 3, field: 'bodySite' }],
    [{ valueCodeableConcept: 'weak' }, { code: 'entry', entry: 3, field: 'valueCodeableConcept' }],
    [{ effectiveDateTime: 7 }, { code: 'entry', entry: 3, field: 'effectiveDateTime' }],
  ])('%j is refused, naming the entry', (more, problem) => {
    const opened = openBundleText(foreign(finding(more)), ATLAS);
    expect(opened).toMatchObject({ ok: false, problems: [problem] });
  });

  test('a field nobody here knows travels on and harms nothing', () => {
    const carrying = (name: string, value: string) => ({
      url: 'urn:tidemark:field',
      extension: [
        { url: 'name', valueString: name },
        { url: 'value', valueString: value },
      ],
    });
    const bundle = JSON.parse(foreign()) as { entry: { resource: object }[] };
    Object.assign(bundle.entry[0]!.resource, {
      extension: [
        carrying('__proto__', '{"polluted":true}'),
        carrying('constructor', '1'),
        carrying('visits', '[{"on":"x"}]'),
        carrying('someDay', '{"a":[1]}'),
        carrying('child.nickname', '"Bill"'),
        carrying('tags', '["twin"]'),
      ],
    });
    const { children } = readEntries(bundle);
    expect(children[0]!.raw).toMatchObject({ someDay: { a: [1] }, child: { nickname: 'Bill' } });
    const opened = openBundleText(JSON.stringify(bundle), ATLAS);
    if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
    expect(opened.children[0]!.record.visits).toEqual([]);
    expect(opened.children[0]!.record.tags).toEqual(['twin']);
    expect({}).not.toHaveProperty('polluted');
  });
});

test('a field that is added to the record later is carried by its name, as it is', () => {
  expect(carried({ on: '2026-01-05', later: { who: ['a\u00a0b'] } }, ['on'])).toEqual({
    extension: [
      {
        url: 'urn:tidemark:field',
        extension: [
          { url: 'name', valueString: 'later' },
          { url: 'value', valueString: '{"who":["a\\u00a0b"]}' },
        ],
      },
    ],
  });
});
