/** Godwit: a response that had gone, and at the last visit is there again on one side. */
import { FORMAT } from '../case/shape.ts';
import { OLDER_VERSION, type OlderCase } from '../case/older.ts';
import { both, seen, visit } from './short.ts';

export const GODWIT: OlderCase = {
  format: FORMAT,
  version: OLDER_VERSION,
  child: {
    label: 'Godwit',
    born: '2025-09-29',
    gestation: '40w0d',
    dating: 'ultrasound-14w0d-21w6d',
    invented: true,
  },
  visits: [
    visit(
      '2025-11-24',
      'Rowan',
      '',
      seen('quiet-alert', {
        'palmar-grasp': both('elicited'),
        'plantar-grasp': both('elicited'),
        moro: both('elicited'),
        atnr: both('elicited'),
        tlr: 'elicited',
        'optical-righting': 'elicited',
      }),
    ),
    visit(
      '2026-01-27',
      'Rowan',
      '',
      seen('active-alert', {
        'palmar-grasp': both('not-elicited'),
        'plantar-grasp': both('elicited'),
        moro: both('elicited'),
        atnr: both('elicited'),
        galant: both('not-elicited'),
        landau: 'elicited',
        'labyrinthine-righting': 'elicited',
      }),
      { reaching: true },
    ),
    visit(
      '2026-03-31',
      'Rowan',
      'A good morning.',
      seen('active-alert', {
        'palmar-grasp': both('not-elicited'),
        'plantar-grasp': both('elicited'),
        moro: both('not-elicited'),
        atnr: both('not-elicited'),
        landau: 'elicited',
        'protective-forward': both('elicited'),
      }),
      { reaching: true, rolling: true, sitting: true },
    ),
    visit(
      '2026-06-01',
      'Alder',
      'Two weeks after a stay in hospital; the family says Godwit moves less. Told to the physician.',
      seen('quiet-alert', {
        'palmar-grasp': both('not-elicited'),
        moro: both('not-elicited'),
        atnr: ['not-elicited', 'elicited'],
        stnr: 'elicited',
        landau: 'elicited',
        'protective-forward': both('elicited'),
        'protective-sideways': ['elicited', 'weak'],
      }),
      { sitting: true, crawling: false },
    ),
  ],
  tags: ['conference'],
  question: 'The tonic neck response is there again on the right after a visit without it.',
};
