/** Avocet: walks, is followed no longer, and lies in the archive. */
import { FORMAT } from '../case/shape.ts';
import { OLDER_VERSION, type OlderCase } from '../case/older.ts';
import { both, seen, visit } from './short.ts';

export const AVOCET: OlderCase = {
  format: FORMAT,
  version: OLDER_VERSION,
  child: {
    label: 'Avocet',
    born: '2024-12-03',
    gestation: '38w6d',
    dating: 'ultrasound-first-trimester',
    invented: true,
  },
  visits: [
    visit(
      '2025-07-08',
      'Alder',
      '',
      seen('active-alert', {
        moro: both('not-elicited'),
        atnr: both('not-elicited'),
        landau: 'elicited',
        'protective-forward': both('elicited'),
      }),
      { rolling: true, sitting: true, crawling: false },
    ),
    visit(
      '2026-03-03',
      'Alder',
      'Walks. Last visit.',
      seen('active-alert', {
        'protective-forward': both('elicited'),
        'protective-sideways': both('elicited'),
        'protective-backward': both('elicited'),
        'equilibrium-sitting': both('elicited'),
      }),
      { crawling: true, standing: true, walking: true },
    ),
  ],
  tags: ['well-child'],
  archived: true,
};
