/** What judging a case gives: findings, visits, and how much a verdict asks for. */
import type { Ages, CorrectionLimits } from '../age/clocks.ts';
import type { Atlas } from '../atlas/atlas.ts';
import type { Reflex } from '../atlas/types.ts';
import type { Visit } from '../case/case.ts';
import type { Finding } from '../case/finding.ts';
import type { Cap } from './caps.ts';
import type { Reading } from './expectation.ts';
import type { JudgedMilestone } from './milestones.ts';
import type { Today } from './reading/asks.ts';
import type { SidePattern } from './reading/sides.ts';
import type { Attention, Raised } from './rules/rule.ts';
import type { Sheet } from './sheet.ts';
import { DISCUSS_SHARE, WATCH_SHARE } from './thresholds.ts';
import type { Judged } from './verdict.ts';

export interface JudgedFinding {
  /** As it is judged: what was recorded, or what the examiners of the day agreed on. */
  finding: Finding;
  /** As it was recorded. */
  given: Finding;
  reflex: Reflex;
  judged: Judged;
  /** What it asks for: the most of what the verdict and the flags ask. */
  attention: Attention;
  raised: readonly Raised[];
  /** What holds the verdict by the phase to a watch. */
  caps: readonly Cap[];
  reading: Reading;
}

export interface JudgedVisit {
  /** As it was recorded. */
  visit: Visit;
  /** As it is judged, with the answers agreed on. */
  read: Visit;
  ages: Ages;
  findings: readonly JudgedFinding[];
  milestones: readonly JudgedMilestone[];
  /** What should not wait until another day. */
  today: readonly Today[];
  /** Reflexes to be discussed at this visit, where they are so many that they are said together. */
  together: readonly string[];
  /** Which side and limb the differences between the sides point to. */
  pattern: SidePattern;
}

export interface JudgeOptions {
  atlas: Atlas;
  sheet: Sheet;
  limits?: CorrectionLimits;
}

const TINY = 1e-12;

/** What a verdict asks for by its phase alone, watched at most where something caps it. */
export function attentionOf(judged: Judged, caps: readonly Cap[]): Attention {
  if (judged.verdict === 'not-judged') return 'not-judged';
  const { share } = judged;
  switch (judged.verdict) {
    case 'persisting':
    case 'missing':
      if (share >= DISCUSS_SHARE - TINY && caps.length === 0) return 'discuss';
      return share > WATCH_SHARE + TINY ? 'watch' : 'fits';
    case 'early':
      return share >= DISCUSS_SHARE - TINY ? 'watch' : 'fits';
    default:
      return 'fits';
  }
}
