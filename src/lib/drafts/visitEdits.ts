/** Changes to a visit as its file holds it, before the parser has seen it. */
import type { Side } from '../atlas/types.ts';
import { RESPONSES, STATES, type InfantState, type Response } from '../case/finding.ts';
import type { RawFinding, RawVisit } from '../case/shape.ts';
import { newPartId } from '../platform/ids.ts';

export const blankVisit = (on: string): RawVisit => ({
  id: newPartId(),
  on,
  examiner: '',
  note: '',
  findings: [],
  milestones: [],
});

/** Whether anything but the date has been entered. */
export const isBlank = ({ findings, milestones, note, examiner }: RawVisit): boolean =>
  findings.length === 0 && milestones.length === 0 && !note.trim() && !examiner.trim();

export const findingAt = (visit: RawVisit, reflex: string, side: Side): RawFinding | undefined =>
  visit.findings.find((f) => f.reflex === reflex && f.side === side);

/** The reflexes that were looked at, in the order in which they were entered. */
export const reflexesIn = (visit: RawVisit): string[] => [
  ...new Set(visit.findings.map((finding) => finding.reflex)),
];

export const responseOf = (finding: RawFinding | undefined): Response | undefined =>
  RESPONSES.find((response) => response === finding?.response);

/** A finding without its count of tries, which belongs to the response that was missing. */
function triedOnce({ tries: _, ...finding }: RawFinding): RawFinding {
  return finding;
}

/** How often a response was tried at the visit without an answer; 1 is what is meant where nothing is said. */
export const withTries = (
  visit: RawVisit,
  reflex: string,
  sides: readonly Side[],
  tries: number,
): RawVisit => ({
  ...visit,
  findings: visit.findings.map((f) =>
    f.reflex !== reflex || !sides.includes(f.side as Side) || f.response !== 'not-elicited'
      ? f
      : { ...triedOnce(f), ...(tries > 1 ? { tries } : {}) },
  ),
});

/** A finding that does not say its variant. */
function unsaid({ variant: _, ...finding }: RawFinding): RawFinding {
  return finding;
}

/**
 * Which variant of a reflex was tested, for all its sides at the visit: they are compared with each other.
 * Undefined: not said.
 */
export const withVariant = (
  visit: RawVisit,
  reflex: string,
  variant: string | undefined,
): RawVisit => ({
  ...visit,
  findings: visit.findings.map((f) =>
    f.reflex === reflex ? { ...unsaid(f), ...(variant === undefined ? {} : { variant }) } : f,
  ),
});

/** The variant that the findings of a reflex at a visit say. */
export const variantIn = (visit: RawVisit, reflex: string): string | undefined =>
  visit.findings.find((f) => f.reflex === reflex && f.variant !== undefined)?.variant;

/**
 * The response of a reflex on some sides; undefined takes the finding out: not tested.
 * @param variant which was tested, for a finding that is new
 */
export function withResponse(
  visit: RawVisit,
  reflex: string,
  sides: readonly Side[],
  response: Response | undefined,
  state: InfantState,
  variant = variantIn(visit, reflex),
): RawVisit {
  const tested = variant === undefined ? {} : { variant };
  let findings = visit.findings;
  for (const side of sides) {
    const old = findings.find((f) => f.reflex === reflex && f.side === side);
    if (!response) findings = findings.filter((f) => f !== old);
    else if (old) findings = findings.map((f) => (f === old ? { ...triedOnce(f), response } : f));
    else findings = [...findings, { reflex, side, response, state, note: '', ...tested }];
  }
  return { ...visit, findings };
}

/** A change to every finding of one reflex: its state or its note. */
export const withDetail = (
  visit: RawVisit,
  reflex: string,
  detail: Partial<Pick<RawFinding, 'state' | 'note'>>,
): RawVisit => ({
  ...visit,
  findings: visit.findings.map((f) => (f.reflex === reflex ? { ...f, ...detail } : f)),
});

export const withoutReflex = (visit: RawVisit, reflex: string): RawVisit => ({
  ...visit,
  findings: visit.findings.filter((f) => f.reflex !== reflex),
});

/** The state most findings of a visit were made in; not recorded when there is none. */
export function stateOf(visit: RawVisit): InfantState {
  let best: InfantState = 'not-recorded';
  let most = 0;
  for (const state of STATES) {
    const count = visit.findings.filter((f) => f.state === state).length;
    if (count > most) [best, most] = [state, count];
  }
  return best;
}

/** The state set for the whole visit; a finding with one of its own keeps it. */
export const withState = (visit: RawVisit, from: InfantState, to: InfantState): RawVisit => ({
  ...visit,
  findings: visit.findings.map((f) => (f.state === from ? { ...f, state: to } : f)),
});

/** A milestone looked for at the visit; undefined takes it out. `lost`: the carer says that it is lost. */
export function withMilestone(
  visit: RawVisit,
  milestone: string,
  seen: boolean | undefined,
  lost = false,
): RawVisit {
  const others = visit.milestones.filter((m) => m.milestone !== milestone);
  return {
    ...visit,
    milestones:
      seen === undefined
        ? others
        : [...others, { milestone, seen, ...(lost && !seen ? { lost } : {}) }],
  };
}
