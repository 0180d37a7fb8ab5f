/** The sheet of a visit: what the plan proposes, with what the clinician added and dropped. */
import type { Caution, Reflex } from '../atlas/types.ts';
import { isForTeachingOnly } from '../judge/coreSet.ts';
import { inOrder, partOf, PARTS, type Lines, type Part, type PlanLine } from '../judge/plan.ts';
import { isFlagged } from '../judge/tenMinutes.ts';

export interface SheetLine extends PlanLine {
  /** Not among what the plan proposes: put on by hand. */
  byHand: boolean;
}

export interface Sheet {
  /** Every id on it in order, those that are no longer in the atlas too: what is stored. */
  ids: readonly string[];
  lines: readonly SheetLine[];
  /** On the sheet, and not in the atlas now. */
  unknown: readonly string[];
  /** Proposed, and dropped. */
  dropped: readonly PlanLine[];
  /** Not proposed and not on it, in the order of testing; not what is listed for teaching alone. */
  more: readonly PlanLine[];
}

const idOf = ({ reflex }: { reflex: Pick<Reflex, 'id'> }): string => reflex.id;

/** The sheet that lists these reflexes; undefined: as the plan proposes. */
export function sheetWith(plan: Lines, stored: readonly string[] | undefined): Sheet {
  const proposed = new Map(plan.lines.map((line) => [idOf(line), line]));
  const others = new Map(plan.rest.map((line) => [idOf(line), line]));
  const ids = stored ?? [...proposed.keys()];
  const lines = ids.flatMap((id): SheetLine[] => {
    const line = proposed.get(id) ?? others.get(id);
    return line ? [{ ...line, byHand: !proposed.has(id) }] : [];
  });
  return {
    ids,
    lines,
    unknown: ids.filter((id) => !proposed.has(id) && !others.has(id)),
    dropped: plan.lines.filter((line) => !ids.includes(idOf(line))),
    more: plan.rest.filter((line) => !ids.includes(idOf(line)) && !isForTeachingOnly(line.reflex)),
  };
}

/** The ids with one more, put where the order of testing has it. */
export function withLine({ ids, lines }: Sheet, line: PlanLine): string[] {
  const after = lines.find((other) => inOrder(line, other) < 0);
  const place = after ? ids.indexOf(idOf(after)) : ids.length;
  return ids.toSpliced(place, 0, idOf(line));
}

export const withoutLine = ({ ids }: Sheet, id: string): string[] =>
  ids.filter((one) => one !== id);

/** Lines of one part and position. */
export interface SheetRun<L extends PlanLine> {
  /** Undefined for what may upset and what was flagged: each is one run. */
  position: PlanLine['reflex']['position'] | undefined;
  lines: L[];
}

/** A part of a sheet: what was flagged last time, the core set, what else is worth testing, what may upset. */
export interface SheetPart<L extends PlanLine> {
  part: Part | 'flagged';
  runs: SheetRun<L>[];
}

/**
 * Lines under their parts, in each in their order, neighbours of one position together.
 * @param flaggedFirst what was flagged last time is a part by itself, ahead of the others and in one run
 */
export function partsOf<L extends PlanLine>(
  lines: readonly L[],
  flaggedFirst = false,
): SheetPart<L>[] {
  const flagged = flaggedFirst ? lines.filter(isFlagged) : [];
  const parts = PARTS.flatMap((part): SheetPart<L>[] => {
    const runs: SheetRun<L>[] = [];
    for (const line of lines) {
      if (partOf(line) !== part || flagged.includes(line)) continue;
      const position = part === 'upsetting' ? undefined : line.reflex.position;
      const last = runs.at(-1);
      if (last && last.position === position) last.lines.push(line);
      else runs.push({ position, lines: [line] });
    }
    return runs.length > 0 ? [{ part, runs }] : [];
  });
  return flagged.length > 0
    ? [{ part: 'flagged', runs: [{ position: undefined, lines: flagged }] }, ...parts]
    : parts;
}

/** The cautions of every line, which are said once. */
export const sharedCautions = (lines: readonly PlanLine[]): Caution[] =>
  lines.length > 1
    ? lines[0]!.reflex.cautions.filter((caution) =>
        lines.every(({ reflex }) => reflex.cautions.includes(caution)),
      )
    : [];
