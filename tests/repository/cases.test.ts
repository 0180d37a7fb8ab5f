import { describe, expect, it } from 'vitest';
import type { CivilDate } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { caseText } from '../../src/lib/case/raw.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { Desk } from '../../src/lib/repository/cases.svelte.ts';
import { Incoming } from '../../src/lib/exchange/incoming.svelte.ts';
import { examplesOn, WRITTEN_FOR } from '../../src/lib/examples/examples.ts';
import { blankVisit, withResponse } from '../../src/lib/drafts/visitEdits.ts';
import { Keeping } from '../../src/lib/repository/saveStatus.svelte.ts';
import type { Rows } from '../../src/lib/store/rows.ts';
import { keptIn, memoryWith, putKept } from '../support/rows.ts';

const record = demoCase(ATLAS);
const seed = [{ id: 'kestrel', record }];

async function deskWith(store: Rows = memoryWith(seed)): Promise<{ desk: Desk; store: Rows }> {
  const desk = new Desk(ATLAS, seed, undefined);
  await desk.load(store);
  return { desk, store };
}

const visit = withResponse(
  blankVisit('2026-06-08'),
  'moro',
  ['left', 'right'],
  'elicited',
  'quiet-alert',
);

describe('a visit', () => {
  it('is kept, undone, redone, and written each time', async () => {
    const { desk, store } = await deskWith();
    const count = async (): Promise<number | undefined> => {
      await desk.written;
      return (await keptIn(store))[0]?.record.visits.length;
    };
    expect(desk.putVisit(visit).ok).toBe(true);
    expect(await count()).toBe(4);
    desk.undo();
    expect(desk.open?.record).toEqual(record);
    expect(await count()).toBe(3);
    desk.redo();
    expect(desk.open?.record.visits.at(-1)?.on).toBe('2026-06-08');
    expect(await count()).toBe(4);
  });

  it('stands in the order of the dates, whatever order it was entered in', async () => {
    const { desk } = await deskWith();
    expect(desk.putVisit({ ...visit, on: '2025-12-01' }).ok).toBe(true);
    expect(desk.open?.record.visits[0]?.id).toBe(visit.id);
    expect(desk.open?.record.visits.map(({ on }) => on)).toEqual([
      '2025-12-01',
      '2026-01-12',
      '2026-03-16',
      '2026-05-11',
    ]);
  });

  it('that cannot be kept waits as a draft; the record is as before and nothing is undone', async () => {
    const { desk } = await deskWith();
    const early = { ...visit, on: '2025-01-01' };
    expect(desk.drafts.write(undefined, early)).toBeUndefined();
    expect(desk.open?.record).toEqual(record);
    expect(desk.drafts.typed(undefined)).toEqual(early);
    expect(desk.drafts.problems(undefined).map(({ code }) => code)).toEqual(['exam-before-birth']);
    expect(desk.history.canUndo).toBe(false);
    expect(desk.drafts.write(undefined, visit)).toBe(visit.id);
    expect(desk.drafts.now).toBeUndefined();
  });

  it('with nothing in it but a date is no visit yet', async () => {
    const { desk } = await deskWith();
    desk.drafts.write(undefined, blankVisit('2026-06-08'));
    expect(desk.open?.record.visits).toHaveLength(3);
    expect(desk.drafts.problems(undefined)).toEqual([]);
  });

  it('is removed by its id, and comes back', async () => {
    const { desk } = await deskWith();
    desk.removeVisit(record.visits[1]!.id);
    expect(desk.open?.record.visits.map(({ on }) => on)).toEqual(['2026-01-12', '2026-05-11']);
    desk.undo();
    expect(desk.open?.record).toEqual(record);
  });
});

describe('a child', () => {
  const plover = { label: 'Plover', born: '2026-04-01', gestation: '33w1d', dating: 'last-period' };

  it('is added and opened; undo takes it out and opens the one before', async () => {
    const { desk } = await deskWith();
    expect(desk.addChild({ ...plover, invented: false }).ok).toBe(true);
    expect(desk.open?.record.child.label).toBe('Plover');
    desk.undo();
    expect(desk.shelf).toHaveLength(1);
    expect(desk.open?.record.child.label).toBe('Kestrel');
  });

  it('that is refused changes nothing', async () => {
    const { desk } = await deskWith();
    const parsed = desk.addChild({ ...plover, gestation: '50w0d', invented: false });
    expect(parsed.ok).toBe(false);
    expect(desk.shelf).toEqual(seed);
    expect(desk.history.canUndo).toBe(false);
  });

  it('is removed from the store and put back there by undo', async () => {
    const { desk, store } = await deskWith();
    desk.removeChild('kestrel');
    await desk.written;
    expect(await keptIn(store)).toEqual([]);
    expect(desk.open).toBeUndefined();
    desk.undo();
    await desk.written;
    expect(await keptIn(store)).toEqual(seed);
    expect(desk.open?.id).toBe('kestrel');
  });

  it('whose birth date is moved past a visit is refused', async () => {
    const { desk } = await deskWith();
    const parsed = desk.changeChild({ ...plover, born: '2026-03-01', invented: false });
    expect(parsed.ok ? [] : parsed.problems.map(({ code }) => code)).toContain('exam-before-birth');
    expect(desk.open?.record).toEqual(record);
  });
});

describe('many children', () => {
  const labels = (desk: Desk): string[] => desk.shelf.map((kept) => kept.record.child.label);

  it('a copy has another name and label, stands beside, and the open child stays open', async () => {
    const { desk, store } = await deskWith();
    desk.follow({ archived: true, tags: ['twin'] }, 'archived', 'kestrel');
    expect(desk.duplicate('kestrel', 'Kestrel copy').ok).toBe(true);
    const [first, copy] = desk.shelf;
    expect(copy!.id).not.toBe(first!.id);
    const [its, own] = [first!, copy!].map(({ record: { visits } }) => visits.map(({ id }) => id));
    expect(own!.filter((id) => its!.includes(id))).toEqual([]);
    expect(copy!.record).toEqual({
      ...first!.record,
      archived: false,
      child: { ...first!.record.child, label: 'Kestrel copy' },
      visits: first!.record.visits.map((one, index) => ({ ...one, id: own![index] })),
    });
    expect(desk.open?.id).toBe('kestrel');
    await desk.written;
    expect(await keptIn(store)).toHaveLength(2);
    desk.undo();
    expect(labels(desk)).toEqual(['Kestrel']);
    expect(desk.duplicate('nobody', 'x').ok).toBe(false);
  });

  it('that come from a file twice are two: each visit and decision is in one of them alone', async () => {
    const { desk } = await deskWith();
    const decision = { id: blankVisit('2026-06-08').id, on: '2026-05-11' as CivilDate, by: null };
    const given = { ...record, decisions: [{ ...decision, text: 'x', who: '', done: false }] };
    desk.removeChild('kestrel');
    const ids = ({ visits, decisions }: Case) => [...visits, ...decisions].map(({ id }) => id);
    desk.addRecord(given);
    expect(ids(desk.shelf[0]!.record)).toEqual(ids(given));
    desk.addRecord(given);
    desk.takeRecords([{ id: 'c', record: given }]);
    desk.takeIn([{ id: 'd', record: given }], 'backup-taken');
    const all = desk.shelf.flatMap((kept) => ids(kept.record));
    expect(new Set(all).size).toBe(4 * ids(given).length);
    // the same child again keeps what it has
    desk.takeRecords([{ id: desk.shelf[0]!.id, record: given }]);
    expect(ids(desk.shelf[0]!.record)).toEqual(ids(given));
  });

  it('invented ones come and go together; what was changed in them comes back with undo', async () => {
    const { desk, store } = await deskWith();
    const examples = examplesOn(WRITTEN_FOR, ATLAS);
    desk.addExamples(examples);
    expect(desk.shelf).toHaveLength(1 + examples.length);
    expect(desk.told?.did).toBe('examples-added');
    const [first] = examples;
    desk.follow({ tags: ['mine'] }, 'tagged', first!.id);
    const told = desk.told;
    desk.addExamples(examples); // all are here: nothing is overwritten, and nothing is said
    expect(desk.told).toBe(told);
    desk.openChild(first!.id);
    desk.clearExamples();
    expect(labels(desk)).toEqual(['Kestrel']);
    expect(desk.open?.id).toBe('kestrel');
    await desk.written;
    expect((await keptIn(store)).map(({ id }) => id)).toEqual(['kestrel']);
    desk.undo();
    expect(desk.open?.id).toBe(first!.id);
    expect(desk.open?.record.tags).toEqual(['mine']);
    await desk.written;
    expect(await keptIn(store)).toHaveLength(1 + examples.length);
  });

  it('of the invented ones, those taken out singly come again', async () => {
    const { desk } = await deskWith();
    const examples = examplesOn(WRITTEN_FOR, ATLAS);
    desk.addExamples(examples);
    desk.removeChild(examples[2]!.id);
    desk.addExamples(examples);
    expect(desk.shelf).toHaveLength(1 + examples.length);
  });
});

describe('a file', () => {
  const file = (text: string, size = text.length) => ({
    name: 'case.json',
    size,
    arrayBuffer: () => Promise.resolve(new TextEncoder().encode(text).buffer),
  });

  it('that was saved opens as the same record', async () => {
    const { desk } = await deskWith();
    const incoming = new Incoming(desk, ATLAS);
    desk.removeChild('kestrel');
    expect(await incoming.receive(file(caseText(record)))).toEqual({ as: 'case' });
    expect(desk.shelf).toHaveLength(1);
    expect(desk.open?.record).toEqual(record);
    expect(desk.open?.id).not.toBe('kestrel');
    // once more it is the same child, not a second one
    expect(await incoming.receive(file(caseText(record)))).toEqual({
      as: 'refused',
      sentences: [expect.stringMatching(/^Kestrel is already here, exactly as in this file\./)],
    });
    expect(desk.shelf).toHaveLength(1);
  });

  it.each([6_000_000, 200_000_000])(
    'of %d bytes is refused, and beyond any limit before it is read',
    async (size) => {
      const { desk } = await deskWith();
      const given = file(caseText(record), size);
      let wasRead = false;
      const received = await new Incoming(desk, ATLAS).receive({
        ...given,
        arrayBuffer: () => {
          wasRead = true;
          return given.arrayBuffer();
        },
      });
      expect(received).toMatchObject({ as: 'refused', sentences: [/MB/] });
      expect(wasRead).toBe(size < 20_000_000);
      expect(desk.shelf).toEqual(seed);
    },
  );
});

describe('the store', () => {
  it('that answers late still gets what was changed before', async () => {
    const desk = new Desk(ATLAS, seed, undefined);
    desk.putVisit(visit);
    const late = memoryWith(seed);
    await desk.load(late);
    expect((await keptIn(late))[0]?.record.visits).toHaveLength(4);
    expect(desk.open?.record.visits).toHaveLength(4);
  });

  it('that refuses a write is said, the change stays on the desk, and is written when there is room', async () => {
    const shared = memoryWith(seed);
    let isFull = true;
    const full: Rows = {
      ...shared,
      kind: 'kept',
      write: (changes) => (isFull ? Promise.reject(new Error('no room')) : shared.write(changes)),
    };
    const keeping = new Keeping();
    const desk = new Desk(ATLAS, seed, undefined, keeping);
    await desk.load(full);
    desk.putVisit(visit);
    await desk.written;
    expect(keeping.standing).toBe('not-saved');
    expect(desk.open?.record.visits).toHaveLength(4);
    expect((await keptIn(shared))[0]?.record.visits).toHaveLength(3);
    isFull = false;
    keeping.tryAgain();
    await desk.written;
    expect(keeping.standing).toBe('saved');
    expect((await keptIn(shared))[0]?.record.visits).toHaveLength(4);
  });

  it('that another page has changed: both changes are there, and undo goes back over ours alone', async () => {
    const shared = memoryWith(seed);
    const { desk } = await deskWith(shared);
    desk.putVisit(visit);
    await desk.written;
    const theirs = { ...desk.open!.record, question: 'asked elsewhere' };
    await putKept(shared, { id: 'kestrel', record: theirs });
    await expect.poll(() => desk.open?.record.question).toBe('asked elsewhere');
    desk.undo();
    expect(desk.open?.record.visits).toHaveLength(3);
    expect(desk.open?.record.question).toBe('asked elsewhere');
    await desk.written;
    expect((await keptIn(shared))[0]?.record).toEqual({ ...record, question: 'asked elsewhere' });
  });

  it('that tells of our own change leaves undo as it was', async () => {
    const { desk } = await deskWith();
    desk.putVisit(visit);
    await desk.written;
    expect(desk.history.canUndo).toBe(true);
    expect(desk.open?.record.visits).toHaveLength(4);
  });
});

describe('what surrounds the visits', () => {
  it('is changed in part, on the child named, and undone', async () => {
    const { desk } = await deskWith();
    desk.addChild({
      label: 'Tern',
      born: '2026-01-01',
      gestation: '40w0d',
      dating: 'unknown',
      invented: true,
    });
    desk.follow({ archived: true }, 'archived', 'kestrel');
    desk.follow({ sheet: { on: '2026-06-01', reflexes: ['moro'] } }, 'sheet-changed', 'kestrel');
    desk.follow({ question: 'Is it time?' }, 'question-changed', 'kestrel');
    const kept = () => desk.shelf.find(({ id }) => id === 'kestrel')?.record;
    expect(kept()).toMatchObject({
      archived: true,
      question: 'Is it time?',
      sheet: { on: '2026-06-01', reflexes: ['moro'] },
    });
    expect(desk.open?.record.child.label).toBe('Tern');
    desk.follow({ sheet: null }, 'sheet-changed', 'kestrel');
    expect(kept()?.sheet).toBeNull();
    desk.undo();
    expect(kept()?.sheet?.on).toBe('2026-06-01');
  });

  it('is refused whole when a part is wrong', async () => {
    const { desk } = await deskWith();
    const before = desk.open?.record;
    const parsed = desk.follow(
      { decisions: [{ id: visit.id, on: 'x', text: 'y', who: '', by: '', done: false }] },
      'decision-changed',
    );
    expect(parsed.ok).toBe(false);
    expect(desk.open?.record).toBe(before);
  });
});
