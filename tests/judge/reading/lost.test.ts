import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../../src/lib/atlas/atlas.ts';
import { sheetOf } from '../../../src/lib/judge/judge.ts';
import type { InfantState, Response } from '../../../src/lib/case/finding.ts';
import { todayOn, together, triedEnough, type Today } from '../../../src/lib/judge/reading/asks.ts';
import { ChildReading, Priors } from '../../../src/lib/judge/reading/child.ts';
import { lostMilestones, notNowOf } from '../../../src/lib/judge/reading/lost.ts';
import { childCase, type ShortFinding, type ShortVisit } from '../../support/kestrel.ts';

const PRIORS = new Priors(ATLAS, sheetOf(ATLAS, 'default'));
const TERM = { born: '2026-01-01', gestation: '40w0d' };
const read = (visits: ShortVisit[], child: { born: string; gestation: string } = TERM) =>
  new ChildReading(childCase(child, visits), PRIORS);
const both = (reflex: string, response: Response, state: InfantState = 'quiet-alert') =>
  (['left', 'right'] as const).map((side): ShortFinding => [reflex, side, response, state]);
const forward = 'protective-forward';

describe('a parachute that was there at 9 months and is gone at 12', () => {
  const visits: ShortVisit[] = [
    { on: '2026-10-01', findings: both(forward, 'elicited') },
    { on: '2027-01-01', findings: both(forward, 'not-elicited') },
  ];

  test('is seen before and not now: watched, and for life', () => {
    const found = notNowOf(read(visits));
    expect(found.map(({ side }) => side)).toEqual(['left', 'right']);
    for (const one of found) {
      expect(one).toMatchObject({
        reflex: forward,
        on: '2027-01-01',
        seenOn: '2026-10-01',
        days: 1,
      });
      expect(one.goneBy).toBeLessThan(0.05);
      expect(one.lifelong).toBe(true);
      expect(one.lost).toEqual([]);
    }
  });

  test('missing again on another day it is lost', () => {
    const again = [...visits, { on: '2027-01-20', findings: both(forward, 'not-elicited') }];
    const found = notNowOf(read(again)).filter(({ on }) => on === '2027-01-20');
    expect(found.map(({ lost }) => lost)).toEqual([['another-day'], ['another-day']]);
  });

  test('elicited in between it is not', () => {
    const found = notNowOf(
      read([
        ...visits,
        { on: '2027-01-20', findings: both(forward, 'elicited') },
        { on: '2027-03-01', findings: both(forward, 'not-elicited') },
      ]),
    );
    expect(found.map(({ lost }) => lost)).toEqual([[], [], [], []]);
  });

  test('one side while the other answers is lost at once, also while crying', () => {
    for (const state of ['quiet-alert', 'crying'] as const) {
      const found = notNowOf(
        read([
          visits[0]!,
          {
            on: '2027-01-01',
            findings: [
              [forward, 'left', 'not-elicited', state],
              [forward, 'right', 'elicited', state],
            ],
          },
        ]),
      );
      expect(found).toHaveLength(1);
      expect(found[0]).toMatchObject({ side: 'left', lost: ['one-side'] });
    }
  });

  test('while crying, both sides missing say nothing', () => {
    const crying = { on: '2027-01-01', findings: both(forward, 'not-elicited', 'crying') };
    expect(notNowOf(read([visits[0]!, crying]))).toEqual([]);
  });

  test('beside another finding to discuss it is lost', () => {
    const [found] = notNowOf(
      read(visits),
      (on, besides) => on === '2027-01-01' && besides === forward,
    );
    expect(found!.lost).toEqual(['beside-another']);
  });

  test('three at one visit are lost, two are not', () => {
    const three = [forward, 'protective-sideways', 'protective-backward'];
    const at = (reflexes: string[]): ShortVisit[] => [
      { on: '2026-12-01', findings: reflexes.flatMap((reflex) => both(reflex, 'elicited')) },
      { on: '2027-02-01', findings: reflexes.flatMap((reflex) => both(reflex, 'not-elicited')) },
    ];
    expect(notNowOf(read(at(three))).every(({ lost }) => lost.includes('several-at-once'))).toBe(
      true,
    );
    expect(notNowOf(read(at(three.slice(0, 2)))).every(({ lost }) => lost.length === 0)).toBe(true);
  });
});

test('a response that sources let go by then is no loss', () => {
  const visits: ShortVisit[] = [
    { on: '2026-03-01', findings: both('moro', 'elicited') },
    { on: '2026-07-01', findings: both('moro', 'not-elicited') },
  ];
  expect(notNowOf(read(visits))).toEqual([]);
});

/** What should not wait, over all days of a child. */
const todayOf = (
  child: ChildReading,
  notNow: Parameters<typeof todayOn>[3],
  lost: Parameters<typeof todayOn>[4],
): Today[] =>
  child.record.visits.flatMap(({ on }) =>
    todayOn(on, child.clock.dayOn(on), child.record.visits, notNow, lost),
  );

describe('milestones', () => {
  const seen = (on: string, milestones: Record<string, boolean>): ShortVisit => ({
    on,
    findings: [],
    milestones,
  });

  test('seen before and not now is watched; said to be lost by the carer it is for today', () => {
    const child = read([
      seen('2026-09-01', { sitting: true }),
      seen('2026-11-01', { sitting: false }),
    ]);
    expect(lostMilestones(child)).toMatchObject([{ milestone: 'sitting', asks: 'watch' }]);
    const confirmed = lostMilestones(child, () => true);
    expect(confirmed).toMatchObject([{ asks: 'today', seenOn: '2026-09-01' }]);
    expect(todayOf(child, [], confirmed)).toEqual([
      { code: 'lost-milestone', on: '2026-11-01', about: ['sitting'] },
    ]);
  });

  test('never seen here, but said to be lost, is to be discussed', () => {
    const child = read([seen('2026-11-01', { sitting: false })]);
    expect(lostMilestones(child)).toEqual([]);
    expect(lostMilestones(child, () => true)).toMatchObject([{ asks: 'discuss', seenOn: null }]);
  });

  test('crawling that walking has replaced is not lost', () => {
    const child = read([
      seen('2026-10-01', { crawling: true }),
      seen('2027-02-01', { crawling: false, walking: true }),
    ]);
    expect(lostMilestones(child)).toEqual([]);
  });
});

describe('today', () => {
  test('two lifelong reactions lost at two tries; one, or one try, is not', () => {
    const visits = (reflexes: string[], times: number): ShortVisit[] => [
      { on: '2026-12-01', findings: reflexes.flatMap((reflex) => both(reflex, 'elicited')) },
      ...['2027-02-01', '2027-02-10'].slice(0, times).map((on) => ({
        on,
        findings: reflexes.flatMap((reflex) => both(reflex, 'not-elicited')),
      })),
    ];
    const found = (reflexes: string[], times: number) => {
      const child = read(visits(reflexes, times));
      return todayOf(child, notNowOf(child), []);
    };
    const two = [forward, 'protective-sideways'];
    expect(found(two, 2)).toEqual([{ code: 'lost-reactions', on: '2027-02-10', about: two }]);
    expect(found(two.slice(0, 1), 2)).toEqual([]);
    expect(found(two, 1)).toEqual([]);
  });

  const feeding = (sucking: Response, state: InfantState = 'quiet-alert', gestation = '40w0d') => {
    const child = read(
      [
        {
          on: '2026-01-03',
          findings: [
            ['sucking', 'midline', sucking, state],
            ['swallowing', 'midline', 'not-elicited', state],
          ],
        },
      ],
      { born: '2026-01-01', gestation },
    );
    return todayOf(child, [], []).map(({ code }) => code);
  };

  test('neither sucking nor swallowing in an alert infant from 37 weeks on', () => {
    expect(feeding('not-elicited')).toEqual(['no-feeding']);
    expect(feeding('not-elicited', 'active-alert', '36w5d')).toEqual(['no-feeding']);
    expect(feeding('not-elicited', 'quiet-alert', '36w4d')).toEqual([]);
    expect(feeding('weak')).toEqual([]);
    expect(feeding('not-elicited', 'drowsy')).toEqual([]);
    expect(feeding('not-elicited', 'not-recorded')).toEqual([]);
  });
});

describe('a second try', () => {
  const on = '2026-02-01';
  const enough = (
    findings: ShortFinding[],
    tries = 1,
    missedBefore = false,
    more: ShortVisit[] = [],
  ) => {
    const { visits } = childCase(TERM, [...more, { on, findings }]);
    const visit = visits.at(-1)!;
    const said = { ...visit.findings[0]!, tries };
    const all = visits.map((one) =>
      one === visit ? { ...one, findings: [said, ...one.findings.slice(1)] } : one,
    );
    return triedEnough(said, visit.on, all, () => missedBefore);
  };

  test('one try is not enough, two are', () => {
    expect(enough([['moro', 'left', 'not-elicited']])).toBe(false);
    expect(enough([['moro', 'left', 'not-elicited']], 2)).toBe(true);
  });

  test('two examiners on one day are two tries', () => {
    const other: ShortVisit = { on, examiner: 'Amy', findings: [['moro', 'left', 'not-elicited']] };
    const { visits } = childCase(TERM, [
      other,
      { on, examiner: 'Zed', findings: [['moro', 'left', 'not-elicited']] },
    ]);
    expect(triedEnough(visits[0]!.findings[0]!, visits[0]!.on, visits, () => false)).toBe(true);
  });

  test('missing on another day too is enough, where it was expected then', () => {
    const before: ShortVisit = { on: '2026-01-10', findings: [['moro', 'left', 'not-elicited']] };
    expect(enough([['moro', 'left', 'not-elicited']], 1, true, [before])).toBe(true);
    expect(enough([['moro', 'left', 'not-elicited']], 1, false, [before])).toBe(false);
  });

  test('sucking with swallowing, and a side beside one that answers, need none', () => {
    expect(
      enough([
        ['sucking', 'midline', 'not-elicited'],
        ['swallowing', 'midline', 'not-elicited'],
      ]),
    ).toBe(true);
    expect(enough([['sucking', 'midline', 'not-elicited']])).toBe(false);
    expect(
      enough([
        ['moro', 'left', 'not-elicited'],
        ['moro', 'right', 'elicited'],
      ]),
    ).toBe(true);
  });
});

test('three reflexes to be discussed are said together, sides counted once', () => {
  const one = (reflex: string, asks = 'discuss') => ({ reflex, asks });
  expect(together([one('moro'), one('moro'), one('atnr')])).toEqual([]);
  expect(together([one('moro'), one('atnr'), one('galant', 'watch')])).toEqual([]);
  expect(together([one('moro'), one('atnr'), one('galant', 'today')])).toEqual([
    'moro',
    'atnr',
    'galant',
  ]);
});
