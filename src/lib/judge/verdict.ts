/** The verdict of one finding: first under each source, then over the chosen sources. */
import type { Finding, InfantState, Response } from '../case/finding.ts';
import { isElicited, isUnfitState } from '../case/finding.ts';
import { totalsOf, type Reading, type Totals } from './expectation.ts';
import { EMERGING, ESTABLISHED, INTEGRATED, INTEGRATING, NOT_YET, ROW } from './phases.ts';
import { FIRM_SHARE } from './thresholds.ts';

/** In the order of how much they ask for: of equal shares the later one is the verdict. */
export const VERDICTS = [
  'fits',
  'closing',
  'may-still-appear',
  'early',
  'missing',
  'persisting',
] as const;

export type VerdictWord = (typeof VERDICTS)[number];

/** Verdict to its share over the chosen sources, 0 to 1. They sum to 1. */
export type Shares = Readonly<Record<VerdictWord, number>>;

/** Why a finding is not judged. */
export type NotJudged =
  { code: 'not-assessable' } | { code: 'unfit-state'; state: InfantState } | { code: 'silent' };

export type PhaseVerdict =
  | { verdict: VerdictWord; shares: Shares; firm: boolean; totals: Totals }
  | { verdict: 'not-judged'; why: NotJudged; totals: Totals };

/** The probabilities of one row that make up a verdict on a response. */
function rowShare(row: Float64Array, at: number, elicited: boolean, verdict: VerdictWord): number {
  if (elicited)
    switch (verdict) {
      case 'early':
        return row[at + NOT_YET]!;
      case 'fits':
        return row[at + EMERGING]! + row[at + ESTABLISHED]!;
      case 'closing':
        return row[at + INTEGRATING]!;
      case 'persisting':
        return row[at + INTEGRATED]!;
      default:
        return 0;
    }
  switch (verdict) {
    case 'fits':
      return row[at + NOT_YET]! + row[at + INTEGRATING]! + row[at + INTEGRATED]!;
    case 'may-still-appear':
      return row[at + EMERGING]!;
    case 'missing':
      return row[at + ESTABLISHED]!;
    default:
      return 0;
  }
}

/** The verdict with the largest share; of equals, the one that asks for more. */
function largest(shares: Shares): VerdictWord {
  let best: VerdictWord = 'fits';
  for (const verdict of VERDICTS) if (shares[verdict] >= shares[best] - 1e-12) best = verdict;
  return best;
}

/** Firm: every source that is more than half not silent gives it nearly all of what it says. */
function isFirm(reading: Reading, elicited: boolean, verdict: VerdictWord): boolean {
  const { phases } = reading;
  for (let at = 0; at < phases.length; at += ROW) {
    const spoken = 1 - phases[at]!;
    if (spoken > 0.5 && rowShare(phases, at, elicited, verdict) < FIRM_SHARE * spoken - 1e-12)
      return false;
  }
  return true;
}

/** Whether a response in a state can be judged at all. */
function whyNot(response: Response, state: InfantState, totals: Totals): NotJudged | undefined {
  if (response === 'not-assessable') return { code: 'not-assessable' };
  if (response === 'not-elicited' && isUnfitState(state)) return { code: 'unfit-state', state };
  if (!totals.anySpeaks) return { code: 'silent' };
  return undefined;
}

/** The verdict of a finding by the phase its age falls in, over all windows of the reading. */
export function verdictOf(
  finding: Pick<Finding, 'response' | 'state'>,
  reading: Reading,
  totals = totalsOf(reading),
): PhaseVerdict {
  const why = whyNot(finding.response, finding.state, totals);
  if (why) return { verdict: 'not-judged', why, totals };
  const elicited = isElicited(finding.response);
  const { phases, speaking } = totals;
  const share = (verdict: VerdictWord): number => rowShare(phases, 0, elicited, verdict) / speaking;
  const shares: Shares = {
    fits: share('fits'),
    closing: share('closing'),
    'may-still-appear': share('may-still-appear'),
    early: share('early'),
    missing: share('missing'),
    persisting: share('persisting'),
  };
  const verdict = largest(shares);
  return { verdict, shares, firm: isFirm(reading, elicited, verdict), totals };
}

/** What one source says of a finding. */
export interface Voice {
  source: string;
  /** The window's index in the reading, to reach its claim. */
  window: number;
  /** Its own likeliest verdict; undefined when it is silent. */
  verdict: VerdictWord | undefined;
  /** The probability it gives that verdict, of all it could say (silence counts as none). */
  probability: number;
  /** How likely it speaks at this age, 0 to 1. */
  speaks: number;
}

/** What every source says of a response at the age of a reading. */
export function voicesOf(response: Response, reading: Reading): Voice[] {
  const elicited = isElicited(response);
  return reading.compiled.windows.map((window, index) => {
    const at = index * ROW;
    const speaks = 1 - reading.phases[at]!;
    let verdict: VerdictWord | undefined;
    let probability = 0;
    if (speaks > 1e-12)
      for (const word of VERDICTS) {
        const p = rowShare(reading.phases, at, elicited, word);
        if (p > 0 && p >= probability - 1e-12) {
          verdict = word;
          probability = p;
        }
      }
    return { source: window.claim.source.id, window: index, verdict, probability, speaks };
  });
}
