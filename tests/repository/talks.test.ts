/** Talks of one's own through the store, and a talk being given: kept, undone, followed, never trusted. */
import 'fake-indexeddb/auto';
import Dexie from 'dexie';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { caseText } from '../../src/lib/case/raw.ts';
import { talkText } from '../../src/lib/lecture/talkFile.ts';
import { stageCommand } from '../../src/lib/lecture/talkKeys.ts';
import { READY_IDS, readyTalk } from '../../src/lib/lecture/talks/ready.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { anyTalk } from '../../src/lib/teaching/talkAny.ts';
import { lanesOf, pictureOf } from '../../src/lib/teaching/talkPicture.ts';
import { TalkStage } from '../../src/lib/teaching/talkStage.svelte.ts';
import { keepStanding, lastStanding, TalkSync } from '../../src/lib/teaching/talkSync.svelte.ts';
import { Talks } from '../../src/lib/repository/talks.svelte.ts';
import { openDatabase } from '../../src/lib/store/database.ts';
import { memoryRows } from '../../src/lib/store/memory.ts';
import { ANY, type Rows } from '../../src/lib/store/rows.ts';
import { keptIn } from '../support/rows.ts';

const TALK = readyTalk('first-year', ATLAS);

async function talksWith(store: Rows = memoryRows()): Promise<Talks> {
  const talks = new Talks();
  await talks.load(store);
  return talks;
}

function shelf() {
  const kept = new Map<string, string>();
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

describe('talks of one’s own', () => {
  test('are added, changed and removed, and each is undone in turn', async () => {
    const talks = await talksWith();
    const id = talks.add(TALK);
    talks.change(id, { ...TALK, title: 'Mine' });
    talks.remove(id);
    expect(talks.entries).toEqual([]);
    talks.undo();
    expect(talks.get(id)?.title).toBe('Mine');
    talks.undo();
    expect(talks.get(id)).toEqual(TALK);
    talks.redo();
    expect(talks.get(id)?.title).toBe('Mine');
  });

  test('survive a reload through the database, beside children of an older version of it', async () => {
    const name = 'talks-of-version-2';
    const old = new Dexie(name);
    old.version(2).stores({ cases: 'id', own: 'id' });
    await old.open();
    await old.table('cases').put({ id: 'kestrel', text: caseText(demoCase(ATLAS)) });
    old.close();
    const store = await openDatabase({ name });
    expect((await keptIn(store)).map(({ id }) => id)).toEqual(['kestrel']);
    const first = await talksWith(store);
    const id = first.add(TALK);
    await first.written;
    expect((await talksWith(store)).get(id)).toEqual(TALK);
    store.close();
  });

  test('that cannot be read are counted and left as they are', async () => {
    const store = memoryRows();
    await store.write([
      { table: 'talks', id: 'bad', base: ANY, text: talkText(TALK).slice(0, 200) },
      { table: 'talks', id: 'good', base: ANY, text: talkText(TALK) },
    ]);
    const talks = await talksWith(store);
    expect(talks.damaged).toEqual(['bad']);
    expect(talks.entries.map(({ id }) => id)).toEqual(['good']);
    talks.remove('good');
    await talks.written;
    expect((await store.read('talks')).map(({ id }) => id)).toEqual(['bad']);
  });

  test('say when there is no room, and lose nothing', async () => {
    const store = { ...memoryRows(), write: () => Promise.reject(new Error('full')) };
    const talks = await talksWith(store);
    const id = talks.add(TALK);
    await talks.written;
    expect(talks.refusedWrite).toBe(true);
    expect(talks.get(id)).toEqual(TALK);
  });

  test('are found by id beside the ready-made ones', async () => {
    const talks = await talksWith();
    const id = talks.add({ ...TALK, title: 'Mine' });
    expect(anyTalk(id, talks, ATLAS)?.title).toBe('Mine');
    expect(anyTalk('first-year', talks, ATLAS)?.title).toBe(TALK.title);
    expect(anyTalk('constructor', talks, ATLAS)).toBeUndefined();
  });
});

describe('the picture of a step', () => {
  test.each(READY_IDS)('of %s has its lanes in their order', (ready) => {
    for (const step of readyTalk(ready, ATLAS).steps) {
      const { data, view } = pictureOf(step, ATLAS);
      expect(view.order).toEqual(step.lanes);
      expect(new Set(data.lanes.map((lane) => lane.id))).toEqual(new Set(step.lanes));
      expect(data.sequences.map(({ id }) => id)).toEqual(step.orders);
      const visits = data.child?.visits.length;
      expect(visits).toBe(step.child?.visits);
    }
  });

  test('leaves out what is not at hand, and reads by all where no named source is', () => {
    const step = { ...TALK.steps[0]!, lanes: ['own-x', 'moro'], sources: ['own-y'] };
    expect(lanesOf(step, ATLAS)).toEqual(['moro']);
    const { data, sources } = pictureOf(step, ATLAS);
    expect(sources).toBe('all');
    const all = pictureOf({ ...step, sources: 'all' }, ATLAS).data.lanes[0];
    expect(data.lanes[0]?.bands).toEqual(all?.bands);
  });

  test('reads by the default sources where it says so, as the app judges by them', () => {
    const step = { ...TALK.steps[0]!, lanes: ['moro'], sources: 'default' as const };
    const { data, sources } = pictureOf(step, ATLAS);
    expect(sources).toBe('default');
    const judged = ATLAS.claims.get('moro')!.filter(({ judgedByDefault }) => judgedByDefault);
    expect(new Set(data.lanes[0]?.bands.map((band) => band.source))).toEqual(
      new Set(judged.map(({ source }) => source.id)),
    );
    const all = pictureOf({ ...step, sources: 'all' }, ATLAS).data.lanes[0];
    expect(data.lanes[0]!.bands.length).toBeLessThan(all!.bands.length);
  });

  test('shows verdicts on the step that has them only', () => {
    const said = readyTalk('reading-a-child', ATLAS).steps.map(
      (step) => pictureOf(step, ATLAS).entries.length > 0,
    );
    expect(said).toEqual([false, false, true, false, true, false, true, false]);
  });
});

describe('a talk being given', () => {
  const begin = { talk: 'first-year', step: 0, black: false, begunAt: 7 };
  const given = (step = 0) => {
    let changes = 0;
    const stage = new TalkStage(
      'first-year',
      () => TALK,
      { ...begin, step },
      () => changes++,
    );
    return { stage, changes: () => changes };
  };

  test('goes by one, to a number, and never beyond its ends', () => {
    const { stage } = given();
    stage.goBy(-1);
    expect(stage.step).toBe(0);
    stage.type('7');
    stage.jump();
    expect(stage.step).toBe(6);
    stage.type('9');
    stage.type('9');
    stage.jump();
    expect(stage.step).toBe(TALK.steps.length - 1);
    stage.jump();
    expect(stage.step).toBe(TALK.steps.length - 1);
  });

  test('begins within its steps whatever it is told', () => {
    expect(given(99).stage.step).toBe(TALK.steps.length - 1);
    expect(given(NaN).stage.step).toBe(0);
  });

  test('keeps its step while lanes are zoomed into, and leaves the zoom with the step', () => {
    const { stage, changes } = given(2);
    stage.zoomBy(1);
    stage.moveLanes(1, 5);
    expect([stage.step, stage.zoom, stage.laneAt]).toEqual([2, 1, 1]);
    expect(changes()).toBe(0);
    stage.goBy(1);
    expect([stage.step, stage.zoom, stage.laneAt]).toEqual([3, 0, 0]);
  });

  test('clears one thing at a time', () => {
    const { stage } = given();
    stage.zoomBy(1);
    stage.toggleBlack();
    stage.type('3');
    expect([stage.clear(), stage.digits]).toEqual([true, '']);
    expect([stage.clear(), stage.black]).toEqual([true, false]);
    expect([stage.clear(), stage.zoom]).toEqual([true, 0]);
    expect(stage.clear()).toBe(false);
  });

  test('follows the other window, but not in another talk', () => {
    const { stage } = given();
    stage.follow({ talk: 'tables', step: 4, black: true, begunAt: 1 });
    expect(stage.standing).toEqual(begin);
    stage.follow({ ...begin, step: 4, black: true });
    expect(stage.standing).toEqual({ ...begin, step: 4, black: true });
  });
});

describe('where a talk stood', () => {
  test('is remembered, forgotten, and read as hostile', () => {
    const one = shelf();
    const at = { talk: 'tables', step: 3, black: false, begunAt: 1000 };
    keepStanding(one, at);
    expect(lastStanding(one)).toEqual(at);
    keepStanding(one, undefined);
    expect(lastStanding(one)).toBeUndefined();
    for (const text of ['', '{', '[]', '{"talk":1}', '{"talk":"x","step":-1}']) {
      one.kept.set('tidemark-stage', text);
      expect(lastStanding(one)).toBeUndefined();
    }
    expect(lastStanding(undefined)).toBeUndefined();
  });

  test('is told between two windows, and hostile messages are passed over', async () => {
    const at = { talk: 'tables', step: 3, black: false, begunAt: 1000 };
    const heard = await new Promise<object>((resolve) => {
      const speaker = new TalkSync('speaker', resolve, () => at);
      const stage = new TalkSync(
        'stage',
        () => undefined,
        () => at,
      );
      const other = new BroadcastChannel('tidemark-stage');
      other.postMessage({ kind: 'at', at: { talk: 5 }, from: 'stage' });
      other.postMessage('<script>');
      speaker.ask();
      void Promise.resolve().then(() => other.close());
      closers.push(
        () => speaker.close(),
        () => stage.close(),
      );
    });
    for (const close of closers) close();
    expect(heard).toEqual(at);
  });
  const closers: (() => void)[] = [];
});

test('the keys of a remote do what is said of them, and others nothing', () => {
  expect(stageCommand('PageDown')).toEqual({ do: 'go', by: 1 });
  expect(stageCommand('PageUp')).toEqual({ do: 'go', by: -1 });
  expect(stageCommand('B')).toEqual(stageCommand('b'));
  expect(stageCommand('.')).toEqual({ do: 'black' });
  expect(stageCommand('7')).toEqual({ do: 'digit', digit: '7' });
  expect(stageCommand('Home')).toEqual({ do: 'first' });
  for (const key of ['Tab', 'F5', 'x', 'Shift', 'toString'])
    expect(stageCommand(key)).toBe(undefined);
});
