import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { agesOn, DEFAULT_LIMITS } from '../../src/lib/age/clocks.ts';
import { DATING_METHODS } from '../../src/lib/age/doubt.ts';
import { MAX_GESTATION_DAYS, MIN_GESTATION_DAYS } from '../../src/lib/age/gestation.ts';
import { compile, readAt } from '../../src/lib/judge/expectation.ts';
import {
  dueStretches,
  nearestTurns,
  turnsOf,
  type Question,
  type Stretch,
} from '../../src/lib/judge/turns.ts';
import { verdictOf } from '../../src/lib/judge/verdict.ts';
import type { Window } from '../../src/lib/judge/window.ts';
import { anyQuestion, ask, bornAt, date, madeWindows, sheet } from '../support/question.ts';
import { runs } from '../support/runs.ts';

/** Every day of gestation judged by itself, the plain way. */
function scan({ finding, compiled, birth, on, limits, known }: Question): Stretch[] {
  const stretches: Stretch[] = [];
  for (let day = MIN_GESTATION_DAYS; day <= MAX_GESTATION_DAYS; day++) {
    const { axisDay, sdDays } = agesOn(bornAt(day, birth.born, birth.dating), on, limits);
    const { verdict } = verdictOf(finding, readAt(compiled, axisDay, known ? 0 : sdDays));
    const open = stretches.at(-1);
    if (open?.verdict === verdict) open.toDays = day;
    else stretches.push({ fromDays: day, toDays: day, verdict });
  }
  return stretches;
}

describe('the stretches', () => {
  test('are those of a scan over every day', () => {
    fc.assert(
      fc.property(anyQuestion, (question) => {
        expect(turnsOf(question).stretches).toEqual(scan(question));
      }),
      { numRuns: runs(300, 60) },
    );
  });

  test('and so for windows that overlap, fall silent and share a source', () => {
    fc.assert(
      fc.property(
        madeWindows,
        fc.boolean(),
        fc.constantFrom(...DATING_METHODS),
        (windows, elicited, dating) => {
          const question: Question = {
            finding: { response: elicited ? 'brisk' : 'not-elicited', state: 'quiet-alert' },
            compiled: compile(windows),
            birth: bornAt(220, date('2026-01-01'), dating),
            on: date('2026-05-01'),
            limits: { pretermBelowDays: 300, untilMonths: 24 },
          };
          expect(turnsOf(question).stretches).toEqual(scan(question));
        },
      ),
      { numRuns: runs(400, 60) },
    );
  });

  test('and so for every reflex of the atlas, under all sources', () => {
    for (const reflex of sheet.keys())
      for (const on of ['2026-01-10', '2026-04-20', '2026-08-05'])
        for (const response of ['elicited', 'not-elicited'] as const) {
          const question = ask(reflex, undefined, response, on);
          expect(turnsOf(question).stretches, `${reflex} ${on}`).toEqual(scan(question));
        }
  });

  test('two sources that contradict each other evenly tie over a long span: more is asked', () => {
    const template = sheet.get('moro')!.windows;
    const [a, b] = [
      template[0]!,
      template.find((w) => w.claim.source !== template[0]!.claim.source)!,
    ];
    const edges = { speaksFrom: -Infinity, speaksTo: Infinity, appearsFrom: 0, appearsTo: 1 };
    const compiled = compile([
      { ...a, ...edges, integratesFrom: 100, integratesTo: 120 } as typeof a,
      { ...b, ...edges, integratesFrom: 900, integratesTo: 920 } as typeof b,
    ]);
    const question = { ...ask('moro', undefined, 'elicited', '2026-04-01'), compiled };
    const { stretches, evaluations } = turnsOf(question);
    expect(stretches).toEqual([
      { fromDays: MIN_GESTATION_DAYS, toDays: MAX_GESTATION_DAYS, verdict: 'persisting' },
    ]);
    expect(evaluations).toBeLessThan(8);
  });

  test('where the one source has fallen silent before the next one speaks, nothing is judged', () => {
    const speaking = (id: string, speaksFrom: number, speaksTo: number): Window =>
      ({
        claim: { source: { id } },
        speaksFrom,
        appearsFrom: 0,
        appearsTo: 0,
        integratesFrom: Infinity,
        integratesTo: Infinity,
        speaksTo,
      }) as Window;
    const question: Question = {
      finding: { response: 'not-elicited', state: 'quiet-alert' },
      compiled: compile([speaking('a', 0, 300), speaking('b', 350, Infinity)]),
      birth: bornAt(220, date('2026-01-01'), 'assisted-conception'),
      on: date('2026-05-01'), // 120 days old: silent from 180 to 230 days, less the doubt of a day
      limits: DEFAULT_LIMITS,
    };
    const { stretches } = turnsOf(question);
    expect(stretches.map(({ verdict }) => verdict)).toEqual(['missing', 'not-judged', 'missing']);
    expect(stretches).toEqual(scan(question));
    expect(Math.abs(stretches[1]!.fromDays - 180)).toBeLessThanOrEqual(1);
    expect(Math.abs(stretches[1]!.toDays - 229)).toBeLessThanOrEqual(1);
  });

  test('no source at all: not judged, whatever the gestation', () => {
    const question = { ...ask('moro', undefined, 'elicited', '2026-04-01'), compiled: compile([]) };
    expect(turnsOf(question)).toEqual({
      stretches: [
        { fromDays: MIN_GESTATION_DAYS, toDays: MAX_GESTATION_DAYS, verdict: 'not-judged' },
      ],
      evaluations: 3,
    });
  });

  test('not assessable is settled at once', () => {
    expect(turnsOf(ask('moro', undefined, 'not-assessable', '2026-04-01')).evaluations).toBe(1);
  });

  test('need far fewer judgements than there are days', () => {
    let [evaluations, days] = [0, 0];
    for (const reflex of sheet.keys())
      for (const response of ['elicited', 'not-elicited'] as const)
        for (const on of ['2026-01-10', '2026-03-01', '2026-04-20', '2026-06-15', '2026-08-05']) {
          evaluations += turnsOf(ask(reflex, undefined, response, on)).evaluations;
          days += MAX_GESTATION_DAYS - MIN_GESTATION_DAYS + 1;
        }
    expect(evaluations / days).toBeLessThan(0.25);
  });
});

describe('turning points by hand', () => {
  // kumc-2012 as printed: symmetrical tonic neck appears at 4-6 months, goes at 8-12. A month is
  // 365.25 / 12 = 30.4375 days; 1 January to 1 June is 151 days. Corrected, the age on the axis is
  // gestation + 151; the window opens at 280 + 4 x 30.4375 = 401.75, so from 251 days (35w6d) on.
  const question = ask('stnr', 'kumc-2012', 'elicited', '2026-06-01', { known: true });

  test('early if born at 35w5d or earlier, else it fits', () => {
    expect(turnsOf(question).stretches).toEqual([
      { fromDays: 154, toDays: 250, verdict: 'early' },
      { fromDays: 251, toDays: 314, verdict: 'fits' },
    ]);
  });

  test('the nearest turns of a recorded gestation', () => {
    const turns = turnsOf(question);
    expect(nearestTurns(turns, 250)).toEqual({
      verdict: 'early',
      below: null,
      above: { atLeastDays: 251, verdict: 'fits' },
    });
    expect(nearestTurns(turns, 260)).toEqual({
      verdict: 'fits',
      below: { atMostDays: 250, verdict: 'early' },
      above: null,
    });
  });

  test('in due dates: the longer the gestation, the earlier it was due', () => {
    const born = Temporal.PlainDate.from('2026-01-01');
    const due = (days: number): string => born.add({ days: 280 - days }).toString();
    expect(dueStretches(turnsOf(question), question.birth.born)).toEqual([
      { from: due(314), to: due(251), verdict: 'fits' },
      { from: due(250), to: due(154), verdict: 'early' },
    ]);
  });

  test('past the limit of correction nothing turns', () => {
    const late = ask('stnr', 'kumc-2012', 'elicited', '2026-06-01', {
      limits: { pretermBelowDays: 259, untilMonths: 4 },
    });
    expect(turnsOf(late)).toEqual({
      stretches: [{ fromDays: 154, toDays: 314, verdict: 'fits' }],
      evaluations: 1,
    });
  });

  test('with doubt, one edge turns where the age is as likely before it as after', () => {
    // half the mass lies past 401.75 when the mean does; at 250 days it lies at 401, at 251 at 402
    const doubtful = { ...question, known: false };
    expect(turnsOf(doubtful).stretches).toEqual(turnsOf(question).stretches);
  });
});
