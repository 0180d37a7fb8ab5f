/** How an address names the visit that a family's page tells of. It stands apart: the child's head needs no more. */
import type { Visit } from '../case/case.ts';
import { idOfNumber } from './visitAddress.ts';

/** In the address, in the place of a visit's id: the whole course. */
const COURSE = 'all';

/**
 * The id of the visit an address names, as it once did by its number too; null for the whole course; that of
 * the last when it names none. Undefined where there is no visit.
 */
export function visitIn(
  query: string,
  visits: readonly Pick<Visit, 'id'>[],
): string | null | undefined {
  const named = new URLSearchParams(query).get('visit') ?? undefined;
  if (named === COURSE) return null;
  const id = idOfNumber(visits, named) ?? named;
  return (visits.find((visit) => visit.id === id) ?? visits.at(-1))?.id;
}

/** What an address ends in to name a visit by its id; null names the whole course. */
export const visitQuery = (id: string | null): string => `?visit=${id ?? COURSE}`;
