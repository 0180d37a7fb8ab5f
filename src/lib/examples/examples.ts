/**
 * Invented children to look around with, each chosen for one thing that is met in practice. Nobody's
 * data: every finding was made up so that the sources at hand show what the scenario says.
 */
import { daysBetween, type CivilDate } from '../age/civil.ts';
import type { Atlas } from '../atlas/atlas.ts';
import { latest, type OlderCase } from '../case/older.ts';
import { parseRaw } from '../case/parse.ts';
import type { Kept } from '../store/store.ts';
import { AVOCET } from './avocet.ts';
import { CURLEW } from './curlew.ts';
import { DUNLIN } from './dunlin.ts';
import { GODWIT } from './godwit.ts';
import { EXAMPLE_PREFIX } from '../platform/exampleIds.ts';
import { REDSHANK } from './redshank.ts';
import { SANDERLING } from './sanderling.ts';
import { shifted, WRITTEN_FOR } from './shift.ts';
import { SNIPE } from './snipe.ts';
import { TERN } from './tern.ts';
import { TURNSTONE } from './turnstone.ts';
import { WHIMBREL } from './whimbrel.ts';

export { WRITTEN_FOR } from './shift.ts';

export const EXAMPLES: readonly OlderCase[] = [
  TERN,
  DUNLIN,
  SANDERLING,
  CURLEW,
  SNIPE,
  WHIMBREL,
  GODWIT,
  TURNSTONE,
  REDSHANK,
  AVOCET,
];

export const exampleId = (raw: OlderCase): string =>
  `${EXAMPLE_PREFIX}${raw.child.label.toLowerCase()}`;

/** The invented children, through the door that every record passes, with their dates near a day. */
export function examplesOn(today: CivilDate, atlas: Atlas): Kept[] {
  const days = daysBetween(WRITTEN_FOR, today);
  return EXAMPLES.map((raw) => {
    const parsed = parseRaw(shifted(latest(raw, exampleId(raw)), days), atlas);
    if (!parsed.ok)
      throw new Error(`${raw.child.label} has faults: ${JSON.stringify(parsed.problems)}`);
    return { id: exampleId(raw), record: parsed.value };
  });
}
