/** A finding taken out of a visit lies in the bin by itself, goes back, and a corrected one does not flood it. */
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Side } from '../../src/lib/atlas/types.ts';
import type { Response } from '../../src/lib/case/finding.ts';
import { rawOf } from '../../src/lib/case/raw.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import { MAX_FINDINGS, type RawFinding, type RawVisit } from '../../src/lib/case/shape.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { Desk } from '../../src/lib/repository/cases.svelte.ts';
import { rawVisit } from '../../src/lib/repository/edits.ts';
import { spotOf, withFindingBack } from '../../src/lib/repository/findingParts.ts';
import { goneFromCase, readFindingPart } from '../../src/lib/repository/parts.ts';
import { blankVisit, withResponse } from '../../src/lib/drafts/visitEdits.ts';
import type { Rows } from '../../src/lib/store/rows.ts';
import { memoryWith } from '../support/rows.ts';

const record = demoCase(ATLAS);
const HOUR_MS = 3_600_000;
/** The visit that all of this is about, and a finding of it. */
const { id: ID } = record.visits[1]!;
const visit = rawVisit(record, ID)!;
const finding = visit.findings[1]!;
const other = (Object.keys({ weak: 0, brisk: 0 }) as Response[]).find(
  (response) => response !== finding.response,
)!;

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'] });
});

afterEach(() => {
  vi.useRealTimers();
});

async function deskOn(rows: Rows): Promise<Desk> {
  const desk = new Desk(ATLAS, [], undefined);
  await desk.load(rows);
  return desk;
}

const opened = async (): Promise<{ rows: Rows; desk: Desk }> => {
  const rows = memoryWith([{ id: 'kestrel', record }]);
  return { rows, desk: await deskOn(rows) };
};

/** What a touch on a response, or on none, does, as far as it is written. */
async function touch(
  desk: Desk,
  response: Response | undefined,
  { reflex, side, state } = finding,
): Promise<void> {
  const now = rawVisit(desk.open!.record, ID)!;
  desk.putVisit(withResponse(now, reflex, [side as Side], response, state as 'quiet-alert'));
  await desk.written;
}

const binned = async (rows: Rows) =>
  (await rows.read('bin')).map(({ text }) => {
    const { table, id, text: part } = JSON.parse(text) as Record<'table' | 'id' | 'text', string>;
    return { table, id, part: readFindingPart(part)! };
  });

const responses = async (rows: Rows): Promise<string[]> =>
  (await binned(rows)).map(({ part }) => part.finding.response);

describe('a finding that stood before', () => {
  test('lies in the bin when it is taken out, whole, and goes back in where it stood', async () => {
    const { rows, desk } = await opened();
    await touch(desk, undefined);
    expect(await binned(rows)).toEqual([
      {
        table: 'findings',
        id: 'kestrel',
        part: { visit: ID, on: visit.on, examiner: visit.examiner, at: 1, finding },
      },
    ]);
    const later = await deskOn(rows);
    const [item] = await binned(rows);
    const back = withFindingBack(later.open!.record, item!.part, ATLAS);
    expect(back).toEqual(record);
  });

  test('is out of the bin again after undo, and in it again after redo', async () => {
    const { rows, desk } = await opened();
    await touch(desk, undefined);
    for (const [step, count] of [
      [() => desk.undo(), 0],
      [() => desk.redo(), 1],
    ] as const) {
      step();
      await desk.written;
      expect(await rows.read('bin')).toHaveLength(count);
    }
  });

  test('only corrected is not taken out, and taken out then it lies there as it was corrected', async () => {
    const { rows, desk } = await opened();
    await touch(desk, other);
    expect(await rows.read('bin')).toEqual([]);
    await touch(desk, undefined);
    expect(await responses(rows)).toEqual([other]);
  });

  test('touched out and in again just so, it is what it was; touched out again it lies there again', async () => {
    const { rows, desk } = await opened();
    const plain = { ...finding, note: '', state: 'not-recorded' };
    desk.putVisit({
      ...visit,
      findings: visit.findings.map((one) => (one === finding ? plain : one)),
    });
    await desk.written;
    for (const [response, count] of [
      [undefined, 1],
      [plain.response as Response, 0],
      [undefined, 1],
    ] as const) {
      await touch(desk, response, plain);
      expect(await rows.read('bin')).toHaveLength(count);
    }
  });

  test('says nothing of itself in the name of its row, which no lock seals', async () => {
    const { rows, desk } = await opened();
    await touch(desk, undefined);
    const [row] = await rows.read('bin');
    expect(row?.id).toMatch(/^findings kestrel [0-9a-f]{18}$/);
  });

  test('goes with its visit, and not beside it', async () => {
    const { rows, desk } = await opened();
    desk.removeVisit(ID);
    await desk.written;
    expect((await binned(rows)).map(({ table }) => table)).toEqual(['visits']);
  });

  test('stays where its visit moves to another date', async () => {
    const { rows, desk } = await opened();
    desk.putVisit({ ...visit, on: '2026-03-20' });
    await desk.written;
    expect(await rows.read('bin')).toEqual([]);
  });

  test('brought back out of the bin and taken out again lies there again', async () => {
    const { rows, desk } = await opened();
    await touch(desk, undefined);
    const [item] = await binned(rows);
    const later = await deskOn(rows);
    const back = withFindingBack(later.open!.record, item!.part, ATLAS);
    if (typeof back === 'string') throw new Error(back);
    later.takeIn([{ id: 'kestrel', record: back }], 'brought-back');
    await later.written;
    const before = (await rows.read('bin')).length;
    await touch(later, undefined);
    expect(await rows.read('bin')).toHaveLength(before + 1);
  });
});

describe('a finding recorded just now', () => {
  const fresh: RawFinding = {
    reflex: 'rooting',
    side: 'left',
    response: 'weak',
    state: 'quiet-alert',
    note: '',
  };

  test('goes to undo alone, however often it is touched', async () => {
    const { rows, desk } = await opened();
    for (const response of ['weak', 'brisk', undefined, 'weak', undefined] as const)
      await touch(desk, response, fresh);
    expect(await rows.read('bin')).toEqual([]);
    desk.undo();
    expect(rawVisit(desk.open!.record, ID)!.findings.map(spotOf)).toContain(spotOf(fresh));
  });

  test('in place of one that was taken out does not lie beside it', async () => {
    const { rows, desk } = await opened();
    for (const response of [undefined, other, undefined] as const) await touch(desk, response);
    expect(await responses(rows)).toEqual([finding.response]);
  });

  test('at a visit that is new, or that moved since, is one too', async () => {
    const { rows, desk } = await opened();
    const { id } = blankVisit('2026-06-01');
    const fields: RawVisit = { ...visit, id, on: '2026-06-01', findings: [fresh] };
    expect(desk.putVisit(fields).ok).toBe(true);
    expect(desk.putVisit({ ...fields, on: '2026-06-02' }).ok).toBe(true);
    await desk.written;
    desk.putVisit({ ...fields, on: '2026-06-02', findings: [] });
    await desk.written;
    expect(await rows.read('bin')).toEqual([]);
  });

  test('after an hour, or in another window, it is one that stood before', async () => {
    const { rows, desk } = await opened();
    const start = Date.now();
    await touch(desk, 'weak', fresh);
    vi.setSystemTime(start + HOUR_MS - 1);
    await touch(desk, undefined, fresh);
    expect(await rows.read('bin')).toEqual([]);
    desk.undo();
    await desk.written;
    vi.setSystemTime(start + HOUR_MS);
    await touch(desk, undefined, fresh);
    expect(await responses(rows)).toEqual(['weak']);
    desk.undo();
    await touch(desk, 'brisk', { ...fresh, reflex: 'moro' });
    const before = (await rows.read('bin')).length;
    await touch(await deskOn(rows), undefined, fresh);
    expect(await rows.read('bin')).toHaveLength(before + 1);
  });

  test('of one child says nothing of the same finding of another', async () => {
    const twin = { ...record, child: { ...record.child, label: 'Twin' } };
    const bare = { ...record, visits: record.visits.map((one) => ({ ...one, findings: [] })) };
    const rows = memoryWith([
      { id: 'a', record: bare },
      { id: 'b', record: twin },
    ]);
    const desk = await deskOn(rows);
    desk.openChild('a');
    desk.putVisit(visit);
    await desk.written;
    desk.openChild('b');
    await touch(desk, undefined);
    expect((await binned(rows)).map(({ id }) => id)).toEqual(['b']);
  });
});

describe('what does not go back in', () => {
  // as one lies in the bin that was taken out before visits had ids
  const part = { on: visit.on, examiner: visit.examiner, at: 1, finding };

  test('its visit has gone', () => {
    const without = { ...record, visits: record.visits.filter(({ id }) => id !== ID) };
    expect(withFindingBack(without, part, ATLAS)).toBe('gone');
  });

  test('the visit says something of that reflex and side by now, the same or another', () => {
    expect(withFindingBack(record, part, ATLAS)).toBe('again');
    const changed = { ...part, finding: { ...finding, response: other } };
    expect(withFindingBack(record, changed, ATLAS)).toBe('again');
  });

  test('the visit is full by now', () => {
    const full = Array.from({ length: MAX_FINDINGS }, (_, i) => ({
      ...finding,
      reflex: `own-${i}`,
    }));
    const raw = rawOf(record);
    const parsed = parseRaw(
      { ...raw, visits: [{ ...visit, findings: full.slice(1) }, ...raw.visits.slice(2)] },
      ATLAS,
    );
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
    const last = withFindingBack(parsed.value, part, ATLAS);
    expect(last).toMatchObject({ child: { label: record.child.label } });
    expect(withFindingBack(last as typeof record, { ...part, finding: full[0]! }, ATLAS)).toBe(
      'refused',
    );
  });

  test('what is no finding is not read', () => {
    for (const text of [
      '',
      '[]',
      '{"finding":{}}',
      '{"on":"2026-01-01","examiner":"","at":-1,"finding":{"reflex":"moro","side":"left","response":"weak"}}',
    ])
      expect(readFindingPart(text)).toBeUndefined();
  });
});

test('findings taken out in any number, each put back from the bin: the visits say what they said', () => {
  const all = record.visits.flatMap((_, v) =>
    rawVisit(record, record.visits[v]!.id)!.findings.map((_one, f) => ({ v, f })),
  );
  const sorted = (from: typeof record) =>
    rawOf(from).visits.map((one) =>
      one.findings.toSorted((a, b) => (spotOf(a) < spotOf(b) ? -1 : 1)),
    );
  fc.assert(
    fc.property(fc.subarray(all), fc.boolean(), (gone, isReversed) => {
      const desk = new Desk(ATLAS, [{ id: 'a', record }], undefined);
      record.visits.forEach(({ id }, v) => {
        const old = rawVisit(record, id)!;
        const out = new Set(gone.filter((one) => one.v === v).map(({ f }) => f));
        desk.putVisit({ ...old, findings: old.findings.filter((_one, f) => !out.has(f)) });
      });
      const after = desk.open!.record;
      const parts = goneFromCase(record, after).map(({ text }) => readFindingPart(text)!);
      expect(parts).toHaveLength(gone.length);
      const back = (isReversed ? parts.toReversed() : parts).reduce((now, one) => {
        const next = withFindingBack(now, one, ATLAS);
        if (typeof next === 'string') throw new Error(next);
        return next;
      }, after);
      expect(sorted(back)).toEqual(sorted(record));
    }),
  );
});
