/**
 * Commands applied to a record, and taken back. What comes of it has not passed the parser: two visits may
 * share date and examiner, or a date be none. A command whose part has gone, or that adds a visit that is there
 * already, changes nothing.
 */
import type { RawCase, RawDecision, RawVisit } from '../shape.ts';
import type { Command, RawPage, Spot } from './command.ts';
import { entryAt, withEntry, withoutEntry } from './lists.ts';

const idOf = ({ id }: { id: string }): string => id;
const spotOf = ({ reflex, side }: Spot): string => `${reflex} ${side}`;
const milestoneOf = ({ milestone }: RawVisit['milestones'][number]): string => milestone;
const pageOf = ({ visit }: RawPage): string => visit;

/** The record with one of its visits changed; itself where the visit is not there. */
function inVisit(raw: RawCase, id: string, change: (visit: RawVisit) => RawVisit): RawCase {
  if (!raw.visits.some((visit) => visit.id === id)) return raw;
  return { ...raw, visits: raw.visits.map((visit) => (visit.id === id ? change(visit) : visit)) };
}

function withPages(raw: RawCase, change: (pages: readonly RawPage[]) => RawPage[]): RawCase {
  return raw.family ? { ...raw, family: { ...raw.family, pages: change(raw.family.pages) } } : raw;
}

/** An empty list is left out of a record. */
function withDecisions({ decisions: _, ...raw }: RawCase, decisions: RawDecision[]): RawCase {
  return decisions.length > 0 ? { ...raw, decisions } : raw;
}

/** The record after a command. */
export function apply(raw: RawCase, command: Command): RawCase {
  const { decisions = [] } = raw;
  switch (command.kind) {
    case 'add-visit': {
      const { visit, before, page, pageBefore } = command;
      if (raw.visits.some(({ id }) => id === visit.id)) return raw;
      const next = { ...raw, visits: withEntry(raw.visits, visit, idOf, before) };
      return page ? withPages(next, (pages) => withEntry(pages, page, pageOf, pageBefore)) : next;
    }
    case 'remove-visit':
      return withPages({ ...raw, visits: withoutEntry(raw.visits, command.visit, idOf) }, (pages) =>
        withoutEntry(pages, command.visit, pageOf),
      );
    case 'redate-visit': {
      const { on, examiner } = command;
      return inVisit(raw, command.visit, (visit) => ({ ...visit, on, examiner }));
    }
    case 'set-visit-note':
      return inVisit(raw, command.visit, (visit) => ({ ...visit, note: command.note }));
    case 'set-finding': {
      const { finding, before } = command;
      return inVisit(raw, command.visit, (visit) => ({
        ...visit,
        findings: withEntry(visit.findings, finding, spotOf, before && spotOf(before)),
      }));
    }
    case 'remove-finding':
      return inVisit(raw, command.visit, (visit) => ({
        ...visit,
        findings: withoutEntry(visit.findings, spotOf(command.spot), spotOf),
      }));
    case 'set-milestone': {
      const { milestone, before } = command;
      return inVisit(raw, command.visit, (visit) => ({
        ...visit,
        milestones: withEntry(visit.milestones, milestone, milestoneOf, before),
      }));
    }
    case 'remove-milestone':
      return inVisit(raw, command.visit, (visit) => ({
        ...visit,
        milestones: withoutEntry(visit.milestones, command.milestone, milestoneOf),
      }));
    case 'set-decision': {
      const { decision, before } = command;
      return withDecisions(raw, withEntry(decisions, decision, idOf, before));
    }
    case 'remove-decision':
      return withDecisions(raw, withoutEntry(decisions, command.decision, idOf));
  }
}

/** The command that takes another back, from the record before it; undefined where that changes nothing. */
export function inverse(raw: RawCase, command: Command): Command | undefined {
  const visitOf = (id: string): RawVisit | undefined => raw.visits.find((one) => one.id === id);
  switch (command.kind) {
    case 'add-visit': {
      const { id } = command.visit;
      return visitOf(id) ? undefined : { kind: 'remove-visit', visit: id };
    }
    case 'remove-visit':
      return added(raw, command.visit);
    case 'redate-visit': {
      const visit = visitOf(command.visit);
      return visit && { ...command, on: visit.on, examiner: visit.examiner };
    }
    case 'set-visit-note': {
      const visit = visitOf(command.visit);
      return visit && { ...command, note: visit.note };
    }
    case 'set-finding':
    case 'remove-finding': {
      const visit = visitOf(command.visit);
      if (!visit) return undefined;
      const spot = command.kind === 'set-finding' ? command.finding : command.spot;
      const { entry, next } = entryAt(visit.findings, spotOf(spot), spotOf);
      if (entry) return { kind: 'set-finding', visit: visit.id, finding: entry, before: next };
      const { reflex, side } = spot;
      return command.kind === 'set-finding'
        ? { kind: 'remove-finding', visit: visit.id, spot: { reflex, side } }
        : undefined;
    }
    case 'set-milestone':
    case 'remove-milestone': {
      const visit = visitOf(command.visit);
      if (!visit) return undefined;
      const name =
        command.kind === 'set-milestone' ? command.milestone.milestone : command.milestone;
      const { entry, next } = entryAt(visit.milestones, name, milestoneOf);
      if (entry)
        return {
          kind: 'set-milestone',
          visit: visit.id,
          milestone: entry,
          before: next?.milestone,
        };
      return command.kind === 'set-milestone'
        ? { kind: 'remove-milestone', visit: visit.id, milestone: name }
        : undefined;
    }
    case 'set-decision':
    case 'remove-decision': {
      const id = command.kind === 'set-decision' ? command.decision.id : command.decision;
      const { entry, next } = entryAt(raw.decisions ?? [], id, idOf);
      if (entry) return { kind: 'set-decision', decision: entry, before: next?.id };
      return command.kind === 'set-decision'
        ? { kind: 'remove-decision', decision: id }
        : undefined;
    }
  }
}

/** The command that puts a visit of a record where it is, with its page; undefined where there is none. */
function added(raw: RawCase, id: string): Command | undefined {
  const { entry: visit, next } = entryAt(raw.visits, id, idOf);
  const { entry: page, next: pageNext } = entryAt(raw.family?.pages ?? [], id, pageOf);
  return (
    visit && {
      kind: 'add-visit',
      visit,
      before: next?.id,
      ...(page ? { page, pageBefore: pageNext?.visit } : {}),
    }
  );
}
