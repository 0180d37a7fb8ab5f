/** Family's pages for tests: of the invented children, and of records made at random. */
import fc from 'fast-check';
import { addDays, parseCivil, type CivilDate } from '../../src/lib/age/civil.ts';
import { ATLAS, sidesOf } from '../../src/lib/atlas/atlas.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { RESPONSES, STATES } from '../../src/lib/case/finding.ts';
import { familyPage, sentencesOf } from '../../src/lib/handout/page.ts';
import type { FamilyPage, PageInput } from '../../src/lib/handout/model.ts';
import { judgeCase, sheetOf } from '../../src/lib/judge/judge.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { examplesOn, WRITTEN_FOR } from '../../src/lib/examples/examples.ts';
import { childCase, type ShortFinding, type ShortVisit } from '../support/kestrel.ts';

export const options = { atlas: ATLAS, sheet: sheetOf(ATLAS) };

/** Every invented child that comes with the program. */
export const CHILDREN: readonly (readonly [string, Case])[] = [
  ...examplesOn(WRITTEN_FOR, ATLAS).map(({ record }) => [record.child.label, record] as const),
  ['the demo child', demoCase(ATLAS)] as const,
];

/** A page of a record: of the visit at a place (negative counts from the last), or of the course. */
export function pageOf(
  record: Case,
  at: number | null = -1,
  more: Partial<PageInput> = {},
): FamilyPage {
  const visits = judgeCase(record, options);
  const shown = at === null ? null : (visits.at(at) ?? null);
  return familyPage({ record, visits, options, shown, clinic: null, ...more });
}

/** Every page a record has. */
export const pagesOf = (record: Case, more: Partial<PageInput> = {}): FamilyPage[] =>
  [null, ...record.visits.keys()].map((at) => pageOf(record, at, more));

export const textOf = (page: FamilyPage): string =>
  sentencesOf(page)
    .map(({ text }) => text)
    .join('\n');

const REFLEXES = [...ATLAS.reflexes.values()];

/** A record with up to four visits, each with some reflexes on their sides, in any state. */
export const records: fc.Arbitrary<Case> = fc
  .record({
    gestationDays: fc.integer({ min: 24 * 7, max: 42 * 7 }),
    born: fc.integer({ min: 0, max: 700 }),
    visits: fc.array(
      fc.record({
        after: fc.integer({ min: 1, max: 150 }),
        reflexes: fc.uniqueArray(fc.nat({ max: REFLEXES.length - 1 }), {
          minLength: 1,
          maxLength: 10,
        }),
        answers: fc.array(fc.tuple(fc.constantFrom(...RESPONSES), fc.constantFrom(...STATES)), {
          minLength: 30,
          maxLength: 30,
        }),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map(({ gestationDays, born, visits }) => {
    const birth = addDays(parseCivil('2024-01-01')!, born);
    let on: CivilDate = birth;
    const short = visits.map(({ after, reflexes, answers }): ShortVisit => {
      on = addDays(on, after);
      let next = 0;
      return {
        on,
        findings: reflexes.flatMap((index) => {
          const reflex = REFLEXES[index]!;
          return sidesOf(reflex).map((side): ShortFinding => {
            const [response, state] = answers[next++ % answers.length]!;
            return [reflex.id, side, response, state];
          });
        }),
      };
    });
    const gestation = `${Math.floor(gestationDays / 7)}w${gestationDays % 7}d`;
    return childCase({ born: birth, gestation, dating: 'ultrasound-14w0d-21w6d' }, short);
  });
