/** How near responses are to each other in looks, worked out once for a sheet, which is new when the atlas is. */
import { doesOf, type Doing } from '../../atlas/does.ts';
import { likenessOf } from '../../atlas/likeness.ts';
import type { Reflex } from '../../atlas/types.ts';
import type { Ground } from './ground.ts';
import { kept } from './kept.ts';

export const alikeness = ({ sheet }: Ground, a: Reflex, b: Reflex): number =>
  kept(sheet, `alike ${[a.id, b.id].sort().join(' ')}`, () => likenessOf(a, b));

export const doingsOf = ({ sheet }: Ground, reflex: Reflex): ReadonlySet<Doing> =>
  kept(sheet, `does ${reflex.id}`, () => doesOf(reflex));

/** The other reflexes that look at all like one and meet a condition, the most alike first. */
export const mostAlike = (
  ground: Ground,
  reflex: Reflex,
  meets: (other: Reflex) => boolean,
): string[] =>
  [...ground.atlas.reflexes.values()]
    .filter((other) => other.id !== reflex.id && meets(other))
    .map((other) => ({ id: other.id, like: alikeness(ground, reflex, other) }))
    .filter(({ like }) => like > 0)
    .sort((a, b) => b.like - a.like)
    .map(({ id }) => id);
