/** A finding: what was seen of one reflex on one side at one visit. */
import type { Side } from '../atlas/types.ts';

/** Responses in the order of their strength; not assessable stands apart. */
export const RESPONSES = [
  'not-elicited',
  'weak',
  'elicited',
  'brisk',
  'obligatory',
  'not-assessable',
] as const;

export type Response = (typeof RESPONSES)[number];

/** The infant's state, in words, since numbered scales disagree; `not-recorded` when unknown. */
export const STATES = [
  'quiet-sleep',
  'active-sleep',
  'drowsy',
  'quiet-alert',
  'active-alert',
  'crying',
  'not-recorded',
] as const;

export type InfantState = (typeof STATES)[number];

export const SIDES = ['left', 'right', 'midline'] as const satisfies readonly Side[];

export interface Finding {
  reflex: string;
  side: Side;
  response: Response;
  state: InfantState;
  note: string;
  /** Which variant of the response was tested, of a reflex whose variants are dated apart; absent: not said. */
  variant?: string;
  /** How often it was tried at its visit without an answer, 2 to 5; absent where it was tried once. */
  tries?: number;
}

/**
 * What a finding is of, as a key: a reflex, or one of its variants. Answers are compared and followed from day to
 * day only where this is the same. One that does not say its variant is another than one that does.
 */
export const testOf = ({
  reflex,
  variant,
}: {
  reflex: string;
  variant?: string | undefined;
}): string => (variant === undefined ? reflex : `${reflex}/${variant}`);

/** The reflex of a test. @see testOf */
export const reflexOf = (test: string): string => test.split('/', 1)[0] ?? test;

/**
 * Keeps the latest of each test and side, findings given oldest first. One that says its variant also takes the
 * place of an earlier one that did not, since that may have been of the same.
 */
export function keepLatest<T>(latest: Map<string, T>, finding: Finding, value: T): void {
  if (finding.variant !== undefined) latest.delete(`${finding.reflex} ${finding.side}`);
  latest.set(`${testOf(finding)} ${finding.side}`, value);
}

/** The most tries of one response at one visit that a record holds. */
export const MOST_TRIES = 5;

/** How often a response was tried at its visit: 1 where the record does not say. */
export const triesOf = ({ tries }: { tries?: number | undefined }): number => tries ?? 1;

/** Whether a response was there at all, however faint. */
export const isElicited = (response: Response): boolean =>
  response === 'weak' ||
  response === 'elicited' ||
  response === 'brisk' ||
  response === 'obligatory';

/** States in which a missing answer is no answer: asleep, drowsy or crying. */
const UNFIT: ReadonlySet<InfantState> = new Set([
  'quiet-sleep',
  'active-sleep',
  'drowsy',
  'crying',
]);

export const isUnfitState = (state: InfantState): boolean => UNFIT.has(state);

/** Whether the finding says anything: it was assessable, and a missing answer came in a fit state. */
export const isAnswer = (finding: Pick<Finding, 'response' | 'state'>): boolean =>
  finding.response !== 'not-assessable' &&
  (isElicited(finding.response) || !UNFIT.has(finding.state));

/** How strong an answer is, 0 (not elicited) to 4 (obligatory). */
export const strengthOf = (response: Response): number => RESPONSES.indexOf(response);
