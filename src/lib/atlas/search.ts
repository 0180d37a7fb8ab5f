/** Finding a reflex by name or synonym; typing forgives a slip. */
import MiniSearch from 'minisearch';
import type { Reflex, ReflexProse } from './types.ts';

export interface NameIndex {
  /** Ids of the reflexes that fit a text, best first; all of them for an empty text. */
  find(text: string): string[];
  /** The id whose names are nearest to a text, even where not every word fits; undefined for none. */
  nearest(text: string): string | undefined;
}

/**
 * Words people search by that are no name of the reflex alone: a reflex is offered for them, and a
 * printed table is never read by them.
 */
const SEARCHED_AS: Readonly<Record<string, string>> = {
  stnr: 'crawling reflex',
  sucking: 'suckle suckling',
  moro: 'startle reflex',
  atnr: 'fencing reflex',
  'protective-forward': 'parachute reflex',
};

const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replaceAll(/\p{Mark}/gu, '')
    .toLowerCase();

/** Slips forgiven where no name fits whole: more in a long word, for an ending left out. */
const nearer = (term: string): number => (term.length < 4 ? 0 : term.length < 9 ? 2 : 3);

/** An index over names, short names, ids and synonyms. */
export function nameIndex(
  reflexes: readonly Reflex[],
  prose: Readonly<Record<string, ReflexProse>>,
): NameIndex {
  const namesOf = new Map(
    reflexes.map(({ id, name, short }) => [
      id,
      [name, short, ...(prose[id]?.synonyms ?? [])].map(plain),
    ]),
  );
  const begins = (id: string, term: string): boolean =>
    namesOf.get(id)?.some((name) => name.startsWith(term)) ?? false;
  const index = new MiniSearch<Record<'id' | 'name' | 'short' | 'synonyms' | 'words', string>>({
    fields: ['name', 'short', 'id', 'synonyms', 'words'],
    processTerm: plain,
    searchOptions: {
      boost: { name: 2, short: 2 },
      // a name that begins with the word is meant before one that only holds it
      boostDocument: (id, term) => (begins(id as string, term) ? 1.5 : 1),
      prefix: true,
      // one slip in a word of four letters, two in a long one
      fuzzy: (term) => (term.length < 4 ? 0 : term.length < 8 ? 1 : 2),
      combineWith: 'AND',
    },
  });
  index.addAll(
    reflexes.map(({ id, name, short }) => ({
      id,
      name,
      short,
      synonyms: (prose[id]?.synonyms ?? []).join(' '),
      words: SEARCHED_AS[id] ?? '',
    })),
  );
  return {
    find: (text) =>
      text.trim() === ''
        ? reflexes.map(({ id }) => id)
        : index.search(text).map((result) => result.id as string),
    nearest: (text) => {
      const whole = index.search(text);
      const found =
        whole.length > 0 ? whole : index.search(text, { combineWith: 'OR', fuzzy: nearer });
      const ids = found.map((result) => result.id as string);
      // a slip seldom lies in the first letter
      return ids.find((id) => begins(id, plain(text.trim()).charAt(0))) ?? ids[0];
    },
  };
}

/** The reflex a printed name most likely means: exact first, then by search. */
export function reflexNamed(
  text: string,
  reflexes: readonly Reflex[],
  prose: Readonly<Record<string, ReflexProse>>,
  index = nameIndex(reflexes, prose),
): { exact: boolean; id: string } | undefined {
  const wanted = plain(text.trim());
  const same = reflexes.find(({ id, name, short }) =>
    [id, name, short, ...(prose[id]?.synonyms ?? [])].some((word) => plain(word) === wanted),
  );
  if (same) return { exact: true, id: same.id };
  const nearest = index.nearest(text);
  return nearest === undefined ? undefined : { exact: false, id: nearest };
}
