/** A short hand for invented children: what was seen at a visit, a line for each reflex. */
import type { InfantState, Response } from '../case/finding.ts';
import type { OlderCase } from '../case/older.ts';
import type { RawFinding } from '../case/shape.ts';

/** On the midline, or left and right. */
type Answered = Response | readonly [left: Response, right: Response];

/** The same answer on both sides. */
export const both = (response: Response): readonly [Response, Response] => [response, response];

/** The findings of a visit, all in one state. */
export const seen = (
  state: InfantState,
  answers: Readonly<Record<string, Answered>>,
  note = '',
  /** How often what was not elicited was tried. */
  tries = 1,
): RawFinding[] =>
  Object.entries(answers).flatMap(([reflex, answered]): RawFinding[] => {
    const at = (side: string, response: Response): RawFinding => ({
      reflex,
      side,
      response,
      state,
      note,
      ...(response === 'not-elicited' && tries > 1 ? { tries } : {}),
    });
    return typeof answered === 'string'
      ? [at('midline', answered)]
      : [at('left', answered[0]), at('right', answered[1])];
  });

/** A visit with the milestones that were looked for: seen or not yet. */
export const visit = (
  on: string,
  examiner: string,
  note: string,
  findings: readonly RawFinding[],
  milestones: Readonly<Record<string, boolean>> = {},
): OlderCase['visits'][number] => ({
  on,
  examiner,
  note,
  findings: [...findings],
  milestones: Object.entries(milestones).map(([milestone, isSeen]) => ({
    milestone,
    seen: isSeen,
  })),
});
