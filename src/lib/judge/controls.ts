/** Which of the things a reader can choose would change a verdict: dating, sources, correction. */
import { calendarSpan } from '../age/civil.ts';
import { agesOn, type CorrectionLimits } from '../age/clocks.ts';
import { DATING_METHODS, type DatingMethod } from '../age/doubt.ts';
import { MAX_GESTATION_DAYS } from '../age/gestation.ts';
import type { Tier } from '../atlas/types.ts';
import { compile, readAt, type Compiled } from './expectation.ts';
import type { Question } from './turns.ts';
import { verdictOf, type Judged } from './verdict.ts';
import type { Window } from './window.ts';

/** One change to what a verdict rests on. */
export type Control =
  | { control: 'dating'; method: DatingMethod }
  | { control: 'without'; source: string }
  | { control: 'only-source'; source: string }
  | { control: 'only-kind'; kind: Tier }
  /** Whether the age is corrected, whatever the limits say. */
  | { control: 'correction'; corrected: boolean };

export interface Under {
  under: Control;
  judged: Judged;
  /** Whether the verdict is another than that of the question as it stands. */
  changes: boolean;
}

/** The limits under which the age would be corrected, or not, whatever the gestation. */
function limitsFor({ birth, on }: Question, corrected: boolean): CorrectionLimits {
  if (!corrected) return { pretermBelowDays: 0, untilMonths: 0 };
  const { months } = calendarSpan(birth.born, on);
  return { pretermBelowDays: MAX_GESTATION_DAYS + 1, untilMonths: months + 1 };
}

const only = (compiled: Compiled, keep: (window: Window) => boolean): Compiled =>
  compile(compiled.windows.filter(keep));

/** The question with one thing changed. */
function changed(question: Question, control: Control, held: Compiled): Question {
  switch (control.control) {
    case 'dating':
      return { ...question, birth: { ...question.birth, dating: control.method } };
    case 'without':
      return {
        ...question,
        compiled: only(question.compiled, (w) => w.claim.source.id !== control.source),
      };
    case 'only-source':
      return { ...question, compiled: only(held, (w) => w.claim.source.id === control.source) };
    case 'only-kind':
      return { ...question, compiled: only(held, (w) => w.claim.source.tier === control.kind) };
    case 'correction':
      return { ...question, limits: limitsFor(question, control.corrected) };
  }
}

/** The verdict of a question as it stands. */
export function verdictNow({ finding, compiled, birth, on, limits, known }: Question): Judged {
  const { axisDay, sdDays } = agesOn(birth, on, limits);
  return verdictOf(finding, readAt(compiled, axisDay, known ? 0 : sdDays));
}

/** The verdict with one thing changed. `held` has every source's windows, chosen or not. */
export const verdictUnder = (
  question: Question,
  control: Control,
  held: Compiled = question.compiled,
): Judged => verdictNow(changed(question, control, held));

/**
 * The verdict under every control: each dating method, each chosen source left out, each held source
 * and each kind of source by itself, the age corrected and not.
 */
export function verdictsUnder(question: Question, held: Compiled = question.compiled): Under[] {
  const sourcesOf = ({ windows }: Compiled): string[] => [
    ...new Set(windows.map((w) => w.claim.source.id)),
  ];
  const kinds = new Set(held.windows.map((w) => w.claim.source.tier));
  const controls: Control[] = [
    ...DATING_METHODS.map((method) => ({ control: 'dating', method }) as const),
    ...sourcesOf(question.compiled).map((source) => ({ control: 'without', source }) as const),
    ...sourcesOf(held).map((source) => ({ control: 'only-source', source }) as const),
    ...[...kinds].map((kind) => ({ control: 'only-kind', kind }) as const),
    { control: 'correction', corrected: true },
    { control: 'correction', corrected: false },
  ];
  const now = verdictNow(question).verdict;
  return controls.map((under) => {
    const judged = verdictUnder(question, under, held);
    return { under, judged, changes: judged.verdict !== now };
  });
}
