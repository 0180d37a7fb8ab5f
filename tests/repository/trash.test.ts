/** What is taken out of a record or a talk lies in the bin by itself, comes back, and is never there twice. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import { rawOf } from '../../src/lib/case/raw.ts';
import { readyTalk } from '../../src/lib/lecture/talks/ready.ts';
import { Aside, BIN_DAYS } from '../../src/lib/repository/trash.svelte.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { Desk } from '../../src/lib/repository/cases.svelte.ts';
import { rawVisit } from '../../src/lib/repository/edits.ts';
import { newPartId } from '../../src/lib/platform/ids.ts';
import {
  goneFromCase,
  readDecisionPart,
  readVisitPart,
  withDecisionBack,
  withVisitBack,
} from '../../src/lib/repository/parts.ts';
import { readStepPart, withStepBack } from '../../src/lib/repository/stepParts.ts';
import { Talks } from '../../src/lib/repository/talks.svelte.ts';
import { memoryRows } from '../../src/lib/store/memory.ts';
import type { Rows } from '../../src/lib/store/rows.ts';
import { keptIn, memoryWith } from '../support/rows.ts';

const record = demoCase(ATLAS);
const DAY_MS = 86_400_000;
const [first, second] = record.visits.map(({ id }) => id) as [string, string];

async function deskOn(rows: Rows): Promise<Desk> {
  const desk = new Desk(ATLAS, [], undefined);
  await desk.load(rows);
  return desk;
}

async function binOf(rows: Rows, now = 0): Promise<Aside> {
  const aside = new Aside();
  await aside.load(rows, now);
  return aside;
}

describe('a visit that is removed', () => {
  test('lies in the bin for thirty days, whole, and goes back in from another session', async () => {
    const rows = memoryWith([{ id: 'kestrel', record }]);
    const desk = await deskOn(rows);
    desk.removeVisit(second);
    await desk.written;
    const aside = await binOf(rows);
    const [item] = aside.bin;
    expect(aside.bin).toHaveLength(1);
    expect(item).toMatchObject({ table: 'visits', id: 'kestrel' });
    expect(item!.until - item!.at).toBe(BIN_DAYS * DAY_MS);
    const part = readVisitPart(item!.text)!;
    expect(part.visit).toEqual(rawVisit(record, second));
    // another session: nothing is known of the removal but what lies in the bin
    const later = await deskOn(rows);
    const back = withVisitBack(later.open!.record, part, ATLAS);
    expect(back).toEqual(record);
    later.takeIn([{ id: 'kestrel', record: back! }], 'brought-back');
    await later.written;
    expect((await keptIn(rows))[0]?.record).toEqual(record);
    // and after its days it is gone
    expect((await binOf(rows, Date.now() + (BIN_DAYS + 1) * DAY_MS)).bin).toEqual([]);
  });

  test('is out of the bin again after undo, and in it again after redo', async () => {
    const rows = memoryWith([{ id: 'kestrel', record }]);
    const desk = await deskOn(rows);
    for (const [step, count] of [
      [() => desk.removeVisit(second), 1],
      [() => desk.undo(), 0],
      [() => desk.redo(), 1],
      [() => desk.removeVisit(first), 2],
      [() => desk.undo(), 1],
    ] as const) {
      step();
      await desk.written;
      expect(await rows.read('bin')).toHaveLength(count);
    }
  });

  test('says nothing of itself in the name of its row, which no lock seals', async () => {
    const rows = memoryWith([{ id: 'kestrel', record }]);
    const desk = await deskOn(rows);
    desk.removeVisit(second);
    await desk.written;
    const [row] = await rows.read('bin');
    expect(row?.id).toMatch(/^visits kestrel [0-9a-f]{18}$/);
  });

  test('only moved to another date or examiner is not removed', async () => {
    const rows = memoryWith([{ id: 'kestrel', record }]);
    const desk = await deskOn(rows);
    const visit = rawVisit(record, second)!;
    desk.putVisit({ ...visit, on: '2026-03-20' });
    await desk.written;
    desk.putVisit({ ...visit, on: '2026-03-20', examiner: 'PT 7' });
    await desk.written;
    expect(await rows.read('bin')).toEqual([]);
  });

  test('takes what was settled for its page along, and brings it back', () => {
    const key = record.visits[1]!.id;
    const page = { visit: key, chosen: ['moro'], edits: [] };
    const family = { language: 'en', pronoun: 'name', calledName: '', pages: [page] };
    const desk = new Desk(ATLAS, [{ id: 'kestrel', record }], undefined);
    desk.follow({ family }, 'family-changed');
    const before = desk.open!.record;
    desk.removeVisit(second);
    const after = desk.open!.record;
    const [part] = goneFromCase(before, after);
    const back = withVisitBack(after, readVisitPart(part!.text)!, ATLAS);
    expect(rawOf(back!)).toEqual(rawOf(before));
  });

  test('comes back from before visits had ids: with an id, and with its page', () => {
    const { id, ...bare } = rawVisit(record, second)!;
    const page = { visit: `${bare.on} ${bare.examiner}`, chosen: ['moro'], edits: [] };
    const family = { language: 'en', pronoun: 'name', calledName: '', pages: [] };
    const desk = new Desk(ATLAS, [{ id: 'kestrel', record }], undefined);
    desk.follow({ family }, 'family-changed');
    desk.removeVisit(second);
    const part = readVisitPart(JSON.stringify({ visit: bare, pages: [page] }))!;
    const back = withVisitBack(desk.open!.record, part, ATLAS)!;
    const visit = back.visits[1]!;
    expect(visit).toEqual({ ...record.visits[1], id: visit.id });
    expect(visit.id).not.toBe(id);
    expect(back.family?.pages.map((one) => one.visit)).toEqual([visit.id]);
  });

  test('does not go in over one that is there', () => {
    const text = JSON.stringify({ visit: rawVisit(record, second), pages: [] });
    expect(withVisitBack(record, readVisitPart(text)!, ATLAS)).toBeUndefined();
  });
});

test('visits removed in any number, each put back from the bin: the record is as it was', () => {
  fc.assert(
    fc.property(fc.subarray(record.visits.map((_, index) => index)), (gone) => {
      const raw = rawOf(record);
      const desk = new Desk(ATLAS, [{ id: 'a', record }], undefined);
      for (const index of gone.toReversed()) desk.removeVisit(record.visits[index]!.id);
      const after = desk.open!.record;
      const parts = goneFromCase(record, after);
      expect(parts).toHaveLength(gone.length);
      const back = parts.reduce(
        (now, { text }) => withVisitBack(now, readVisitPart(text)!, ATLAS)!,
        after,
      );
      expect(rawOf(back)).toEqual(raw);
    }),
  );
});

describe('a decision that is removed', () => {
  const decision = {
    id: newPartId(),
    on: '2026-05-11',
    text: 'See again in June',
    who: 'PT 1',
    by: '',
    done: false,
  };
  const other = { ...decision, id: newPartId(), text: 'Show the parents how to carry' };

  test('lies in the bin and goes back in; one that is reworded or done does not', async () => {
    const rows = memoryWith([{ id: 'kestrel', record }]);
    const desk = await deskOn(rows);
    desk.follow({ decisions: [decision, other] }, 'decision-changed');
    desk.follow({ decisions: [{ ...decision, done: true }, other] }, 'decision-changed');
    await desk.written;
    expect(await rows.read('bin')).toEqual([]);
    desk.follow({ decisions: [other] }, 'decision-changed');
    await desk.written;
    const [item] = (await binOf(rows)).bin;
    const back = withDecisionBack(desk.open!.record, readDecisionPart(item!.text)!, ATLAS);
    expect(back?.decisions.map(({ id, done }) => [id, done])).toEqual([
      [other.id, false],
      [decision.id, true],
    ]);
  });

  test('lies there too where another is added by the same change', () => {
    const [before, after] = [decision, other].map((one) => {
      const parsed = parseRaw({ ...rawOf(record), decisions: [one] }, ATLAS);
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
      return parsed.value;
    });
    const gone = goneFromCase(before!, after!);
    expect(gone.map(({ kind, text }) => [kind, readDecisionPart(text)])).toEqual([
      ['decisions', decision],
    ]);
  });
});

describe('a step that is removed from a talk', () => {
  test('lies in the bin and goes back where it stood; moving one takes nothing away', async () => {
    const rows = memoryRows();
    const talks = new Talks();
    await talks.load(rows);
    const talk = readyTalk('first-year', ATLAS);
    const id = talks.add(talk);
    const kept = talks.get(id)!;
    talks.change(id, { ...kept, steps: kept.steps.toReversed() });
    talks.change(id, kept);
    await talks.written;
    expect(await rows.read('bin')).toEqual([]);
    talks.change(id, { ...kept, steps: kept.steps.toSpliced(1, 1) });
    await talks.written;
    const [item] = (await binOf(rows)).bin;
    expect(item).toMatchObject({ table: 'steps', id });
    expect(withStepBack(talks.get(id)!, readStepPart(item!.text)!)).toEqual(kept);
    talks.undo();
    await talks.written;
    expect(await rows.read('bin')).toEqual([]);
  });

  test('lies there too where another is added before it is written, as it was worded last', async () => {
    const rows = memoryRows();
    const talks = new Talks();
    await talks.load(rows);
    const talk = readyTalk('first-year', ATLAS);
    const id = talks.add(talk);
    await talks.written;
    const steps = talk.steps.with(1, { ...talk.steps[1]!, caption: 'Worded anew' });
    talks.change(id, { ...talk, steps });
    talks.change(id, { ...talk, steps: steps.toSpliced(1, 1) });
    const added = { ...talk.steps[0]!, caption: 'Added' };
    talks.change(id, { ...talk, steps: [...steps.toSpliced(1, 1), added] });
    await talks.written;
    const { bin } = await binOf(rows);
    expect(bin).toMatchObject([{ table: 'steps', id }]);
    expect(readStepPart(bin[0]!.text)).toMatchObject({ at: 1, step: { caption: 'Worded anew' } });
    for (const [step, count] of [
      [() => talks.undo(), 2], // what was added goes there as well
      [() => talks.undo(), 1],
      [() => talks.undo(), 1],
      [() => talks.redo(), 1],
      [() => talks.redo(), 2],
      [() => talks.redo(), 1],
    ] as const) {
      step();
      await talks.written;
      expect(await rows.read('bin')).toHaveLength(count);
    }
  });

  test('only worded anew does not lie there, nor when that is undone', async () => {
    const rows = memoryRows();
    const talks = new Talks();
    await talks.load(rows);
    const talk = readyTalk('first-year', ATLAS);
    const id = talks.add(talk);
    await talks.written;
    const steps = talk.steps.with(1, { ...talk.steps[1]!, caption: 'Worded anew' });
    for (const step of [
      () => talks.change(id, { ...talk, steps }),
      () => talks.undo(),
      () => talks.redo(),
    ]) {
      step();
      await talks.written;
      expect(await rows.read('bin')).toEqual([]);
    }
  });
});

test('what lies in the bin and is no part of anything is not read', () => {
  for (const text of [
    '',
    '{',
    '[]',
    '{"visit":{}}',
    '{"at":-1,"talk":""}',
    '{"at":0,"talk":"{}"}',
  ]) {
    expect(readVisitPart(text)).toBeUndefined();
    expect(readDecisionPart(text)).toBeUndefined();
    expect(readStepPart(text)).toBeUndefined();
  }
});
