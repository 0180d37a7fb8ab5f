/**
 * By when a child is to be seen again. The waits are ours (reading/constants.ts); that loss of a skill a
 * carer confirms is seen at once follows NICE NG127, 2019 (read in two summaries; stricter here).
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, addMonths, type CivilDate } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { CaseJudge, sheetOf } from '../../src/lib/judge/judge.ts';
import { AGAIN_DAYS, nextVisit } from '../../src/lib/judge/nextVisit.ts';
import { SEEN_AGAIN_DAYS, USUAL_MONTHS } from '../../src/lib/judge/reading/constants.ts';
import { childCase } from '../support/kestrel.ts';

const options = { atlas: ATLAS, sheet: sheetOf(ATLAS, 'default') };
const day = (text: string): CivilDate => text as CivilDate;
const next = (record: Case) => nextVisit(new CaseJudge(record, options), options);
const TERM = { born: '2025-10-01', gestation: '40w0d' };

type Visits = Parameters<typeof childCase>[1];
const forwardGone = (last: 'elicited' | 'not-elicited'): Visits => [
  {
    on: '2026-07-01',
    findings: [
      ['protective-forward', 'left', 'elicited'],
      ['protective-forward', 'right', 'elicited'],
    ],
  },
  {
    on: '2026-10-01',
    findings: [
      ['protective-forward', 'left', last],
      ['protective-forward', 'right', last],
    ],
  },
];

describe('the next visit', () => {
  test('is the first, from birth on, of a child that was not seen yet', () => {
    expect(next(childCase(TERM, []))).toEqual({ by: '2025-10-01', why: { code: 'first' } });
  });

  test('is in the usual time where nothing is flagged and nothing is awaited', () => {
    expect(next(childCase(TERM, forwardGone('elicited')))).toEqual({
      by: '2027-01-01',
      why: { code: 'usual' },
    });
  });

  test('is within four weeks after a reaction that was present before and is not elicited now', () => {
    const found = next(childCase(TERM, forwardGone('not-elicited')))!;
    expect(found.by).toBe('2026-10-29');
    expect(found.why).toMatchObject({ code: 'seen-before', reflexes: ['protective-forward'] });
    expect(AGAIN_DAYS['seen-before']).toBe(SEEN_AGAIN_DAYS);
  });

  test('is within two weeks where something is to be discussed', () => {
    const found = next(
      childCase(TERM, [{ on: '2026-01-05', findings: [['atnr', 'left', 'obligatory']] }]),
    )!;
    expect(found).toEqual({
      by: '2026-01-19',
      why: { code: 'discuss', reflexes: ['atnr'], milestones: [], sequences: [] },
    });
  });

  test('has no later date than the day of the visit where a doctor is to see the child', () => {
    const record = childCase(TERM, forwardGone('not-elicited'));
    const visits = record.visits.map((visit, at) => ({
      ...visit,
      milestones: [
        at === 0
          ? { milestone: 'sitting', seen: true }
          : { milestone: 'sitting', seen: false, lost: true as const },
      ],
    }));
    const lost = { ...record, visits, sheet: { on: day('2026-10-20'), reflexes: ['moro'] } };
    const found = next(lost)!;
    expect(found.by).toBe('2026-10-01');
    expect(found.why).toMatchObject({ code: 'today', today: [{ code: 'lost-milestone' }] });
  });

  test('is the prepared one where that is earlier, and not where it is later', () => {
    const calm = childCase(TERM, forwardGone('elicited'));
    const prepared = (on: string): Case => ({ ...calm, sheet: { on: day(on), reflexes: [] } });
    expect(next(prepared('2026-11-10'))).toEqual({ by: '2026-11-10', why: { code: 'prepared' } });
    expect(next(prepared('2027-02-01'))?.why.code).toBe('usual');
    expect(next(prepared('2026-10-01'))?.why.code).toBe('usual');
  });

  test.each([
    ['atnr', '2026-02-20', false],
    ['moro', '2026-03-10', true],
  ])('is by when half would have the %s integrated, no sooner than a recheck', (id, seen, held) => {
    const record = childCase(TERM, [
      {
        on: seen,
        findings: [
          [id, 'left', 'elicited'],
          [id, 'right', 'elicited'],
        ],
      },
    ]);
    const found = next(record)!;
    expect(found.why).toMatchObject({ code: 'awaited', of: 1, question: { reflex: id } });
    const { reading } = new CaseJudge(record, options);
    const half = reading.course(id)!.change(reading.clock.dayOn(day(seen)))!.halfBy!;
    const soonest = addDays(day(seen), AGAIN_DAYS.watch);
    expect(reading.clock.dateOf(half) < soonest).toBe(held);
    expect(found.by).toBe(held ? soonest : reading.clock.dateOf(half));
  });

  test('is asked for by the latest answer, and an answer of long ago still counts', () => {
    const asks = (later: [string, string, 'elicited'][]): string | undefined =>
      next(
        childCase(TERM, [
          { on: '2026-01-05', findings: [['atnr', 'left', 'obligatory']] },
          { on: '2026-01-19', findings: later },
        ]),
      )?.why.code;
    expect(asks([['atnr', 'left', 'elicited']])).not.toBe('discuss');
    expect(asks([['rooting', 'midline', 'elicited']])).toBe('discuss');
  });

  test('past the age up to which children are followed is dated only by what asks', () => {
    const old = { born: '2023-01-01', gestation: '40w0d' };
    const at = (response: 'elicited' | 'obligatory') =>
      next(childCase(old, [{ on: '2026-01-05', findings: [['landau', 'midline', response]] }]));
    expect(at('obligatory')?.by).toBe('2026-01-19');
    const gone = childCase(old, [
      { on: '2026-01-05', findings: [['moro', 'left', 'not-elicited']] },
    ]);
    expect(next(gone)).toBeUndefined();
  });
});

describe('as a rule', () => {
  const REFLEXES = ['moro', 'atnr', 'palmar-grasp', 'protective-forward', 'landau', 'stepping'];
  interface Drawn {
    days: number;
    findings: { reflex: string; response: string }[];
  }
  const visitsAny: fc.Arbitrary<Drawn[]> = fc.array(
    fc.record({
      days: fc.integer({ min: 0, max: 600 }),
      findings: fc.array(
        fc.record({
          reflex: fc.constantFrom(...REFLEXES),
          response: fc.constantFrom('elicited', 'not-elicited', 'weak', 'obligatory'),
        }),
        { minLength: 1, maxLength: 5 },
      ),
    }),
    { minLength: 1, maxLength: 4 },
  );
  const recordOf = (visits: readonly Drawn[]): Case =>
    childCase(
      TERM,
      [...new Map(visits.map((one) => [one.days, one])).values()]
        .sort((a, b) => a.days - b.days)
        .map(({ days, findings }) => ({
          on: addDays(day(TERM.born), days),
          findings: [...new Map(findings.map((one) => [one.reflex, one])).values()].map(
            ({ reflex, response }) =>
              [
                reflex,
                ATLAS.reflexes.get(reflex)!.testedPerSide ? 'left' : 'midline',
                response,
              ] as never,
          ),
        })),
    );

  test('it is from the last visit to the usual time after it, and what asks for more is sooner', () => {
    const order = ['today', 'discuss', 'seen-before', 'watch'];
    const seen = new Set<string>();
    fc.assert(
      fc.property(visitsAny, (visits) => {
        const record = recordOf(visits);
        const last = record.visits.at(-1)!.on;
        const found = next(record);
        if (!found) return;
        seen.add(found.why.code);
        expect(found.by >= last).toBe(true);
        expect(found.by <= addMonths(last, USUAL_MONTHS)).toBe(true);
        const judge = new CaseJudge(record, options);
        const attentions = judge
          .visit(record.visits.at(-1)!)
          .findings.map(({ attention }) => attention);
        const wait = attentions.includes('discuss') ? 1 : attentions.includes('watch') ? 3 : 9;
        const at = order.indexOf(found.why.code);
        if (wait < 9) {
          expect(at).toBeGreaterThanOrEqual(0);
          expect(at).toBeLessThanOrEqual(wait);
        }
      }),
      { numRuns: 60 },
    );
    expect(seen.size).toBeGreaterThan(2);
  });

  test('a sheet that is kept never makes it later', () => {
    fc.assert(
      fc.property(visitsAny, fc.integer({ min: 1, max: 200 }), (visits, days) => {
        const record = recordOf(visits);
        const last = record.visits.at(-1)!.on;
        const before = next(record);
        const after = next({ ...record, sheet: { on: addDays(last, days), reflexes: [] } });
        if (before) expect(after!.by <= before.by).toBe(true);
      }),
      { numRuns: 30 },
    );
  });
});
