/**
 * Two changes to one record brought together. A record is taken apart into parts that each say one
 * thing (a finding, a note, a tag); what only one of the two changed is taken from that one, and what
 * both changed, each otherwise, is a point on which a person decides.
 */
import type { RawCase, RawVisit } from './shape.ts';

/** Where a part stands: a field, or a visit by its key with a note, a finding or a milestone in it. */
export type PartPath = readonly string[];

/** A part that both changed, each otherwise. Undefined: it is not there. */
export interface Point {
  path: PartPath;
  base: unknown;
  mine: unknown;
  theirs: unknown;
}

export interface Merged {
  /** Both together; on every point it says what theirs says, but a visit removed by one is there. */
  raw: RawCase;
  points: readonly Point[];
}

type Parts = Map<string, unknown>;

const keyOf = (...path: string[]): string => JSON.stringify(path);
const pathOf = (key: string): string[] => JSON.parse(key) as string[];

/** A value as text in which the order of names does not count. */
export function canonical(value: unknown): string {
  const sortedNames = (_: string, inner: unknown): unknown =>
    inner !== null && typeof inner === 'object' && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner;
  return value === undefined ? 'nothing' : JSON.stringify(value, sortedNames);
}

const isSame = (a: unknown, b: unknown): boolean => a === b || canonical(a) === canonical(b);

function visitParts(visit: RawVisit, parts: Parts): void {
  const { on, examiner, findings, milestones, ...others } = visit;
  const at = [`${on} ${examiner}`];
  parts.set(keyOf('visit', ...at), { on, examiner });
  // a note of nothing is no note: two who open the same visit do not clash by leaving it out
  for (const [name, value] of Object.entries(others))
    if (value !== '') parts.set(keyOf('visit', ...at, 'field', name), value);
  for (const finding of findings)
    parts.set(keyOf('visit', ...at, 'finding', finding.reflex, finding.side), finding);
  for (const seen of milestones)
    parts.set(keyOf('visit', ...at, 'milestone', seen.milestone), seen);
}

function partsOf({ format, version, child, visits, tags, decisions, ...others }: RawCase): Parts {
  const { label, invented, ...birth } = child;
  const parts: Parts = new Map<string, unknown>([
    [keyOf('file'), { format, version }],
    [keyOf('label'), label],
    [keyOf('invented'), invented],
    [keyOf('birth'), birth],
  ]);
  for (const visit of visits) visitParts(visit, parts);
  for (const tag of tags ?? []) parts.set(keyOf('tag', tag), tag);
  for (const decision of decisions ?? []) {
    let nth = 0;
    const key = (): string => keyOf('decision', decision.on, decision.text, String(nth));
    while (parts.has(key())) nth += 1;
    parts.set(key(), decision);
  }
  for (const [name, value] of Object.entries(others))
    if (value !== undefined) parts.set(keyOf('field', name), value);
  return parts;
}

/** A record put together again. */
function rawFrom(parts: Parts): RawCase {
  const top: Record<string, unknown> = {};
  const visits = new Map<
    string,
    Record<string, unknown> & { findings: unknown[]; milestones: unknown[] }
  >();
  const tags: unknown[] = [];
  const decisions: unknown[] = [];
  let child: Record<string, unknown> = {};
  for (const [key, value] of parts) {
    const [kind, name = '', what, field = ''] = pathOf(key);
    if (kind === 'file') Object.assign(top, value);
    else if (kind === 'label' || kind === 'invented') child[kind] = value;
    else if (kind === 'birth') child = { ...child, ...(value as object) };
    else if (kind === 'tag') tags.push(value);
    else if (kind === 'decision') decisions.push(value);
    else if (kind === 'field') top[name] = value;
    else {
      const visit = visits.get(name) ?? { note: '', findings: [], milestones: [] };
      visits.set(name, visit);
      if (what === undefined) Object.assign(visit, value);
      else if (what === 'finding') visit.findings.push(value);
      else if (what === 'milestone') visit.milestones.push(value);
      else visit[field] = value;
    }
  }
  return {
    ...top,
    child,
    visits: [...visits.values()],
    ...(tags.length > 0 ? { tags } : {}),
    ...(decisions.length > 0 ? { decisions } : {}),
  } as unknown as RawCase;
}

/** All that stands within a visit. */
const within = (parts: Parts, visit: string): Parts =>
  new Map([...parts].filter(([key]) => isWithin(key, visit)));

function isWithin(key: string, visit: string): boolean {
  const [kind, name] = pathOf(key);
  return kind === 'visit' && name === visit;
}

const whole = (parts: Parts, visit: string): unknown => {
  const inside = within(parts, visit);
  return inside.size === 0 ? undefined : Object.fromEntries(inside);
};

/** Visits that one of the two removed while the other changed something in them. */
function tornVisits(base: Parts, mine: Parts, theirs: Parts): string[] {
  const names = [...base.keys()]
    .map(pathOf)
    .filter((path) => path[0] === 'visit' && path.length === 2);
  return names.flatMap(([, name = '']) => {
    const [b, m, t] = [base, mine, theirs].map((parts) => whole(parts, name));
    const isTorn = (m === undefined && !isSame(t, b)) || (t === undefined && !isSame(m, b));
    return isTorn && m !== t ? [name] : [];
  });
}

/** What both made of one record. Nothing that either changed is missing from `raw` and `points`. */
export function mergeCases(baseRaw: RawCase, mineRaw: RawCase, theirsRaw: RawCase): Merged {
  if (isSame(mineRaw, theirsRaw) || isSame(baseRaw, mineRaw)) return { raw: theirsRaw, points: [] };
  if (isSame(baseRaw, theirsRaw)) return { raw: mineRaw, points: [] };
  const [base, mine, theirs] = [partsOf(baseRaw), partsOf(mineRaw), partsOf(theirsRaw)];
  const points: Point[] = [];
  const merged: Parts = new Map();
  const torn = tornVisits(base, mine, theirs);
  for (const visit of torn) {
    const [b, m, t] = [base, mine, theirs].map((parts) => whole(parts, visit));
    points.push({ path: ['visit', visit], base: b, mine: m, theirs: t });
    for (const [key, value] of within(t === undefined ? mine : theirs, visit))
      merged.set(key, value);
  }
  for (const key of new Set([...theirs.keys(), ...mine.keys(), ...base.keys()])) {
    if (torn.some((visit) => isWithin(key, visit))) continue;
    const [b, m, t] = [base.get(key), mine.get(key), theirs.get(key)];
    const isMine = !isSame(m, b);
    if (isMine && !isSame(t, b) && !isSame(m, t))
      points.push({ path: pathOf(key), base: b, mine: m, theirs: t });
    const value = isMine && isSame(t, b) ? m : t;
    if (value !== undefined) merged.set(key, value);
  }
  return { raw: rawFrom(merged), points };
}

/** All that differs between two records, where the one is to be held against the other as a whole. */
export function differences(mineRaw: RawCase, theirsRaw: RawCase): Point[] {
  const [mine, theirs] = [partsOf(mineRaw), partsOf(theirsRaw)];
  return [...new Set([...mine.keys(), ...theirs.keys()])]
    .filter((key) => !isSame(mine.get(key), theirs.get(key)))
    .map((key) => ({
      path: pathOf(key),
      base: undefined,
      mine: mine.get(key),
      theirs: theirs.get(key),
    }));
}

/** The record with every given point as mine said. */
export function withMine(raw: RawCase, points: readonly Point[]): RawCase {
  const parts = partsOf(raw);
  for (const { path, mine } of points) {
    const [kind, name = ''] = path;
    if (kind === 'visit' && path.length === 2) {
      for (const key of within(parts, name).keys()) parts.delete(key);
      for (const [key, value] of Object.entries(mine ?? {})) parts.set(key, value);
    } else if (mine === undefined) parts.delete(keyOf(...path));
    else {
      // the visit may have gone since: it comes back with what is put into it
      const [on = '', ...examiner] = name.split(' ');
      if (kind === 'visit' && !parts.has(keyOf('visit', name)))
        parts.set(keyOf('visit', name), { on, examiner: examiner.join(' ') });
      parts.set(keyOf(...path), mine);
    }
  }
  return rawFrom(parts);
}
