/** Weak at its height, brisk, obligatory: what the strength of an answer says by itself. */
import { WEAK_ESTABLISHED } from '../thresholds.ts';
import type { Rule } from './rule.ts';

/** A fading answer in a closing window is expected; a faint one at its height is not. */
export const weak: Rule = ({ finding, totals }) =>
  finding.response === 'weak' && totals.meanEstablished >= WEAK_ESTABLISHED
    ? { flag: 'weak', asks: 'watch' }
    : undefined;

const whileCrying = (onlyCrying: boolean): { crying?: boolean } =>
  onlyCrying ? { crying: true } : {};

export const brisk: Rule = ({ finding, onlyCrying }) =>
  finding.response === 'brisk'
    ? { flag: 'brisk', asks: 'watch', ...whileCrying(onlyCrying) }
    : undefined;

/** The infant cannot leave the posture: to be discussed at any age, once it is seen in a calm infant. */
export const obligatory: Rule = ({ finding, onlyCrying }) =>
  finding.response === 'obligatory'
    ? { flag: 'obligatory', asks: onlyCrying ? 'watch' : 'discuss', ...whileCrying(onlyCrying) }
    : undefined;
