/** A store in which others are always first: "saved" is said only once something is written. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { caseText } from '../../src/lib/case/raw.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { Desk } from '../../src/lib/repository/cases.svelte.ts';
import { Keeping } from '../../src/lib/repository/saveStatus.svelte.ts';
import { newRev, type Rows } from '../../src/lib/store/rows.ts';
import { keptIn, memoryWith } from '../support/rows.ts';

beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] }));
afterEach(() => void vi.useRealTimers());

test('after many rounds that others won it is said not to be saved, and tried anew', async () => {
  const record = demoCase(ATLAS);
  const rows = memoryWith([{ id: 'kestrel', record }]);
  let tried = 0;
  let isBusy = false;
  const contested: Rows = {
    ...rows,
    kind: 'kept',
    write: (changes) => {
      if (!isBusy) return rows.write(changes);
      tried += 1;
      const entry = { id: 'kestrel', rev: newRev(), changedAt: 0, text: caseText(record) };
      return Promise.resolve({ ok: false, clashes: [{ table: 'cases', id: 'kestrel', entry }] });
    },
  };
  const keeping = new Keeping();
  const desk = new Desk(ATLAS, [], undefined, keeping);
  await desk.load(contested);

  isBusy = true;
  desk.follow({ question: 'asked while others write' }, 'question-changed');
  await desk.written;
  expect(tried).toBeGreaterThan(1);
  expect(keeping.standing).toBe('not-saved');
  expect(keeping.trouble).toBe('busy');
  expect(desk.open?.record.question).toBe('asked while others write');

  const before = tried;
  vi.runOnlyPendingTimers();
  await desk.written;
  expect(tried).toBeGreaterThan(before);
  expect(keeping.standing).toBe('not-saved');

  isBusy = false;
  vi.runOnlyPendingTimers();
  await desk.written;
  expect(keeping.standing).toBe('saved');
  expect((await keptIn(rows))[0]?.record.question).toBe('asked while others write');
});
