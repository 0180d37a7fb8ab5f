/** A clock that is set back: it makes no time without use longer, and no change older than a backup. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Backups } from '../../src/lib/backup/backups.svelte.ts';
import { Lock } from '../../src/lib/lock/lock.svelte.ts';
import { memoryRows } from '../../src/lib/store/memory.ts';

const LOOK_MS = 5000;
const MINUTE_MS = 60_000;

/** An open lock with a clock of its own, and how often it fell. */
function openLock() {
  const clock = { now: Date.UTC(2026, 5, 8, 10) };
  let fell = 0;
  const lock = new Lock({
    shelf: undefined,
    database: 'none',
    leaving: () => (fell += 1),
    kept: () => Promise.resolve(true),
    opened: () => Promise.resolve(),
    reload: () => undefined,
    now: () => clock.now,
  });
  lock.standing = 'open';
  return { lock, clock, fell: () => fell };
}

test('without use the lock falls in its time however often the clock is set back', () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ at: fc.nat({ max: 119 }), by: fc.integer({ min: 1, max: 90_000 }) }), {
        maxLength: 4,
      }),
      (backs) => {
        const { lock, clock, fell } = openLock();
        lock.use();
        const looks = (lock.minutes * MINUTE_MS) / LOOK_MS + backs.length;
        for (let look = 0; look < looks; look++) {
          clock.now += LOOK_MS;
          // what passed since the last look is all that can be missed
          for (const { by } of backs.filter(({ at }) => at === look)) clock.now -= by * 1000;
          lock.look();
        }
        expect(fell()).toBeGreaterThan(0);
      },
    ),
  );
});

test('in use the lock does not fall, also when the clock is set back', () => {
  const { lock, clock, fell } = openLock();
  for (let minute = 0; minute < 60; minute++) {
    clock.now += MINUTE_MS;
    if (minute === 20) clock.now -= 60 * MINUTE_MS;
    lock.look();
    lock.use();
  }
  expect(fell()).toBe(0);
});

test('a change after a backup counts though the clock was set back between, also after a reload', async () => {
  const rows = memoryRows();
  const marks = new Map<string, number>();
  const source = {
    texts: () => new Map<string, string>(),
    changedSince: (at: number) => [...marks].flatMap(([id, mark]) => (mark > at ? [id] : [])),
  };
  const none = { texts: source.texts, changedSince: () => [] };
  const begun = async (): Promise<Backups> => {
    const backups = new Backups({ cases: source, own: none, talks: none }, () => ({}), {
      isSealed: () => false,
      shelf: undefined,
    });
    await backups.load(rows);
    return backups;
  };
  const made = Date.UTC(2026, 5, 8, 10);
  const backups = await begun();
  marks.set('plover', made - 30 * 24 * 60 * MINUTE_MS);
  await backups.made(made);
  await backups.look(made + MINUTE_MS);
  expect(backups.changed).toBe(0);
  const back = made - 24 * 60 * MINUTE_MS;
  await backups.look(back);
  expect(backups.changed).toBe(0);
  marks.set('plover', back + 10);
  expect(backups.changed).toBe(1);
  const again = await begun();
  expect(again.at).toBe(made);
  expect(again.changed).toBe(1);
  await again.made(back + MINUTE_MS);
  expect(again.changed).toBe(0);
});

test('a backup made while the store is still being opened is known after a reload', async () => {
  const rows = memoryRows();
  const none = { texts: () => new Map<string, string>(), changedSince: () => [] };
  const begun = (): Backups =>
    new Backups({ cases: none, own: none, talks: none }, () => ({}), {
      isSealed: () => false,
      shelf: undefined,
    });
  const made = Date.UTC(2026, 5, 8, 10);
  const early = begun();
  await early.made(made - MINUTE_MS);
  await early.load(rows);
  const next = begun();
  await next.made(made);
  await next.load(rows);
  expect(next.at).toBe(made);
  const again = begun();
  await again.load(rows);
  expect(again.at).toBe(made);
});
