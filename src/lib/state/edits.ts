/** Changes to a record as its file holds it. Each answer passes the parser before it is believed. */
import type { CivilDate } from '../age/civil.ts';
import { rawOf } from '../case/file.ts';
import { visitKey, type Case } from '../case/case.ts';
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

/** A visit as its file holds it; `number` counts from 1. */
export const rawVisit = (record: Case, number: number): RawVisit | undefined =>
  rawOf(record).visits[number - 1];

/** The record with a visit put in place of the one with that number, or added. */
export function withVisit(record: Case, number: number | undefined, visit: RawVisit): RawCase {
  const raw = rawOf(record);
  if (number === undefined) return { ...raw, visits: [...raw.visits, visit] };
  const visits = raw.visits.map((old, index) => (index === number - 1 ? visit : old));
  const old = record.visits[number - 1];
  const key = visitKey({ on: visit.on.trim() as CivilDate, examiner: visit.examiner.trim() });
  return { ...raw, visits, ...withPages(raw, (of) => (old && of === visitKey(old) ? key : of)) };
}

/** What was settled for a visit's page goes with the visit: to another date or examiner, or away. */
function withPages(
  { family }: RawCase,
  goesTo: (visit: string) => string | undefined,
): Pick<RawCase, 'family'> {
  if (!family) return {};
  const pages = family.pages.flatMap((page) => {
    const visit = goesTo(page.visit);
    return visit === undefined ? [] : [{ ...page, visit }];
  });
  return { family: { ...family, pages } };
}

export function withoutVisit(record: Case, number: number): RawCase {
  const raw = rawOf(record);
  const gone = record.visits[number - 1];
  return {
    ...raw,
    visits: raw.visits.filter((_, index) => index !== number - 1),
    ...withPages(raw, (of) => (gone && of === visitKey(gone) ? undefined : of)),
  };
}

/** The number of the visit with a date and examiner, counted from 1; 0 when there is none. */
export const numberOf = (record: Case, visit: { on: string; examiner: string }): number =>
  record.visits.findIndex((v) => visitKey(v) === `${visit.on.trim()} ${visit.examiner.trim()}`) + 1;
