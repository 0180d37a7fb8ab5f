/**
 * One example worked by hand, step by step, as a reader can follow it on the page that says how reading works:
 * two sources, one reflex, two visits. The reflex and both sources are invented; the error rates are those of
 * the app. What stands here was worked out by hand and not by the app.
 */
import { describe, expect, test } from 'vitest';
import { fromMonths, toMonths, type AxisDay } from '../../../src/lib/age/axis.ts';
import { MISSED } from '../../../src/lib/atlas/weight.ts';
import { IMAGINED, ODD, ODD_NEVER } from '../../../src/lib/judge/reading/constants.ts';
import { Inferred } from '../../../src/lib/judge/reading/course.ts';
import { eventsOf, priorOf } from '../../../src/lib/judge/reading/prior.ts';
import {
  DAYS,
  partsOf as parts,
  SOURCES,
  VISITS,
  WINDOWS,
  worked,
  workedWithOdd,
} from '../../../src/lib/judge/reading/worked.ts';
import { bruteBy, gridOf } from '../../support/bruteCourse.ts';

const monthsOf = (day: number) => toMonths(day as AxisDay);

test('the example: gone at 4 to 6 months, and at 6 to 8; elicited at 5, not elicited at 7', () => {
  expect(SOURCES.map(({ low, high }) => [low, high])).toEqual([
    [4, 6],
    [6, 8],
  ]);
  expect(VISITS.map(({ months, elicited }) => [months, elicited])).toEqual([
    [5, true],
    [7, false],
  ]);
});

describe('without the tenth of children who differ from every source', () => {
  const alone = new Inferred(priorOf(WINDOWS, 0), [], 0);
  const course = new Inferred(priorOf(WINDOWS, 0), DAYS, 0);

  // Step 1. Half of the weight on each source, spread evenly over its window: each has 2 months, so that
  //         each of the 4 months from 4 to 8 has a quarter.
  // Step 2. The visits cut the months into three parts: to 5, from 5 to 7, from 7 on. The sources alone:
  //           gone before 5 months           1/4 = 0.25
  //           gone between 5 and 7 months    2/4 = 0.50
  //           gone after 7 months            1/4 = 0.25
  test('steps 1 and 2: what the sources alone say', () => {
    const [before, between, after] = parts(alone);
    expect(before).toBeCloseTo(0.25, 12);
    expect(between).toBeCloseTo(0.5, 12);
    expect(after).toBeCloseTo(0.25, 12);
  });

  // Step 3. How likely is what was seen, in each part? What is there is missed 1 time in 10; what is gone is
  //         imagined 1 time in 50.
  //                                          elicited at 5     not elicited at 7    both
  //           gone before 5 months           0.02 (imagined)   0.98                 0.0196
  //           gone between 5 and 7 months    0.90              0.98                 0.8820
  //           gone after 7 months            0.90              0.10 (missed)        0.0900
  // Step 4. Sources times visits:
  //           0.25 x 0.0196 = 0.0049     0.50 x 0.8820 = 0.4410     0.25 x 0.0900 = 0.0225
  //         together 0.4684
  // Step 5. Each as a share of them all:
  //           0.0049 / 0.4684 = 0.0105   0.4410 / 0.4684 = 0.9415   0.0225 / 0.4684 = 0.0480
  const weighed = [0.25 * 0.02 * 0.98, 0.5 * 0.9 * 0.98, 0.25 * 0.9 * 0.1];
  const together = 0.4684;

  test('steps 3 to 5: what the sources and the visits say together', () => {
    expect([IMAGINED, MISSED]).toEqual([0.02, 0.1]);
    expect(weighed[0]! + weighed[1]! + weighed[2]!).toBeCloseTo(together, 12);
    const found = parts(course);
    found.forEach((part, k) => {
      expect(part).toBeCloseTo(weighed[k]! / together, 9);
    });
    expect(found.map((part) => part.toFixed(4))).toEqual(['0.0105', '0.9415', '0.0480']);
  });

  test('the page shows each of these numbers', () => {
    const shown = worked();
    expect(shown.parts.map(({ visits }) => visits.map((one) => one.toFixed(2)))).toEqual([
      ['0.02', '0.98'],
      ['0.90', '0.98'],
      ['0.90', '0.10'],
    ]);
    expect(shown.parts.map(({ product }) => product.toFixed(4))).toEqual([
      '0.0049',
      '0.4410',
      '0.0225',
    ]);
    expect(shown.total).toBeCloseTo(together, 12);
    expect(shown.parts.map(({ share }) => share.toFixed(4))).toEqual([
      '0.0105',
      '0.9415',
      '0.0480',
    ]);
    expect(shown.states.gone).toBeCloseTo(0.952, 3);
    expect(shown.dates.median).toBeCloseTo(6.04, 2);
  });

  // Step 6. At 7 months it is gone with 0.0105 + 0.9415 = 0.952, and still there with 0.048.
  test('step 6: there or gone at the second visit', () => {
    const { notYet, there, gone } = course.states(fromMonths(7));
    expect(notYet).toBeCloseTo(0, 12);
    expect(gone).toBeCloseTo(0.952, 3);
    expect(there).toBeCloseTo(0.048, 3);
  });

  // Step 7. The day by which it went with one half: 0.5 - 0.0105 = 0.4895 of the 0.9415 that lie evenly
  //         between 5 and 7 months, so 0.4895 / 0.9415 = 0.52 of the way: 5 + 0.52 x 2 = 6.04 months.
  //         Nine tenths lie from (0.05 - 0.0105) / 0.9415 = 0.042 of the way, 5.08 months,
  //         to (0.95 - 0.0105) / 0.9415 = 0.998 of the way, just under 7 months.
  test('step 7: the date, with the interval that holds nine tenths', () => {
    const { low, median, high } = course.dates('integrates');
    expect(monthsOf(median)).toBeCloseTo(6.04, 2);
    expect(monthsOf(low)).toBeCloseTo(5.08, 2);
    expect(monthsOf(high)).toBeCloseTo(7, 2);
  });
});

describe('with a tenth of children who differ from every source', () => {
  // Of what the sources say nine tenths are left. Of the tenth half, 0.05, is spread evenly from day 140
  // (20w0d of gestation) to day 1010 (24 months), so that a day has 0.05 / 870; the other half is never.
  // 5 months are day 432.19, 7 months day 493.06:
  //   gone before 5 months           0.9 x 0.25 + 0.05 x 292.19 / 870         = 0.2418
  //   gone between 5 and 7 months    0.9 x 0.50 + 0.05 x  60.88 / 870         = 0.4535
  //   gone after 7 months or never   0.9 x 0.25 + 0.05 x 516.94 / 870 + 0.05  = 0.3047
  // times what was seen:  0.2418 x 0.0196 = 0.0047   0.4535 x 0.882 = 0.4000   0.3047 x 0.09 = 0.0274
  // together 0.4321; as shares: 0.0110, 0.9256, 0.0635
  test('for when it goes, if it surely was there by term', () => {
    expect([ODD, ODD_NEVER]).toEqual([0.1, 0.5]);
    const { parts: shown, total } = workedWithOdd();
    expect(shown.map(({ sources }) => sources.toFixed(4))).toEqual(['0.2418', '0.4535', '0.3047']);
    expect(shown.map(({ product }) => product.toFixed(4))).toEqual(['0.0047', '0.4000', '0.0274']);
    expect(total).toBeCloseTo(0.4321, 3);
    expect(shown.map(({ share }) => share.toFixed(4))).toEqual(['0.0110', '0.9256', '0.0635']);
  });

  // For when it comes too, as the app has it, the parts are of two dates: counted day by day instead.
  test('for when it comes and when it goes: as counted through a daily grid', () => {
    const { appears, integrates } = eventsOf(WINDOWS);
    const course = new Inferred(priorOf(WINDOWS), DAYS, 0);
    const [before, between, after] = parts(course);
    const grid = [gridOf(appears, 0.5), gridOf(integrates, 0.5)] as const;
    const [first, second] = DAYS.map(({ day }) => bruteBy(...grid, DAYS, day).integrates);
    expect(before).toBeCloseTo(first!, 3);
    expect(between).toBeCloseTo(second! - first!, 3);
    expect(after).toBeCloseTo(1 - second!, 3);
    expect(parts(course).map((part) => part.toFixed(4))).toEqual(['0.0107', '0.9234', '0.0659']);
  });
});
