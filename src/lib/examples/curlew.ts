/** Curlew: the tonic neck response obligatory, other tonic postures persisting, at nine months. */
import { FORMAT } from '../case/shape.ts';
import { OLDER_VERSION, type OlderCase } from '../case/older.ts';
import { both, seen, visit } from './short.ts';

export const CURLEW: OlderCase = {
  format: FORMAT,
  version: OLDER_VERSION,
  child: {
    label: 'Curlew',
    born: '2025-08-25',
    gestation: '38w1d',
    dating: 'last-period',
    invented: true,
  },
  visits: [
    visit(
      '2025-12-01',
      'Alder',
      'Prefers the face to the right; turns when called from the left.',
      seen('quiet-alert', {
        'palmar-grasp': both('elicited'),
        moro: both('elicited'),
        atnr: both('brisk'),
        tlr: 'elicited',
        'labyrinthine-righting': 'not-elicited',
        'optical-righting': 'not-elicited',
      }),
    ),
    visit(
      '2026-02-23',
      'Alder',
      'Arms do not come together at the midline.',
      seen('quiet-alert', {
        'palmar-grasp': both('elicited'),
        moro: both('elicited'),
        atnr: ['elicited', 'obligatory'],
        tlr: 'brisk',
        'positive-support': both('brisk'),
        landau: 'not-elicited',
        'body-righting-body': both('not-elicited'),
        'protective-forward': both('not-elicited'),
      }),
      { reaching: false, rolling: false, sitting: false },
    ),
    visit(
      '2026-05-25',
      'Rowan',
      'Seen together with the family.',
      seen('active-alert', {
        'palmar-grasp': both('elicited'),
        moro: both('elicited'),
        atnr: both('obligatory'),
        stnr: 'obligatory',
        tlr: 'elicited',
        'positive-support': both('elicited'),
        'extensor-thrust': both('elicited'),
        'crossed-extension': both('elicited'),
        landau: 'not-elicited',
        'body-righting-body': both('not-elicited'),
        'protective-forward': both('not-elicited'),
        'protective-sideways': both('not-elicited'),
      }),
      { reaching: true, rolling: false, sitting: false, crawling: false },
    ),
  ],
  tags: ['conference', 'positioning'],
  question:
    'Tonic postures set the pattern at nine months: which seat, and whom do we ask to look?',
  decisions: [
    {
      on: '2026-02-25',
      text: 'Show the family side lying and how to carry.',
      who: 'Alder',
      by: '2026-03-11',
      done: true,
    },
    {
      on: '2026-05-27',
      text: 'Ask the physician to see Curlew; send the record with it.',
      who: 'Rowan',
      by: '2026-06-05',
      done: false,
    },
  ],
};
