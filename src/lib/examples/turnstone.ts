/** Turnstone: two examiners on one morning, one after the other, who do not see the same. */
import { FORMAT } from '../case/shape.ts';
import { OLDER_VERSION, type OlderCase } from '../case/older.ts';
import { both, seen, visit } from './short.ts';

export const TURNSTONE: OlderCase = {
  format: FORMAT,
  version: OLDER_VERSION,
  child: {
    label: 'Turnstone',
    born: '2026-01-12',
    gestation: '37w5d',
    dating: 'ultrasound-first-trimester',
    invented: true,
  },
  visits: [
    visit(
      '2026-03-16',
      'Rowan',
      '',
      seen('quiet-alert', {
        'palmar-grasp': both('elicited'),
        moro: both('elicited'),
        atnr: both('elicited'),
        galant: both('elicited'),
        stepping: both('not-elicited'),
      }),
    ),
    visit(
      '2026-05-18',
      'Alder',
      'Second to look; tired by then.',
      seen('active-alert', {
        'palmar-grasp': both('elicited'),
        moro: ['elicited', 'weak'],
        atnr: ['obligatory', 'elicited'],
        galant: both('elicited'),
        tlr: 'elicited',
        landau: 'not-elicited',
        'labyrinthine-righting': 'elicited',
      }),
    ),
    visit(
      '2026-05-18',
      'Rowan',
      'First to look.',
      seen('quiet-alert', {
        'palmar-grasp': both('elicited'),
        moro: both('elicited'),
        atnr: both('elicited'),
        galant: both('not-elicited'),
        tlr: 'elicited',
        landau: 'elicited',
        'labyrinthine-righting': 'elicited',
      }),
    ),
  ],
  tags: ['second look'],
  question: 'Obligatory to the left for one of us, not for the other: who looks again, and how?',
};
