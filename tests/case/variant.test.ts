/** Which variant was tested, as a field of a finding that may be left out: in a file, merged, nameless, elsewhere. */
import { v4 } from 'uuid';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { withMine } from '../../src/lib/case/decided.ts';
import { parseCaseText } from '../../src/lib/case/file.ts';
import { mergeCases } from '../../src/lib/case/merge.ts';
import { withoutIdentity } from '../../src/lib/case/nameless.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import { caseText, rawOf } from '../../src/lib/case/raw.ts';
import type { RawCase } from '../../src/lib/case/shape.ts';
import { judgeCase, sheetOf } from '../../src/lib/judge/judge.ts';
import { en } from '../../src/lib/words/en.ts';
import { childCase } from '../support/kestrel.ts';

const REFLEX = 'protective-forward';
const record = childCase({ born: '2026-01-01', gestation: '40w0d' }, [
  {
    on: '2026-10-01',
    findings: [
      [REFLEX, 'left', 'elicited', 'quiet-alert', undefined, 'forward'],
      [REFLEX, 'right', 'not-elicited', 'quiet-alert', 2, 'forward'],
      ['moro', 'left', 'not-elicited'],
    ],
  },
]);
const raw = rawOf(record);

const withVariants = (...variants: (string | undefined)[]): RawCase => ({
  ...raw,
  visits: raw.visits.map((visit) => ({
    ...visit,
    findings: visit.findings.map(({ variant: _, ...finding }, index) => ({
      ...finding,
      ...(variants[index] === undefined ? {} : { variant: variants[index] }),
    })),
  })),
});
const refused = (file: RawCase): string => {
  const parsed = parseRaw(file, ATLAS);
  return parsed.ok ? '' : parsed.problems.map(en.problems.problemWords).join('\n');
};

describe('in a file', () => {
  test('is written and read again', () => {
    expect(parseCaseText(caseText(record), ATLAS)).toEqual({ ok: true, value: record });
    expect(caseText(record)).toContain('"variant": "forward"');
  });

  test('is refused where the reflex has no such variant, with the mend', () => {
    expect(refused(withVariants('standing'))).toBe(
      'Visit 1 (2026-10-01), finding 1 (protective-forward), variant: "standing" is not a variant of Protective extension, forward with ages of its own; choose one of forward, propping, or leave it out: the finding is then judged by all of them.',
    );
    expect(refused(withVariants('', 'forward'))).toMatch(/"" is not a variant of/);
  });

  test('is refused of a reflex without variants that are dated apart', () => {
    expect(refused(withVariants(undefined, undefined, 'spread'))).toBe(
      'Visit 1 (2026-10-01), finding 3 (moro), variant: Moro reflex has no variants with ages of their own, and "spread" is named; leave it out.',
    );
  });

  test('may differ between the sides', () => {
    expect(refused(withVariants('forward', 'propping'))).toBe('');
  });
});

test('a record from before reads as it did: no finding has a variant, and all sources judge it', () => {
  const older = parseRaw(withVariants(), ATLAS);
  if (!older.ok) throw new Error('refused');
  expect(JSON.stringify(older.value)).not.toContain('variant');
  const sheet = sheetOf(ATLAS);
  const [visit] = judgeCase(older.value, { atlas: ATLAS, sheet });
  const found = visit!.findings.find(({ reflex }) => reflex.id === REFLEX)!;
  expect(found.reflex).toBe(ATLAS.reflexes.get(REFLEX));
  expect(found.reading.compiled).toBe(sheet.get(REFLEX));
  expect(found.reading.compiled.windows).toHaveLength(
    ATLAS.claims.get(REFLEX)!.filter(({ role }) => role === 'window').length,
  );
});

describe('two changes', () => {
  const mine = withVariants('forward', 'forward');
  const theirs = withVariants('propping', 'forward');

  test('to the variant of one finding, each otherwise, are a point to decide', () => {
    const { raw: merged, points } = mergeCases(withVariants(), mine, theirs);
    expect(points).toHaveLength(1);
    expect(points[0]!.path).toEqual(['visit', raw.visits[0]!.id, 'finding', REFLEX, 'left']);
    expect(merged.visits[0]!.findings[0]!.variant).toBe('propping');
    expect(withMine(merged, points, v4).visits[0]!.findings[0]!.variant).toBe('forward');
    expect(en.keeping.valueWords(points[0]!, points[0]!.mine)).toContain('variant "forward"');
  });

  test('one to the variant and one elsewhere are both taken', () => {
    const noted = { ...raw, visits: raw.visits.map((visit) => ({ ...visit, note: 'calm' })) };
    const { raw: merged, points } = mergeCases(raw, noted, theirs);
    expect(points).toEqual([]);
    expect(merged.visits[0]).toMatchObject({ note: 'calm' });
    expect(merged.visits[0]!.findings[0]!.variant).toBe('propping');
  });
});

test('without names it stays, since it names nobody', () => {
  const { record: nameless } = withoutIdentity(record, {
    label: 'a child',
    examiner: (n) => `examiner ${n}`,
    known: ATLAS.reflexes,
    limitMonths: [24],
    pick: () => 0,
    newId: v4,
  });
  expect(nameless.visits[0]!.findings.map(({ variant }) => variant)).toEqual([
    'forward',
    'forward',
    undefined,
  ]);
});
