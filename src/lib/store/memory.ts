/** A store that lasts as long as the page: for where storage is denied. */
import type { OwnRow } from './own.ts';
import type { Kept, Store, TalkRow } from './store.ts';

export function memoryStore(seed: readonly Kept[]): Store {
  const kept = new Map(seed.map((one) => [one.id, one]));
  const own = new Map<string, OwnRow>();
  const talks = new Map<string, TalkRow>();
  return {
    kind: 'memory',
    all: () => Promise.resolve({ kept: [...kept.values()], unread: [] }),
    put: (one) => {
      kept.set(one.id, one);
      return Promise.resolve();
    },
    remove: (id) => {
      kept.delete(id);
      return Promise.resolve();
    },
    watch: () => undefined,
    own: () => Promise.resolve([...own.values()]),
    putOwn: (row) => {
      own.set(row.id, row);
      return Promise.resolve();
    },
    removeOwn: (id) => {
      own.delete(id);
      return Promise.resolve();
    },
    watchOwn: () => undefined,
    talks: () => Promise.resolve([...talks.values()]),
    putTalk: (row) => {
      talks.set(row.id, row);
      return Promise.resolve();
    },
    removeTalk: (id) => {
      talks.delete(id);
      return Promise.resolve();
    },
    watchTalks: () => undefined,
    close: () => undefined,
  };
}
