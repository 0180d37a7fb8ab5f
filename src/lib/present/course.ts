/** A child's course as a reader takes it in: the two sides told together where they say the same. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Reflex, Side } from '../atlas/types.ts';
import { asTested } from '../atlas/variants.ts';
import type { Course } from '../case/course.ts';
import { testOf, type Finding } from '../case/finding.ts';
import type { Change, LeftOpen } from '../judge/changes.ts';
import type { JudgedFinding, JudgedVisit } from '../judge/judge.ts';

/** One thing that is told, with the sides of which it is true. */
export interface OnSides<T> {
  one: T;
  sides: readonly Side[];
}

/** Those that say the same but for the side are told once. */
export function sidesTogether<T>(
  all: readonly T[],
  sideOf: (one: T) => Side,
  says: (one: T) => string,
): OnSides<T>[] {
  const told = new Map<string, { one: T; sides: Side[] }>();
  for (const one of all) {
    const known = told.get(says(one));
    if (known) known.sides.push(sideOf(one));
    else told.set(says(one), { one, sides: [sideOf(one)] });
  }
  return [...told.values()];
}

const meaning = ({ finding, judged, attention }: JudgedFinding): string =>
  `${finding.response} ${judged.verdict} ${attention}`;

export const changesTogether = (changes: readonly Change[]): OnSides<Change>[] =>
  sidesTogether(
    changes,
    ({ side }) => side,
    ({ reflex, move, since, before, now }) =>
      [reflex.id, move, since, before && meaning(before), meaning(now)].join(' / '),
  );

export const leftOpenTogether = (left: readonly LeftOpen[]): OnSides<LeftOpen>[] =>
  sidesTogether(
    left,
    ({ side }) => side,
    ({ reflex, since, last }) => [reflex.id, since, meaning(last)].join(' / '),
  );

const seen = (at: { on: string } | null | undefined): string => at?.on ?? '';

export const coursesTogether = (courses: readonly Course[]): OnSides<Course>[] =>
  sidesTogether(
    courses,
    ({ side }) => side,
    ({ reflex, state, appeared, integrated }) =>
      [
        reflex,
        state,
        seen(appeared.after),
        seen(appeared.by),
        seen(integrated?.after),
        seen(integrated?.by),
      ].join(' / '),
  );

/** What was seen of a reflex at a visit, with its verdict where the atlas knows the reflex. */
export interface Cell {
  finding: Finding;
  judged: JudgedFinding | undefined;
}

export interface GridRow {
  /** What was tested, as a key: a variant of a reflex has a row of its own. */
  id: string;
  /** Undefined where the atlas does not hold it (any more). */
  reflex: Reflex | undefined;
  /** One list a visit, left before right; empty where it was not tested. */
  cells: readonly (readonly Cell[])[];
  courses: readonly OnSides<Course>[];
}

const SIDE_ORDER: readonly Side[] = ['left', 'right', 'midline'];

/** Every reflex and variant that was looked at, in the order of the atlas; those it does not hold stand last. */
export function gridOf(
  visits: readonly JudgedVisit[],
  courses: readonly Course[],
  atlas: Atlas,
): GridRow[] {
  const looked = new Map(
    visits.flatMap(({ visit }) => visit.findings.map((finding) => [testOf(finding), finding])),
  );
  const order = [...atlas.reflexes.keys()];
  const placeOf = (id: string): number => (order.includes(id) ? order.indexOf(id) : order.length);
  const tested = ({ reflex, variant }: Finding): Reflex | undefined => {
    const known = atlas.reflexes.get(reflex);
    return known && asTested(known, variant);
  };
  return [...looked]
    .toSorted(([, a], [, b]) => placeOf(a.reflex) - placeOf(b.reflex))
    .map(([id, finding]) => ({
      id,
      reflex: tested(finding),
      cells: visits.map(({ visit, findings }) =>
        visit.findings
          .filter((one) => testOf(one) === id)
          .toSorted((a, b) => SIDE_ORDER.indexOf(a.side) - SIDE_ORDER.indexOf(b.side))
          .map((finding) => ({
            finding,
            judged: findings.find((one) => one.given === finding),
          })),
      ),
      courses: coursesTogether(courses.filter((one) => testOf(one) === id)),
    }));
}
