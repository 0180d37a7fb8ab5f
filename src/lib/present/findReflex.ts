/** Finding a reflex by a part of its name, a synonym, or the short id the trade uses. */
import type { Reflex } from '../atlas/types.ts';

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, ' ')
    .trim();

/**
 * The reflexes whose name, short name, id or synonym holds every word that was typed: those that
 * begin with it first, else in the order given.
 */
export function findReflexes(
  reflexes: readonly Reflex[],
  typed: string,
  synonyms: Readonly<Record<string, readonly string[]>> = {},
): Reflex[] {
  const words = plain(typed).split(' ').filter(Boolean);
  const textOf = ({ id, name, short }: Reflex): string =>
    plain([short, name, id, ...(synonyms[id] ?? [])].join(' '));
  const found = reflexes.filter((reflex) => words.every((word) => textOf(reflex).includes(word)));
  const begins = (reflex: Reflex): boolean =>
    [reflex.short, reflex.name, reflex.id].some((name) => plain(name).startsWith(plain(typed)));
  return words.length === 0
    ? found
    : [...found.filter(begins), ...found.filter((reflex) => !begins(reflex))];
}
