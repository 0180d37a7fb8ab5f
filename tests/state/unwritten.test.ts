/** What a page that was closed could not write any more, taken in by the next. */
import { expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { demoCase } from '../../src/lib/state/demo.ts';
import { Desk } from '../../src/lib/state/desk.svelte.ts';
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
  expect(gone.unwritten()).toEqual([]);

  const rows = memoryWith(seed);
  const between = await deskOn(rows);
  between.follow({ tags: ['twin'] }, 'tagged');
  await between.written;
  const next = await deskOn(rows);
  next.catchUp(left);
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
  next.catchUp(left);
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
  next.catchUp(left);
  await next.written;
  expect((await keptIn(rows))[0]?.record.question).toBe('as it was written');
  const [clash] = await rows.read('clashes');
  expect(clash?.text).toContain('as it was left');
});
