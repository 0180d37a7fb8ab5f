/** Other ids for the visits and decisions of a record, written out or not. */

/** A record as far as it names its visits and decisions. */
export interface Identified {
  visits: readonly { id: string }[];
  decisions?: readonly { id: string }[] | undefined;
  family?: { pages: readonly { visit: string }[] } | null | undefined;
}

/** The record with other ids, where there are any; what was settled for the page of a visit goes along. */
export function renamed<T extends Identified>(record: T, ids: ReadonlyMap<string, string>): T {
  if (ids.size === 0) return record;
  const idFor = (id: string): string => ids.get(id) ?? id;
  const { visits, decisions, family } = record;
  return {
    ...record,
    visits: visits.map((visit) => ({ ...visit, id: idFor(visit.id) })),
    ...(decisions ? { decisions: decisions.map((one) => ({ ...one, id: idFor(one.id) })) } : {}),
    ...(family
      ? {
          family: {
            ...family,
            pages: family.pages.map((page) => ({ ...page, visit: idFor(page.visit) })),
          },
        }
      : {}),
  };
}
