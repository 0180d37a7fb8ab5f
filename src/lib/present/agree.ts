/** The answer that examiners of a day agree on, put into a record or taken out of it. */
import type { CivilDate } from '../age/civil.ts';
import { agreedKey, type Agreed, type Case } from '../case/case.ts';
import type { InfantState, Response } from '../case/finding.ts';
import type { RawAgreed } from '../case/shape.ts';
import type { Disagreement } from './differ.ts';

const keyOf = (on: CivilDate, { answers }: Disagreement): string =>
  agreedKey({ ...answers[0]!.finding, on });

export const agreedOn = (record: Case, on: CivilDate, one: Disagreement): Agreed | undefined =>
  record.agreed.find((of) => agreedKey(of) === keyOf(on, one));

/** The state in which the answer was seen: of who gave it, else of whom both saw alike. */
function stateFor({ answers }: Disagreement, response: Response): InfantState {
  const same = answers.filter(({ finding }) => finding.response === response);
  const [first, ...others] = (same.length > 0 ? same : answers).map(({ finding }) => finding.state);
  return first && others.every((state) => state === first) ? first : 'not-recorded';
}

/** The agreed answers of a record with this one set; undefined takes it out. */
export function withAgreed(
  record: Case,
  on: CivilDate,
  one: Disagreement,
  response: Response | undefined,
): RawAgreed[] {
  const others = record.agreed.filter((of) => agreedKey(of) !== keyOf(on, one));
  const rest = others.map((of) => ({ ...of }));
  if (!response) return rest;
  const { reflex, side, variant } = one.answers[0]!.finding;
  const note = agreedOn(record, on, one)?.note ?? '';
  const state = stateFor(one, response);
  const of = { on, reflex, side, response, state, note };
  return [...rest, variant === undefined ? of : { ...of, variant }];
}
