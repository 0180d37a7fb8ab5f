/** Two desks on one store, as two windows are, and the bin beneath them: no update is lost. */
import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { Aside, BIN_DAYS } from '../../src/lib/repository/trash.svelte.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { Desk } from '../../src/lib/repository/cases.svelte.ts';
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
