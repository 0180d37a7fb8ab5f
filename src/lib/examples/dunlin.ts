/** Dunlin: born at 28 weeks, seen twice before term and twice after; the corrected age counts. */
import { FORMAT } from '../case/shape.ts';
import { OLDER_VERSION, type OlderCase } from '../case/older.ts';
import { both, seen, visit } from './short.ts';

export const DUNLIN: OlderCase = {
  format: FORMAT,
  version: OLDER_VERSION,
  child: {
    label: 'Dunlin',
    born: '2026-01-05',
    gestation: '28w0d',
    dating: 'ultrasound-first-trimester',
    invented: true,
  },
  visits: [
    visit('2026-02-09', 'Alder', 'In the incubator, with the nurse; a few minutes only.', [
      ...seen('quiet-alert', {
        'palmar-grasp': both('elicited'),
        'plantar-grasp': both('elicited'),
        sucking: 'weak',
        galant: both('elicited'),
      }),
      ...seen('drowsy', { rooting: 'not-elicited' }, 'Falling asleep; not repeated.'),
    ]),
    visit(
      '2026-03-09',
      'Alder',
      'Open cot, first feeds by mouth.',
      seen('quiet-alert', {
        rooting: 'elicited',
        sucking: 'elicited',
        'palmar-grasp': both('elicited'),
        'plantar-grasp': both('elicited'),
        moro: both('elicited'),
        galant: both('elicited'),
        'crossed-extension': both('elicited'),
        stepping: both('not-elicited'),
      }),
    ),
    visit(
      '2026-04-13',
      'Rowan',
      'First visit after discharge.',
      seen('quiet-alert', {
        rooting: 'elicited',
        sucking: 'elicited',
        'palmar-grasp': both('elicited'),
        moro: both('elicited'),
        atnr: both('elicited'),
        tlr: 'elicited',
        stepping: both('elicited'),
        'labyrinthine-righting': 'not-elicited',
      }),
    ),
    visit(
      '2026-06-01',
      'Rowan',
      '',
      seen('active-alert', {
        'palmar-grasp': both('elicited'),
        'plantar-grasp': both('elicited'),
        moro: ['elicited', 'weak'],
        atnr: both('elicited'),
        'crossed-extension': both('not-elicited'),
        stepping: both('not-elicited'),
        'optical-righting': 'elicited',
        landau: 'not-elicited',
      }),
    ),
  ],
  tags: ['born early', 'home visits'],
  sheet: { on: '2026-06-29', reflexes: ['moro', 'atnr', 'palmar-grasp', 'landau'] },
};
