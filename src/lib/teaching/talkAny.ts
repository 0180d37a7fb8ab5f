/** A talk by its id, ready-made or one's own. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Talk } from '../lecture/talk.ts';
import { isReady, readyTalk } from '../lecture/talks/ready.ts';
import type { Talks } from '../repository/talks.svelte.ts';

export const anyTalk = (id: string, own: Pick<Talks, 'get'>, atlas: Atlas): Talk | undefined =>
  isReady(id) ? readyTalk(id, atlas) : own.get(id);
