/** Which small figure stands for a place in an expected order. */
import type { Dissociation, Station } from '../atlas/types.ts';

export type ThumbnailKey = Dissociation | 'forward' | 'sideways' | 'backward';

const DIRECTIONS: Readonly<Record<string, ThumbnailKey>> = {
  'protective-forward': 'forward',
  'protective-sideways': 'sideways',
  'protective-backward': 'backward',
};

export const thumbnailKey = (station: Station): ThumbnailKey | undefined =>
  station.event === 'sets-apart'
    ? station.apart
    : station.event === 'appears'
      ? DIRECTIONS[station.reflex]
      : undefined;
