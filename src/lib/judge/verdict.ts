/** The verdict of one finding: first under each source, then over the chosen sources. */
import type { Finding, InfantState, Response } from '../case/finding.ts';
import { isElicited, isUnfitState } from '../case/finding.ts';
import { FIRM_GROUPS, totalsOf, type Reading, type Totals } from './expectation.ts';
import { EMERGING, ESTABLISHED, INTEGRATED, INTEGRATING, NOT_YET, ROW } from './phases.ts';

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

/** A verdict by the phase an age falls in. The shares are worked out when they are asked for. */
export class PhaseVerdict {
  readonly verdict: VerdictWord;
  /** The verdict's share over the sources that speak, 0 to 1. */
  readonly share: number;
  readonly firm: boolean;
  readonly totals: Totals;
  readonly #elicited: boolean;

  constructor(elicited: boolean, totals: Totals) {
    this.#elicited = elicited;
    this.totals = totals;
    let best: VerdictWord = 'fits';
    let most = -1;
    for (const verdict of asksOf(elicited)) {
      const sum = rowShare(totals.phases, 0, elicited, verdict);
      // of equal shares, the one that asks for more
      if (sum >= most - TINY) {
        best = verdict;
        most = sum;
      }
    }
    this.verdict = best;
    this.share = most / totals.speaking;
    this.firm = isFirm(totals, elicited, best);
  }

  get shares(): Shares {
    const { phases, speaking } = this.totals;
    const share = (verdict: VerdictWord): number =>
      rowShare(phases, 0, this.#elicited, verdict) / speaking;
    return {
      fits: share('fits'),
      closing: share('closing'),
      'may-still-appear': share('may-still-appear'),
      early: share('early'),
      missing: share('missing'),
      persisting: share('persisting'),
    };
  }
}

/** A finding that is not judged, with the reason. */
export interface Unjudged {
  verdict: 'not-judged';
  why: NotJudged;
  totals: Totals;
}

export type Judged = PhaseVerdict | Unjudged;

const TINY = 1e-12;

const ELICITED_ASKS = ['fits', 'closing', 'early', 'persisting'] as const;
const MISSING_ASKS = ['fits', 'may-still-appear', 'missing'] as const;

/** The verdicts a response can get, in the order of how much they ask for. */
export const asksOf = (elicited: boolean): readonly VerdictWord[] =>
  elicited ? ELICITED_ASKS : MISSING_ASKS;

/** The probabilities of one row that make up a verdict on a response. */
export function rowShare(
  row: Float64Array,
  at: number,
  elicited: boolean,
  verdict: VerdictWord,
): number {
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

/** The group of phases each verdict stands for, by whether the response was elicited. */
const GROUP: Readonly<Record<VerdictWord, { elicited: number; not: number }>> = {
  early: { elicited: FIRM_GROUPS.notYet, not: -1 },
  fits: { elicited: FIRM_GROUPS.there, not: FIRM_GROUPS.away },
  closing: { elicited: FIRM_GROUPS.integrating, not: -1 },
  persisting: { elicited: FIRM_GROUPS.integrated, not: -1 },
  'may-still-appear': { elicited: -1, not: FIRM_GROUPS.emerging },
  missing: { elicited: -1, not: FIRM_GROUPS.established },
};

/** Firm: every source that is more than half not silent gives it nearly all of what it says. */
function isFirm(totals: Totals, elicited: boolean, verdict: VerdictWord): boolean {
  const group = elicited ? GROUP[verdict].elicited : GROUP[verdict].not;
  return (totals.firm & (1 << group)) !== 0;
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
): Judged {
  const why = whyNot(finding.response, finding.state, totals);
  if (why) return { verdict: 'not-judged', why, totals };
  return new PhaseVerdict(isElicited(finding.response), totals);
}

/** What one source says of a finding. */
export interface Voice {
  source: string;
  /** The family of copies it belongs to: the sources of one family are one voice. */
  family: string;
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
    if (speaks > TINY)
      for (const word of VERDICTS) {
        const p = rowShare(reading.phases, at, elicited, word);
        if (p > 0 && p >= probability - TINY) {
          verdict = word;
          probability = p;
        }
      }
    const { source, family } = window.claim;
    return { source: source.id, family, window: index, verdict, probability, speaks };
  });
}
