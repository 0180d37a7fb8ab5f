/** English for sequences: a station, when a child came by it, and what is taught of the order. */
import type { Atlas } from '../../atlas/atlas.ts';
import type { Station } from '../../atlas/types.ts';
import type { Interval } from '../../case/course.ts';
import { BY_DATE, type When } from './ages.ts';
import { apart } from './atlas.ts';

/** A place in an expected order, with this child's interval. */
export function stationWords(station: Station, atlas: Atlas): string {
  const name = (id: string): string => atlas.reflexes.get(id)?.short ?? id;
  switch (station.event) {
    case 'appears':
      return name(station.reflex);
    case 'integrates':
      return `${name(station.reflex)} integrated`;
    case 'sets-apart':
      return apart[station.apart];
    case 'reached':
      return (atlas.milestones.get(station.milestone)?.short ?? station.milestone).toLowerCase();
  }
}

export function intervalWords(interval: Interval | null, when: When = BY_DATE): string {
  if (!interval || (!interval.after && !interval.by)) return 'not tested';
  const { after, by } = interval;
  if (after && by) return `between ${when.bare(after.on)} and ${when.bare(by.on)}`;
  return by ? `by ${when.bare(by.on)}` : after ? `not by ${when.bare(after.on)}` : '';
}

export const orders = {
  title: 'Sequences',
  rest: (n: number): string => (n === 1 ? '1 more not tested yet' : `${n} more not tested yet`),
  taught: 'Taught by',
  against: 'Contradicted by',
};
