/**
 * Sanderling: one arm unlike the other from birth, as after a difficult delivery of the shoulder. The
 * legs answer alike. What may hurt the arm is left out, and that is written down.
 */
import { FORMAT } from '../case/shape.ts';
import { OLDER_VERSION, type OlderCase } from '../case/older.ts';
import { both, seen, visit } from './short.ts';

const LEFT_OUT = 'Traction and anything that pulls at the arm left out.';

export const SANDERLING: OlderCase = {
  format: FORMAT,
  version: OLDER_VERSION,
  child: {
    label: 'Sanderling',
    born: '2026-02-10',
    gestation: '40w3d',
    dating: 'ultrasound-first-trimester',
    invented: true,
  },
  visits: [
    visit(
      '2026-02-13',
      'Rowan',
      `Shoulder delivered with difficulty. Right arm lies beside the trunk. ${LEFT_OUT}`,
      seen('quiet-alert', {
        moro: ['elicited', 'not-elicited'],
        'palmar-grasp': ['elicited', 'weak'],
        'placing-arm': ['elicited', 'not-elicited'],
        'plantar-grasp': both('elicited'),
        'placing-leg': both('elicited'),
        stepping: both('elicited'),
        rooting: 'elicited',
        sucking: 'elicited',
      }),
    ),
    visit(
      '2026-03-10',
      'Rowan',
      `The parents keep the arm close in dressing. ${LEFT_OUT}`,
      seen('quiet-alert', {
        moro: ['elicited', 'not-elicited'],
        atnr: ['elicited', 'weak'],
        'palmar-grasp': ['elicited', 'weak'],
        'placing-arm': ['elicited', 'not-elicited'],
        'plantar-grasp': both('elicited'),
        'placing-leg': both('elicited'),
      }),
    ),
    visit(
      '2026-04-14',
      'Alder',
      `The elbow bends against the mat now. ${LEFT_OUT}`,
      seen('active-alert', {
        moro: ['elicited', 'not-elicited'],
        atnr: both('elicited'),
        'palmar-grasp': both('elicited'),
        'placing-arm': ['elicited', 'not-elicited'],
        'plantar-grasp': both('elicited'),
        'crossed-extension': both('not-elicited'),
      }),
    ),
    visit(
      '2026-05-26',
      'Rowan',
      `Lifts the right hand to the chest. ${LEFT_OUT}`,
      seen('active-alert', {
        moro: ['elicited', 'weak'],
        atnr: both('elicited'),
        'palmar-grasp': both('elicited'),
        'placing-arm': ['elicited', 'weak'],
        'plantar-grasp': both('elicited'),
        'optical-righting': 'elicited',
      }),
      { reaching: false },
    ),
  ],
  tags: ['arm', 'parents show films'],
  question: 'The right arm comes in slowly: what is looked at next, and by whom?',
};
