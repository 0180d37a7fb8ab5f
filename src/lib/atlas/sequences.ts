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
    standing: 'Common practice, no source. The windows of the sources agree with it.',
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
    standing:
      'Taught with forward at 5-6, sideways at 7-8, backward at 9-10 months (clinic page 2015); forward 6-9, sideways 7, backward 9-10 (clinic page 2021); forward 6-7, sideways 7-8, backward 9-12 (health explainer).',
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
    standing:
      'Taught as legs at 4 months, arms at 6-9; measured means in 190 healthy infants run the other way (arms 8.9, legs 9.2 months).',
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
    standing:
      'An association in 177 infants (1982), not found in 156 (1997). The windows overlap, so the order is not strict.',
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
    standing: 'An association in 177 infants (1982), not found in 156 (1997).',
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
    standing:
      'A paper of 1948 has the grasp gone as reaching begins; many sources let the grasp last longer.',
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
    standing:
      'Secondary sources. The response is seldom seen in typical infants, so its absence tells nothing.',
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
    standing:
      'Common practice for standing and walking; a paper of 1948 links the fading to crawling instead.',
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
    standing:
      'Of 190 healthy infants none walked before the reaction of the arms; 49 per cent stood alone without it.',
  },
];
