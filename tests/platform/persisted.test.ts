import { describe, expect, it } from 'vitest';
import type { CivilDate } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { fileName } from '../../src/lib/platform/download.ts';
import { findReflexes } from '../../src/lib/present/findReflex.ts';
import { planDate, questionsTogether } from '../../src/lib/present/plan.ts';
import { today } from '../../src/lib/platform/today.ts';
import { tidyDate } from '../../src/lib/platform/tidyDate.ts';
import {
  blankVisit,
  stateOf,
  withMilestone,
  withResponse,
  withState,
} from '../../src/lib/drafts/visitEdits.ts';

describe('a typed date', () => {
  it.each([
    ['2026-03-04', '2026-03-04'],
    ['20260304', '2026-03-04'],
    [' 2026/03/04 ', '2026-03-04'],
    ['2026.03.04', '2026-03-04'],
    ['2026-02-30', '2026-02-30'],
    ['4 March', '4 March'],
    ['', ''],
  ])('%s is read as %s', (typed, tidy) => {
    expect(tidyDate(typed)).toBe(tidy);
  });
});

describe('today', () => {
  it('is the day of the local calendar, whatever the hour', () => {
    expect(today(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
    expect(today(new Date(2026, 11, 31, 0, 1))).toBe('2026-12-31');
  });
});

describe('finding a reflex', () => {
  const all = [...ATLAS.reflexes.values()];
  const first = (typed: string, synonyms = {}): string | undefined =>
    findReflexes(all, typed, synonyms)[0]?.id;

  it.each([
    ['mor', 'moro'],
    ['ATNR', 'atnr'],
    ['grasp plantar', 'plantar-grasp'],
    ['protective forw', 'protective-forward'],
  ])('%s finds %s', (typed, id) => {
    expect(first(typed)).toBe(id);
  });

  it('takes a synonym, and finds nothing for nonsense', () => {
    expect(first('embrace', { moro: ['embrace reflex'] })).toBe('moro');
    expect(first('xyzzy')).toBeUndefined();
    expect(findReflexes(all, '  ')).toHaveLength(all.length);
  });
});

describe('a visit as it is entered', () => {
  const begun = withResponse(blankVisit('2026-06-08'), 'moro', ['left', 'right'], 'weak', 'drowsy');

  it('takes a response on both sides, changes one, and takes one out', () => {
    expect(begun.findings).toHaveLength(2);
    const changed = withResponse(begun, 'moro', ['left'], 'brisk', 'drowsy');
    expect(changed.findings.map(({ side, response }) => [side, response])).toEqual([
      ['left', 'brisk'],
      ['right', 'weak'],
    ]);
    const without = withResponse(changed, 'moro', ['right'], undefined, 'drowsy');
    expect(without.findings.map(({ side }) => side)).toEqual(['left']);
  });

  it('sets the state of the visit but leaves a finding its own', () => {
    const more = withResponse(begun, 'galant', ['left'], 'weak', 'crying');
    const awake = withState(more, 'drowsy', 'quiet-alert');
    expect(awake.findings.map(({ state }) => state)).toEqual([
      'quiet-alert',
      'quiet-alert',
      'crying',
    ]);
    expect(stateOf(awake)).toBe('quiet-alert');
    expect(stateOf(blankVisit('2026-06-08'))).toBe('not-recorded');
  });

  it('takes a milestone once, and out again', () => {
    const seen = withMilestone(withMilestone(begun, 'sitting', false), 'sitting', true);
    expect(seen.milestones).toEqual([{ milestone: 'sitting', seen: true }]);
    expect(withMilestone(seen, 'sitting', undefined).milestones).toEqual([]);
  });
});

describe('the date of a plan', () => {
  const record = demoCase(ATLAS);
  const real = { ...record, child: { ...record.child, invented: false } };
  const on = (text: string) => text as CivilDate;

  it.each([
    ['an invented child', record, '2027-01-01', '2026-05-11'],
    ['a child seen before', real, '2026-06-01', '2026-06-01'],
    ['a visit that lies ahead', real, '2026-01-01', '2026-05-11'],
    ['no visit and a birth ahead', { ...real, visits: [] }, '2025-01-01', '2025-10-04'],
  ])('for %s', (_, child, now, expected) => {
    expect(planDate(child, on(now))).toBe(expected);
  });

  it('asks a question of two sides once', () => {
    const question = {
      reflex: 'moro',
      side: 'left' as const,
      verdict: 'closing',
      awaits: 'to-integrate' as const,
      most: on('2026-06-05'),
      every: on('2026-09-04'),
    };
    const together = questionsTogether([question, { ...question, side: 'right' }]);
    expect(together.map(({ sides }) => sides)).toEqual([['left', 'right']]);
  });
});

describe('the name of a saved file', () => {
  it.each([
    ['Kestrel', 'kestrel.tidemark.json'],
    ['No. 7 / ward B', 'no-7-ward-b.tidemark.json'],
    ['Émile', 'émile.tidemark.json'],
    ['../..', 'case.tidemark.json'],
  ])('%s is %s', (label, name) => {
    expect(fileName(label)).toBe(name);
  });
});
