/** How much a finding asks for: what nothing caps, what holds a grade back, what should not wait. */
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { InfantState } from '../../src/lib/case/finding.ts';
import { attentionOf, judgeCase, sheetOf, type JudgedVisit } from '../../src/lib/judge/judge.ts';
import { PhaseVerdict } from '../../src/lib/judge/verdict.ts';
import type { Totals } from '../../src/lib/judge/expectation.ts';
import { childCase, type ShortFinding, type ShortVisit } from '../support/kestrel.ts';

const TERM = { born: '2026-01-01', gestation: '40w0d' };
const SHEET = sheetOf(ATLAS, 'default');

const judge = (visits: ShortVisit[], child = TERM): JudgedVisit[] =>
  judgeCase(childCase(child, visits), { atlas: ATLAS, sheet: SHEET });

const codes = (found: { caps: readonly { code: string }[] }) => found.caps.map(({ code }) => code);
const both = (
  reflex: string,
  response: ShortFinding[2],
  state: InfantState = 'quiet-alert',
  tries = 1,
): ShortFinding[] =>
  (['left', 'right'] as const).map((side) => [reflex, side, response, state, tries]);

describe('the share decides between nothing, watch and discuss', () => {
  /** Half, nearly, or all of what is said is "integrated", the rest "integrating". */
  const persisting = (share: number): PhaseVerdict =>
    new PhaseVerdict(true, {
      phases: Float64Array.from([0, 0, 0, 0, 1 - share, share]),
      speaking: 1,
      meanExpectation: 0,
      meanEstablished: 0,
      anySpeaks: true,
      firm: 0,
    } satisfies Totals);

  test.each([
    [0.5, 'fits'],
    [0.51, 'watch'],
    [0.89, 'watch'],
    [0.9, 'discuss'],
    [1, 'discuss'],
  ] as const)('persisting with a share of %d: %s', (share, attention) => {
    expect(persisting(share).verdict).toBe('persisting');
    expect(attentionOf(persisting(share), [])).toBe(attention);
  });

  test('a cap holds it at watch, and never raises it', () => {
    expect(attentionOf(persisting(1), [{ code: 'crying' }])).toBe('watch');
    expect(attentionOf(persisting(0.5), [{ code: 'crying' }])).toBe('fits');
  });
});

describe('a missing response is tried twice before it is discussed', () => {
  const at = '2026-02-01';
  const palmar = (visit: Partial<ShortVisit>, before: ShortVisit[] = []) =>
    judge([...before, { on: at, findings: [], ...visit }]).at(-1)!.findings[0]!;

  test('tried once: watched, try again; twice at the visit: discussed', () => {
    const once = palmar({ findings: both('palmar-grasp', 'not-elicited') });
    expect(once).toMatchObject({ attention: 'watch' });
    expect(codes(once)).toEqual(['tried-once']);
    const twice = palmar({ findings: both('palmar-grasp', 'not-elicited', 'quiet-alert', 2) });
    expect(twice).toMatchObject({ attention: 'discuss', caps: [] });
  });

  test('missing on an earlier day too: discussed; the earlier day stays what it was', () => {
    const before = [{ on: '2026-01-20', findings: both('palmar-grasp', 'not-elicited') }];
    const [first, second] = judge([
      ...before,
      { on: at, findings: both('palmar-grasp', 'not-elicited') },
    ]);
    expect(first!.findings[0]!.attention).toBe('watch');
    expect(second!.findings[0]!.attention).toBe('discuss');
  });

  test('two examiners of one day are two tries', () => {
    const findings = both('palmar-grasp', 'not-elicited');
    const visits = judge([
      { on: at, examiner: 'A', findings },
      { on: at, examiner: 'B', findings },
    ]);
    for (const visit of visits) expect(visit.findings[0]!.attention).toBe('discuss');
  });

  test('one side beside one that answers needs no second try', () => {
    const [, right] = judge([
      {
        on: at,
        findings: [
          ['palmar-grasp', 'left', 'elicited'],
          ['palmar-grasp', 'right', 'not-elicited'],
        ],
      },
    ])[0]!.findings;
    expect(right).toMatchObject({ attention: 'discuss', caps: [] });
  });
});

describe('the state of the infant', () => {
  test('missing in a state that was not recorded is seen again first, however often it was tried', () => {
    const [found] = judge([
      { on: '2026-02-01', findings: both('palmar-grasp', 'not-elicited', 'not-recorded', 3) },
    ])[0]!.findings;
    expect(found).toMatchObject({ attention: 'watch' });
    expect(codes(found!)).toEqual(['state-unknown']);
  });

  test.each(['obligatory', 'brisk', 'elicited'] as const)(
    '%s while crying is watched until it is seen in a calm infant',
    (response) => {
      const on = '2027-03-01'; // 14 months: no source by default has the Moro response there
      const crying = judge([{ on, findings: [['moro', 'left', response, 'crying']] }]);
      expect(crying[0]!.findings[0]!.attention).toBe('watch');
      const calm = judge([
        { on, examiner: 'A', findings: [['moro', 'left', response, 'crying']] },
        { on, examiner: 'B', findings: [['moro', 'left', response, 'quiet-alert']] },
      ]);
      for (const { findings } of calm) expect(findings[0]!.attention).toBe('discuss');
    },
  );

  test('one side missing beside one that answers in the same crying infant is not explained by it', () => {
    const [, right] = judge([
      {
        on: '2026-02-01',
        findings: [
          ['moro', 'left', 'elicited', 'crying'],
          ['moro', 'right', 'not-elicited', 'crying'],
        ],
      },
    ])[0]!.findings;
    expect(right!.raised).toMatchObject([{ flag: 'uneven', marked: true }]);
    expect(right!.attention).toBe('discuss');
  });
});

describe('asymmetry is a finding of its own', () => {
  const moro = (on: string, left: ShortFinding[2], right: ShortFinding[2]): ShortVisit => ({
    on,
    findings: [
      ['moro', 'left', left],
      ['moro', 'right', right],
    ],
  });

  test('the side that answers as expected is not graded by the other', () => {
    const [left, right] = judge([moro('2026-02-01', 'elicited', 'not-elicited')])[0]!.findings;
    expect(left).toMatchObject({ attention: 'fits', raised: [{ asExpected: true }] });
    expect(right).toMatchObject({ attention: 'discuss', raised: [{ asExpected: false }] });
  });

  test('where all but few have let it go, the side that still has it asks, whatever is expected', () => {
    const [left, right] = judge([moro('2026-11-01', 'elicited', 'not-elicited')])[0]!.findings;
    expect(left!.attention).toBe('discuss');
    expect(left!.raised).toMatchObject([{ flag: 'uneven', asks: 'discuss' }]);
    expect(right!.attention).toBe('fits');
  });

  test('unlike sides that are common are watched, and discussed once they stay', () => {
    const plantar = (on: string): ShortVisit => ({
      on,
      findings: [
        ['plantar-response', 'left', 'elicited'],
        ['plantar-response', 'right', 'not-elicited'],
      ],
    });
    const most = ({ findings }: JudgedVisit) =>
      findings.map(({ raised }) => raised.find(({ asks }) => asks !== 'fits')?.asks).find(Boolean);
    const visits = judge([plantar('2026-03-01'), plantar('2026-04-01')]);
    expect(visits.map(most)).toEqual(['watch', 'discuss']);
    expect(visits[1]!.findings[0]!.raised[0]).toMatchObject({ common: true, stays: 2 });
  });

  test('the pattern names the side and limb that the differences point to', () => {
    const uneven = (reflex: string): ShortFinding[] => [
      [reflex, 'left', 'not-elicited'],
      [reflex, 'right', 'elicited'],
    ];
    const [visit] = judge([
      { on: '2026-02-01', findings: [...uneven('palmar-grasp'), ...uneven('placing-arm')] },
    ]);
    expect(visit!.pattern).toMatchObject({ side: 'left', limb: 'arm', left: { all: 2, arm: 2 } });
  });
});

describe('seen before and not now', () => {
  const forward = (on: string, there: boolean, more: ShortFinding[] = []): ShortVisit => ({
    on,
    findings: [...both('protective-forward', there ? 'elicited' : 'not-elicited'), ...more],
  });
  const flags = ({ findings }: JudgedVisit) => findings[0]!.raised.map(({ flag }) => flag);

  test('a parachute there at 9 months and missing at 12: watched at the first miss, lost at the second', () => {
    const visits = judge([
      forward('2026-10-01', true),
      forward('2027-01-01', false),
      forward('2027-01-20', false),
    ]);
    expect(visits.map(flags)).toEqual([[], ['seen-before'], ['lost']]);
    expect(visits.map(({ findings }) => findings[0]!.attention)).toEqual([
      'fits',
      'watch',
      'discuss',
    ]);
  });

  test('beside another finding to discuss one miss is lost', () => {
    const visits = judge([
      forward('2026-10-01', true),
      forward('2027-01-01', false, [['atnr', 'left', 'obligatory']]),
    ]);
    expect(flags(visits[1]!)).toEqual(['lost']);
  });

  test('what the sources let go is not lost', () => {
    const visits = judge([
      { on: '2026-02-01', findings: both('moro', 'elicited') },
      { on: '2026-07-01', findings: both('moro', 'not-elicited') },
    ]);
    expect(flags(visits[1]!)).toEqual([]);
  });
});

describe('milestones', () => {
  // WHO 2006: sitting without support from the 1st percentile at 3.8 to the 99th at 9.2 months
  const sitting = (on: string, seen: boolean, more: Partial<ShortVisit> = {}): ShortVisit => ({
    on,
    findings: [],
    milestones: { sitting: seen },
    ...more,
  });
  const grades = (visits: ShortVisit[]) =>
    judge(visits).map(
      ({ milestones }) => milestones.map(({ attention, why }) => [attention, why])[0],
    );

  test.each([
    ['2026-07-01', 'fits', 'in-time'], // 6 months
    ['2026-09-10', 'watch', 'past-90th'], // 8.3 months
    ['2026-10-10', 'discuss', 'past-99th'], // 9.3 months
  ])('not sitting on %s: %s', (on, attention, why) => {
    expect(grades([sitting(on, false)])).toEqual([[attention, why]]);
  });

  test('crawling, which some healthy children skip, is watched at most, and not at all once they walk', () => {
    const crawling = (walking: boolean): ShortVisit => ({
      on: '2027-05-01',
      findings: [],
      milestones: walking ? { crawling: false, walking: true } : { crawling: false },
    });
    expect(grades([crawling(false)])).toEqual([['watch', 'past-99th']]);
    expect(grades([crawling(true)])).toEqual([['fits', 'replaced']]);
  });

  test('seen here and lost, as the carer says too, should not wait', () => {
    const [, now] = judge([
      sitting('2026-09-01', true),
      sitting('2026-11-01', false, { lost: ['sitting'] }),
    ]);
    expect(now!.milestones).toMatchObject([{ attention: 'today', why: 'lost' }]);
    expect(now!.today).toEqual([{ code: 'lost-milestone', on: '2026-11-01', about: ['sitting'] }]);
  });
});

describe('today', () => {
  test('neither sucking nor swallowing in an alert infant of 37 weeks or more', () => {
    const feeding = (gestation: string, on = '2026-01-03') =>
      judge(
        [
          {
            on,
            findings: [
              ['sucking', 'midline', 'not-elicited'],
              ['swallowing', 'midline', 'not-elicited'],
            ],
          },
        ],
        { born: '2026-01-01', gestation },
      )[0]!;
    const now = feeding('40w0d');
    expect(now.today.map(({ code }) => code)).toEqual(['no-feeding']);
    expect(now.findings.map(({ attention }) => attention)).toEqual(['today', 'today']);
    expect(feeding('34w0d').today).toEqual([]);
    // the guideline's young infant is under 3 months (91.3 days); then sucking may have integrated
    expect(feeding('40w0d', '2026-04-02').today).toHaveLength(1);
    expect(feeding('40w0d', '2026-04-03').today).toEqual([]);
    expect(feeding('40w0d', '2027-01-03').today).toEqual([]);
  });
});

test('three or more to be discussed at one visit are said together, sides counted once', () => {
  const [visit] = judge([
    {
      on: '2026-02-01',
      findings: ['palmar-grasp', 'moro', 'plantar-grasp'].flatMap((reflex) =>
        both(reflex, 'not-elicited', 'quiet-alert', 2),
      ),
    },
  ]);
  expect(visit!.findings.map(({ attention }) => attention)).toContain('discuss');
  expect(visit!.together).toEqual(['palmar-grasp', 'moro', 'plantar-grasp']);
});
