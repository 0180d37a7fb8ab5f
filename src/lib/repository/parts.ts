/** What is taken out of a record and lies in the bin by itself: a visit, a finding, a decision. */
import * as v from 'valibot';
import type { Atlas } from '../atlas/atlas.ts';
import type { Case } from '../case/case.ts';
import { namedAs } from '../case/merge.ts';
import { rawOf } from '../case/raw.ts';
import { parseRaw } from '../case/parse.ts';
import {
  decisionFields,
  pageShape,
  visitFields,
  type RawCase,
  type RawDecision,
} from '../case/shape.ts';
import { findingPart, goneFindings, type FindingPart } from './findingParts.ts';
import { newPartId } from '../platform/ids.ts';
import type { Part } from './partRows.ts';

/** What went into the bin before visits and decisions had ids is given one when it comes back. */
const id = v.optional(v.string(), newPartId);
const visitPart = v.object({
  visit: v.object({ id, ...visitFields }),
  pages: v.array(pageShape),
});
const decisionPart = v.object({ id, ...decisionFields });

type VisitPart = v.InferOutput<typeof visitPart>;

/** A text of the bin as what it is to be; undefined where it is not. */
export function understood<T>(shape: v.GenericSchema<unknown, T>, text: string): T | undefined {
  try {
    const read = v.safeParse(shape, JSON.parse(text));
    return read.success ? read.output : undefined;
  } catch {
    return undefined;
  }
}

export const readVisitPart = (text: string): VisitPart | undefined => understood(visitPart, text);
export const readFindingPart = (text: string): FindingPart | undefined =>
  understood(findingPart, text);
export const readDecisionPart = (text: string) => understood(decisionPart, text);

/** Entries of the one list that the other has no like of, each counted as often as it stands there. */
export function without<T>(list: readonly T[], other: readonly T[]): T[] {
  const left = other.map((one) => JSON.stringify(one));
  return list.filter((one) => {
    const at = left.indexOf(JSON.stringify(one));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

/**
 * Visits, findings and decisions that a change takes out of a record. One that is moved or reworded is
 * not gone, and neither is a finding that is only corrected.
 */
export function goneFromCase(
  before: Case,
  after: Case,
  isCorrected: (part: FindingPart) => boolean = () => false,
): Part[] {
  const is = rawOf(after);
  // what was entered in two windows has become one, under the id of one of the two
  const was = namedAs(rawOf(before), is);
  const stays = new Set([...is.visits, ...(is.decisions ?? [])].map(({ id }) => id));
  const isGone = ({ id }: { id: string }): boolean => !stays.has(id);
  const visits = was.visits.filter(isGone).map((visit): Part => {
    const pages = was.family?.pages.filter((page) => page.visit === visit.id) ?? [];
    return { kind: 'visits', key: visit.id, text: JSON.stringify({ visit, pages }) };
  });
  return [
    ...visits,
    ...goneFindings(was, is).flatMap((part): Part[] => {
      if (isCorrected(part)) return [];
      const { on, examiner, finding } = part;
      const key = JSON.stringify([on, examiner, finding]);
      return [{ kind: 'findings', key, text: JSON.stringify(part) }];
    }),
    ...(was.decisions ?? []).filter(isGone).map((decision): Part => {
      return { kind: 'decisions', key: decision.id, text: JSON.stringify(decision) };
    }),
  ];
}

/** The record with a visit put back into it; undefined where it does not go in, as where one is there. */
export function withVisitBack(record: Case, part: VisitPart, atlas: Atlas): Case | undefined {
  const raw = rawOf(record);
  const { family } = raw;
  // it may have been put into the bin before its visit had an id
  const pages = part.pages.map((page) => ({ ...page, visit: part.visit.id }));
  const next: RawCase = { ...raw, visits: [...raw.visits, part.visit] };
  if (family && pages.length > 0) next.family = { ...family, pages: [...family.pages, ...pages] };
  const parsed = parseRaw(next, atlas);
  return parsed.ok ? parsed.value : undefined;
}

export function withDecisionBack(
  record: Case,
  decision: RawDecision,
  atlas: Atlas,
): Case | undefined {
  const raw = rawOf(record);
  const parsed = parseRaw({ ...raw, decisions: [...(raw.decisions ?? []), decision] }, atlas);
  return parsed.ok ? parsed.value : undefined;
}
