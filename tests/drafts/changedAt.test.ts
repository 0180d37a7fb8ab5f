import { expect, it } from 'vitest';
import { changedAt } from '../../src/lib/drafts/changedAt.ts';
import { blankVisit, withResponse } from '../../src/lib/drafts/visitEdits.ts';

const blank = blankVisit('2026-06-08');
const left = withResponse(blank, 'moro', ['left'], 'elicited', 'quiet-alert');
const both = withResponse(left, 'moro', ['right'], 'weak', 'quiet-alert');
const other = withResponse(both, 'galant', ['left'], 'elicited', 'quiet-alert');

it.each([
  ['came', left, both, { id: 'moro', side: 'right' }],
  ['went', other, both, { id: 'galant', side: 'left' }],
  [
    'changed',
    both,
    withResponse(both, 'moro', ['left'], 'brisk', 'quiet-alert'),
    { id: 'moro', side: 'left' },
  ],
  ['did neither', both, { ...both, note: 'calm' }, undefined],
])('a finding that %s', (_what, before, after, place) => {
  expect(changedAt(before, after)).toEqual(place);
});
