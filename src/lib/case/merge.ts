/**
 * Two changes to one record brought together. A record is taken apart into parts that each say one
 * thing (a finding, a note, a tag); what only one of the two changed is taken from that one, and what
 * both changed, each otherwise, is a point on which a person decides.
 */
import { renamed, type Identified } from './renamed.ts';
import type { RawCase, RawVisit } from './shape.ts';

/** Where a part is: a field, or a visit by its id with a note, a finding or a milestone in it. */
export type PartPath = readonly string[];

/** What a person knows a visit by. */
export type VisitName = Pick<RawVisit, 'on' | 'examiner'>;

/** A part that both changed, each otherwise. Undefined: it is not there. */
export interface Point {
  path: PartPath;
  /** The visit it is in. Points that were kept before visits had ids name it by its key in the path. */
  visit?: VisitName | undefined;
  base: unknown;
  mine: unknown;
  theirs: unknown;
}

export interface Merged {
  /** Both together; on every point it says what theirs says, but a visit removed by one is there. */
  raw: RawCase;
  points: readonly Point[];
}

/** What the part of a visit is called that says when it was, and by whom. */
export const HEAD = 'date';

/** Parts of a record by their paths, each written out as JSON. */
export type Parts = Map<string, unknown>;

/** A path as the key of its part. */
export const keyOf = (...path: string[]): string => JSON.stringify(path);
/** The part of a visit that says when it was, and by whom. */
export const headOf = (visit: string): string => keyOf('visit', visit, HEAD);
export const pathOf = (key: string): string[] => JSON.parse(key) as string[];

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
  const { id, on, examiner, findings, milestones, ...others } = visit;
  const at = [id];
  parts.set(headOf(id), { id, on, examiner });
  // a note of nothing is no note: two who open the same visit do not clash by leaving it out
  for (const [name, value] of Object.entries(others))
    if (value !== '') parts.set(keyOf('visit', ...at, 'field', name), value);
  for (const finding of findings)
    parts.set(keyOf('visit', ...at, 'finding', finding.reflex, finding.side), finding);
  for (const seen of milestones)
    parts.set(keyOf('visit', ...at, 'milestone', seen.milestone), seen);
}

export function partsOf({
  format,
  version,
  child,
  visits,
  tags,
  decisions,
  agreed,
  ...others
}: RawCase): Parts {
  const { label, invented, ...birth } = child;
  const parts: Parts = new Map<string, unknown>([
    [keyOf('file'), { format, version }],
    [keyOf('label'), label],
    [keyOf('invented'), invented],
    [keyOf('birth'), birth],
  ]);
  for (const visit of visits) visitParts(visit, parts);
  for (const tag of tags ?? []) parts.set(keyOf('tag', tag), tag);
  for (const decision of decisions ?? []) parts.set(keyOf('decision', decision.id), decision);
  for (const one of agreed ?? [])
    parts.set(keyOf('agreed', one.on, one.reflex, one.side, one.variant ?? ''), one);
  for (const [name, value] of Object.entries(others))
    if (value !== undefined) parts.set(keyOf('field', name), value);
  return parts;
}

/** A record put together again. */
export function rawFrom(parts: Parts): RawCase {
  const top: Record<string, unknown> = {};
  const visits = new Map<
    string,
    Record<string, unknown> & { findings: unknown[]; milestones: unknown[] }
  >();
  const tags: unknown[] = [];
  const decisions: unknown[] = [];
  const agreed: unknown[] = [];
  let child: Record<string, unknown> = {};
  for (const [key, value] of parts) {
    const [kind, name = '', what, field = ''] = pathOf(key);
    if (kind === 'file') Object.assign(top, value);
    else if (kind === 'label' || kind === 'invented') child[kind] = value;
    else if (kind === 'birth') child = { ...child, ...(value as object) };
    else if (kind === 'tag') tags.push(value);
    else if (kind === 'decision') decisions.push(value);
    else if (kind === 'agreed') agreed.push(value);
    else if (kind === 'field') top[name] = value;
    else {
      const visit = visits.get(name) ?? { note: '', findings: [], milestones: [] };
      visits.set(name, visit);
      if (what === HEAD) Object.assign(visit, value);
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
    ...(agreed.length > 0 ? { agreed } : {}),
  } as unknown as RawCase;
}

/** Pairs of ids, here and in the other list, of what both have by name but under different ids. */
function idsThere<T extends { id: string }>(
  list: readonly T[],
  other: readonly T[],
  nameOf: (one: T) => string,
): [string, string][] {
  const [here, there] = [list, other].map((of) => new Set(of.map(({ id }) => id)));
  const left = other.filter(({ id }) => !here!.has(id));
  return list.flatMap((one): [string, string][] => {
    const at = there!.has(one.id) ? -1 : left.findIndex((its) => nameOf(its) === nameOf(one));
    const [its] = at < 0 ? [] : left.splice(at, 1);
    return its ? [[one.id, its.id]] : [];
  });
}

/** A record, written out or not, as far as its parts have names. */
interface Named extends Identified {
  visits: readonly (VisitName & { id: string })[];
  decisions?: readonly { id: string; on: string; text: string }[] | undefined;
}

export const visitNameOf = ({ on, examiner }: VisitName): string => `${on} ${examiner}`;

/**
 * A record in which a visit of the same day and examiner as one of the other, or a decision of the same
 * day and words, is that one: it was entered in two places, or has come in a file that named no ids.
 */
export function namedAs<T extends Named>(record: T, other: Named): T {
  const [mine, theirs] = [record, other].map(({ decisions = [] }) => decisions);
  return renamed(
    record,
    new Map([
      ...idsThere(record.visits, other.visits, visitNameOf),
      ...idsThere(mine!, theirs!, ({ on, text }) => `${on} ${text}`),
    ]),
  );
}

/** All that stands within a visit. */
export const within = (parts: Parts, visit: string): Parts =>
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
    .filter(([kind, , what]) => kind === 'visit' && what === HEAD);
  return names.flatMap(([, name = '']) => {
    const [b, m, t] = [base, mine, theirs].map((parts) => whole(parts, name));
    const isTorn = (m === undefined && !isSame(t, b)) || (t === undefined && !isSame(m, b));
    return isTorn && m !== t ? [name] : [];
  });
}

/** Makes points of records' parts, each with the visit it is in as the first of them has it. */
const pointsOf =
  (...records: readonly Parts[]) =>
  (path: PartPath, base: unknown, mine: unknown, theirs: unknown): Point => {
    const point = { path, base, mine, theirs };
    if (path[0] !== 'visit') return point;
    const at = headOf(path[1] ?? '');
    const its = records.map((parts) => parts.get(at)).find(Boolean) as VisitName | undefined;
    return its ? { ...point, visit: { on: its.on, examiner: its.examiner } } : point;
  };

/**
 * What both made of one record. Nothing that either changed is missing from `raw` and `points`.
 * @param kept whose value `raw` has on every point; where it is `mine`, a visit that mine removed stays removed
 */
export function mergeCases(
  baseRaw: RawCase,
  mineGiven: RawCase,
  theirsRaw: RawCase,
  kept: 'mine' | 'theirs' = 'theirs',
): Merged {
  const mineRaw = namedAs(mineGiven, theirsRaw);
  if (isSame(mineRaw, theirsRaw) || isSame(baseRaw, mineRaw)) return { raw: theirsRaw, points: [] };
  if (isSame(baseRaw, theirsRaw)) return { raw: mineRaw, points: [] };
  const [base, mine, theirs] = [partsOf(baseRaw), partsOf(mineRaw), partsOf(theirsRaw)];
  const points: Point[] = [];
  const pointAt = pointsOf(theirs, mine, base);
  const merged: Parts = new Map();
  const torn = tornVisits(base, mine, theirs);
  for (const visit of torn) {
    const [b, m, t] = [base, mine, theirs].map((parts) => whole(parts, visit));
    points.push(pointAt(['visit', visit], b, m, t));
    const whose = kept === 'mine' || t === undefined ? mine : theirs;
    for (const [key, value] of within(whose, visit)) merged.set(key, value);
  }
  for (const key of new Set([...theirs.keys(), ...mine.keys(), ...base.keys()])) {
    if (torn.some((visit) => isWithin(key, visit))) continue;
    const [b, m, t] = [base.get(key), mine.get(key), theirs.get(key)];
    const isMine = !isSame(m, b);
    if (isMine && !isSame(t, b) && !isSame(m, t)) points.push(pointAt(pathOf(key), b, m, t));
    const value = isMine && (kept === 'mine' || isSame(t, b)) ? m : t;
    if (value !== undefined) merged.set(key, value);
  }
  return { raw: rawFrom(merged), points };
}

/** All that differs between two records, where the one is to be held against the other as a whole. */
export function differences(mineRaw: RawCase, theirsRaw: RawCase): Point[] {
  const [mine, theirs] = [partsOf(namedAs(mineRaw, theirsRaw)), partsOf(theirsRaw)];
  const pointAt = pointsOf(theirs, mine);
  return [...new Set([...mine.keys(), ...theirs.keys()])]
    .filter((key) => !isSame(mine.get(key), theirs.get(key)))
    .map((key) => pointAt(pathOf(key), undefined, mine.get(key), theirs.get(key)));
}
