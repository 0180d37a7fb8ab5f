/** English for judgement: verdicts, what they ask for, and why. */
import { formatGestation } from '../../age/gestation.ts';
import type { Response } from '../../case/finding.ts';
import type { Agreement, TurningPoint } from '../../judge/hangs.ts';
import type { Attention, Flag, Raised } from '../../judge/rules/rule.ts';
import type { Order } from '../../judge/sequence.ts';
import type { NotJudged, VerdictWord } from '../../judge/verdict.ts';
import { responses, states } from './case.ts';

export const verdicts: Record<VerdictWord | 'not-judged', string> = {
  fits: 'fits',
  closing: 'closing',
  'may-still-appear': 'may still appear',
  early: 'early',
  missing: 'missing',
  persisting: 'persisting',
  'not-judged': 'not judged',
};

export const attentions: Record<Attention, string> = {
  discuss: 'discuss',
  watch: 'watch',
  fits: 'fits',
  'not-judged': 'not judged',
};

export const flags: Record<Flag, string> = {
  uneven: 'uneven',
  weak: 'weak at its height',
  brisk: 'brisk',
  obligatory: 'obligatory',
  returned: 'returned',
};

export const orders: Record<Order, string> = {
  holds: 'in order',
  broken: 'out of order',
  open: 'open',
};

const ofSources = ({ agree, of }: Agreement): string => {
  if (of === 1) return agree === 1 ? 'the one source that speaks' : 'no source';
  return agree === of ? `all ${of} sources` : `${agree} of ${of} sources`;
};

/** What a verdict says of a response at this age, with how many sources say so. */
export function verdictSentence(
  verdict: VerdictWord,
  response: Response,
  agreement: Agreement,
): string {
  const by = ofSources(agreement);
  switch (verdict) {
    case 'fits':
      return response === 'not-elicited'
        ? `Not there, as ${by} would have it at this age.`
        : `There, as ${by} would have it at this age.`;
    case 'closing':
      return `Still there, in the span in which ${by} let it go.`;
    case 'persisting':
      return `Still there; gone by this age in ${by}.`;
    case 'early':
      return `There before ${by} would expect it.`;
    case 'missing':
      return `Not elicited, though ${by} would expect it at this age.`;
    case 'may-still-appear':
      return `Not there yet; ${by} still give it time.`;
  }
}

export function notJudgedSentence(why: NotJudged): string {
  switch (why.code) {
    case 'not-assessable':
      return 'Not assessable, so it is not judged.';
    case 'unfit-state':
      return `Not elicited while ${states[why.state]}: a missing answer in that state is no answer.`;
    case 'silent':
      return 'No chosen source says anything of this age, so it is not judged.';
  }
}

/** What a rule on top of the phase has raised. */
export function raisedSentence(raised: Raised, response: Response): string {
  switch (raised.flag) {
    case 'uneven': {
      const other = raised.other ? responses[raised.other] : '';
      const size = raised.marked ? 'A marked difference between the sides' : 'The sides differ';
      const common = raised.common ? ' Unlike sides are common in healthy infants here.' : '';
      return `${size}: ${responses[response]} here, ${other} on the other.${common}`;
    }
    case 'weak':
      return 'Faint at an age at which it should stand at its height.';
    case 'brisk':
      return 'Brisk: worth watching at any age.';
    case 'obligatory':
      return 'Obligatory: the infant cannot leave the posture. At any age this is to be talked about.';
    case 'returned':
      return 'Returned: it had gone at an earlier visit and is there again.';
  }
}

/** On what a verdict hangs that is not firm: what the gestation at birth would have to be. */
export function turningSentence({ kind, fromDays, toDays }: TurningPoint): string {
  const verb = kind === 'firm' ? 'Firm if surely born at' : 'Holds if born at';
  if (fromDays !== null && toDays !== null)
    return fromDays === toDays
      ? `${verb} ${formatGestation(fromDays)}.`
      : `${verb} ${formatGestation(fromDays)} to ${formatGestation(toDays)}.`;
  if (fromDays !== null) return `${verb} ${formatGestation(fromDays)} or later.`;
  return toDays === null ? '' : `${verb} ${formatGestation(toDays)} or earlier.`;
}

export const firmWords = (firm: boolean): string =>
  firm ? 'firm: every source that speaks agrees' : 'not firm';

/** The share of a verdict, in whole per cent. */
export const shareWords = (share: number): string => `${Math.round(share * 100)} %`;

/** Said under every list of verdicts. */
export const CAUTION =
  'A reading of published ages, not a diagnosis. Follow local pathways and licensed practice.';

/** What the numbers are, wherever an expectation is shown. */
export const READING_NOTE =
  'How far the sources lead one to expect the response: a reading of the sources, not a percentile of infants.';

export const THRESHOLDS_NOTE =
  'To be discussed: persisting or missing with a share of 0.9 or more, obligatory, returned, or a marked difference between the sides where the mean expectation is 0.5 or more. Both limits are our choice.';
