/** What is taken out of a record and lies in the bin by itself: a visit, a finding, a decision. */
import * as v from 'valibot';
import type { Atlas } from '../atlas/atlas.ts';
import { visitKey, type Case } from '../case/case.ts';
import { rawOf } from '../case/file.ts';
import { parseRaw } from '../case/parse.ts';
import { decisionShape, pageShape, visitShape, type RawCase } from '../case/shape.ts';
import { findingPart, goneFindings, type FindingPart } from './findingParts.ts';
import type { Part } from './partRows.ts';

const visitPart = v.object({ visit: visitShape, pages: v.array(pageShape) });

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
export const readDecisionPart = (text: string) => understood(decisionShape, text);

/** Entries of the one list that the other has no like of, each counted as often as it stands there. */
export function without<T>(list: readonly T[], other: readonly T[]): T[] {
  const left = other.map((one) => JSON.stringify(one));
  return list.filter((one) => {
    const at = left.indexOf(JSON.stringify(one));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

/** What was found at a visit, whenever and by whomever. */
const found = ({ note, findings, milestones }: Case['visits'][number]): string =>
  JSON.stringify([note, findings, milestones]);

/**
 * Visits, findings and decisions that a change takes out of a record. One that is moved or reworded is
 * not gone, and neither is a finding that is only corrected.
 */
export function goneFromCase(
  before: Case,
  after: Case,
  isCorrected: (part: FindingPart) => boolean = () => false,
): Part[] {
  const [had, has] = [before, after].map(({ visits }) => new Set(visits.map(visitKey)));
  const moved = new Set(after.visits.filter((visit) => !had!.has(visitKey(visit))).map(found));
  const raw = rawOf(before);
  const visits = before.visits.flatMap((visit, index): Part[] => {
    const key = visitKey(visit);
    if (has!.has(key) || moved.has(found(visit))) return [];
    const pages = raw.family?.pages.filter((page) => page.visit === key) ?? [];
    const text = JSON.stringify({ visit: raw.visits[index], pages });
    return [{ kind: 'visits', key, text }];
  });
  const [was, is] = [raw.decisions ?? [], rawOf(after).decisions ?? []];
  const lost = without(was, is);
  const come = without(is, was);
  const decisions = come.length > 0 ? [] : lost;
  return [
    ...visits,
    ...goneFindings(before, after).flatMap((part): Part[] => {
      if (isCorrected(part)) return [];
      const { on, examiner, finding } = part;
      const key = JSON.stringify([on, examiner, finding]);
      return [{ kind: 'findings', key, text: JSON.stringify(part) }];
    }),
    ...decisions.map((decision): Part => {
      const text = JSON.stringify(decision);
      return { kind: 'decisions', key: text, text };
    }),
  ];
}

/** The record with a visit put back into it; undefined where it does not go in, as where one is there. */
export function withVisitBack(record: Case, part: VisitPart, atlas: Atlas): Case | undefined {
  const raw = rawOf(record);
  const { family } = raw;
  const next: RawCase = { ...raw, visits: [...raw.visits, part.visit] };
  if (family && part.pages.length > 0)
    next.family = { ...family, pages: [...family.pages, ...part.pages] };
  const parsed = parseRaw(next, atlas);
  return parsed.ok ? parsed.value : undefined;
}

export function withDecisionBack(
  record: Case,
  decision: v.InferOutput<typeof decisionShape>,
  atlas: Atlas,
): Case | undefined {
  const raw = rawOf(record);
  const parsed = parseRaw({ ...raw, decisions: [...(raw.decisions ?? []), decision] }, atlas);
  return parsed.ok ? parsed.value : undefined;
}
