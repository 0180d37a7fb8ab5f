/**
 * A claim read as a window on the axis: when the response appears, when it integrates, and over
 * which span the source speaks at all. Silent is not agreement.
 */
import { TERM, toAxisDay, type AxisDay } from '../age/axis.ts';
import type { SourcedClaim } from '../atlas/atlas.ts';
import { isByTerm, printedDay, printedSpan, type Span } from '../atlas/printed.ts';
import type { Printed } from '../atlas/types.ts';

const NEVER = Infinity as AxisDay;
const ALWAYS = -Infinity as AxisDay;

/** What a claim states, in axis days. */
export interface Stated {
  claim: SourcedClaim;
  /** When it appears; null when that is not stated or only "by term". */
  appears: Span | null;
  /**
   * The last day the words on its appearance speak of, where not every infant has it by then: half have
   * it, a reading of ours of "the majority". Null where the appearance is complete or not dated.
   */
  notYetAllAt: AxisDay | null;
  /** There by term: silent before day 280, established from it. */
  byTerm: boolean;
  /** When it integrates; `to` is null for "later than `from`"; null when no end is stated. */
  integrates: { from: AxisDay; to: AxisDay | null } | null;
  /**
   * The first day its words have it go. Later than `integrates.from` where only the latest age is
   * printed: such words allow an earlier end and claim none. Null without a dated end.
   */
  goesFrom: AxisDay | null;
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

/** Over which days an appearance spreads: where `high` has half of the infants, as far again to all. */
function appearanceOf(printed: Printed): Span | null {
  const span = printedSpan(printed);
  if (!span || !printed.notYetAll) return span ?? null;
  return { from: span.from, to: toAxisDay(2 * span.to - span.from) };
}

/** What a claim states, before any other claim is looked at. */
export function statedBy(claim: SourcedClaim): Stated {
  const { appears, integrates, appearsStatus, integratesStatus } = claim;
  const byTerm = appearsStatus === 'implied' || (appears !== undefined && isByTerm(appears));
  const start = appears && !byTerm ? appearanceOf(appears) : null;
  const printed = integrates && printedSpan(integrates);
  const from = integrates && (printed?.from ?? printedDay(integrates.low, integrates.unit));
  // a latest age alone: it may go from the day its own row has it there, or from term where none is given
  const opens = from && integrates.atLatest ? Math.min(start?.to ?? TERM, from) : from;
  return {
    claim,
    appears: start,
    notYetAllAt: (appears?.notYetAll && printedSpan(appears)?.to) || null,
    byTerm,
    integrates: opens === undefined ? null : { from: toAxisDay(opens), to: printed?.to ?? null },
    goesFrom: printed?.from ?? null,
    lifelong: integratesStatus === 'persists',
  };
}

/** The last day by which every claim that dates the appearance has it there; term when none does. */
function latestAppearance(all: readonly Stated[]): AxisDay {
  const closes = all.flatMap((s) =>
    s.byTerm ? [TERM] : s.appears ? [s.notYetAllAt ?? s.appears.to] : [],
  );
  return closes.length > 0 ? (Math.max(...closes) as AxisDay) : TERM;
}

/** The first day on which any claim has it go; never when none dates an end. */
function earliestIntegration(all: readonly Stated[]): AxisDay {
  return Math.min(NEVER, ...all.map((s) => s.goesFrom ?? NEVER)) as AxisDay;
}

function read(stated: Stated, appearedBy: AxisDay, goesFrom: AxisDay): Window {
  const { appears, byTerm, integrates, lifelong, notYetAllAt } = stated;
  const start =
    appears ?? (byTerm ? { from: TERM, to: TERM } : { from: appearedBy, to: appearedBy });
  const speaksFrom = appears ? ALWAYS : start.from;
  const dated = integrates?.to != null;
  // the last day that the words speak of is within them
  const lastSaid = notYetAllAt === null ? null : toAxisDay(notYetAllAt + 1);
  const silentFrom = integrates ? integrates.from : goesFrom; // "later than X": X in place of the earliest end
  return {
    ...stated,
    speaksFrom,
    appearsFrom: start.from,
    appearsTo: start.to,
    integratesFrom: dated
      ? (Math.max(integrates.from, appears ? ALWAYS : start.to) as AxisDay)
      : NEVER,
    integratesTo: dated ? (integrates.to ?? NEVER) : NEVER,
    speaksTo: dated || lifelong ? NEVER : (lastSaid ?? (Math.max(silentFrom, start.to) as AxisDay)),
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

/** The days its words say of an appearance: the last of them, where some infants lack it still, is the end. */
export const appearsSaid = (window: Window): Span => ({
  from: window.appearsFrom,
  to: window.notYetAllAt ?? window.appearsTo,
});

/** The days its words say of an end: an earlier one, which "by" leaves open, is not said. */
export const goesSaid = (window: Window): Span => ({
  from: window.goesFrom ?? window.integratesFrom,
  to: window.integratesTo,
});
