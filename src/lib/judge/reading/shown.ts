/**
 * Every constant of judgement as it is shown: its value from the code itself, with unit and basis. A constant
 * that is added to one of the files below and not here does not compile.
 */
import { MISSED, MISSED_TELLS_LITTLE } from '../../atlas/weight.ts';
import { NEAR_DAYS } from '../counts.ts';
import * as thresholds from '../thresholds.ts';
import * as reading from './constants.ts';

/** Every constant that is a number; the minutes by position are a table and stand on the page of the plan. */
const VALUES: Omit<typeof reading, 'MINUTES_BY_POSITION'> &
  typeof thresholds & { MISSED: number; MISSED_TELLS_LITTLE: number; NEAR_DAYS: number } = {
  ...reading,
  ...thresholds,
  MISSED,
  MISSED_TELLS_LITTLE,
  NEAR_DAYS,
};

export type ConstantName = keyof typeof VALUES;

export type ConstantUnit =
  | 'probability'
  | 'share'
  | 'odds-ratio'
  | 'axis-day'
  | 'days'
  | 'minutes'
  | 'months'
  | 'standard-deviations'
  | 'count'
  | 'steps';

/** `ours`: a choice that no source prescribes. The tables are standard ones. `guideline`: named in `asks.ts`. */
export type ConstantBasis = 'ours' | 'normal-table' | 'chi-squared-table' | 'guideline';

export const GROUPS = ['grades', 'today', 'model', 'orders', 'lost', 'fit', 'next'] as const;
export type ConstantGroup = (typeof GROUPS)[number];

export interface ShownConstant {
  name: ConstantName;
  value: number;
  unit: ConstantUnit;
  basis: ConstantBasis;
  group: ConstantGroup;
}

type About = readonly [group: ConstantGroup, unit: ConstantUnit, basis?: ConstantBasis];

const ABOUT: Readonly<Record<ConstantName, About>> = {
  DISCUSS_SHARE: ['grades', 'share'],
  WATCH_SHARE: ['grades', 'share'],
  FIRM_SHARE: ['grades', 'share'],
  SPEAKS_AT_LEAST: ['grades', 'probability'],
  TWO_VOICES: ['grades', 'count'],
  COUNTED_INFANTS: ['grades', 'count'],
  COMMON_SHARE: ['grades', 'share'],
  NEAR_DAYS: ['grades', 'days'],
  TRIES: ['grades', 'count'],
  WEAK_ESTABLISHED: ['grades', 'probability'],
  MARKED_STEPS: ['grades', 'steps'],
  MARKED_EXPECTATION: ['grades', 'probability'],
  CREDIBLY_GONE: ['grades', 'probability'],
  RECENT_DAYS: ['grades', 'count'],
  STAYS_DAYS: ['grades', 'count'],
  EXPECTED_THERE: ['grades', 'probability'],
  Z90: ['grades', 'standard-deviations', 'normal-table'],
  Z99: ['grades', 'standard-deviations', 'normal-table'],
  TOGETHER: ['grades', 'count'],
  TODAY_LOST: ['today', 'count'],
  TODAY_FEEDING_FROM: ['today', 'axis-day'],
  TODAY_FEEDING_UNTIL: ['today', 'axis-day', 'guideline'],
  FIRST_DAY: ['model', 'axis-day'],
  LAST_DAY: ['model', 'axis-day'],
  ODD: ['model', 'probability'],
  ODD_NEVER: ['model', 'share'],
  MISSED: ['model', 'probability'],
  MISSED_TELLS_LITTLE: ['model', 'probability'],
  MILESTONE_MISSED: ['model', 'probability'],
  IMAGINED: ['model', 'probability'],
  SHIFT_REACH: ['model', 'standard-deviations'],
  SHIFT_NODES: ['model', 'count'],
  INTERVAL: ['model', 'probability'],
  NEVER_NO_DATE: ['model', 'probability'],
  IN_ORDER_PROBABILITY: ['orders', 'probability'],
  IN_ORDER_ODDS: ['orders', 'odds-ratio'],
  REVERSED_ODDS: ['orders', 'odds-ratio'],
  REVERSED_PROBABILITY: ['orders', 'probability'],
  REVERSED_SOURCES: ['orders', 'probability'],
  AGAINST_ODDS: ['orders', 'odds-ratio'],
  SURE_SOURCES: ['orders', 'probability'],
  ODDS_FLOOR: ['orders', 'probability'],
  NOT_GONE: ['lost', 'probability'],
  LOST_TOGETHER: ['lost', 'count'],
  LIFELONG: ['lost', 'probability'],
  SEEN_AGAIN_DAYS: ['lost', 'days'],
  FIT_FROM: ['fit', 'axis-day'],
  FIT_REFLEXES: ['fit', 'count'],
  FIT_MILESTONES: ['fit', 'count'],
  FIT_WIDEST_MONTHS: ['fit', 'months'],
  FIT_RELATIVE: ['fit', 'share', 'chi-squared-table'],
  MODE_SHARE: ['fit', 'share'],
  MODE_RISE: ['fit', 'count'],
  DISCUSSED_AGAIN_DAYS: ['next', 'days'],
  WATCHED_AGAIN_DAYS: ['next', 'days'],
  USUAL_MONTHS: ['next', 'months'],
  FOLLOWED_UNTIL_MONTHS: ['next', 'months'],
  CORE_SIZE: ['next', 'count'],
  TEN_MINUTES: ['next', 'minutes'],
  UPSETTING_MINUTES: ['next', 'minutes'],
  ONE_STATION: ['next', 'share'],
};

export const valueOf = (name: ConstantName): number => VALUES[name];

/** All constants, in the order in which they are shown. */
export const SHOWN: readonly ShownConstant[] = (
  Object.entries(ABOUT) as [ConstantName, About][]
).map(([name, [group, unit, basis = 'ours']]) => ({
  name,
  value: valueOf(name),
  unit,
  basis,
  group,
}));
