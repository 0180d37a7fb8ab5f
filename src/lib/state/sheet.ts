/** The sheet of a visit: what the plan proposes, with what the clinician added and dropped. */
import type { Reflex } from '../atlas/types.ts';
import { inOrder, type Lines, type PlanLine } from '../judge/plan.ts';

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
  /** Not proposed and not on it, in the order of testing. */
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
    more: plan.rest.filter((line) => !ids.includes(idOf(line))),
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

/** A run of lines in one position; what may upset stands in a last run of its own. */
export interface SheetRun<L extends PlanLine> {
  /** Undefined for the last run: what may upset. */
  position: PlanLine['reflex']['position'] | undefined;
  lines: L[];
}

/** Lines in their order, neighbours of one position together. */
export function runsOf<L extends PlanLine>(lines: readonly L[]): SheetRun<L>[] {
  const runs: SheetRun<L>[] = [];
  for (const line of lines) {
    const position = line.reflex.upsetting ? undefined : line.reflex.position;
    const last = runs.at(-1);
    if (last && last.position === position) last.lines.push(line);
    else runs.push({ position, lines: [line] });
  }
  return runs;
}
