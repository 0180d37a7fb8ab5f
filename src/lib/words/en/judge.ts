/** English for judgement: verdicts, what they ask for, and why. */
import { formatGestation } from '../../age/gestation.ts';
import type { Response } from '../../case/finding.ts';
import type { Cap } from '../../judge/caps.ts';
import type { Agreement, TurningPoint } from '../../judge/hangs.ts';
import type { JudgedFinding } from '../../judge/judge.ts';
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

/** `5 of 12 sources, 4 of 8 voices`: sources that copy one another are one voice. */
export function ofSources({ agree, of, voices }: Agreement): string {
  if (of === 1) return agree === 1 ? 'the one source that speaks' : 'no source';
  if (agree === of)
    return `all ${of} sources, ${voices.of === 1 ? '1 voice' : `${voices.of} voices`}`;
  return `${agree} of ${of} sources, ${voices.agree} of ${voices.of} voices`;
}

/** What a verdict says of a response at this age, with how many sources say so. */
export function verdictSentence(
  verdict: VerdictWord,
  response: Response,
  agreement: Agreement,
): string {
  const counted = ofSources(agreement);
  const by = agreement.of === 1 ? counted : `${counted},`;
  switch (verdict) {
    case 'fits':
      return response === 'not-elicited'
        ? `Not there, as ${by} would have it at this age.`
        : `There, as ${by} would have it at this age.`;
    case 'closing':
      return `Still there, in the span in which ${by} let it go.`;
    case 'persisting':
      return `Still there; gone by this age in ${counted}.`;
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

const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** What holds a verdict to a watch. A count of infants is said before anything else. */
export function capSentence(cap: Cap): string {
  switch (cap.code) {
    case 'counted': {
      const { count, percent: share, interval } = cap.near;
      const own = (count.answer === 'elicited') === cap.elicited;
      const sign = count.qualifier === '=' || count.qualifier === '' ? '' : 'at least ';
      const about = count.qualifier === '~' ? 'about ' : sign;
      const what = cap.elicited ? 'showed it' : 'did not show it';
      const computed = own ? '' : ', worked out from the others';
      return `Common in healthy infants: ${about}${Math.round(share * 10) / 10} % of ${count.n} ${count.population} ${what} at ${count.asPrinted.replace(/^at /, '')} (95 % interval ${percent(interval.low)} to ${percent(interval.high)}${computed}; ${count.source.short}).`;
    }
    case 'tells-little':
      return 'Not eliciting it tells little: it may be missing in healthy infants.';
    case 'thin':
      return cap.memory
        ? 'This rests on ages recalled from memory alone, so it is watched at most.'
        : 'This rests on fewer than two independent voices, so it is watched at most.';
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

/**
 * That two tests go under the name of a response and are read together, where the sources judged by
 * date more than one of them; a record does not say which was done.
 */
export function testsSentences({
  reflex,
  reading,
}: Pick<JudgedFinding, 'reflex' | 'reading'>): string[] {
  const dated = new Set(reading.compiled.windows.map(({ claim }) => claim.variant));
  const tests = reflex.patterns.filter(({ variant }) => dated.has(variant));
  if (tests.length < 2) return [];
  const names = tests.map(({ variant, label }) => label.split(':')[0]?.toLowerCase() ?? variant);
  return [
    `Two tests are read together (${names.join(', ')}): a record does not say which was done.`,
  ];
}

/** The share of a verdict, in whole per cent. */
export const shareWords = (share: number): string => `${Math.round(share * 100)} %`;

/** Said under every list of verdicts. */
export const CAUTION =
  'A reading of published ages, not a diagnosis. Follow local pathways and licensed practice.';

/** What the numbers are, wherever an expectation is shown. */
export const READING_NOTE =
  'How far the sources lead one to expect the response: a reading of the sources, not a percentile of infants.';

export const THRESHOLDS_NOTE =
  'To be discussed: persisting or missing with a share of 0.9 or more, obligatory, returned, or a marked difference between the sides where the mean expectation is 0.5 or more. Both limits are our choice. Persisting or missing is watched at most where healthy infants were counted who answer so at this age (30 or more infants, lower 95 % bound of 10 in 100), where not eliciting the reflex tells little, and on fewer than two voices or on memory alone. Sources that copy one another are one voice.';
