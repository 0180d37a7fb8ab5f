/** What a page that was closed could not write any more, taken in by the next. */
import { expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { Desk } from '../../src/lib/repository/cases.svelte.ts';
import { leaveBehind, leftBehind } from '../../src/lib/repository/unwritten.ts';
import { Talks } from '../../src/lib/repository/talks.svelte.ts';
import { READY_IDS, readyTalk } from '../../src/lib/lecture/talks/ready.ts';
import { ANY, type Rows } from '../../src/lib/store/rows.ts';
import { smallPlace } from '../support/place.ts';
import { keptIn, memoryWith } from '../support/rows.ts';

const seed = [{ id: 'kestrel', record: demoCase(ATLAS) }];

async function deskOn(rows: ReturnType<typeof memoryWith>): Promise<Desk> {
  const desk = new Desk(ATLAS, [], undefined);
  await desk.load(rows);
  return desk;
}
const ask = (desk: Desk, question: string): void =>
  void desk.follow({ question }, 'question-changed');

test('what was not written is written by the next page, and what came since stays', async () => {
  const gone = await deskOn(memoryWith(seed)); // its store never takes anything up again
  ask(gone, 'asked in the last moment');
  const left = gone.unwritten();
  await gone.written;
  expect(gone.unwritten()).toEqual({ entries: [], beside: [] });

  const rows = memoryWith(seed);
  const between = await deskOn(rows);
  between.follow({ tags: ['twin'] }, 'tagged');
  await between.written;
  const next = await deskOn(rows);
  await next.catchUp(left);
  await next.written;
  const [kept] = await keptIn(rows);
  expect(kept?.record.question).toBe('asked in the last moment');
  expect(kept?.record.tags).toEqual(['twin']);
  expect(await rows.read('clashes')).toEqual([]);
});

test('what was written after all is not taken in again', async () => {
  const rows = memoryWith(seed);
  const one = await deskOn(rows);
  ask(one, 'written in time');
  const left = one.unwritten();
  await one.written;
  const before = await rows.read('cases');
  const next = await deskOn(rows);
  await next.catchUp(left);
  await next.written;
  expect(await rows.read('cases')).toEqual(before);
});

test('what was changed otherwise meanwhile is asked about', async () => {
  const rows = memoryWith(seed);
  const one = await deskOn(memoryWith(seed));
  ask(one, 'as it was left');
  const left = one.unwritten();
  const other = await deskOn(rows);
  ask(other, 'as it was written');
  await other.written;
  const next = await deskOn(rows);
  await next.catchUp(left);
  await next.written;
  expect((await keptIn(rows))[0]?.record.question).toBe('as it was written');
  const [clash] = await rows.read('clashes');
  expect(clash?.text).toContain('as it was left');
});

test('a removal that was not written is made, and the child lies in the bin', async () => {
  const gone = await deskOn(memoryWith(seed));
  gone.removeChild('kestrel');
  const left = gone.unwritten();
  const rows = memoryWith(seed);
  const next = await deskOn(rows);
  await next.catchUp(left);
  await next.written;
  expect(await keptIn(rows)).toEqual([]);
  expect((await rows.read('bin')).map(({ id }) => id)).toEqual(['cases kestrel']);
});

test('a removal does not take away what was changed since', async () => {
  const gone = await deskOn(memoryWith(seed));
  gone.removeChild('kestrel');
  const left = gone.unwritten();
  const rows = memoryWith(seed);
  const between = await deskOn(rows);
  ask(between, 'asked since');
  await between.written;
  const next = await deskOn(rows);
  await next.catchUp(left);
  await next.written;
  expect((await keptIn(rows))[0]?.record.question).toBe('asked since');
});

test('what goes with a change is written with it by the next page, once or twice', async () => {
  const gone = await deskOn(memoryWith(seed));
  const row = { table: 'bin', id: 'cases copy', base: ANY, text: '{"a copy":1}' } as const;
  gone.takeIn([{ id: 'other', record: demoCase(ATLAS) }], 'backup-taken', undefined, [row]);
  const left = gone.unwritten();
  const rows = memoryWith(seed);
  for (let time = 0; time < 2; time++) {
    const next = await deskOn(rows);
    await next.catchUp(left);
    await next.written;
    expect((await keptIn(rows)).map(({ id }) => id)).toEqual(['kestrel', 'other']);
    expect(await rows.read('bin')).toMatchObject([{ id: 'cases copy', text: '{"a copy":1}' }]);
  }
});

test('talks are taken in too: a new one, a changed one, and both where it was changed since', async () => {
  const talk = readyTalk(READY_IDS[0]!, ATLAS);
  const talksOn = async (rows: Rows): Promise<Talks> => {
    const talks = new Talks();
    await talks.load(rows);
    return talks;
  };
  const rows = memoryWith();
  const first = await talksOn(rows);
  const kept = first.add(talk);
  await first.written;
  const gone = await talksOn(rows);
  const fresh = gone.add({ ...talk, title: 'Made last' });
  gone.change(kept, { ...talk, title: 'Changed last' });
  const left = gone.unwritten();
  await gone.written;

  const store = memoryWith();
  const { base } = left.entries.find(({ id }) => id === kept)!;
  await store.write([{ table: 'talks', id: kept, base: ANY, text: base! }]);
  const next = await talksOn(store);
  await next.catchUp(left);
  await next.written;
  expect(next.get(fresh)?.title).toBe('Made last');
  expect(next.get(kept)?.title).toBe('Changed last');

  next.change(kept, { ...talk, title: 'Changed since' });
  await next.catchUp(left);
  await next.written;
  const titles = next.entries.map((entry) => entry.talk.title);
  expect(titles.toSorted()).toEqual(['Changed last', 'Changed since', 'Made last']);
});

const keysOf = (place: Storage): string[] =>
  Array.from({ length: place.length }, (_, at) => place.key(at) ?? '');

test('what a page of before left behind is read, and so is what this one leaves', () => {
  const place = smallPlace();
  const entry = { id: 'kestrel', base: 'before', text: 'after' };
  place.setItem('tidemark-unwritten-older', JSON.stringify([entry]));
  expect(leftBehind(place).left).toEqual([{ cases: { entries: [entry], beside: [] } }]);

  const left = {
    talks: { entries: [{ id: 'talk-a', base: 'there' }], beside: [] },
    own: {
      entries: [],
      beside: [{ table: 'bin', id: 'own copy', base: undefined, text: '{}' } as const],
    },
  };
  const before = keysOf(place);
  expect(leaveBehind(place, left)).toBe(true);
  const own = keysOf(place).find((key) => !before.includes(key));
  // its own page takes nothing in that it left itself: another one does
  place.setItem('tidemark-unwritten-another', place.getItem(own!)!);
  const { left: found, done } = leftBehind(place);
  expect(found.at(-1)).toEqual({
    talks: { entries: [{ id: 'talk-a', base: 'there' }], beside: [] },
    cases: { entries: [], beside: [{ table: 'bin', id: 'own copy', base: ANY, text: '{}' }] },
  });
  done();
  expect(leftBehind(place).left).toEqual([]);
});

test('rows that are asked for while a write is on its way are written after it', async () => {
  const rows = memoryWith(seed);
  let release: (() => void) | undefined;
  let isHeld = false;
  const slow: Rows = {
    ...rows,
    write: async (changes) => {
      if (isHeld) await new Promise<void>((resolve) => (release = resolve));
      isHeld = false;
      return rows.write(changes);
    },
  };
  const desk = await deskOn(slow);
  const copy = (id: string) => ({ table: 'bin', id, base: undefined, text: '{}' }) as const;
  isHeld = true;
  desk.takeIn([{ id: 'one', record: demoCase(ATLAS) }], 'backup-taken', undefined, [copy('first')]);
  await expect.poll(() => release).toBeDefined(); // the write is on its way
  desk.takeIn([{ id: 'two', record: demoCase(ATLAS) }], 'backup-taken', undefined, [
    copy('second'),
  ]);
  release?.();
  await desk.written;
  expect((await rows.read('bin')).map(({ id }) => id)).toEqual(['first', 'second']);
});

test('what is brought back and undone before it was written stays in the bin', async () => {
  const rows = memoryWith(seed);
  await rows.write([{ table: 'bin', id: 'visits a', base: undefined, text: 'a visit' }]);
  const desk = await deskOn(rows);
  const record = { ...demoCase(ATLAS), question: 'with what was brought back' };
  const taken = { table: 'bin', id: 'visits a', base: ANY, text: undefined } as const;
  desk.takeIn([{ id: 'kestrel', record }], 'brought-back', undefined, [taken]);
  desk.undo();
  await desk.written;
  expect((await rows.read('bin')).map(({ id }) => id)).toEqual(['visits a']);
  desk.takeIn([{ id: 'kestrel', record }], 'brought-back', undefined, [taken]);
  await desk.written;
  expect(await rows.read('bin')).toEqual([]);
});

test('what is taken back while it is being written comes back, should the page go in between', async () => {
  const rows = memoryWith(seed);
  let arrives = (): void => undefined;
  const onItsWay = new Promise<void>((resolve) => (arrives = resolve));
  // the store takes the write, and the page never hears of it
  const unheard: Rows = {
    ...rows,
    write: async (changes) => {
      await rows.write(changes);
      arrives();
      return new Promise(() => undefined);
    },
  };
  const gone = await deskOn(unheard);
  gone.removeChild('kestrel');
  await onItsWay;
  gone.undo();
  const left = gone.unwritten();
  expect(await keptIn(rows)).toEqual([]);

  const next = await deskOn(rows);
  await next.catchUp(left);
  await next.written;
  expect(await keptIn(rows)).toEqual(seed);
  expect(await rows.read('bin')).toEqual([]);
});

test('what is taken back while it is being written is as it was, should the store not take it', async () => {
  const rows = memoryWith(seed);
  let arrives = (): void => undefined;
  const onItsWay = new Promise<void>((resolve) => (arrives = resolve));
  const gone = await deskOn({
    ...rows,
    write: () => {
      arrives();
      return new Promise(() => undefined);
    },
  });
  ask(gone, 'asked, and taken back');
  await onItsWay;
  gone.undo();
  const left = gone.unwritten();

  const before = await rows.read('cases');
  const next = await deskOn(rows);
  await next.catchUp(left);
  await next.written;
  expect(await rows.read('cases')).toEqual(before);
  expect(await rows.read('clashes')).toEqual([]);
});
