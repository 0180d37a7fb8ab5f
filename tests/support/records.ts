/** Whole invented records for properties: every part of a record, of any kind that the parser takes. */
import fc from 'fast-check';
import { DATING_METHODS } from '../../src/lib/age/doubt.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Reflex, Side } from '../../src/lib/atlas/types.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { RESPONSES, STATES } from '../../src/lib/case/finding.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import { FORMAT, VERSION, type RawCase } from '../../src/lib/case/shape.ts';
import { en } from '../../src/lib/words/en.ts';
import { maybeLost, ofVariant, tried } from './tried.ts';

export const sidesOf = (reflex: Reflex): Side[] => [
  ...(reflex.testedPerSide ? (['left', 'right'] as const) : []),
  ...(reflex.midline ? (['midline'] as const) : []),
];

/** Text of any script, with blanks of every kind, but nothing the parser refuses. */
const LETTER = fc.constantFrom(...Array.from('aZ9 .,;:&"\'=+-@/\\{}[]()~é\u00a0\u3000漢字ßğ🙂'));
const text = (maxLength: number) => fc.string({ unit: LETTER, maxLength });
export const line = text(24);
export const note = fc
  .array(text(30), { maxLength: 4 })
  .chain((lines) => fc.constantFrom(' ', '\n', '\r\n', '\t').map((between) => lines.join(between)));
const label = text(30).map((words) => words.trim() || 'Kestrel');

const day = fc.integer({ min: 0, max: 700 }).map((days) => {
  const date = new Date(Date.UTC(2026, 0, 5) + days * 86_400_000);
  return date.toISOString().slice(0, 10);
});

const builtIn = fc
  .constantFrom(...ATLAS.reflexes.values())
  .chain((reflex) => fc.tuple(fc.constant(reflex.id), fc.constantFrom(...sidesOf(reflex))));
const oneOfOwn = fc.tuple(
  fc.constantFrom('own-k3x9', 'own-a_b-1'),
  fc.constantFrom<Side>('left', 'right', 'midline'),
);
const finding = fc
  .tuple(
    fc.oneof({ weight: 5, arbitrary: builtIn }, oneOfOwn),
    fc.constantFrom(...RESPONSES),
    fc.constantFrom(...STATES),
    note,
  )
  .map(([[reflex, side], response, state, said]) => {
    return { reflex, side, response, state, note: said };
  })
  .chain(tried)
  .chain(ofVariant);

const id = fc.uuid({ version: [4, 5] });

const visit = fc.record({
  id,
  on: day,
  examiner: line.map((words) => words.trim()),
  note,
  findings: fc.uniqueArray(finding, {
    selector: ({ reflex, side }) => `${reflex} ${side}`,
    maxLength: 6,
  }),
  milestones: fc.uniqueArray(
    fc
      .record({
        milestone: fc.constantFrom(...ATLAS.milestones.keys()),
        seen: fc.boolean(),
      })
      .chain(maybeLost),
    { selector: ({ milestone }) => milestone, maxLength: 3 },
  ),
});

const decision = fc.record({
  id,
  on: day,
  text: note.map((words) => words.trim() || 'See again'),
  who: line,
  by: fc.oneof(fc.constant(''), day),
  done: fc.boolean(),
});

/** A case file's object, whole. */
export const rawRecord: fc.Arbitrary<RawCase> = fc
  .record({
    format: fc.constant(FORMAT),
    version: fc.constant(VERSION),
    child: fc.record({
      label,
      born: fc.constant('2026-01-05'),
      dated: fc.oneof(
        fc.integer({ min: 154, max: 314 }).map((days) => ({
          gestation: `${Math.floor(days / 7)}w${days % 7}d`,
        })),
        fc.integer({ min: 0, max: 90 }).map((days) => ({
          due: new Date(Date.UTC(2026, 0, 5) + days * 86_400_000).toISOString().slice(0, 10),
        })),
      ),
      dating: fc.constantFrom(...DATING_METHODS),
      invented: fc.boolean(),
    }),
    visits: fc.uniqueArray(visit, { selector: (v) => `${v.on} ${v.examiner}`, maxLength: 4 }),
    tags: fc.array(line, { maxLength: 4 }),
    archived: fc.boolean(),
    question: note,
    decisions: fc.array(decision, { maxLength: 3 }),
    sheet: fc.option(
      fc.record({
        on: day,
        reflexes: fc.array(
          fc.oneof(fc.constantFrom('moro', 'atnr', 'own-k3x9'), fc.constantFrom('two  blanks', '')),
          { maxLength: 3 },
        ),
      }),
      { nil: undefined },
    ),
  })
  .map(({ child: { dated, ...child }, sheet, ...rest }): RawCase => {
    return { ...rest, child: { ...child, ...dated }, ...(sheet ? { sheet } : {}) };
  });

/** The same, taken through the door. */
export const record: fc.Arbitrary<Case> = rawRecord.map((raw) => {
  const parsed = parseRaw(raw, ATLAS);
  if (!parsed.ok) throw new Error(parsed.problems.map(en.problems.problemWords).join('\n'));
  return parsed.value;
});
