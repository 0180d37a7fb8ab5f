/** Recording at the infant's side: the lines in order, where one stands, and what a touch changes. */
import type { CivilDate } from '../age/civil.ts';
import { daysBetween } from '../age/civil.ts';
import { sidesOf } from '../atlas/core.ts';
import type { Reflex, Side } from '../atlas/types.ts';
import type { Case, VisitSheet } from '../case/case.ts';
import { STATES, type InfantState, type Response } from '../case/finding.ts';
import type { RawFinding, RawVisit } from '../case/shape.ts';
import { findingAt, reflexesIn, withResponse } from './visitEdits.ts';

/** A sheet serves a visit this near to its date, days: visits are moved. A choice of ours. */
const SERVES_DAYS = 14;

/** The sheet that was made for a visit on a date, if one was. */
export const sheetServing = (sheet: VisitSheet | null, on: CivilDate): VisitSheet | undefined =>
  sheet && Math.abs(daysBetween(sheet.on, on)) <= SERVES_DAYS ? sheet : undefined;

/** A record without one of its visits, so that a plan for that visit does not know its findings. */
export const recordWithout = (record: Case, visit: string | undefined): Case => ({
  ...record,
  visits: record.visits.filter(({ id }) => id !== visit),
});

export interface RecordLine {
  id: string;
  /** Undefined when it is not in the atlas now. */
  reflex: Reflex | undefined;
  sides: readonly Side[];
  /** Whether it was on the sheet, rather than recorded or added beyond it. */
  onSheet: boolean;
}

/** The lines of a recording: the sheet's order, then what was recorded or added beyond it. */
export function linesFor(
  sheet: readonly string[],
  visit: RawVisit,
  added: readonly string[],
  reflexes: ReadonlyMap<string, Reflex>,
): RecordLine[] {
  const ids = [...new Set([...sheet, ...reflexesIn(visit), ...added])];
  return ids.map((id) => {
    const reflex = reflexes.get(id);
    return { id, reflex, sides: reflex ? sidesOf(reflex) : [], onSheet: sheet.includes(id) };
  });
}

/** The sides that make a line complete: both of a pair; the midline of a pair may be left. */
const needed = ({ sides }: RecordLine): readonly Side[] =>
  sides.length > 1 ? sides.filter((side) => side !== 'midline') : sides;

export const isDone = (visit: RawVisit, line: RecordLine): boolean =>
  line.reflex !== undefined &&
  needed(line).every((side) => findingAt(visit, line.id, side) !== undefined);

export const isUntouched = (visit: RawVisit, { id }: RecordLine): boolean =>
  !visit.findings.some((finding) => finding.reflex === id);

/** Where one stands. */
export interface Place {
  id: string;
  side: Side;
}

export const placeAt = (line: RecordLine): Place => ({
  id: line.id,
  side: line.sides[0] ?? 'left',
});

/** Lines that can be recorded on: those in the atlas now. */
const open = (lines: readonly RecordLine[]): RecordLine[] => lines.filter(({ reflex }) => reflex);

/** The place some lines further or back; stays at the ends. */
export function moved(lines: readonly RecordLine[], at: Place, by: number): Place {
  const all = open(lines);
  const index = all.findIndex(({ id }) => id === at.id);
  const next = all[Math.min(Math.max(index + by, 0), all.length - 1)];
  return next && next.id !== at.id ? placeAt(next) : at;
}

/** The next side of the line, or the one before. */
export function sideways(line: RecordLine, at: Place, by: number): Place {
  const next = line.sides[line.sides.indexOf(at.side) + by];
  return next ? { ...at, side: next } : at;
}

/** The first line that is not done, after one and then from the top; undefined when all are. */
export function nextOpen(
  lines: readonly RecordLine[],
  visit: RawVisit,
  after?: string,
): RecordLine | undefined {
  const all = open(lines);
  const from = all.findIndex(({ id }) => id === after) + 1;
  return all.slice(from).find((line) => !isDone(visit, line));
}

/**
 * Where one stands after an answer: on the other side while it is not answered, on the next line once
 * this answer has completed the line. A line that was complete before is being mended: one stays.
 * Where the reason is still asked for, one stays too.
 */
export function placeAfter(
  lines: readonly RecordLine[],
  line: RecordLine,
  side: Side,
  before: RawVisit,
  after: RawVisit,
): Place {
  const waits = after.findings.some(
    (f) => f.reflex === line.id && f.response === 'not-assessable' && !f.note.trim(),
  );
  const missing = needed(line).find((one) => findingAt(after, line.id, one) === undefined);
  if (missing && !waits) return { id: line.id, side: missing };
  if (waits || isDone(before, line)) return { id: line.id, side };
  const next = nextOpen(lines, after, line.id);
  return next ? placeAt(next) : { id: line.id, side };
}

/** A response on some sides, of the variant that was tested. A reason why it could not be told goes with the response it explained. */
export function answered(
  visit: RawVisit,
  line: RecordLine,
  sides: readonly Side[],
  response: Response | undefined,
  state: InfantState,
  variant?: string,
): RawVisit {
  const next = withResponse(visit, line.id, sides, response, state, variant);
  return {
    ...next,
    findings: next.findings.map((finding) => {
      if (finding.reflex !== line.id || !sides.includes(finding.side as Side)) return finding;
      const old = findingAt(visit, line.id, finding.side as Side);
      return old?.response === 'not-assessable' && finding.response !== 'not-assessable'
        ? { ...finding, note: '' }
        : finding;
    }),
  };
}

/** A change to one finding: its state or its note. */
export const withOne = (
  visit: RawVisit,
  { id, side }: Place,
  detail: Partial<Pick<RawFinding, 'state' | 'note'>>,
): RawVisit => ({
  ...visit,
  findings: visit.findings.map((f) =>
    f.reflex === id && f.side === side ? { ...f, ...detail } : f,
  ),
});

/** The state of what was recorded last: what counts until another is set. */
export const lastState = (visit: RawVisit): InfantState =>
  STATES.find((state) => state === visit.findings.at(-1)?.state) ?? 'not-recorded';

/** A state set from here on: findings without one take it, the others keep theirs. */
export const withStateFromHere = (visit: RawVisit, state: InfantState): RawVisit => ({
  ...visit,
  findings: visit.findings.map((f) => (f.state === 'not-recorded' ? { ...f, state } : f)),
});
