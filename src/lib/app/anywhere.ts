/** A search that goes anywhere: a child, a reflex or a page. Small spelling mistakes are accepted. */
import MiniSearch from 'minisearch';
import { folded } from '../platform/foldText.ts';

export interface Destination {
  id: string;
  kind: 'child' | 'reflex' | 'page';
  name: string;
  /** Other words it is found by. */
  also: string;
  href: string;
  /** The child that is opened before one goes there. */
  childId?: string;
}

export interface AnywhereIndex {
  /** What fits a text, best first; what is offered first where nothing is typed. */
  find(text: string, most: number): Destination[];
}

export function anywhereIndex(all: readonly Destination[]): AnywhereIndex {
  const byId = new Map(all.map((one) => [one.id, one]));
  const begins = (id: string, term: string): boolean =>
    folded(byId.get(id)?.name ?? '').startsWith(term);
  const index = new MiniSearch<Destination>({
    fields: ['name', 'also'],
    processTerm: folded,
    searchOptions: {
      boost: { name: 3 },
      boostDocument: (id, term) => (begins(id as string, term) ? 2 : 1),
      prefix: true,
      // one slip in a word of four letters, two in a long one
      fuzzy: (term) => (term.length < 4 ? 0 : term.length < 8 ? 1 : 2),
      combineWith: 'AND',
    },
  });
  index.addAll(all);
  // where nothing fits, more is forgiven: two letters that changed places are two slips
  const searched = (text: string) => {
    const whole = index.search(text);
    return whole.length > 0
      ? whole
      : index.search(text, { fuzzy: (term) => (term.length < 4 ? 0 : 2) });
  };
  return {
    find: (text, most) =>
      (text.trim() === ''
        ? all.filter(({ kind }) => kind !== 'reflex')
        : searched(text).flatMap(({ id }) => byId.get(id as string) ?? [])
      ).slice(0, most),
  };
}
