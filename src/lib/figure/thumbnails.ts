/** Which small figure stands for a place in an expected order. */
import type { Dissociation, Station } from '../atlas/types.ts';
import { isMilestonePose, type MilestonePose } from './milestonePoses.ts';

export type ThumbnailKey = Dissociation | 'forward' | 'sideways' | 'backward' | MilestonePose;

const DIRECTIONS: Readonly<Record<string, ThumbnailKey>> = {
  'protective-forward': 'forward',
  'protective-sideways': 'sideways',
  'protective-backward': 'backward',
};

export function thumbnailKey(station: Station): ThumbnailKey | undefined {
  switch (station.event) {
    case 'sets-apart':
      return station.apart;
    case 'appears':
      return DIRECTIONS[station.reflex];
    case 'reached':
      return isMilestonePose(station.milestone) ? station.milestone : undefined;
    case 'integrates':
      return undefined;
  }
}
