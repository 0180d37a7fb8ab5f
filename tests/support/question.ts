/** Questions for tests of what a verdict hangs on: of the atlas's windows, and of invented ones. */
import fc from 'fast-check';
import { addDays, parseCivil, type CivilDate } from '../../src/lib/age/civil.ts';
import {
  birthFromGestation,
  DEFAULT_LIMITS,
  type Birth,
  type CorrectionLimits,
} from '../../src/lib/age/clocks.ts';
import { DATING_METHODS, type DatingMethod } from '../../src/lib/age/doubt.ts';
import { MAX_GESTATION_DAYS, MIN_GESTATION_DAYS } from '../../src/lib/age/gestation.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { RESPONSES, STATES, type InfantState, type Response } from '../../src/lib/case/finding.ts';
import { compile } from '../../src/lib/judge/expectation.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import type { Question } from '../../src/lib/judge/turns.ts';
import type { Window } from '../../src/lib/judge/window.ts';

export const sheet = sheetOf(ATLAS);
export const date = (text: string): CivilDate => parseCivil(text)!;
export const bornAt = (
  days: number,
  born = date('2026-01-01'),
  dating: DatingMethod = 'last-period',
): Birth => birthFromGestation(born, days, dating) as Birth;

const reflexes = fc.constantFrom(
  ...[...sheet.keys()].filter((id) => sheet.get(id)!.windows.length),
);

export const anyQuestion: fc.Arbitrary<Question> = fc
  .record({
    reflex: reflexes,
    keep: fc.array(fc.boolean(), { minLength: 3, maxLength: 9 }),
    /** Few sources are even more often, and so tie; many have more corners. */
    few: fc.boolean(),
    gestation: fc.integer({ min: MIN_GESTATION_DAYS, max: MAX_GESTATION_DAYS }),
    dating: fc.constantFrom(...DATING_METHODS),
    born: fc.integer({ min: 0, max: 1500 }),
    age: fc.oneof(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 0, max: 900 })),
    response: fc.constantFrom<Response>('not-elicited', 'weak', 'elicited', ...RESPONSES),
    state: fc.constantFrom<InfantState>('quiet-alert', 'not-recorded', 'active-alert', ...STATES),
    pretermBelowDays: fc.constantFrom(259, 259, 224, 280, 0, 400),
    untilMonths: fc.constantFrom(24, 24, 12, 3, 0),
    known: fc.boolean(),
  })
  .map((q) => {
    const all = sheet.get(q.reflex)!.windows;
    const kept = all.filter((_, i) => q.keep[i % q.keep.length]);
    const born = addDays(date('2024-01-31'), q.born);
    return {
      finding: { response: q.response, state: q.state },
      compiled: compile(q.few ? kept.slice(0, 4) : kept),
      birth: bornAt(q.gestation, born, q.dating),
      on: addDays(born, q.age),
      limits: { pretermBelowDays: q.pretermBelowDays, untilMonths: q.untilMonths },
      known: q.known,
    };
  });

/** Invented windows with all their corners where the age may fall, some of them of one source. */
export const madeWindows: fc.Arbitrary<Window[]> = fc.array(
  fc
    .record({
      source: fc.nat({ max: 3 }),
      corners: fc.array(fc.integer({ min: 250, max: 410 }), { minLength: 4, maxLength: 4 }),
      silentBefore: fc.option(fc.integer({ min: 250, max: 380 })),
      silentFor: fc.option(fc.integer({ min: 0, max: 120 })),
      ends: fc.boolean(),
    })
    .map(({ source, corners, silentBefore, silentFor, ends }) => {
      const [appearsFrom, appearsTo, integratesFrom, integratesTo] = corners.sort((a, b) => a - b);
      const speaksFrom = silentBefore ?? -Infinity;
      return {
        claim: { source: { id: `made-${source}` } },
        speaksFrom,
        appearsFrom,
        appearsTo,
        integratesFrom: ends ? integratesFrom : Infinity,
        integratesTo: ends ? integratesTo : Infinity,
        speaksTo: silentFor === null ? Infinity : Math.max(speaksFrom, 250) + silentFor,
      } as Window;
    }),
  { minLength: 1, maxLength: 7 },
);

/** A reflex whose sources are asked alone, so that its figures can be followed by hand. */
export function ask(
  reflex: string,
  source: string | undefined,
  response: Response,
  on: string,
  more: { known?: boolean; gestation?: number; limits?: CorrectionLimits } = {},
): Question {
  const { windows } = sheet.get(reflex)!;
  return {
    finding: { response, state: 'quiet-alert' },
    compiled: compile(source ? windows.filter((w) => w.claim.source.id === source) : windows),
    birth: bornAt(more.gestation ?? 220),
    on: date(on),
    limits: more.limits ?? DEFAULT_LIMITS,
    known: more.known ?? false,
  };
}
