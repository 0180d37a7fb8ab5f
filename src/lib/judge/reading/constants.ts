/**
 * Every constant of reading a child over visits, with its basis: published (with the source), read,
 * memory, or ours: a choice that no source prescribes. They are in this one place and are shown.
 */
import { fromMonths, toAxisDay, type AxisDay } from '../../age/axis.ts';
import type { Position } from '../../atlas/types.ts';

/** Ours: how far a child may differ from every source, as a share of each prior. */
export const ODD = 0.1;

/** Ours: of what differs from every source, half never happens; the rest is uniform over the axis. */
export const ODD_NEVER = 0.5;

/** Ours: the axis that events are placed on, 20w0d of gestation to 24 months after term. */
export const FIRST_DAY: AxisDay = toAxisDay(140);
export const LAST_DAY: AxisDay = toAxisDay(1010);

/** Ours: the chance that a response which is not there is taken for one that is. */
export const IMAGINED = 0.02;

/** Ours: the chance that a milestone which was reached is not seen at a visit. */
export const MILESTONE_MISSED = 0.1;

/** Ours: nodes of the shift of all visits, in standard deviations of the dating. */
export const SHIFT_REACH = 3.5;
export const SHIFT_NODES = 15;

/** Ours: from this probability of never on, no date for nine in ten is given. */
export const NEVER_NO_DATE = 0.1;

/** Ours: an order is seen in the child from this probability and this odds ratio on. */
export const IN_ORDER_PROBABILITY = 0.95;
export const IN_ORDER_ODDS = 3;

/** Ours: an order is reversed at this odds ratio or less, if less likely than not or as good as sure. */
export const REVERSED_ODDS = 0.1;
export const REVERSED_PROBABILITY = 0.5;
export const REVERSED_SOURCES = 0.9;

/** Ours: the visits speak against an order at this odds ratio or less. */
export const AGAINST_ODDS = 1 / 3;

/** Ours: the sources are sure of an order from this probability on, without ODD. */
export const SURE_SOURCES = 0.95;

/** Ours: probabilities are kept this far from 0 in an odds ratio, so that it is finite. */
export const ODDS_FLOOR = 1e-9;

/** Ours: a response seen before is missed where the sources have it gone with less than this. */
export const NOT_GONE = 0.05;

/** Ours: so many reactions seen before and not now at one visit are lost without a second look. */
export const LOST_TOGETHER = 3;

/** Ours: the next visit after a response was seen before and not now, in days: 4 weeks. */
export const SEEN_AGAIN_DAYS = 28;

/**
 * Ours: by when a child is seen again after something that is to be discussed, and after something that is
 * to be rechecked, in days: 2 and 6 weeks. What asks for more is looked at sooner.
 */
export const DISCUSSED_AGAIN_DAYS = 14;
export const WATCHED_AGAIN_DAYS = 42;

/** Ours: the usual time between two visits where nothing asks for less, in months. */
export const USUAL_MONTHS = 3;

/** Ours: past this age no visit falls due by time alone, in months after term: there the axis ends. */
export const FOLLOWED_UNTIL_MONTHS = 24;

/** Ours: a core set for an age holds so many reflexes at most. */
export const CORE_SIZE = 12;

/** Ours: so much time for testing is planned for, in minutes. */
export const TEN_MINUTES = 10;

/**
 * Ours: minutes to test a reflex by the position it asks for, both sides included, and how much more where
 * it is likely to upset, for soothing. No source that was read times single reflexes.
 */
export const MINUTES_BY_POSITION: Readonly<Record<Position, number>> = {
  supine: 0.5,
  'side-lying': 0.5,
  prone: 0.5,
  sitting: 1,
  'upright-held': 1,
  standing: 1,
  'prone-suspension': 1,
  'hands-and-knees': 1,
};
export const UPSETTING_MINUTES = 1;

/**
 * Ours: of the information that a visit may add about the order of two responses, testing one of them gives
 * this share, and testing the other too gives the rest.
 */
export const ONE_STATION = 2 / 3;

/** Ours: the best-fitting age is looked for from term on. */
export const FIT_FROM: AxisDay = fromMonths(0);

/** Ours: so many reflexes, or milestones, must take part in a best-fitting age. */
export const FIT_REFLEXES = 8;
export const FIT_MILESTONES = 3;

/** Ours: a best-fitting age is shown where its interval is narrower than this, in months. */
export const FIT_WIDEST_MONTHS = 6;

/** Ours: an interval holds this share, half of the rest on either side. */
export const INTERVAL = 0.9;

/**
 * Where an end of the axis cuts a best-fitting age off, its other end is where the likelihood is this
 * share of its greatest: exp(-q / 2), q = 2.706 the 90 % point of chi-squared with one degree of
 * freedom (published: standard table). A share of the area would change with the length of the axis.
 */
export const FIT_RELATIVE = Math.exp(-2.705543 / 2);

/** Ours: a second mode has this share of the highest and twice the height of the dip before it. */
export const MODE_SHARE = 0.1;
export const MODE_RISE = 2;

/** Ours: a response that was not elicited counts as missing once it was tried so often. */
export const TRIES = 2;

/** Ours: so many reflexes to be discussed at one visit are said together. */
export const TOGETHER = 3;

/**
 * Ours: whether a response had gone when it was missing is read from so many days up to then, more than a
 * child has. The work grows with the square of the days, and a record may hold hundreds.
 */
export const RECENT_DAYS = 40;

/** Ours: so many lost lifelong reactions, each tried twice, should not wait. */
export const TODAY_LOST = 2;

/** Ours: sucking and swallowing are both asked of an alert infant from 37w0d on. */
export const TODAY_FEEDING_FROM: AxisDay = toAxisDay(37 * 7);

/**
 * Below this age, 3 months after term. The guideline that it rests on has it as the end of the young infant
 * (published: Royal Children's Hospital Melbourne, read); later the sucking reflex may have integrated.
 */
export const TODAY_FEEDING_UNTIL: AxisDay = fromMonths(3);

/** Ours: of two sides that differ the weaker one is less expected from this mean expectation on. */
export const EXPECTED_THERE = 0.5;

/** Ours: from this probability on the sources have a reaction for life. */
export const LIFELONG = 0.5;

/**
 * The normal quantiles of the 99th and 90th percentile (published: standard table). That a milestone not
 * seen is watched from the 90th and discussed from the 99th percentile on is ours; the source recommends
 * its windows to signal the need for screening where a child is late (WHO 2006, read in the abstract).
 */
export const Z99 = 2.3263478740408408;
export const Z90 = 1.2815515655446004;
