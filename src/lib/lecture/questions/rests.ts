/** For a question about limbs: who dates the responses that are named in it. */
import type { Ground } from './ground.ts';
import type { Rests } from '../../words/question.ts';

export const restsOf = (reflexes: readonly string[], { sheet }: Ground): Rests[] =>
  reflexes.map((of) => ({
    of,
    sources: [...new Set((sheet.get(of)?.windows ?? []).map((w) => w.claim.source.id))],
  }));
