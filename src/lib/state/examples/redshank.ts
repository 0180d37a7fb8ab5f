/** Redshank: referred, and not seen yet. */
import { FORMAT, VERSION, type RawCase } from '../../case/shape.ts';

export const REDSHANK: RawCase = {
  format: FORMAT,
  version: VERSION,
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
