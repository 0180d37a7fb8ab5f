/**
 * Motor milestones. Windows: first and 99th percentile of the age of achievement in healthy children,
 * months (WHO 2006: six milestones, 816 children, five sites). Two that orders name have no published
 * window, only the age by which at least 75 of 100 children do them (CDC checklists 2022, read in
 * transcriptions).
 */
import type { Milestone } from './types.ts';

const who = (id: string, name: string, short: string, p1: number, p99: number): Milestone => ({
  id,
  name,
  short,
  window: { p1Months: p1, p99Months: p99 },
  source: 'who-2006',
  basis: 'read',
});

const cdc = (id: string, name: string, short: string, mostByMonths: number): Milestone => ({
  id,
  name,
  short,
  window: null,
  mostByMonths,
  source: 'cdc-2022',
  basis: 'read',
});

export const MILESTONES: readonly Milestone[] = [
  cdc('reaching', 'Swinging an arm at toys, holding one', 'Reaches', 4),
  cdc('rolling', 'Rolling from tummy to back', 'Rolls', 6),
  who('sitting', 'Sitting without support', 'Sits alone', 3.8, 9.2),
  who('standing-helped', 'Standing with assistance', 'Stands with help', 4.8, 11.4),
  who('crawling', 'Hands-and-knees crawling', 'Crawls', 5.2, 13.5),
  who('walking-helped', 'Walking with assistance', 'Walks with help', 5.9, 13.7),
  who('standing', 'Standing alone', 'Stands alone', 6.9, 16.9),
  who('walking', 'Walking alone', 'Walks alone', 8.2, 17.6),
];
