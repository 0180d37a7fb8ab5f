/**
 * What holds a verdict by the phase to a watch, each with its ground: healthy infants were counted who
 * answer so at this age, absence tells little of this reflex, the evidence is thin, a missing response was
 * tried once only or in a state that nobody wrote down, a persisting one was seen in a crying infant alone.
 * What rules on top raise (obligatory, returned, lost, a marked difference) is never held back.
 */
import { toAxisDay } from '../age/axis.ts';
import type { SourcedCount } from '../atlas/atlas.ts';
import type { Reflex } from '../atlas/types.ts';
import type { Finding } from '../case/finding.ts';
import { isElicited } from '../case/finding.ts';
import { wilson, type ShareInterval } from '../number/wilson.ts';
import { countsNear, shareOf } from './counts.ts';
import type { Reading } from './expectation.ts';
import { COMMON_SHARE, COUNTED_INFANTS, SPEAKS_AT_LEAST, TWO_VOICES } from './thresholds.ts';
import { voicesOf, type PhaseVerdict } from './verdict.ts';

/** A count by which the answer is common in healthy infants, as a share of that answer. */
export interface CountedSo {
  count: SourcedCount;
  /** Share of this answer in per cent, and its 95 % interval, 0 to 1. */
  percent: number;
  interval: ShareInterval;
}

export type Cap =
  | { code: 'counted'; elicited: boolean; near: CountedSo }
  | { code: 'tells-little' }
  /** How many voices give the verdict; `memory`: every one of their rows was recalled. */
  | { code: 'thin'; voices: number; memory: boolean }
  /** Missing, and tried once only: to be tried again. */
  | { code: 'tried-once' }
  /** Missing in a state that was not recorded: to be seen again first. */
  | { code: 'state-unknown' }
  /** There in a crying infant alone: to be seen again in a calm one. */
  | { code: 'crying' };

/** How a finding was made, as far as a cap asks. */
export interface Made {
  /** Whether a missing response was looked for often enough; asked only of one that is missing. */
  triedEnough: () => boolean;
  /** One side is missing beside one that answers: neither state nor a second try explains that. */
  oneSide: boolean;
  /** Seen while crying, and that day in no other state. */
  onlyCrying: boolean;
}

/**
 * The count nearest the age by which an answer is common: of the response itself, in so many healthy
 * infants, within a month of the age, with a lower 95 % bound of ten in a hundred or more. Of equally
 * near ones the largest. The interval is over infants, also where each was seen more than once.
 */
export function countedSo(
  counts: readonly SourcedCount[],
  ageDays: number,
  elicited: boolean,
): CountedSo | undefined {
  let best: CountedSo | undefined;
  let bestDays = Infinity;
  for (const { count, distanceDays } of countsNear(counts, toAxisDay(ageDays))) {
    const { role, healthy, n } = count;
    if (role !== 'count' || !healthy || n === null || n < COUNTED_INFANTS) continue;
    const percent = shareOf(count, elicited);
    if (percent === undefined) continue;
    const interval = wilson((percent / 100) * n, n);
    if (interval.low < COMMON_SHARE) continue;
    const larger = distanceDays === bestDays && n > (best?.count.n ?? 0);
    if (distanceDays < bestDays || larger) {
      best = { count, percent, interval };
      bestDays = distanceDays;
    }
  }
  return best;
}

/** Everything that holds a persisting or missing verdict to a watch, a count of infants first. */
export function capsOf(
  finding: Finding,
  reflex: Reflex,
  judged: PhaseVerdict,
  reading: Reading,
  counts: readonly SourcedCount[],
  made: Made,
): Cap[] {
  const { verdict } = judged;
  if (verdict !== 'persisting' && verdict !== 'missing') return [];
  const caps: Cap[] = [];
  const elicited = isElicited(finding.response);
  const near = countedSo(counts, reading.ageDays, elicited);
  if (near) caps.push({ code: 'counted', elicited, near });
  if (verdict === 'missing' && reflex.absence.tells === 'tells-little')
    caps.push({ code: 'tells-little' });
  const giving = voicesOf(finding.response, reading).filter(
    (voice) => voice.speaks >= SPEAKS_AT_LEAST && voice.verdict === verdict,
  );
  const voices = new Set(giving.map(({ family }) => family)).size;
  const { windows } = reading.compiled;
  const memory = giving.every(({ window }) => windows[window]!.claim.basis === 'memory');
  if (voices < TWO_VOICES || memory) caps.push({ code: 'thin', voices, memory });
  if (verdict === 'persisting' && made.onlyCrying) caps.push({ code: 'crying' });
  if (verdict === 'missing' && !made.oneSide) {
    if (finding.state === 'not-recorded') caps.push({ code: 'state-unknown' });
    if (!made.triedEnough()) caps.push({ code: 'tried-once' });
  }
  return caps;
}
