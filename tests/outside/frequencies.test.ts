/** Counts, intervals, names and orders of the atlas against published tables and plain arithmetic. */
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { fromMonths } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { PROSE } from '../../src/lib/atlas/prose.ts';
import { reflexNamed } from '../../src/lib/atlas/search.ts';
import { countsNear, wilson } from '../../src/lib/judge/counts.ts';
import { datesOf, supportFor, tally } from '../../src/lib/judge/support.ts';

describe('Shapiro 1981 (read): the asymmetrical tonic neck response in 249 infants', () => {
  test.each([
    [2, 89],
    [6, 42],
    [12, 8],
  ])('at %i months %i %% still showed it', (months, percent) => {
    const near = countsNear(ATLAS.counts.get('atnr')!, fromMonths(months)).find(
      ({ count }) => count.source.id === 'shapiro-1981' && count.low === months,
    )!;
    expect(near.count).toMatchObject({ n: 249, percent, measure: 'present' });
    // the score interval holds the shares a binomial test of the count does not refuse
    const hits = Math.round((percent / 100) * 249);
    const { low, high } = wilson(hits, 249);
    const z = (p: number): number => (hits / 249 - p) / Math.sqrt((p * (1 - p)) / 249);
    expect(jstat.normal.cdf(-Math.abs(z(low)), 0, 1)).toBeCloseTo(0.025, 5);
    expect(jstat.normal.cdf(-Math.abs(z(high)), 0, 1)).toBeCloseTo(0.025, 5);
  });
});

describe('Wilson’s interval against Newcombe 1998, table I (method 3, printed to 4 places)', () => {
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%i of %i', (hits, n, low, high) => {
    const interval = wilson(hits, n);
    expect(interval.low).toBeCloseTo(low, 4);
    expect(interval.high).toBeCloseTo(high, 4);
  });
});

describe('Romeo 2011 (read): 140 infants at 12 months, three answers that leave none out', () => {
  test('complete, incomplete and none add up to all, so each measure stands for itself', () => {
    const at12 = ATLAS.counts
      .get('protective-forward')!
      .filter((count) => count.source.id === 'romeo-2011' && count.low === 12);
    expect(at12.map(({ measure }) => measure).sort()).toEqual([
      'complete response',
      'incomplete response',
      'no response',
    ]);
    expect(at12.reduce((sum, { percent }) => sum + (percent ?? 0), 0)).toBeCloseTo(100, 6);
  });
});

describe('every printed share could have been counted in its n', () => {
  test.each(
    [...ATLAS.counts].flatMap(([reflex, counts]) =>
      counts
        .filter((c) => c.n !== null && c.percent !== null && c.qualifier === '=')
        .map((c) => [`${reflex}, ${c.source.short}, ${c.asPrinted}: ${c.percent} %`, c] as const),
    ),
  )('%s', (_, { n, of, percent, note }) => {
    const base = of?.number ?? n!;
    const decimals = String(percent).split('.')[1]?.length ?? 0;
    const half = 0.5 * 10 ** -decimals + 1e-9;
    const near = Math.abs((Math.round((percent! / 100) * base) / base) * 100 - percent!) <= half;
    // a share that fits no whole number of infants is only kept with a note that says why
    expect(near || note !== undefined).toBe(true);
  });
});

describe('names as the trade says them (common practice, no source)', () => {
  test.each([
    ['ATNR', 'atnr'],
    ['fencing posture', 'atnr'],
    ['STNR', 'stnr'],
    ['embrace reflex', 'moro'],
    ['search reflex', 'rooting'],
    ['TLR', 'tlr'],
    ['parachute', 'protective-forward'],
    ['trunk incurvation', 'galant'],
    ['Babinski', 'plantar-response'],
    ['walking reflex', 'stepping'],
    ['startle', 'acoustic-startle'],
    // slips
    ['moroo', 'moro'],
    ['galent', 'galant'],
    ['steping reflex', 'stepping'],
  ])('%s', (name, id) => {
    expect(reflexNamed(name, [...ATLAS.reflexes.values()], PROSE)?.id).toBe(id);
  });
});

describe('orders that wait for a milestone, against the published windows (WHO 2006, months)', () => {
  test('a milestone is dated by its first and 99th percentile and by nothing else', () => {
    const walking = datesOf({ event: 'reached', milestone: 'walking' }, ATLAS);
    expect(walking).toHaveLength(1);
    expect(walking[0]!.from).toBeCloseTo(280 + 8.2 * 30.4375, 6);
    expect(walking[0]!.to).toBeCloseTo(280 + 17.6 * 30.4375, 6);
  });

  test('standing alone and walking overlap: most infants stand first, the windows do not prove it', () => {
    const counts = tally(
      supportFor(
        { event: 'reached', milestone: 'standing' },
        { event: 'reached', milestone: 'walking' },
        ATLAS,
      ),
    );
    expect(counts).toEqual({ supports: 0, overlaps: 1, contradicts: 0 });
  });

  test('no order of the atlas has more windows against it than for it', () => {
    for (const { id, stations } of ATLAS.sequences)
      stations.slice(1).forEach((after, index) => {
        const counts = tally(supportFor(stations[index]!, after, ATLAS));
        expect(counts.contradicts, id).toBeLessThanOrEqual(counts.supports);
      });
  });
});
