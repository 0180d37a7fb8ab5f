/** What is followed from day to day, and told, where findings say which variant of a response was tested. */
import { describe, expect, test } from 'vitest';
import type { CivilDate } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { asTested, datedVariants } from '../../src/lib/atlas/variants.ts';
import { coursesOf, lastTests } from '../../src/lib/case/course.ts';
import { agesOn } from '../../src/lib/age/clocks.ts';
import { agreementsIn } from '../../src/lib/cohort/agreement.ts';
import { associationsOf } from '../../src/lib/judge/associations.ts';
import { changesAt } from '../../src/lib/judge/changes.ts';
import { inferredOf } from '../../src/lib/judge/inferred.ts';
import { CaseJudge, sheetOf } from '../../src/lib/judge/judge.ts';
import { nextVisit } from '../../src/lib/judge/nextVisit.ts';
import { planFor } from '../../src/lib/judge/plan.ts';
import { openQuestions } from '../../src/lib/judge/questions.ts';
import { childCase, type ShortFinding, type ShortVisit } from '../support/kestrel.ts';

const REFLEX = 'protective-forward';
const options = { atlas: ATLAS, sheet: sheetOf(ATLAS, 'default') };
const day = (on: string) => on as CivilDate;

type Response = ShortFinding[2];
const one = (side: string, response: Response, variant?: string): ShortFinding => [
  REFLEX,
  side,
  response,
  'quiet-alert',
  undefined,
  variant,
];
const both = (response: Response, variant?: string): ShortFinding[] => [
  one('left', response, variant),
  one('right', response, variant),
];
const child = (...visits: ShortVisit[]) =>
  childCase({ born: '2026-01-01', gestation: '40w0d' }, visits);
const all = (...visits: ShortVisit[]) => {
  const record = child(...visits);
  const judge = new CaseJudge(record, options);
  return { record, judge, judged: record.visits.map((visit) => judge.visit(visit)) };
};

describe('which reflexes have variants to tell apart', () => {
  test('those whose sources date them apart: forward protection alone', () => {
    expect([...ATLAS.variants]).toEqual([[REFLEX, ['forward', 'propping']]]);
  });

  test('a variant without a window of its own is none', () => {
    const reflex = ATLAS.reflexes.get(REFLEX)!;
    const claims = ATLAS.claims.get(REFLEX)!.filter(({ variant }) => variant !== 'propping');
    expect(datedVariants(reflex, claims).map(({ variant }) => variant)).toEqual(['forward']);
  });

  test('a reflex as it was tested is one value, whoever asks', () => {
    const reflex = ATLAS.reflexes.get(REFLEX)!;
    expect(asTested(reflex, 'propping')).toBe(asTested(reflex, 'propping'));
    expect(asTested(reflex, undefined)).toBe(reflex);
    expect(asTested(reflex, 'no-such')).toBe(reflex);
  });
});

describe('the sides of a visit', () => {
  test('differ only where the same was tested on both', () => {
    const apart = all({
      on: '2026-11-01',
      findings: [one('left', 'elicited', 'propping'), one('right', 'not-elicited', 'forward')],
    }).judged[0]!;
    expect(apart.pattern.differences).toEqual([]);
    expect(apart.findings.flatMap(({ raised }) => raised.map(({ flag }) => flag))).toEqual([]);
    const alike = all({
      on: '2026-11-01',
      findings: [one('left', 'elicited', 'forward'), one('right', 'not-elicited', 'forward')],
    }).judged[0]!;
    expect(alike.pattern.differences.map(({ reflex }) => reflex)).toEqual([REFLEX]);
    expect(alike.findings.flatMap(({ raised }) => raised.map(({ flag }) => flag))).toContain(
      'uneven',
    );
  });
});

describe('from day to day', () => {
  const twice = (first?: string, second?: string) =>
    all(
      { on: '2026-09-01', findings: both('elicited', first) },
      { on: '2026-12-01', findings: both('not-elicited', second) },
    );
  const isLost = ({ judged }: ReturnType<typeof all>): boolean =>
    judged[1]!.findings.some(({ raised }) => raised.some(({ flag }) => flag === 'seen-before'));

  test('seen before and not now only of the same variant', () => {
    expect(isLost(twice('propping', 'propping'))).toBe(true);
    expect(isLost(twice())).toBe(true);
    expect(isLost(twice('propping', 'forward'))).toBe(false);
    // what does not say its variant may have been either
    expect(isLost(twice(undefined, 'forward'))).toBe(false);
  });

  test('it went only of the same variant', () => {
    const moves = ({ judged }: ReturnType<typeof all>) =>
      changesAt(judged[1]!, judged).changed.map(({ move }) => move);
    expect(moves(twice('propping', 'propping'))).toEqual(['went', 'went']);
    expect(moves(twice('propping', 'forward'))).toEqual(['first', 'first']);
  });

  test('each variant has its own course, inferred from its own days', () => {
    const { record, judge } = twice('propping', 'forward');
    const courses = coursesOf(record.visits, (on) => agesOn(record.child.birth, on));
    expect(courses.map(({ variant, state, answers }) => [variant, state, answers])).toEqual([
      ['propping', 'present', 1],
      ['propping', 'present', 1],
      ['forward', 'never-seen', 1],
      ['forward', 'never-seen', 1],
    ]);
    const on = day('2026-12-01');
    const propping = inferredOf(judge.reading, `${REFLEX}/propping`, on)!;
    const parachute = inferredOf(judge.reading, `${REFLEX}/forward`, on)!;
    expect(propping).toMatchObject({ reflex: REFLEX, variant: 'propping', days: 1 });
    expect(propping.probabilities!.there).toBeGreaterThan(0.9);
    expect(parachute.probabilities!.notYet).toBeGreaterThan(propping.probabilities!.notYet);
  });

  test('an order is read by the test that was done last', () => {
    const { record, judge } = twice('propping', 'forward');
    expect(lastTests(record.visits).get(REFLEX)).toBe(`${REFLEX}/forward`);
    const order = judge.sequences.find(({ sequence }) => sequence.id === 'protective-directions')!;
    expect(order.stations[0]!.interval).toMatchObject({ by: null, after: { on: '2026-12-01' } });
  });
});

describe('what is open', () => {
  const visits: ShortVisit[] = [
    { on: '2026-10-01', findings: both('not-elicited') },
    { on: '2026-11-15', findings: both('not-elicited', 'forward') },
    { on: '2026-12-01', findings: both('elicited', 'propping') },
  ];

  test('a variant that is said takes the place of what was not said; another variant does not', () => {
    const record = child(...visits);
    const questions = openQuestions(record, day('2026-12-01'), options);
    expect(questions.map(({ variant, awaits }) => [variant, awaits])).toEqual([
      ['forward', 'to-appear'],
      ['forward', 'to-appear'],
    ]);
  });

  test('the next visit is brought forward by what is missing of one variant, though the other was seen since', () => {
    const { judge } = all(...visits);
    const next = nextVisit(judge, options)!;
    expect(next.why).toMatchObject({ code: 'watch', reflexes: [REFLEX] });
  });

  test('a plan asks for the variant that is open, and names it', () => {
    const line = planFor(child(...visits), day('2027-01-01'), options).lines.find(
      ({ reflex }) => reflex.id === REFLEX,
    )!;
    expect(line.variant).toBe('forward');
    expect(line.reflex.short).toBe('Protective, forward: parachute');
    expect(line.why.map(({ code }) => code)).toContain('open-question');
  });

  test('propping that was seen leaves the parachute to be tested', () => {
    const record = child({ on: '2026-08-01', findings: both('elicited', 'propping') });
    const line = planFor(record, day('2026-09-01'), options).lines.find(
      ({ reflex }) => reflex.id === REFLEX,
    )!;
    expect(line).toMatchObject({ variant: 'forward' });
    expect(line.why.map(({ code }) => code)).toContain('never-tested');
  });

  test('a child whose findings say no variant has one line, of the reflex as a whole', () => {
    const record = child({ on: '2026-08-01', findings: both('not-elicited') });
    const plan = planFor(record, day('2026-09-01'), options);
    const line = plan.lines.find(({ reflex }) => reflex.id === REFLEX)!;
    expect(line).not.toHaveProperty('variant');
    expect(line.reflex).toBe(ATLAS.reflexes.get(REFLEX));
  });
});

test('two examiners agree or differ on what both tested', () => {
  const seen = (examiner: string, response: Response, variant: string): ShortVisit => ({
    on: '2026-10-01',
    examiner,
    findings: both(response, variant),
  });
  const pairs = (second: string) =>
    agreementsIn([child(seen('A', 'elicited', 'propping'), seen('B', 'not-elicited', second))]).map(
      ({ n, same }) => [n, same],
    );
  expect(pairs('propping')).toEqual([[2, 0]]);
  expect(pairs('forward').every(([n]) => n === 0)).toBe(true);
});

test('what was reported of the parachute is not said of propping', () => {
  const sources = (variant?: string) =>
    associationsOf(REFLEX, 'absence', variant).map(({ row }) => row.source);
  expect(sources('forward')).toContain('romeo-2011');
  expect(sources()).toContain('romeo-2011');
  expect(sources('propping')).not.toContain('romeo-2011');
});

test('counts of the parachute hold back no verdict on propping', () => {
  const counts = ATLAS.counts.get(REFLEX)!;
  expect(counts.length).toBeGreaterThan(0);
  for (const { variant, note } of counts) {
    expect(note).toMatch(/parachute/i);
    expect(variant).toBe('forward');
  }
});
