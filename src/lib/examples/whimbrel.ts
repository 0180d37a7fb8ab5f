/**
 * Whimbrel: booked late, the due date guessed from the first examination after birth. Born some weeks
 * early or hardly early at all: what is still there hangs on it.
 */
import { FORMAT } from '../case/shape.ts';
import { OLDER_VERSION, type OlderCase } from '../case/older.ts';
import { both, seen, visit } from './short.ts';

export const WHIMBREL: OlderCase = {
  format: FORMAT,
  version: OLDER_VERSION,
  child: {
    label: 'Whimbrel',
    born: '2026-01-19',
    gestation: '34w3d',
    dating: 'newborn-exam',
    invented: true,
  },
  visits: [
    visit(
      '2026-03-30',
      'Alder',
      'No scan before birth.',
      seen('quiet-alert', {
        rooting: 'elicited',
        'palmar-grasp': both('elicited'),
        moro: both('elicited'),
        atnr: both('elicited'),
        'crossed-extension': both('elicited'),
        stepping: both('elicited'),
      }),
    ),
    visit(
      '2026-05-25',
      'Alder',
      'Asked again for the date of the last period: not known.',
      seen('quiet-alert', {
        'palmar-grasp': both('elicited'),
        'plantar-grasp': both('elicited'),
        moro: both('elicited'),
        atnr: both('elicited'),
        'crossed-extension': both('elicited'),
        'placing-leg': both('elicited'),
        stepping: both('not-elicited'),
        landau: 'not-elicited',
      }),
    ),
  ],
  tags: ['due date unsure'],
};
