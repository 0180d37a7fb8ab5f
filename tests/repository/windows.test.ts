/** Two desks on one store, as two windows are, and the bin beneath them: no update is lost. */
import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS, ATLAS_PARTS } from '../../src/lib/atlas/atlas.ts';
import type { OwnEntry } from '../../src/lib/atlas/own.ts';
import { readyTalk } from '../../src/lib/lecture/talks/ready.ts';
import { Aside, BIN_DAYS } from '../../src/lib/repository/trash.svelte.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { Desk } from '../../src/lib/repository/cases.svelte.ts';
import { rawVisit } from '../../src/lib/repository/edits.ts';
import { newPartId } from '../../src/lib/platform/ids.ts';
import { Library } from '../../src/lib/repository/library.svelte.ts';
import { Talks } from '../../src/lib/repository/talks.svelte.ts';
import { openDatabase } from '../../src/lib/store/database.ts';
import type { Rows } from '../../src/lib/store/rows.ts';
import { keptIn, memoryWith, seedOf } from '../support/rows.ts';
import { runs } from '../support/runs.ts';

const record = demoCase(ATLAS);
const seed = [{ id: 'kestrel', record }];
let round = 0;

async function deskOn(rows: Rows): Promise<Desk> {
  const desk = new Desk(ATLAS, [], undefined);
  await desk.load(rows);
  return desk;
}

const question = (desk: Desk, text: string): void => {
  desk.follow({ question: text }, 'question-changed', 'kestrel');
};
const tag = (desk: Desk, text: string): void => {
  const tags = desk.shelf.find(({ id }) => id === 'kestrel')?.record.tags ?? [];
  desk.follow({ tags: [...tags, text] }, 'tagged', 'kestrel');
};

/** Whether a text is anywhere in the store: in a record, the bin or a clash. */
async function isSomewhere(rows: Rows, text: string): Promise<boolean> {
  const tables = await Promise.all(
    (['cases', 'bin', 'clashes'] as const).map((table) => rows.read(table)),
  );
  return tables.flat().some((entry) => entry.text.includes(text));
}

describe('two windows on one child', () => {
  test('that change different things at once both come through', async () => {
    const rows = memoryWith(seed);
    const [one, two] = [await deskOn(rows), await deskOn(rows)];
    question(one, 'asked in one');
    tag(two, 'twin');
    await Promise.all([one.written, two.written]);
    for (const desk of [one, two])
      await expect
        .poll(() => [desk.open?.record.question, desk.open?.record.tags])
        .toEqual(['asked in one', ['twin']]);
    expect(await rows.read('clashes')).toEqual([]);
  });

  test('that change the same thing at once: both are kept, and the question is stored', async () => {
    const rows = memoryWith(seed);
    const [one, two] = [await deskOn(rows), await deskOn(rows)];
    question(one, 'as one says');
    question(two, 'as two says');
    await Promise.all([one.written, two.written]);
    const aside = new Aside();
    await aside.load(rows, 0);
    expect(aside.clashes).toHaveLength(1);
    expect(aside.clashes[0]).toMatchObject({
      child: 'kestrel',
      points: [{ path: ['field', 'question'], mine: 'as two says', theirs: 'as one says' }],
    });
    expect((await keptIn(rows))[0]?.record.question).toBe('as one says');
    await aside.decided(aside.clashes[0]!.row);
    expect(await rows.read('clashes')).toEqual([]);
  });

  test('what was brought together and then removed lies in the bin with both changes', async () => {
    const rows = memoryWith(seed);
    const [one, two] = [await deskOn(rows), await deskOn(rows)];
    tag(two, 'twin');
    question(one, 'asked in one'); // not seen in one: the tag of the other
    await Promise.all([one.written, two.written]);
    one.removeChild('kestrel');
    await one.written;
    const [bin] = await rows.read('bin');
    expect(bin?.text).toContain('twin');
    expect(bin?.text).toContain('asked in one');
  });

  test('what the other window had, taken over in a clash and then removed, lies in the bin whole', async () => {
    const rows = memoryWith(seed);
    const [one, two] = [await deskOn(rows), await deskOn(rows)];
    tag(two, 'twin');
    question(two, 'as two says');
    question(one, 'as one says');
    await Promise.all([one.written, two.written]);
    one.removeChild('kestrel');
    await one.written;
    const kept = [...(await rows.read('bin')), ...(await rows.read('cases'))];
    expect(kept.some(({ text }) => text.includes('twin'))).toBe(true);
  });

  test('a child removed in one and changed in the other stays', async () => {
    for (const removesFirst of [true, false]) {
      const rows = memoryWith(seed);
      const [one, two] = [await deskOn(rows), await deskOn(rows)];
      if (removesFirst) one.removeChild('kestrel');
      question(two, 'still needed');
      if (!removesFirst) one.removeChild('kestrel');
      await Promise.all([one.written, two.written]);
      await expect.poll(() => one.open?.record.question).toBe('still needed');
      expect((await keptIn(rows))[0]?.record.question).toBe('still needed');
    }
  });

  test('any edits in any order over the real database: every one is somewhere', async () => {
    let looked = 0;
    const edit = fc.record({
      window: fc.nat({ max: 1 }),
      kind: fc.constantFrom('ask', 'tag', 'go', 'undo', 'wait'),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 8 }), async (edits) => {
        const name = `windows-${round++}`;
        const opened = await Promise.all(
          [0, 1].map(() => openDatabase({ name, seed: seedOf(seed) })),
        );
        const desks = [await deskOn(opened[0]!), await deskOn(opened[1]!)] as const;
        // what is asked is a part of its own, so that only a lost update could make it vanish
        const said = new Set<string>();
        for (const [number, { window, kind }] of edits.entries()) {
          const desk = desks[window]!;
          if (kind === 'wait') await desk.written;
          else if (kind === 'go') desk.removeChild('kestrel');
          else if (kind === 'undo') {
            desk.undo();
            said.clear(); // what was undone need not be there
          } else if (desk.shelf.some(({ id }) => id === 'kestrel')) {
            const text = `edit-${number}-`;
            if (kind === 'tag') {
              tag(desk, text);
              said.add(text);
            } else question(desk, text);
          }
        }
        for (let turn = 0; turn < 3; turn++) for (const desk of desks) await desk.written;
        for (const text of said) expect(await isSomewhere(opened[0]!, text), text).toBe(true);
        looked += said.size;
        for (const rows of opened) rows.close();
      }),
      { numRuns: runs(400, 40) },
    );
    expect(looked).toBeGreaterThan(0);
  });
});

const visitNote = (desk: Desk): string => desk.open!.record.visits[0]!.note;
const noteIn = (desk: Desk, note: string): void => {
  const { id } = desk.open!.record.visits[0]!;
  desk.putVisit({ ...rawVisit(desk.open!.record, id)!, note });
};

describe('undo in one window', () => {
  async function two(): Promise<{ rows: Rows; one: Desk; other: Desk }> {
    const rows = memoryWith(seed);
    return { rows, one: await deskOn(rows), other: await deskOn(rows) };
  }
  const both = async (one: Desk, other: Desk): Promise<void> => {
    for (let turn = 0; turn < 2; turn++) for (const desk of [one, other]) await desk.written;
  };

  test('leaves words that another window put after its own, says so, and goes over the rest', async () => {
    const { rows, one, other } = await two();
    noteIn(one, 'first half');
    await both(one, other);
    tag(other, 'twin');
    noteIn(other, 'first half, second half');
    await both(one, other);
    for (const step of ['undo', 'redo', 'undo'] as const) {
      one[step]();
      await both(one, other);
      expect(one.told).toMatchObject({ stays: true });
      for (const desk of [one, other]) expect(visitNote(desk)).toBe('first half, second half');
      expect((await keptIn(rows))[0]?.record.tags).toEqual(['twin']);
    }
    expect(await rows.read('clashes')).toEqual([]);
  });

  test('takes back its own words where the other window changed something else', async () => {
    const { one, other } = await two();
    const before = visitNote(one);
    noteIn(one, 'first half');
    await both(one, other);
    tag(other, 'twin');
    await both(one, other);
    one.undo();
    await both(one, other);
    expect(one.told).toMatchObject({ what: 'undid', stays: false });
    for (const desk of [one, other])
      expect([visitNote(desk), desk.open!.record.tags]).toEqual([before, ['twin']]);
  });

  test('that has not seen the words of the other yet asks which are right', async () => {
    const { rows, one, other } = await two();
    noteIn(one, 'first half');
    await both(one, other);
    noteIn(other, 'first half, second half');
    one.undo();
    await both(one, other);
    expect(await isSomewhere(rows, 'second half')).toBe(true);
  });

  test('leaves a child, and a visit, that it had added and another window has filled', async () => {
    const { rows, one, other } = await two();
    one.putVisit({ ...rawVisit(record, record.visits[0]!.id)!, id: newPartId(), on: '2026-06-01' });
    await both(one, other);
    const added = one.open!.record.visits.at(-1)!.id;
    other.putVisit({ ...rawVisit(other.open!.record, added)!, note: 'by the other' });
    await both(one, other);
    one.undo();
    await both(one, other);
    expect((await keptIn(rows))[0]?.record.visits.at(-1)?.note).toBe('by the other');

    one.duplicate('kestrel', 'Copy');
    await both(one, other);
    const copy = one.shelf.at(-1)!.id;
    other.follow({ question: 'of the other' }, 'question-changed', copy);
    await both(one, other);
    one.undo();
    await both(one, other);
    expect(one.told).toMatchObject({ stays: true });
    expect((await keptIn(rows)).at(-1)).toMatchObject({ record: { question: 'of the other' } });
  });

  test('does not put an older child over one that a change in another window has kept', async () => {
    const { rows, one, other } = await two();
    one.removeChild('kestrel');
    question(other, 'still needed');
    await both(one, other);
    one.undo();
    await both(one, other);
    expect((await keptIn(rows))[0]?.record.question).toBe('still needed');
  });

  test('leaves a visit out that another window has removed since', async () => {
    const { rows, one, other } = await two();
    noteIn(one, 'first half');
    await both(one, other);
    const { id } = one.open!.record.visits[0]!;
    other.removeVisit(id);
    await both(one, other);
    one.undo();
    await both(one, other);
    expect((await keptIn(rows))[0]?.record.visits.map((visit) => visit.id)).not.toContain(id);
    expect(await isSomewhere(rows, 'first half')).toBe(true);
  });

  test('leaves a talk and a source of one’s own that another window has changed since', async () => {
    const rows = memoryWith();
    const talksOf = async (): Promise<Talks> => {
      const talks = new Talks();
      await talks.load(rows);
      return talks;
    };
    const [one, other] = [await talksOf(), await talksOf()];
    const settle = async (): Promise<void> => {
      for (let turn = 0; turn < 2; turn++) for (const of of [one, other]) await of.written;
    };
    const talk = readyTalk('first-year', ATLAS);
    const id = one.add(talk);
    await settle();
    one.change(id, { ...talk, about: 'by one' });
    await settle();
    other.change(id, { ...other.get(id)!, title: 'By the other' });
    await settle();
    one.undo();
    expect(one.told).toEqual({ did: 'changed', undone: true, stays: true });
    one.undo(); // nor is it taken out again, though it was added here
    await settle();
    for (const of of [one, other]) expect(of.get(id)?.title).toBe('By the other');

    const [here, there] = [new Library(ATLAS_PARTS), new Library(ATLAS_PARTS)];
    for (const library of [here, there]) await library.load(rows);
    const book: OwnEntry = {
      kind: 'source',
      id: 'own-book',
      name: 'Lecture book',
      tier: 'textbook',
      on: true,
      rows: [{ reflex: 'Moro reflex', appears: '28 wk', integrates: '1 mo', note: '' }],
    };
    await here.put(book);
    for (let turn = 0; turn < 2; turn++) for (const of of [here, there]) await of.written;
    await there.put({ ...book, name: 'Lecture book, second edition' });
    for (let turn = 0; turn < 2; turn++) for (const of of [here, there]) await of.written;
    here.undo();
    await here.written;
    expect(here.told).toMatchObject({ stays: true });
    expect(here.entries).toMatchObject([{ name: 'Lecture book, second edition' }]);
  });
});

describe('the bin', () => {
  test('has what was removed, gives it back with undo, and lets it go after its days', async () => {
    const rows = memoryWith(seed);
    const desk = await deskOn(rows);
    desk.removeChild('kestrel');
    await desk.written;
    const aside = new Aside();
    await aside.load(rows, Date.now());
    expect(aside.bin).toHaveLength(1);
    const [item] = aside.bin;
    expect(item!.text).toContain('Kestrel');
    expect(item!.until - item!.at).toBe(BIN_DAYS * 24 * 60 * 60 * 1000);
    desk.undo();
    await desk.written;
    await expect.poll(() => aside.bin).toEqual([]);
    desk.redo();
    await desk.written;
    await expect.poll(() => aside.bin).toHaveLength(1);
    const after = new Aside();
    await after.load(rows, aside.bin[0]!.until - 1);
    expect(after.bin).toHaveLength(1);
    await after.load(rows, aside.bin[0]!.until);
    expect(await rows.read('bin')).toEqual([]);
  });
});
