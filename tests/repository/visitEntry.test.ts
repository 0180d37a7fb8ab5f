import { describe, expect, it } from 'vitest';
import type { CivilDate } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { rawOf } from '../../src/lib/case/raw.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import { judgeCase, sheetOf } from '../../src/lib/judge/judge.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { Desk } from '../../src/lib/repository/cases.svelte.ts';
import { formsPlace, visitPlace } from '../../src/lib/repository/draftStorage.ts';
import type { LockCodec } from '../../src/lib/store/lockCodec.ts';
import { redated } from '../../src/lib/present/redate.ts';
import { blankVisit, withResponse } from '../../src/lib/drafts/visitEdits.ts';
import { dateAsks } from '../../src/lib/drafts/visitDate.ts';
import { VisitEntry } from '../../src/lib/repository/visitEntry.svelte.ts';

const record = demoCase(ATLAS);
const NEW = '8d8ac610-566d-4ef0-9c22-186b2a5ed793';
const today = '2026-06-08' as CivilDate;
/** A visit as it is typed in: a new one, unless it is to be one of the record. */
const visitOn = (on: string, examiner = '', id: string = NEW) => ({
  ...withResponse(blankVisit(on), 'moro', ['left'], 'weak', 'quiet-alert'),
  examiner,
  id,
});
const last = record.visits[2]!.id;
const entryOf = () => {
  const desk = new Desk(ATLAS, [{ id: 'kestrel', record }], undefined);
  return { desk, entry: new VisitEntry(desk, () => undefined, today) };
};

describe('the date of a visit', () => {
  it('ahead of today is asked about before it is kept, and taken once agreed to', () => {
    const { desk, entry } = entryOf();
    entry.write(visitOn('2026-07-01'));
    expect(desk.open?.record).toBe(record);
    expect(entry.isWaiting).toBe(true);
    expect(entry.asks.ahead).toBe('2026-07-01');
    expect(entry.visit).toEqual(visitOn('2026-07-01'));
    expect(entry.agree()).toBe(NEW);
    expect(desk.open?.record.visits.at(-1)?.on).toBe('2026-07-01');
    expect(desk.drafts.now).toBeUndefined();
  });

  it('that was kept ahead of today is not asked about again', () => {
    const early = '2026-05-01' as CivilDate;
    expect(dateAsks(record, visitOn('2026-05-11', 'Rowan', last), early).ahead).toBeUndefined();
    expect(dateAsks(record, visitOn('2026-05-12', 'Rowan', last), early).ahead).toBe('2026-05-12');
  });

  it('before birth waits as a draft, with the question which of the two is wrong', () => {
    const { desk, entry } = entryOf();
    entry.write(visitOn('2025-01-01'));
    expect(entry.asks.beforeBirth).toBe('2025-01-01');
    expect(entry.isWaiting).toBe(true);
    expect(desk.open?.record).toBe(record);
  });

  it('out of order is sorted in, and it is said before which visit', () => {
    const { entry } = entryOf();
    expect(entry.write(visitOn('2026-02-02'))).toBe(NEW);
    expect(entry.sortedBefore).toBe('2026-03-16');
    const later = entryOf();
    expect(later.entry.write(visitOn('2026-06-01'))).toBe(NEW);
    expect(later.entry.sortedBefore).toBeUndefined();
  });

  it('of another visit is said, and whether the examiner is the same', () => {
    expect(dateAsks(record, visitOn('2026-05-11', 'Rowan'), today).sameDay).toEqual({
      id: last,
      examiner: 'Rowan',
      isTwin: true,
    });
    expect(dateAsks(record, visitOn('2026-05-11'), today).sameDay?.isTwin).toBe(false);
    expect(dateAsks(record, visitOn('2026-05-11', 'Rowan', last), today).sameDay).toBeUndefined();
  });
});

describe('an unfinished visit', () => {
  const tab = () => {
    const kept = new Map<string, string>();
    return {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
      removeItem: (key: string) => void kept.delete(key),
    };
  };

  it('outlives a reload, and goes when it is kept', () => {
    const place = tab();
    const draft = { childId: 'kestrel', of: undefined, visit: visitOn('2025-01-01') };
    visitPlace.write(place, draft);
    expect(visitPlace.read(place)).toEqual(draft);
    visitPlace.write(place, { ...draft, of: last });
    expect(visitPlace.read(place)?.of).toBe(last);
    visitPlace.write(place, undefined);
    expect(visitPlace.read(place)).toBeUndefined();
  });

  it('stands beside the details of children that are not saved yet', () => {
    const place = tab();
    const form = {
      by: 'due',
      label: 'Plo',
      born: '2026-0',
      gestation: '',
      due: '',
      dating: '',
    } as const;
    const forms = [
      { ...form, childId: undefined },
      { ...form, childId: 'kestrel' },
    ];
    formsPlace.write(place, forms);
    expect(formsPlace.read(place)).toEqual(forms);
    expect(visitPlace.read(place)).toBeUndefined();
    formsPlace.write(place, undefined);
    expect(formsPlace.read(place)).toBeUndefined();
  });

  it('is sealed once its sealing has settled, also where a later one took its place', async () => {
    const place = tab();
    const waiting: (() => void)[] = [];
    const codec = {
      encode: async (text: string) => {
        await new Promise<void>((resolve) => waiting.push(resolve));
        return new TextEncoder().encode(`sealed ${text.length}`);
      },
    } as unknown as LockCodec;
    const draft = { childId: 'kestrel', of: undefined, visit: visitOn('2025-01-01') };
    let isDone = false;
    const first = visitPlace.seal(place, draft, codec).then(() => (isDone = true));
    const second = visitPlace.seal(place, { ...draft, of: last }, codec);
    waiting[0]!();
    await new Promise(setImmediate); // all that waits for nothing more is done
    expect(place.getItem(visitPlace.key)).toBeNull();
    expect(isDone).toBe(false);
    waiting[1]!();
    await first;
    expect(place.getItem(visitPlace.key)).toMatch(/^[0-9a-f]+$/);
    await second;
  });

  it.each(['{', '7', '{"childId":"kestrel"}', '{"childId":1,"visit":{}}'])(
    'that is not understood is none: %s',
    (text) => {
      const place = tab();
      place.setItem('tidemark-draft', text);
      expect(visitPlace.read(place)).toBeUndefined();
    },
  );
});

describe('another due date', () => {
  const options = { atlas: ATLAS, sheet: sheetOf(ATLAS) };
  const withGestation = (gestation: string) => {
    const raw = rawOf(record);
    const parsed = parseRaw({ ...raw, child: { ...raw.child, gestation } }, ATLAS);
    if (!parsed.ok) throw new Error('refused');
    return parsed.value;
  };

  it('that is the same changes nothing', () => {
    expect(redated(record, withGestation('31w2d'), options)).toMatchObject({
      moved: [],
      count: 0,
      shiftDays: 0,
    });
  });

  it('tells every finding whose verdict or what it asks for is another, and no other', () => {
    const after = withGestation('36w2d');
    const would = redated(record, after, options);
    expect(would.shiftDays).toBe(-35);
    const words = (from: typeof record) =>
      judgeCase(from, options).flatMap(({ findings }) =>
        findings.map(({ judged, attention }) => `${judged.verdict} ${attention}`),
      );
    const [was, is] = [words(record), words(after)];
    expect(would.of).toBe(was.length);
    expect(would.count).toBe(was.filter((word, i) => word !== is[i]).length);
    expect(would.count).toBeGreaterThan(0);
    expect(would.moved.reduce((sum, { sides }) => sum + sides.length, 0)).toBe(would.count);
  });

  it('is tried without a change', () => {
    const { desk } = entryOf();
    const child = { ...rawOf(record).child, gestation: '36w2d' };
    const would = desk.wouldBe(child);
    expect(would.ok && would.value.child.birth.gestationalDays).toBe(36 * 7 + 2);
    expect(desk.open?.record).toBe(record);
    expect(desk.history.canUndo).toBe(false);
  });
});
