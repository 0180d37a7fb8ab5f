/** Weak at its height, brisk, obligatory: what the strength of an answer says by itself. */
import { WEAK_ESTABLISHED } from '../thresholds.ts';
import type { Rule } from './rule.ts';

/** A fading answer in a closing window is expected; a faint one at its height is not. */
export const weak: Rule = ({ finding, totals }) =>
  finding.response === 'weak' && totals.meanEstablished >= WEAK_ESTABLISHED
    ? { flag: 'weak', asks: 'watch' }
    : undefined;

export const brisk: Rule = ({ finding }) =>
  finding.response === 'brisk' ? { flag: 'brisk', asks: 'watch' } : undefined;

/** The infant cannot leave the posture: to be discussed at any age. */
export const obligatory: Rule = ({ finding }) =>
  finding.response === 'obligatory' ? { flag: 'obligatory', asks: 'discuss' } : undefined;
