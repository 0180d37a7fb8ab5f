/** A finding that is taken out of a visit that stays: a part of its own, and the way back into its visit. */
import * as v from 'valibot';
import type { Case } from '../case/case.ts';
import { rawOf } from '../case/raw.ts';
import type { Atlas } from '../atlas/atlas.ts';
import { parseRaw } from '../case/parse.ts';
import { findingShape, type RawCase, type RawFinding, type RawVisit } from '../case/shape.ts';

export const findingPart = v.object({
  /** The id of its visit; of one that was removed before visits had ids the day and examiner tell it. */
  visit: v.optional(v.string()),
  on: v.string(),
  examiner: v.string(),
  /** Where it stood among the findings of its visit, counted from 0. */
  at: v.pipe(v.number(), v.integer(), v.minValue(0)),
  finding: findingShape,
});

export type FindingPart = v.InferOutput<typeof findingPart>;

/** One reflex on one side: a visit says of it one thing at most. */
export const spotOf = ({ reflex, side }: RawFinding): string => `${reflex} ${side}`;

/** Findings of visits that stay, on a reflex and a side of which the visit says nothing any more. */
export function goneFindings(before: RawCase, after: RawCase): FindingPart[] {
  const stay = new Map(after.visits.map((visit) => [visit.id, visit]));
  return before.visits.flatMap((visit) => {
    const now = stay.get(visit.id);
    if (!now) return [];
    const spots = new Set(now.findings.map(spotOf));
    const { id, on, examiner } = visit;
    return visit.findings.flatMap((finding, at) =>
      spots.has(spotOf(finding)) ? [] : [{ visit: id, on, examiner, at, finding }],
    );
  });
}

/** `gone`: its visit is not here. `again`: the visit says of that reflex and side something by now. */
type NotBack = 'gone' | 'again' | 'refused';

/** The record with a finding put back into its visit, or why it does not go in. */
export function withFindingBack(
  record: Case,
  { visit: id, on, examiner, at, finding }: FindingPart,
  atlas: Atlas,
): Case | NotBack {
  const raw = rawOf(record);
  const isIts = (visit: RawVisit): boolean => visit.on === on && visit.examiner === examiner;
  const its = raw.visits.find((visit) => visit.id === id) ?? raw.visits.find(isIts);
  if (!its) return 'gone';
  if (its.findings.some((other) => spotOf(other) === spotOf(finding))) return 'again';
  const findings = its.findings.toSpliced(Math.min(at, its.findings.length), 0, finding);
  const visits = raw.visits.map((visit) => (visit === its ? { ...visit, findings } : visit));
  const parsed = parseRaw({ ...raw, visits }, atlas);
  return parsed.ok ? parsed.value : 'refused';
}
