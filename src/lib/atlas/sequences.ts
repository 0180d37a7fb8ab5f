/**
 * Orders the trade expects, with who teaches them and who contradicts them.
 * Which reflexes set limbs apart is computed from their patterns (apart.ts), never listed here.
 */
import type { Sequence } from './types.ts';

export const SEQUENCES: readonly Sequence[] = [
  {
    id: 'arms-then-legs',
    kind: 'dissociation',
    stations: [
      { event: 'sets-apart', apart: 'arms-from-each-other' },
      { event: 'sets-apart', apart: 'arms-from-legs' },
    ],
    sources: ['common-practice'],
    contradictedBy: [],
    basis: 'memory',
  },
  {
    id: 'protective-directions',
    kind: 'protective',
    stations: [
      { event: 'appears', reflex: 'protective-forward' },
      { event: 'appears', reflex: 'protective-sideways' },
      { event: 'appears', reflex: 'protective-backward' },
    ],
    sources: ['clinic-2015', 'clinic-2021', 'health-explainer'],
    contradictedBy: [],
    basis: 'read',
  },
  {
    id: 'downward-then-forward',
    kind: 'protective',
    stations: [
      { event: 'appears', reflex: 'protective-downward' },
      { event: 'appears', reflex: 'protective-forward' },
    ],
    sources: ['clinic-2021'],
    contradictedBy: ['jaffe-1994'],
    basis: 'read',
  },
  {
    id: 'moro-before-sitting',
    kind: 'closing',
    stations: [
      { event: 'integrates', reflex: 'moro' },
      { event: 'reached', milestone: 'sitting' },
    ],
    sources: ['capute-1982-motor', 'who-2006'],
    contradictedBy: ['bartlett-1997'],
    basis: 'read',
  },
  {
    id: 'atnr-before-rolling',
    kind: 'closing',
    stations: [
      { event: 'integrates', reflex: 'atnr' },
      { event: 'reached', milestone: 'rolling' },
    ],
    sources: ['capute-1982-motor', 'cdc-2022'],
    contradictedBy: ['bartlett-1997'],
    basis: 'read',
  },
  {
    id: 'palmar-before-reaching',
    kind: 'closing',
    stations: [
      { event: 'integrates', reflex: 'palmar-grasp' },
      { event: 'reached', milestone: 'reaching' },
    ],
    sources: ['toe-1948', 'cdc-2022'],
    contradictedBy: [],
    basis: 'read',
  },
  {
    id: 'stnr-before-crawling',
    kind: 'closing',
    stations: [
      { event: 'integrates', reflex: 'stnr' },
      { event: 'reached', milestone: 'crawling' },
    ],
    sources: ['wikipedia-stnr', 'who-2006'],
    contradictedBy: [],
    basis: 'read',
  },
  {
    id: 'plantar-before-standing',
    kind: 'closing',
    stations: [
      { event: 'integrates', reflex: 'plantar-grasp' },
      { event: 'reached', milestone: 'standing' },
      { event: 'reached', milestone: 'walking' },
    ],
    sources: ['common-practice', 'toe-1948'],
    contradictedBy: [],
    basis: 'memory',
  },
  {
    id: 'forward-before-walking',
    kind: 'closing',
    stations: [
      { event: 'appears', reflex: 'protective-forward' },
      { event: 'reached', milestone: 'walking' },
    ],
    sources: ['jaffe-1994'],
    contradictedBy: [],
    basis: 'read',
  },
];
