/** The family's page of the open child: of one visit, or of the whole course. */
import { familyPage } from '../handout/page.ts';
import type { FamilyPage } from '../handout/model.ts';
import { judgement, settings } from './app.svelte.ts';
import { visitIn } from './familyAddress.ts';
import { today } from '../platform/today.ts';

export { visitIn, visitQuery } from './familyAddress.ts';

/** The page an address asks for, from the record as it is kept, whatever is tried meanwhile. */
export function familyPageAt(query: string): FamilyPage | undefined {
  const { recorded: record, recordedVisits: visits, keptOptions: options } = judgement;
  if (!record) return undefined;
  const id = visitIn(query, record.visits);
  const shown = visits.find(({ visit }) => visit.id === id) ?? null;
  const { clinic } = settings;
  return familyPage({ record, visits, options, shown, clinic, today: today() });
}
