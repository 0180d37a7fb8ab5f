/**
 * A claim read as a window on the axis: when the response appears, when it integrates, and over
 * which span the source speaks at all. Silent is not agreement.
 */
import { TERM, type AxisDay } from '../age/axis.ts';
import type { SourcedClaim } from '../atlas/atlas.ts';
import { isByTerm, printedDay, printedSpan, type Span } from '../atlas/printed.ts';

const NEVER = Infinity as AxisDay;
const ALWAYS = -Infinity as AxisDay;

/** What a claim states, in axis days. */
export interface Stated {
  claim: SourcedClaim;
  /** When it appears; null when that is not stated or only "by term". */
  appears: Span | null;
  /** There by term: silent before day 280, established from it. */
  byTerm: boolean;
  /** When it integrates; `to` is null for "later than `from`"; null when no end is stated. */
  integrates: { from: AxisDay; to: AxisDay | null } | null;
  /** Stays for life. */
  lifelong: boolean;
}

/** A claim read in full: six edges between the phases, and where the source falls silent. */
export interface Window extends Stated {
  /** The source is silent before this day. */
  speaksFrom: AxisDay;
  appearsFrom: AxisDay;
  appearsTo: AxisDay;
  /** Infinite when no end is stated or it stays for life. */
  integratesFrom: AxisDay;
  integratesTo: AxisDay;
  /** The source is silent from this day on. */
  speaksTo: AxisDay;
}

/** What a claim states, before any other claim is looked at. */
export function statedBy(claim: SourcedClaim): Stated {
  const { appears, integrates, appearsStatus, integratesStatus } = claim;
  const byTerm = appearsStatus === 'implied' || (appears !== undefined && isByTerm(appears));
  const end = integrates && {
    from: printedSpan(integrates)?.from ?? printedDay(integrates.low, integrates.unit),
    to: printedSpan(integrates)?.to ?? null,
  };
  return {
    claim,
    appears: appears && !byTerm ? (printedSpan(appears) ?? null) : null,
    byTerm,
    integrates: end ?? null,
    lifelong: integratesStatus === 'persists',
  };
}

/** The last day by which every claim that dates the appearance has it there; term when none does. */
function latestAppearance(all: readonly Stated[]): AxisDay {
  const closes = all.flatMap((s) => (s.byTerm ? [TERM] : s.appears ? [s.appears.to] : []));
  return closes.length > 0 ? (Math.max(...closes) as AxisDay) : TERM;
}

/** The first day on which any claim has it go; never when none dates an end. */
function earliestIntegration(all: readonly Stated[]): AxisDay {
  const opens = all.flatMap((s) =>
    s.integrates && s.integrates.to !== null ? [s.integrates.from] : [],
  );
  return Math.min(NEVER, ...opens) as AxisDay;
}

function read(stated: Stated, appearedBy: AxisDay, goesFrom: AxisDay): Window {
  const { appears, byTerm, integrates, lifelong } = stated;
  const start =
    appears ?? (byTerm ? { from: TERM, to: TERM } : { from: appearedBy, to: appearedBy });
  const speaksFrom = appears ? ALWAYS : start.from;
  const dated = integrates?.to != null;
  const silentFrom = integrates ? integrates.from : goesFrom; // "later than X": X in place of the earliest end
  return {
    ...stated,
    speaksFrom,
    appearsFrom: start.from,
    appearsTo: start.to,
    integratesFrom: dated ? integrates.from : NEVER,
    integratesTo: dated ? (integrates.to ?? NEVER) : NEVER,
    speaksTo: dated || lifelong ? NEVER : (Math.max(silentFrom, start.to) as AxisDay),
  };
}

/**
 * Every claim on one reflex that is judged by, as windows. All claims held on the reflex are needed,
 * chosen or not: a source that states only part is read as established over the span that no other
 * disputes. Context claims are left out: they measure something else.
 */
export function windowsOf(claims: readonly SourcedClaim[]): readonly Window[] {
  const all = claims.filter((claim) => claim.role === 'window').map(statedBy);
  const appearedBy = latestAppearance(all);
  const goesFrom = earliestIntegration(all);
  return all.map((stated) => read(stated, appearedBy, goesFrom));
}
