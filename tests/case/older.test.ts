/**
 * Case files of version 1, read for ever: each says what it said, and its visits and decisions get the same
 * ids on every machine. The ids that are written out here were made by another library: version 5 of RFC 9562
 * as Python's `uuid.uuid5` has it.
 */
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { validate, version } from 'uuid';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { parseCaseText } from '../../src/lib/case/file.ts';
import { latest, OLDER_VERSION, type OlderCase } from '../../src/lib/case/older.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import { caseText, rawOf } from '../../src/lib/case/raw.ts';
import type { RawCase } from '../../src/lib/case/shape.ts';
import { DEMO_ID, DEMO_RAW } from '../../src/lib/examples/demo.ts';
import { EXAMPLES } from '../../src/lib/examples/examples.ts';
import { en } from '../../src/lib/words/en.ts';
import { caseWith, PLAIN } from '../support/payloads.ts';
import { rawRecord, record } from '../support/records.ts';
import { runs } from '../support/runs.ts';

const read = (text: string, of?: string): Case => {
  const parsed = parseCaseText(text, ATLAS, of);
  if (!parsed.ok) throw new Error(parsed.problems.map(en.problems.problemWords).join('\n'));
  return parsed.value;
};

const withoutId = <T extends { id: string }>({ id: _, ...rest }: T): Omit<T, 'id'> => rest;

/** A case as a file of version 1 would hold it. */
function older({ visits, decisions, ...rest }: RawCase): OlderCase {
  return {
    ...rest,
    version: OLDER_VERSION,
    visits: visits.map(withoutId),
    ...(decisions ? { decisions: decisions.map(withoutId) } : {}),
  };
}

const idsOf = ({ visits, decisions }: Case): string[] =>
  [...visits, ...decisions].map(({ id }) => id);

/** Every case that the stored copies of the database hold, as the Tidemark of its time wrote it. */
const stored = [1, 2, 3, 4].flatMap((of) => {
  const path = join(import.meta.dirname, '../store/versions', `${of}.json`);
  const { stores } = JSON.parse(readFileSync(path, 'utf8')) as {
    stores: Record<string, { rows: { id: string; text?: string; body?: string }[] }>;
  };
  return stores['cases']!.rows.map(({ id, text, body }) => ({ of, id, text: text ?? body ?? '' }));
});

describe('a case of version 1', () => {
  test('there are some', () => {
    expect(stored.length).toBeGreaterThan(4);
    for (const { text } of stored) expect(JSON.parse(text)).toMatchObject({ version: 1 });
  });

  test.each(stored)('$id in the database of version $of says what it said', ({ id, text }) => {
    const now = read(text, id);
    expect(older(rawOf(now))).toEqual(JSON.parse(text));
    expect(idsOf(read(text, id))).toEqual(idsOf(now));
  });

  test.each(EXAMPLES)('the invented $child.label says what it said', (raw) => {
    const { visits, decisions = [], ...now } = older(rawOf(read(JSON.stringify(raw))));
    const text = (list: readonly object[]): string[] =>
      list.map((one) => JSON.stringify(Object.entries(one).sort())).sort();
    expect(text(visits)).toEqual(text(raw.visits));
    expect(text(decisions)).toEqual(text(raw.decisions ?? []));
    expect(now.child).toEqual(raw.child);
    expect(now.sheet).toEqual(raw.sheet);
    expect(now.question).toBe(raw.question);
  });

  test('with every kind of text in it says what it said', () => {
    const raw = JSON.parse(JSON.stringify(caseWith(PLAIN))) as {
      visits: object[];
      decisions: { text: string }[];
    };
    const now = rawOf(read(JSON.stringify(raw)));
    expect(now.visits).toMatchObject(raw.visits);
    // blanks around the words of a decision have never been kept
    const decided = raw.decisions.map((one) => ({ ...one, text: one.text.trim() }));
    expect(now.decisions).toMatchObject(decided);
  });

  test('that has an id where none belongs is read as before', () => {
    const raw = older(DEMO_RAW);
    const odd = { ...raw, visits: raw.visits.map((visit) => ({ ...visit, id: 7 })) };
    expect(read(JSON.stringify(odd), DEMO_ID)).toEqual(read(JSON.stringify(raw), DEMO_ID));
  });

  test('gets the ids that another library makes of the same names', () => {
    expect(latest(older(DEMO_RAW), DEMO_ID).visits.map(({ id }) => id)).toEqual([
      'bfc49b84-de48-5e05-87e0-8acb0171b43e',
      '664f4deb-1f06-5a64-959f-99651086ea00',
      '7b8bcf35-dca5-5242-bf4c-4e3ef64d123f',
    ]);
  });
});

test('what was settled for a page of version 1 goes to the visit of its date and examiner', () => {
  const { on, examiner } = DEMO_RAW.visits[1]!;
  const page = (visit: string) => ({ visit, chosen: ['moro'], edits: [] });
  const family = { language: 'es', pronoun: 'she', calledName: '' };
  const pages = ['', `${on} ${examiner}`, '2001-01-01 Nobody'].map(page);
  const text = JSON.stringify({ ...older(DEMO_RAW), family: { ...family, pages } });
  const now = read(text, DEMO_ID).family?.pages.map(({ visit }) => visit);
  expect(now).toEqual(['', DEMO_RAW.visits[1]!.id, '2001-01-01 Nobody']);
});

test('the child one begins with has the ids of one who was kept before visits had any', () => {
  expect(DEMO_RAW).toEqual(latest(older(DEMO_RAW), DEMO_ID));
});

describe('any case', () => {
  test('has ids that are uuids and each stand once, of version 1 or 2', () => {
    fc.assert(
      fc.property(rawRecord, (raw) => {
        for (const text of [raw, older(raw)]) {
          const ids = idsOf(read(JSON.stringify(text)));
          expect(new Set(ids).size).toBe(ids.length);
          for (const id of ids) expect(validate(id)).toBe(true);
        }
        for (const id of idsOf(read(JSON.stringify(older(raw))))) expect(version(id)).toBe(5);
      }),
      { numRuns: runs(300, 60) },
    );
  });

  test('goes out and in again the same', () => {
    fc.assert(
      fc.property(record, (value) => {
        expect(read(caseText(value))).toEqual(value);
      }),
      { numRuns: runs(300, 60) },
    );
  });

  test('of version 1 becomes version 2 once: read again it is the same, wherever it is kept', () => {
    fc.assert(
      fc.property(rawRecord, fc.option(fc.string(), { nil: undefined }), (raw, of) => {
        const text = JSON.stringify(older(raw));
        const first = read(text, of);
        expect(read(text, of)).toEqual(first);
        expect(read(caseText(first), 'another')).toEqual(first);
        expect(older(rawOf(first))).toEqual(older(rawOf(read(JSON.stringify(raw)))));
      }),
      { numRuns: runs(300, 60) },
    );
  });

  test('of version 1 gets other ids under another name, and equal decisions are told apart', () => {
    const decision = { on: '2026-05-11', text: 'See again', who: '', by: '', done: false };
    const raw = { ...older(DEMO_RAW), decisions: [decision, decision] };
    const [one, other] = ['a', 'b'].map((of) => idsOf(read(JSON.stringify(raw), of)));
    expect(new Set([...one!, ...other!]).size).toBe(10);
  });
});

describe('a case of version 2', () => {
  const first = DEMO_RAW.visits[0]!;
  const withVisits = (...visits: RawCase['visits']) => {
    const parsed = parseRaw({ ...DEMO_RAW, visits }, ATLAS);
    return parsed.ok ? [] : parsed.problems.map(en.problems.problemWords);
  };

  test.each(['', '7', `${first.id}0`, first.id.toUpperCase(), `${first.id}\n`, '__proto__'])(
    'whose visit has the id %j is refused',
    (id) => {
      expect(withVisits({ ...first, id })).toEqual([
        expect.stringMatching(/^Visit 1 \(2026-01-12\), id: .* is not an id/s),
      ]);
    },
  );

  test('in which an id stands twice is refused, also where one is of a decision', () => {
    expect(withVisits(first, { ...first, on: '2026-01-13' })).toEqual([
      expect.stringMatching(/^Visit 2 \(2026-01-13\), id: has the id .* too/),
    ]);
    const { id } = first;
    const decision = { id, on: '2026-05-11', text: 'See again', who: '', by: '', done: false };
    const parsed = parseRaw({ ...DEMO_RAW, decisions: [decision] }, ATLAS);
    expect(parsed.ok ? [] : parsed.problems.map(({ code }) => code)).toEqual(['duplicate-id']);
  });

  test('without an id is refused', () => {
    const raw = { ...DEMO_RAW, visits: [withoutId(first)] };
    const parsed = parseCaseText(JSON.stringify(raw), ATLAS);
    expect(parsed.ok ? [] : parsed.problems.map(en.problems.problemWords)).toEqual([
      'Visit 1, id: is missing; fill it in.',
    ]);
  });
});
