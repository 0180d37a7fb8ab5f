import { describe, expect, test } from 'vitest';
import type { CivilDate } from '../../src/lib/age/civil.ts';
import type { NextVisit, NextWhy } from '../../src/lib/judge/nextVisit.ts';
import { WAITS } from '../../src/lib/present/plan.ts';
import { en } from '../../src/lib/words/en.ts';

const { lineWords, nextTitle, rule, whySentences } = en.nextVisit;
const day = (text: string): CivilDate => text as CivilDate;
const question = {
  reflex: 'moro',
  side: 'left',
  verdict: 'closing',
  awaits: 'to-integrate',
  most: day('2026-07-01'),
  every: day('2026-08-01'),
} as const;
const names = {
  reflex: () => 'Moro',
  milestone: () => 'Sitting',
  sequence: () => 'Legs, then arms',
};
const asking = { reflexes: ['moro'], milestones: ['sitting'], sequences: ['x'] };

describe('the next visit in a line of the list', () => {
  const at = (by: string, why: NextWhy): NextVisit => ({ by: day(by), why });
  test.each([
    [at('2026-06-08', { code: 'prepared' }), 'visit due today: prepared visit'],
    [at('2026-06-01', { code: 'usual' }), 'visit due since 1 June 2026: follow-up overdue'],
    [at('2026-07-08', { code: 'usual' }), 'next visit 8 July 2026: usual follow-up'],
    [at('2026-06-20', { code: 'first' }), 'next visit 20 June 2026: first visit'],
    [at('2026-06-20', { code: 'watch', ...asking }), 'next visit 20 June 2026: recheck'],
    [
      at('2026-07-01', { code: 'awaited', question, of: 1 }),
      'next visit 1 July 2026: Moro integrated?',
    ],
    [at('2026-06-08', { code: 'today', today: [] }), 'see a doctor today'],
    [at('2026-06-01', { code: 'today', today: [] }), 'to see a doctor on 1 June 2026, at once'],
    [undefined, 'no next visit dated'],
  ])('%j: %s', (next, words) => {
    expect(lineWords(next, day('2026-06-08'), () => 'Moro')).toBe(words);
  });
});

describe('the date and why', () => {
  test('what should not wait has no date to plan for', () => {
    const why: NextWhy = {
      code: 'today',
      today: [{ code: 'no-feeding', on: day('2026-06-01'), about: [] }],
    };
    expect(nextTitle({ by: day('2026-06-01'), why })).not.toMatch(/\d/);
    expect(whySentences(why, day('2026-06-01'), names, WAITS).join(' ')).toContain('doctor today');
  });

  test.each([
    [
      { code: 'discuss', ...asking },
      'To be discussed with the team: Moro, sitting and the sequence “Legs, then arms”. To be seen again within 2 weeks of the visit on 1 June 2026.',
    ],
    [
      { code: 'seen-before', ...asking, milestones: [], sequences: [] },
      'Present before and not elicited now: Moro. To be tried again within 4 weeks of the visit on 1 June 2026.',
    ],
    [
      { code: 'awaited', question, of: 3 },
      'By then at least half of the 3 expected changes would have happened in children with this past. Nothing calls for an earlier date.',
    ],
  ] as const)('%j: %s', (why, words) => {
    expect(whySentences(why, day('2026-06-01'), names, WAITS)).toEqual([words]);
  });

  test('the rule says every wait that is used', () => {
    for (const wait of ['2 weeks', '4 weeks', '6 weeks', '3 months'])
      expect(rule(WAITS)).toContain(wait);
  });
});
