/**
 * Gross motor windows: first and 99th percentile of the age of achievement in healthy children,
 * months after birth at term. Source: WHO 2006 (six milestones, 816 children, five sites).
 */
import type { Milestone } from './types.ts';

const who = { source: 'who-2006', basis: 'read' } as const;

export const MILESTONES: readonly Milestone[] = [
  {
    id: 'sitting',
    name: 'Sitting without support',
    short: 'Sits alone',
    p1Months: 3.8,
    p99Months: 9.2,
    ...who,
  },
  {
    id: 'standing-helped',
    name: 'Standing with assistance',
    short: 'Stands with help',
    p1Months: 4.8,
    p99Months: 11.4,
    ...who,
  },
  {
    id: 'crawling',
    name: 'Hands-and-knees crawling',
    short: 'Crawls',
    p1Months: 5.2,
    p99Months: 13.5,
    ...who,
  },
  {
    id: 'walking-helped',
    name: 'Walking with assistance',
    short: 'Walks with help',
    p1Months: 5.9,
    p99Months: 13.7,
    ...who,
  },
  {
    id: 'standing',
    name: 'Standing alone',
    short: 'Stands alone',
    p1Months: 6.9,
    p99Months: 16.9,
    ...who,
  },
  {
    id: 'walking',
    name: 'Walking alone',
    short: 'Walks alone',
    p1Months: 8.2,
    p99Months: 17.6,
    ...who,
  },
];
