/**
 * What was decided on points that two changed, put into the record. A point may have been kept since before
 * visits and decisions had ids: then what names it is the day and the examiner, or the day and the words.
 */
import {
  HEAD,
  headOf,
  keyOf,
  partsOf,
  pathOf,
  rawFrom,
  visitNameOf,
  within,
  type Point,
  type VisitName,
} from './merge.ts';
import type { RawCase } from './shape.ts';

/** The visit of a point that was kept before visits had ids, from the key in its path: a date, a blank, the examiner. */
function visitOf({ path, visit }: Point): VisitName {
  const [on = '', ...examiner] = (path[1] ?? '').split(' ');
  return visit ?? { on, examiner: examiner.join(' ') };
}

/** A whole visit, as a point has it, under another id. */
const wholeAs = (whole: unknown, id: string): unknown =>
  whole &&
  Object.fromEntries(
    Object.entries(whole).map(([key, value]: [string, unknown]) => {
      const [, , what = HEAD, ...rest] = pathOf(key);
      const its = what === HEAD ? { ...(value as VisitName), id } : value;
      return [keyOf('visit', id, what, ...rest), its];
    }),
  );

/** What is settled for the family's page, with the ids of visits that were named by their keys. */
function pagesIn(visits: RawCase['visits'], family: unknown): unknown {
  const { pages = [], ...rest } = family as Partial<NonNullable<RawCase['family']>>;
  const ids = new Map(visits.map((visit) => [visitNameOf(visit), visit.id]));
  return {
    ...rest,
    pages: pages.map((one) => ({ ...one, visit: ids.get(one.visit) ?? one.visit })),
  };
}

/** A point with the id that its visit or its decision has in a record. */
function pointIn({ visits, decisions = [] }: RawCase, point: Point, newId: () => string): Point {
  const { path, visit, mine } = point;
  const [kind, name = '', ...rest] = path;
  if (kind === 'decision' && rest.length > 0) {
    const [text] = rest;
    const id = decisions.find((one) => one.on === name && one.text === text)?.id ?? newId();
    return { ...point, path: [kind, id], mine: mine && { ...mine, id } };
  }
  if (kind === 'field' && name === 'family' && mine)
    return { ...point, mine: pagesIn(visits, mine) };
  if (kind !== 'visit' || visits.some(({ id }) => id === name)) return point;
  const its = visitNameOf(visitOf(point));
  // a visit that has gone comes back as itself, where its id is known
  const id = visits.find((one) => visitNameOf(one) === its)?.id ?? (visit ? name : newId());
  return {
    ...point,
    path: [kind, id, ...rest],
    mine: rest.length === 0 ? wholeAs(mine, id) : mine,
  };
}

/**
 * The record with every given point as mine said.
 * @param newId a uuid by chance, for what was kept without one and is not in the record any more
 */
export function withMine(raw: RawCase, points: readonly Point[], newId: () => string): RawCase {
  const parts = partsOf(raw);
  for (const point of points) {
    const { path, mine } = pointIn(raw, point, newId);
    const [kind, name = '', what] = path;
    const isWhole = kind === 'visit' && (what === undefined || (what === HEAD && !mine));
    if (isWhole) {
      for (const key of within(parts, name).keys()) parts.delete(key);
      for (const [key, value] of Object.entries(mine ?? {})) parts.set(key, value);
    } else if (mine === undefined) parts.delete(keyOf(...path));
    else {
      // the visit may have gone since: it comes back with what is put into it
      if (kind === 'visit' && !parts.has(headOf(name)))
        parts.set(headOf(name), { id: name, ...visitOf(point) });
      parts.set(keyOf(...path), mine);
    }
  }
  return rawFrom(parts);
}
