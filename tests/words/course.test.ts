import { describe, expect, it } from 'vitest';
import { fromMonths } from '../../src/lib/age/axis.ts';
import type { Fit } from '../../src/lib/judge/reading/fit.ts';
import { en } from '../../src/lib/words/en.ts';

const fit = (over: Partial<Fit>): Fit => ({
  kind: 'primitive',
  takingPart: 9,
  median: fromMonths(4),
  low: fromMonths(3),
  high: fromMonths(5.5),
  hidden: null,
  onLine: true,
  ...over,
});
const few = fit({ kind: 'postural', takingPart: 2, hidden: 'too-few', onLine: false });

describe('the best-fitting ages of a visit, in a line', () => {
  it('has the median and its interval, or the one end there is', () => {
    expect(en.course.fitLine([fit({}), few])).toBe('transient responses: 4 mo (3 to 5½)');
    const open = fit({ kind: 'milestones', low: fromMonths(7), high: null, onLine: false });
    expect(en.course.fitLine([open])).toBe('milestones: 7 mo or after');
    expect(en.course.fitLine([fit({}), open])).toContain('; milestones');
  });

  it('says why none is shown, what is nearest to being shown first', () => {
    expect(en.course.fitLine([few, few])).toBe('too few findings for a best-fitting age');
    expect(en.course.fitLine([few, fit({ hidden: 'too-wide' })])).toBe(
      'the findings fit too wide a range of ages',
    );
  });
});
