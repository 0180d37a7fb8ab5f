/** How often the two sides of healthy infants answer unlike, and which side leads where one does. */
import type { Count } from '../count.ts';

export interface UnlikeCount {
  /** A reflex id, or `any-reflex` for the position of the head. */
  reflex: string;
  /** `unlike` = the two sides answered differently; `side` = one side, named in `sign`, was the stronger
   * or preferred one; `head-side` = the head was kept to one side; `no-side` = a group without a side. */
  kind: 'unlike' | 'side' | 'head-side' | 'no-side';
  sign: string;
  asPrinted: string;
  /** Ages in months after term (corrected) or after birth. */
  low: number;
  high: number;
  corrected: boolean;
  /** Infants; null where the number at this age is not printed. */
  n: number | null;
  of?: Count['of'];
  hits?: number;
  /** Null = a statement about the group without a share. */
  percent: number | null;
  population: string;
  source: string;
  basis: 'read';
  note?: string;
}

const INDIA = 'healthy infants born at term, India';
const DUTCH = '500 infants of 2-6 months, representative of the Netherlands';
const FEET = 'different response on the two feet';
const HEAD = 'head kept to one side';

export const UNLIKE: readonly UnlikeCount[] = [
  {
    reflex: 'plantar-response',
    kind: 'unlike',
    sign: FEET,
    asPrinted: 'first 7 days of life',
    low: 0,
    high: 0.23,
    corrected: false,
    n: 256,
    of: { number: 597, what: 'observations' },
    percent: 5.4,
    population: 'healthy newborns at term',
    source: 'gupta-2003',
    basis: 'read',
    note: 'No difference between right and left foot over all.',
  },
  {
    reflex: 'plantar-response',
    kind: 'unlike',
    sign: FEET,
    asPrinted: '1-3 months',
    low: 1,
    high: 3,
    corrected: false,
    n: 389,
    percent: 20.7,
    population: INDIA,
    source: 'kumhar-2002',
    basis: 'read',
  },
  {
    reflex: 'plantar-response',
    kind: 'unlike',
    sign: FEET,
    asPrinted: '3.1-6 months',
    low: 3.1,
    high: 6,
    corrected: false,
    n: 332,
    percent: 25.3,
    population: INDIA,
    source: 'kumhar-2002',
    basis: 'read',
  },
  {
    reflex: 'plantar-response',
    kind: 'unlike',
    sign: FEET,
    asPrinted: '6.1-9 months',
    low: 6.1,
    high: 9,
    corrected: false,
    n: 354,
    percent: 40.3,
    population: INDIA,
    source: 'kumhar-2002',
    basis: 'read',
    note: 'Highest while the response is changing, sooner in one foot than in the other.',
  },
  {
    reflex: 'plantar-response',
    kind: 'unlike',
    sign: FEET,
    asPrinted: '9.1-12 months',
    low: 9.1,
    high: 12,
    corrected: false,
    n: 206,
    percent: 28.7,
    population: INDIA,
    source: 'kumhar-2002',
    basis: 'read',
  },
  {
    reflex: 'palmar-grasp',
    kind: 'side',
    sign: 'right hand stronger over ten trials a side',
    asPrinted: 'newborn',
    low: 0,
    high: 1,
    corrected: false,
    n: null,
    percent: 25.7,
    population: 'newborns',
    source: 'tan-1999',
    basis: 'read',
  },
  {
    reflex: 'palmar-grasp',
    kind: 'side',
    sign: 'left hand stronger over ten trials a side',
    asPrinted: 'newborn',
    low: 0,
    high: 1,
    corrected: false,
    n: null,
    percent: 8.3,
    population: 'newborns',
    source: 'tan-1999',
    basis: 'read',
    note: 'The rest, 66.0 percent by subtraction, had no side that was reliably the stronger.',
  },
  {
    reflex: 'any-reflex',
    kind: 'head-side',
    sign: HEAD,
    asPrinted: '2 months',
    low: 2,
    high: 2,
    corrected: true,
    n: null,
    percent: 49,
    population: DUTCH,
    source: 'straathof-2020',
    basis: 'read',
  },
  {
    reflex: 'any-reflex',
    kind: 'head-side',
    sign: HEAD,
    asPrinted: '6 months',
    low: 6,
    high: 6,
    corrected: true,
    n: null,
    percent: 0,
    population: DUTCH,
    source: 'straathof-2020',
    basis: 'read',
    note: 'At 4-5 months it went with less good reaching and an at-risk neurological score.',
  },
  {
    reflex: 'any-reflex',
    kind: 'head-side',
    sign: HEAD,
    asPrinted: '2-6 months',
    low: 2,
    high: 6,
    corrected: true,
    n: 500,
    hits: 100,
    percent: 20,
    population: DUTCH,
    source: 'straathof-2020',
    basis: 'read',
  },
  {
    reflex: 'any-reflex',
    kind: 'head-side',
    sign: 'preferred position of the head',
    asPrinted: 'below 6 months',
    low: 0,
    high: 6,
    corrected: false,
    n: 7609,
    hits: 623,
    percent: 8.2,
    population: 'infants at health care centres, the Netherlands',
    source: 'boere-2001',
    basis: 'read',
    note: 'Most often below 16 weeks; three boys to two girls.',
  },
  {
    reflex: 'any-reflex',
    kind: 'head-side',
    sign: 'preferred position of the head',
    asPrinted: '7 weeks',
    low: 1.61,
    high: 1.61,
    corrected: false,
    n: 380,
    hits: 68,
    percent: 17.9,
    population: 'infants referred at 7 weeks',
    source: 'vanvlimmeren-2008',
    basis: 'read',
    note: 'None of the 65 who were followed showed it at 6 and 12 months.',
  },
  {
    reflex: 'moro',
    kind: 'side',
    sign: 'right arm starts and peaks sooner, group level',
    asPrinted: 'newborn',
    low: 0,
    high: 1,
    corrected: false,
    n: 15,
    percent: null,
    population: 'newborns at term',
    source: 'ronnqvist-1998',
    basis: 'read',
    note: 'Measured, not seen: it lasted over four tests in most, and in those who turned the head to the right.',
  },
];
