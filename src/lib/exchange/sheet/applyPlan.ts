/** A child with what a sheet adds to it, as far as it was read, and the same through the parser. */
import type { CivilDate } from '../../age/civil.ts';
import type { Atlas } from '../../atlas/atlas.ts';
import type { Case } from '../../case/case.ts';
import { parseRaw } from '../../case/parse.ts';
import type { RawCase, RawFinding, RawVisit } from '../../case/shape.ts';
import type { Kept } from '../../store/store.ts';
import type { SheetField } from './columns.ts';
import type { Line } from './lines.ts';
import { fieldOf, type CellFault } from './problems.ts';

export interface PlannedVisit {
  id: string;
  on: string;
  examiner: string;
  /** Whether the child has this visit already. */
  isHere: boolean;
  /** A new visit on a date ahead of today: entered by hand it would be asked about. */
  isAhead: boolean;
  added: readonly RawFinding[];
}

export interface PlannedChild {
  label: string;
  /** The child here that is added to; undefined for a new one. */
  here: Kept | undefined;
  record: Case;
  visits: readonly PlannedVisit[];
}

export interface DraftVisit extends PlannedVisit {
  added: RawFinding[];
  /** What the visit here holds already. */
  old: readonly RawFinding[];
  /** That of the visit, where its row is the whole visit. */
  note: string;
  /** The line that the visit, or its note, came from. */
  line: Line;
}

export interface Draft {
  label: string;
  here: Kept | undefined;
  raw: RawCase;
  /** So many new visits fit into the record yet. */
  room: number;
  /** The line that the child came from, for saying where its problem lies. */
  line: Line;
  visits: Map<string, DraftVisit>;
  lineOf: Map<RawFinding, Line>;
}

export const visitKey = (on: CivilDate, examiner: string): string => `${on} ${examiner}`;

/** Where a problem of the grown record is told. */
export type Refuse = (line: Line, field: SheetField, fault: CellFault) => void;

/** The child as planned; undefined when nothing is added, or when the record would not hold. */
export function grown(
  { label, here, raw, line, visits, lineOf }: Draft,
  atlas: Atlas,
  refuse: Refuse,
): PlannedChild | undefined {
  const added = [...visits.values()].filter((visit) => visit.added.length > 0);
  if (added.length === 0) return undefined;
  const sourceOf = (visit: RawVisit | undefined): DraftVisit | undefined =>
    added.find(({ id }) => id === visit?.id);
  const old = raw.visits.map((visit): RawVisit => {
    const more = sourceOf(visit);
    return more ? { ...visit, findings: [...visit.findings, ...more.added] } : visit;
  });
  const fresh = added
    .filter(({ isHere }) => !isHere)
    .map(({ id, on, examiner, note, added: findings }): RawVisit => {
      return { id, on, examiner, note, findings, milestones: [] };
    });
  const whole = { ...raw, visits: [...old, ...fresh] };
  const parsed = parseRaw(whole, atlas);
  if (parsed.ok) return { label, here, record: parsed.value, visits: added };
  for (const problem of parsed.problems) {
    const visit = whole.visits[(problem.at.visit?.number ?? 0) - 1];
    const finding = visit?.findings[(problem.at.finding?.number ?? 0) - 1];
    const from = (finding && lineOf.get(finding)) ?? sourceOf(visit)?.line ?? line;
    refuse(from, fieldOf(problem), { code: 'record', problem });
  }
  return undefined;
}
