/** Any record that the door lets in, invented by chance: every part of it filled. */
import fc from 'fast-check';
import { addDays, type CivilDate } from '../../src/lib/age/civil.ts';
import { DATING_METHODS } from '../../src/lib/age/doubt.ts';
import { ATLAS, sidesOf } from '../../src/lib/atlas/atlas.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { RESPONSES, STATES, type InfantState, type Response } from '../../src/lib/case/finding.ts';
import { latest, OLDER_VERSION } from '../../src/lib/case/older.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import { FORMAT, type RawCase } from '../../src/lib/case/shape.ts';
import { en } from '../../src/lib/words/en.ts';
import { maybeLost, ofVariant, tried } from './tried.ts';

const FIRST = '2018-01-01' as CivilDate;

interface Agreeing {
  visit: number;
  finding: number;
  response: Response;
  state: InfantState;
  note: string;
}

/** Agreed answers on some of what was recorded, one at most of each. */
function agreedOn({ visits }: RawCase, all: readonly Agreeing[]): NonNullable<RawCase['agreed']> {
  const seen = new Map<string, NonNullable<RawCase['agreed']>[number]>();
  for (const { visit, finding, ...answer } of all) {
    const at = visits[visit % Math.max(1, visits.length)];
    const of = at?.findings[finding % Math.max(1, at.findings.length)];
    if (!at || !of) continue;
    const { reflex, side, variant } = of;
    const one = { on: at.on, reflex, side, ...(variant === undefined ? {} : { variant }) };
    seen.set(JSON.stringify(one), { ...one, ...answer });
  }
  return [...seen.values()];
}

interface AnyOptions {
  /** Words for every field of free text. */
  text?: fc.Arbitrary<string>;
  /** Names of examiners. */
  name?: fc.Arbitrary<string>;
  maxVisits?: number;
}

export function anyCase({
  text = fc.stringMatching(/^[a-z ]{0,12}$/),
  name = fc.constantFrom('Rowan', 'Zed', 'Amy', ''),
  maxVisits = 5,
}: AnyOptions = {}): fc.Arbitrary<Case> {
  const reflexes = [...ATLAS.reflexes.values()];
  const finding = fc.constantFrom(...reflexes).chain((reflex) =>
    fc
      .record({
        reflex: fc.constant(reflex.id),
        side: fc.constantFrom(...sidesOf(reflex)),
        response: fc.constantFrom(...RESPONSES),
        state: fc.constantFrom(...STATES),
        note: text,
      })
      .chain(tried)
      .chain(ofVariant),
  );
  const visit = fc.record({
    after: fc.oneof(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 1200 })),
    examiner: name,
    note: text,
    findings: fc.uniqueArray(finding, {
      maxLength: 8,
      selector: ({ reflex, side }) => `${reflex} ${side}`,
    }),
    milestones: fc.uniqueArray(
      fc
        .record({
          milestone: fc.constantFrom(...ATLAS.milestones.keys()),
          seen: fc.boolean(),
        })
        .chain(maybeLost),
      { maxLength: 3, selector: ({ milestone }) => milestone },
    ),
  });
  return fc
    .record({
      born: fc.integer({ min: 0, max: 3000 }).map((days) => addDays(FIRST, days)),
      gestationalDays: fc.integer({ min: 154, max: 314 }),
      dating: fc.constantFrom(...DATING_METHODS),
      byDue: fc.boolean(),
      invented: fc.boolean(),
      label: name.map((word) => word || 'Child'),
      visits: fc.uniqueArray(visit, {
        maxLength: maxVisits,
        selector: ({ after, examiner }) => `${after} ${examiner}`,
      }),
      tags: fc.array(text, { maxLength: 3 }),
      question: text,
      archived: fc.boolean(),
      decisions: fc.array(
        fc.record({ after: fc.nat(900), text, who: name, due: fc.boolean(), done: fc.boolean() }),
        { maxLength: 3 },
      ),
      agreed: fc.array(
        fc.record({
          visit: fc.nat(9),
          finding: fc.nat(9),
          response: fc.constantFrom(...RESPONSES),
          state: fc.constantFrom(...STATES),
          note: text,
        }),
        { maxLength: 3 },
      ),
      sheet: fc.option(
        fc.record({
          after: fc.nat(900),
          reflexes: fc.array(fc.constantFrom(...ATLAS.reflexes.keys()), { maxLength: 4 }),
        }),
      ),
    })
    .map((raw) => {
      const on = (after: number): CivilDate => addDays(raw.born, after);
      const weeks = Math.floor(raw.gestationalDays / 7);
      const given = latest({
        format: FORMAT,
        version: OLDER_VERSION,
        child: {
          label: raw.label,
          born: raw.born,
          ...(raw.byDue
            ? { due: addDays(raw.born, 280 - raw.gestationalDays) }
            : { gestation: `${weeks}w${raw.gestationalDays % 7}d` }),
          dating: raw.dating,
          invented: raw.invented,
        },
        visits: raw.visits.map(({ after, ...rest }) => ({ on: on(after), ...rest })),
        tags: raw.tags,
        archived: raw.archived,
        question: raw.question,
        decisions: raw.decisions.map(({ after, due, ...rest }) => ({
          ...rest,
          text: rest.text.trim() || 'to be decided',
          on: on(after),
          by: due ? on(after + 30) : '',
        })),
        ...(raw.sheet ? { sheet: { on: on(raw.sheet.after), reflexes: raw.sheet.reflexes } } : {}),
      });
      const parsed = parseRaw({ ...given, agreed: agreedOn(given, raw.agreed) }, ATLAS);
      if (!parsed.ok) throw new Error(parsed.problems.map(en.problems.problemWords).join('\n'));
      return parsed.value;
    });
}
