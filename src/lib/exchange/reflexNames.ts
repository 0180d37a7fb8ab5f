/** Finds a reflex by a word that is surely one of its names; what is only near is left to the reader. */
import type { Atlas } from '../atlas/atlas.ts';
import { PROSE } from '../atlas/prose.ts';
import { plainWord, type FindReflex } from './sheet/values.ts';

/** A name without the words that sheets add or leave away. */
const bare = (name: string): string =>
  plainWord(name)
    .replaceAll(/[().,']/g, '')
    .replace(/ (?:reflex|reaction|response|sign)$/, '');

export function reflexFinder(atlas: Atlas): FindReflex {
  const ids = new Map<string, string | undefined>();
  for (const { id, name, short } of atlas.reflexes.values())
    for (const one of new Set([id, name, short, ...(PROSE[id]?.synonyms ?? [])].map(bare)))
      // a name that two reflexes share means neither
      ids.set(one, ids.has(one) && ids.get(one) !== id ? undefined : id);
  return (word) => ids.get(bare(word));
}
