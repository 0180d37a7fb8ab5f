/** Addresses of visits as they were before visits had ids: by their number, counted from 1 in the order of dates. */
import type { Visit } from '../case/case.ts';

/** The id of the visit that such an address names; undefined where it names none, or is of a visit's id. */
export const idOfNumber = (
  visits: readonly Pick<Visit, 'id'>[],
  named: string | undefined,
): string | undefined =>
  named !== undefined && /^[1-9]\d*$/.test(named) ? visits[Number(named) - 1]?.id : undefined;
