/** How near responses are to each other in looks, worked out once for an atlas. */
import type { Atlas } from '../../atlas/atlas.ts';
import { doesOf, type Doing } from '../../atlas/does.ts';
import { likenessOf } from '../../atlas/likeness.ts';
import type { Reflex } from '../../atlas/types.ts';
import { kept } from './kept.ts';

export const alikeness = (atlas: Atlas, a: Reflex, b: Reflex): number =>
  kept(atlas, `alike ${[a.id, b.id].sort().join(' ')}`, () => likenessOf(a, b));

export const doingsOf = (atlas: Atlas, reflex: Reflex): ReadonlySet<Doing> =>
  kept(atlas, `does ${reflex.id}`, () => doesOf(reflex));

/** The other reflexes that look at all like one and meet a condition, the most alike first. */
export const mostAlike = (
  atlas: Atlas,
  reflex: Reflex,
  meets: (other: Reflex) => boolean,
): string[] =>
  [...atlas.reflexes.values()]
    .filter((other) => other.id !== reflex.id && meets(other))
    .map((other) => ({ id: other.id, like: alikeness(atlas, reflex, other) }))
    .filter(({ like }) => like > 0)
    .sort((a, b) => b.like - a.like)
    .map(({ id }) => id);
