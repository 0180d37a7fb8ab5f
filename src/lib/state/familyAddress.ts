/** How an address names the visit that a family's page tells of. It stands apart: the child's head needs no more. */
/** In the address, in the place of a visit's number: the whole course. */
const COURSE = 'all';

/** The visit an address names: its number, counted from 1; null for the whole course; the last when it names none. */
export function visitIn(query: string, visits: number): number | null {
  const named = new URLSearchParams(query).get('visit');
  if (named === COURSE) return null;
  const number = Number(named);
  return Number.isInteger(number) && number >= 1 && number <= visits ? number : visits;
}

/** What an address ends in to name a visit by its number; null names the whole course. */
export const visitQuery = (number: number | null): string => `?visit=${number ?? COURSE}`;
