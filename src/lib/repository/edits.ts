/** Changes to a record as its file holds it. Each answer passes the parser before it is believed. */
import { rawOf } from '../case/raw.ts';
import type { Case } from '../case/case.ts';
import {
  FORMAT,
  VERSION,
  type RawCase,
  type RawChild,
  type RawFollowUp,
  type RawVisit,
} from '../case/shape.ts';

/** A new case with no visit yet. */
export const newRaw = (child: RawChild): RawCase => ({
  format: FORMAT,
  version: VERSION,
  child,
  visits: [],
});

export const withChild = (record: Case, child: RawChild): RawCase => ({ ...rawOf(record), child });

/** The record with some of what surrounds its visits changed; null takes the sheet away. */
export function withFollowUp(record: Case, { sheet, ...change }: RawFollowUp): RawCase {
  const { sheet: old, ...raw } = rawOf(record);
  const next = sheet === undefined ? old : (sheet ?? undefined);
  return { ...raw, ...change, ...(next ? { sheet: next } : {}) };
}

/** A visit as its file holds it. */
export const rawVisit = (record: Case, id: string): RawVisit | undefined =>
  rawOf(record).visits.find((visit) => visit.id === id);

/** The record with a visit put in place of the one with its id, or added. */
export function withVisit(record: Case, visit: RawVisit): RawCase {
  const raw = rawOf(record);
  if (!record.visits.some(({ id }) => id === visit.id))
    return { ...raw, visits: [...raw.visits, visit] };
  return { ...raw, visits: raw.visits.map((one) => (one.id === visit.id ? visit : one)) };
}

/** The record without a visit, and without what was settled for its page. */
export function withoutVisit(record: Case, id: string): RawCase {
  const { visits, family, ...raw } = rawOf(record);
  return {
    ...raw,
    visits: visits.filter((visit) => visit.id !== id),
    ...(family
      ? { family: { ...family, pages: family.pages.filter(({ visit }) => visit !== id) } }
      : {}),
  };
}
