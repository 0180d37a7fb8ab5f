/** Snipe: responses missing in the newborn weeks, in a state in which a missing answer counts. */
import { FORMAT } from '../case/shape.ts';
import { OLDER_VERSION, type OlderCase } from '../case/older.ts';
import { both, seen, visit } from './short.ts';

export const SNIPE: OlderCase = {
  format: FORMAT,
  version: OLDER_VERSION,
  child: {
    label: 'Snipe',
    born: '2026-05-14',
    gestation: '39w0d',
    dating: 'ultrasound-first-trimester',
    invented: true,
  },
  visits: [
    visit(
      '2026-05-15',
      'Rowan',
      'Hard to rouse. Nothing said of what was not answered; looked at again when awake.',
      seen('drowsy', {
        rooting: 'not-elicited',
        sucking: 'weak',
        'palmar-grasp': both('not-elicited'),
        moro: both('not-elicited'),
      }),
    ),
    visit(
      '2026-05-21',
      'Rowan',
      'Awake after a feed by tube; each tried twice. Told to the physician of the ward the same hour.',
      seen(
        'quiet-alert',
        {
          rooting: 'not-elicited',
          sucking: 'weak',
          'palmar-grasp': both('not-elicited'),
          'plantar-grasp': both('elicited'),
          moro: both('not-elicited'),
          galant: both('elicited'),
          'placing-leg': both('not-elicited'),
          stepping: both('not-elicited'),
        },
        '',
        2,
      ),
    ),
    visit(
      '2026-06-04',
      'Rowan',
      'Awake for longer; drinks a part by mouth.',
      seen(
        'quiet-alert',
        {
          rooting: 'elicited',
          sucking: 'weak',
          'palmar-grasp': both('weak'),
          'plantar-grasp': both('elicited'),
          moro: both('not-elicited'),
          'placing-leg': both('elicited'),
          stepping: both('not-elicited'),
          traction: 'not-elicited',
        },
        '',
        2,
      ),
    ),
  ],
  tags: ['ward'],
  question: 'The Moro response is still missing at three weeks.',
  sheet: { on: '2026-06-08', reflexes: ['sucking', 'palmar-grasp', 'stepping', 'moro'] },
};
