/**
 * Seen before and not now: a response that the sources do not let go at this age was there on an earlier day.
 * Watched and tried again, since one miss is common; lost, and to be discussed, once there is more to it.
 * It comes after the other rules, since it asks whether anything else is to be discussed that day.
 */
import type { NotNow } from '../reading/lost.ts';
import type { Raised } from './rule.ts';

/** @param tries how often it was tried at this visit */
export const raisedByLoss = (notNow: NotNow, tries = 1): Raised =>
  notNow.lost.length > 0
    ? { flag: 'lost', asks: 'discuss', notNow }
    : { flag: 'seen-before', asks: 'watch', notNow, ...(tries > 1 ? { triedAgain: true } : {}) };
