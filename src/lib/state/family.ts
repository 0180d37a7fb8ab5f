/** The family's page of the open child: of one visit, or of the whole course. */
import { familyPage } from '../handout/page.ts';
import type { FamilyPage } from '../handout/model.ts';
import { judgement, settings } from './app.svelte.ts';

/** In the address, in the place of a visit's number: the whole course. */
export const COURSE = 'all';

/** The visit an address names: its number, counted from 1; null for the whole course; the last when it names none. */
export function visitIn(query: string, visits: number): number | null {
  const named = new URLSearchParams(query).get('visit');
  if (named === COURSE) return null;
  const number = Number(named);
  return Number.isInteger(number) && number >= 1 && number <= visits ? number : visits;
}

/** The page an address asks for, from the record as it is kept, whatever is tried meanwhile. */
export function familyPageAt(query: string): FamilyPage | undefined {
  const { recorded: record, recordedVisits: visits, keptOptions: options } = judgement;
  if (!record) return undefined;
  const number = visitIn(query, visits.length);
  const shown = number === null ? null : (visits[number - 1] ?? null);
  return familyPage({ record, visits, options, shown, clinic: settings.clinic });
}

/** What an address ends in to name a visit by its number; null names the whole course. */
export const visitQuery = (number: number | null): string => `?visit=${number ?? COURSE}`;
