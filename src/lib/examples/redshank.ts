/** Redshank: referred, and not seen yet. */
import { FORMAT } from '../case/shape.ts';
import { OLDER_VERSION, type OlderCase } from '../case/older.ts';

export const REDSHANK: OlderCase = {
  format: FORMAT,
  version: OLDER_VERSION,
  child: {
    label: 'Redshank',
    born: '2026-05-28',
    due: '2026-06-30',
    dating: 'assisted-conception',
    invented: true,
  },
  visits: [],
  tags: ['born early', 'ward'],
};
