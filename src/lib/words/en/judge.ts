/** English for judgement: verdicts, what they ask for, and why. */
import { formatGestation } from '../../age/gestation.ts';
import type { Response } from '../../case/finding.ts';
import type { Cap } from '../../judge/caps.ts';
import type { Agreement, TurningPoint } from '../../judge/hangs.ts';
import type { JudgedFinding } from '../../judge/judge.ts';
import type { Attention, Flag, Raised } from '../../judge/rules/rule.ts';
import type { JudgedMilestone } from '../../judge/milestones.ts';
import type { Today } from '../../judge/reading/asks.ts';
import type { LostWhy } from '../../judge/reading/lost.ts';
import type { SidePattern } from '../../judge/reading/sides.ts';
import type { NotJudged, VerdictWord } from '../../judge/verdict.ts';
import { BY_DATE, type When } from './ages.ts';
import { responses, states } from './case.ts';

export const verdicts: Record<VerdictWord | 'not-judged', string> = {
  fits: 'as expected',
  closing: 'expected to fade',
  'may-still-appear': 'may still appear',
  early: 'early',
  missing: 'expected, not elicited',
  persisting: 'persisting',
  'not-judged': 'not judged',
};

export const attentions: Record<Attention, string> = {
  today: 'today',
  discuss: 'discuss',
  watch: 'recheck',
  fits: 'not flagged',
  'not-judged': 'not judged',
};

export const flags: Record<Flag, string> = {
  uneven: 'asymmetric',
  weak: 'weak where it should be strong',
  brisk: 'brisk',
  obligatory: 'obligatory',
  returned: 're-emerged',
  'seen-before': 'seen before, not now',
  lost: 'lost',
};

/** `5 of 12 sources, 4 of 8 voices`: sources that copy one another are one voice. */
export function ofSources({ agree, of, voices }: Agreement): string {
  if (of === 1) return agree === 1 ? 'the one source that gives an age' : 'no source';
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
  const expect = `${by} ${agreement.of === 1 || agreement.agree === 1 ? 'expects' : 'expect'}`;
  switch (verdict) {
    case 'fits':
      return response === 'not-elicited'
        ? `Not elicited, as expected at this age by ${counted}.`
        : `Present, as expected at this age by ${counted}.`;
    case 'closing':
      return `Still present; according to ${by} it is integrating at this age.`;
    case 'persisting':
      return `Still present; ${expect} integration by this age.`;
    case 'early':
      return `Present, though ${expect} it only later.`;
    case 'missing':
      return `Not elicited, though ${expect} it at this age.`;
    case 'may-still-appear':
      return `Not elicited; according to ${by} it may still appear.`;
  }
}

export function notJudgedSentence(why: NotJudged): string {
  switch (why.code) {
    case 'not-assessable':
      return 'Not assessable, so it is not judged.';
    case 'unfit-state':
      return `Not elicited while ${states[why.state]}: in that state the response cannot be expected, so it is not judged.`;
    case 'silent':
      return 'No chosen source gives an age here, so it is not judged.';
  }
}

/** What a rule on top of the phase has raised. */
export function raisedSentence(raised: Raised, response: Response, when = BY_DATE): string {
  switch (raised.flag) {
    case 'uneven': {
      const other = raised.other ? responses[raised.other] : '';
      const size = raised.marked ? 'A marked difference between the sides' : 'The sides differ';
      const common = raised.common
        ? ' Differences between the sides are common in healthy infants at this age.'
        : '';
      const days = (raised.stays ?? 0) > 1 ? `, on ${raised.stays} days in a row` : '';
      return `${size}: ${responses[response]} here, ${other} on the other${days}.${common}`;
    }
    case 'weak':
      return 'Weak at an age at which it should be strong.';
    case 'brisk':
      return raised.crying
        ? 'Brisk, seen while crying: recheck in a calm infant.'
        : 'Brisk: to be rechecked at any age.';
    case 'obligatory':
      return raised.crying
        ? 'Obligatory, seen while crying: recheck in a calm infant. If the infant still cannot leave the posture, it is to be discussed.'
        : 'Obligatory: the infant cannot leave the posture. To be discussed at any age.';
    case 'returned':
      return raised.asks === 'watch'
        ? 'Not elicited at an earlier visit and present again: it may only have been missed then.'
        : 'Re-emerged: it had integrated at an earlier visit and is present again.';
    case 'seen-before':
      return `${seenBefore(raised, when)} ${
        raised.triedAgain ? 'See' : 'Try it again at this visit, and see'
      } the infant again within 4 weeks.`;
    case 'lost':
      return `${seenBefore(raised, when)} ${(raised.notNow?.lost ?? []).map((why) => LOST[why]).join(' ')}`;
  }
}

/** Why a response that was seen before counts as lost. */
const LOST: Readonly<Record<LostWhy, string>> = {
  'another-day': 'It was not elicited on more than one day.',
  'several-at-once': 'Three or more responses seen before were not elicited at this visit.',
  'one-side': 'It is not elicited on one side while the other side responds.',
  'beside-another': 'Something else is to be discussed at this visit.',
};

function seenBefore({ notNow }: Raised, when: When): string {
  if (!notNow) return '';
  const rare = notNow.goneBy < 0.005 ? 'no' : 'hardly any';
  return `Present ${when.at(notNow.seenOn)} and not elicited now, at an age by which ${rare} source expects integration.`;
}

/** What should not wait until another day, with the way to take. */
export function todaySentence({ code }: Pick<Today, 'code'>): string {
  switch (code) {
    case 'lost-milestone':
      return 'A skill that was seen here before is lost, and the carer reports it too. To be seen by a doctor today: follow the local pathway.';
    case 'lost-reactions':
      return 'Two or more lifelong reactions are lost, each not elicited at two tries. To be seen by a doctor today: follow the local pathway.';
    case 'no-feeding':
      return 'Neither sucking nor swallowing in an alert young infant. To be seen by a doctor today: follow the local pathway.';
  }
}

/** Several to be discussed at one visit, said together. */
export const togetherSentence = (names: readonly string[]): string =>
  `${names.length} responses are to be discussed together: ${names.join(', ')}. Several at once say more than one alone.`;

/** Which side and limb the differences between the sides point to; undefined where fewer than two differ. */
export function patternSentence({
  differences,
  left,
  right,
  side,
  limb,
}: SidePattern): string | undefined {
  const all = differences.length;
  if (all < 2) return undefined;
  if (!side) return `${all} responses differ between the sides; they do not point to one side.`;
  const most = side === 'left' ? left : right;
  const counted = most.all === all ? `All ${all}` : `${most.all} of ${all}`;
  const where = limb ? `the ${side} ${limb}` : `the ${side} side`;
  const few = all < 3 ? ' Two are too few to tell.' : '';
  return `${counted} differences between the sides point to ${where}.${few}`;
}

/** A milestone of a visit, in a sentence. */
export function milestoneSentence(
  { why, milestone, lost }: JudgedMilestone,
  when = BY_DATE,
): string {
  const { window } = milestone;
  const range = window
    ? ` In healthy children 1 in 100 did it by ${window.p1Months} months and 99 in 100 by ${window.p99Months}.`
    : '';
  switch (why) {
    case 'seen':
      return 'Seen.';
    case 'in-time':
      return `Not seen yet, and still in time.${range}`;
    case 'past-90th':
      return `Not seen, at an age by which nine in ten healthy children did it.${range}`;
    case 'past-99th':
      return `Not seen, at an age by which 99 in 100 healthy children did it.${range}`;
    case 'seen-before':
      return `Seen ${lost?.seenOn ? when.at(lost.seenOn) : 'on an earlier day'} and not now: look again, and ask the carer.`;
    case 'lost':
      return lost?.seenOn
        ? `Seen ${when.at(lost.seenOn)}; the carer says it is lost.`
        : 'The carer says it was reached and is lost.';
    case 'replaced':
      return 'Not seen; a later skill has taken its place.';
    case 'no-window':
      return 'Not seen; no published percentiles are held for it, so it is not judged.';
  }
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** What limits a verdict to a recheck. A count of infants is said before anything else. */
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
      return 'Not eliciting it gives little information: healthy infants may lack the response.';
    case 'thin':
      return cap.memory
        ? 'This rests on ages recalled from memory alone, so the grade is “recheck” at most.'
        : 'This rests on fewer than two independent voices, so the grade is “recheck” at most.';
    case 'tried-once':
      return 'Tried once: try it again before it counts as not elicited.';
    case 'state-unknown':
      return 'The state of the infant was not recorded: recheck in an alert infant first.';
    case 'crying':
      return 'Seen while crying: recheck in a calm infant.';
  }
}

/** At which gestations at birth a verdict that is not firm would be firm, or would be another. */
export function turningSentence({ kind, fromDays, toDays }: TurningPoint): string {
  const said = (when: string): string =>
    kind === 'firm'
      ? `All sources would agree if the child was really born ${when}.`
      : `If the child was really born ${when}, this would be judged differently.`;
  const isFirm = kind === 'firm';
  if (fromDays !== null && toDays !== null)
    return isFirm
      ? said(
          fromDays === toDays
            ? `at ${formatGestation(fromDays)}`
            : `at ${formatGestation(fromDays)} to ${formatGestation(toDays)}`,
        )
      : said(`before ${formatGestation(fromDays)} or after ${formatGestation(toDays)}`);
  if (fromDays !== null)
    return isFirm
      ? said(`at ${formatGestation(fromDays)} or later`)
      : said(`at ${formatGestation(fromDays - 1)} or earlier`);
  if (toDays === null) return '';
  return isFirm
    ? said(`at ${formatGestation(toDays)} or earlier`)
    : said(`at ${formatGestation(toDays + 1)} or later`);
}

/**
 * That two tests go under the name of a response and are read together, where the sources judged by
 * date more than one of them and the finding does not say which was done. A reflex as one of its variants was
 * tested has that pattern alone.
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
    `Two tests are read together (${names.join(', ')}): the finding does not say which was done.`,
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
