/**
 * What stands of each reflex at a visit or over the course: on every side the latest answer. What
 * asks to be discussed stays until a later answer has settled it, whether or not it was looked at
 * again; a try that gave no answer settles nothing.
 */
import type { CivilDate } from '../age/civil.ts';
import type { Reflex, Side } from '../atlas/types.ts';
import { isAnswer, isElicited } from '../case/finding.ts';
import { changesAt, type Move } from '../judge/changes.ts';
import { worstFirst, type JudgedFinding, type JudgedVisit } from '../judge/judge.ts';
import { asksMore, type Attention } from '../judge/rules/rule.ts';

/** A finding with the date it was seen. */
export interface Told {
  found: JudgedFinding;
  on: CivilDate;
  /** Whether the side answered at an earlier visit. */
  wasThere: boolean;
}

export interface Stands {
  reflex: Reflex;
  /** One a side, in the order they were recorded. */
  told: readonly Told[];
  /** The most that any of them asks for, another examiner's of the same day included. */
  attention: Attention;
  /** Another examiner saw something else on the same day, and they have not agreed on an answer yet. */
  othersDiffer: boolean;
  /** Looked at again since, without an answer: at the visit told of, over a course at any later one. */
  triedOn: CivilDate | null;
  /** How it moved since the answer before. */
  move: Move;
}

/** Whether a family is to be talked with about it: discuss, and what should not wait. */
export const isTalked = (attention: Attention | undefined): boolean =>
  attention !== undefined && asksMore(attention, 'watch');

const isLooked = (found: JudgedFinding): boolean => isAnswer(found.finding);

interface SideOf {
  told: Told;
  attention: Attention;
  differs: boolean;
  triedOn: CivilDate | null;
}

/** What stands on one side. `seen` holds its findings, oldest first; `here` those of the visit told of. */
function sideOf(
  seen: readonly Told[],
  here: readonly JudgedFinding[],
  course: boolean,
): SideOf | null {
  const answers = seen.filter(({ found }) => isLooked(found));
  const lastOn = answers.at(-1)?.on;
  const last = answers.filter(({ on }) => on === lastOn);
  const worst = worstFirst(last.map(({ found }) => found))[0];
  const own = here.find(isLooked);
  const tried = here.find((found) => !isLooked(found));
  const standing = last.find(({ found }) => found === worst) ?? null;
  const pick =
    last.find(({ found }) => found === own) ??
    (standing && (course || isTalked(worst?.attention)) ? standing : null);
  if (!pick) {
    const since = seen.at(-1);
    if (course)
      return since ? { told: since, attention: 'not-judged', differs: false, triedOn: null } : null;
    const at = seen.find(({ found }) => found === tried);
    return at ? { told: at, attention: 'not-judged', differs: false, triedOn: null } : null;
  }
  return {
    told: pick,
    attention:
      worst && asksMore(worst.attention, pick.found.attention)
        ? worst.attention
        : pick.found.attention,
    differs: last.some(({ found }) => found.finding.response !== pick.found.finding.response),
    triedOn:
      seen.findLast(({ found, on }) => (course ? on > pick.on : found === tried))?.on ?? null,
  };
}

const isUnsaid = (sides: ReadonlyMap<Side, readonly Told[]>): boolean =>
  [...sides.values()].every((side) =>
    side.every(({ found }) => found.finding.variant === undefined),
  );

/**
 * What stands of every reflex, in the order of first being recorded. Of a reflex tested as more than one of its
 * variants the one that asks for more is told, of equals the later: a page has one place for a reflex.
 * @param visits all visits, judged; only those up to the one told of are looked at
 * @param shown the visit told of; null for the whole course
 */
export function standsOf(visits: readonly JudgedVisit[], shown: JudgedVisit | null): Stands[] {
  const upTo = (shown ?? visits.at(-1))?.visit.on;
  if (!upTo) return [];
  const dated = visits
    .filter(({ visit }) => visit.on <= upTo)
    .toSorted((a, b) => (a.visit.on < b.visit.on ? -1 : Number(a.visit.on > b.visit.on)));
  const seen = new Map<Reflex, Map<Side, Told[]>>();
  for (const { visit, findings } of dated)
    for (const found of findings) {
      const { variant } = found.finding;
      // one that says its variant takes the place of what did not, which may have been of the same
      if (variant !== undefined)
        for (const [reflex, sides] of seen)
          if (reflex.id === found.reflex.id && isUnsaid(sides)) seen.delete(reflex);
      const sides = seen.get(found.reflex) ?? new Map<Side, Told[]>();
      seen.set(found.reflex, sides);
      const side = sides.get(found.finding.side) ?? [];
      sides.set(found.finding.side, side);
      const wasThere = side.some(
        (before) => before.on < visit.on && isElicited(before.found.finding.response),
      );
      side.push({ found, on: visit.on, wasThere });
    }
  const base = shown ?? dated.at(-1);
  const changed = base ? changesAt(base, visits).changed : [];
  const all = [...seen].flatMap(([reflex, sides]): Stands[] => {
    const parts = [...sides].flatMap(([side, told]) => {
      const here = (shown?.findings ?? []).filter(
        (found) => found.reflex === reflex && found.finding.side === side,
      );
      return sideOf(told, here, shown === null) ?? [];
    });
    if (parts.length === 0) return [];
    const attention = parts.reduce<Attention>(
      (most, part) => (asksMore(part.attention, most) ? part.attention : most),
      'not-judged',
    );
    const move = changed.find((change) => change.reflex === reflex)?.move ?? 'same';
    return [
      {
        reflex,
        told: parts.map(({ told }) => told),
        attention,
        othersDiffer: parts.some(({ differs }) => differs),
        triedOn:
          parts
            .flatMap(({ triedOn }) => triedOn ?? [])
            .toSorted()
            .at(-1) ?? null,
        move,
      },
    ];
  });
  return all.filter((one) =>
    all.every(
      (other) =>
        other === one ||
        other.reflex.id !== one.reflex.id ||
        asksMore(one.attention, other.attention) ||
        (one.attention === other.attention && all.indexOf(one) > all.indexOf(other)),
    ),
  );
}
