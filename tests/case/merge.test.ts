/** Two changes to one record brought together. The laws of a three-way merge are checked on any edits. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { caseText, rawOf } from '../../src/lib/case/file.ts';
import { differences, mergeCases, withMine } from '../../src/lib/case/merge.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import type { RawCase } from '../../src/lib/case/shape.ts';
import { demoCase } from '../../src/lib/state/demo.ts';
import { runs } from '../support/runs.ts';

const base = rawOf(demoCase(ATLAS));
const visits = base.visits.map((_, index) => index);

/** An edit to one part of a record: which part, and what it becomes. */
interface Edit {
  part: string;
  value: string;
  apply(raw: RawCase): RawCase;
}

const inVisit = (
  raw: RawCase,
  index: number,
  change: (visit: RawCase['visits'][number]) => RawCase['visits'][number],
): RawCase => ({
  ...raw,
  visits: raw.visits.map((visit, at) => (at === index ? change(visit) : visit)),
});

const findings = visits.flatMap((visit) =>
  base.visits[visit]!.findings.map((_, finding) => ({ visit, finding })),
);

const words = fc.constantFrom('one', 'two', 'three');

const edits: fc.Arbitrary<Edit> = fc.oneof(
  words.map((value) => ({
    part: 'label',
    value,
    apply: (raw: RawCase) => ({ ...raw, child: { ...raw.child, label: value } }),
  })),
  words.map((value) => ({
    part: 'question',
    value,
    apply: (raw: RawCase) => ({ ...raw, question: value }),
  })),
  fc.tuple(fc.constantFrom(...visits), words).map(([visit, value]) => ({
    part: `note ${visit}`,
    value,
    apply: (raw: RawCase) => inVisit(raw, visit, (one) => ({ ...one, note: value })),
  })),
  fc.tuple(fc.constantFrom(...findings), words).map(([{ visit, finding }, value]) => ({
    part: `finding ${visit} ${finding}`,
    value,
    apply: (raw: RawCase) =>
      inVisit(raw, visit, (one) => ({
        ...one,
        findings: one.findings.map((old, at) => (at === finding ? { ...old, note: value } : old)),
      })),
  })),
  words.map((value) => ({
    part: `tag ${value}`,
    value,
    apply: (raw: RawCase) => ({ ...raw, tags: [...new Set([...(raw.tags ?? []), value])] }),
  })),
);

const many = fc.array(edits, { maxLength: 6 });
const apply = (list: readonly Edit[]): RawCase => list.reduce((raw, edit) => edit.apply(raw), base);
/** A record as its parser has it, so that the order of writing does not count. */
const read = (raw: RawCase): string => {
  const parsed = parseRaw(raw, ATLAS);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const { tags, ...rest } = parsed.value;
  return caseText({ ...rest, tags: [...tags].sort() });
};

describe('any edits in two windows', () => {
  test('to different parts are both there, and nobody is asked', () => {
    fc.assert(
      fc.property(many, many, (mine, theirs) => {
        const taken = new Set(mine.map(({ part }) => part));
        const others = theirs.filter(({ part }) => !taken.has(part));
        const { raw, points } = mergeCases(base, apply(mine), apply(others));
        expect(points).toEqual([]);
        expect(read(raw)).toBe(read(apply([...mine, ...others])));
      }),
      { numRuns: runs(300, 60) },
    );
  });

  test('to the same part are asked about just where they differ, and none is lost', () => {
    let asked = 0;
    fc.assert(
      fc.property(many, many, (mine, theirs) => {
        const last = (list: readonly Edit[]): Map<string, string> =>
          new Map(list.map(({ part, value }) => [part, value]));
        const [m, t] = [last(mine), last(theirs)];
        const clashing = [...m].filter(([part, value]) => t.has(part) && t.get(part) !== value);
        const [mineRaw, theirsRaw] = [apply(mine), apply(theirs)];
        const { raw, points } = mergeCases(base, mineRaw, theirsRaw);
        expect(points).toHaveLength(clashing.length);
        asked += clashing.length;
        // theirs over mine, and with every point decided for mine, mine over theirs
        expect(read(raw)).toBe(read(apply([...mine, ...theirs])));
        expect(read(withMine(raw, points))).toBe(read(apply([...theirs, ...mine])));
      }),
      { numRuns: runs(300, 60) },
    );
    expect(asked).toBeGreaterThan(0);
  });

  test('in one window alone are taken as they are, in either direction', () => {
    fc.assert(
      fc.property(many, (list) => {
        const raw = apply(list);
        for (const merged of [
          mergeCases(base, raw, base),
          mergeCases(base, base, raw),
          mergeCases(base, raw, raw),
        ]) {
          expect(merged.points).toEqual([]);
          expect(read(merged.raw)).toBe(read(raw));
        }
        expect(differences(raw, raw)).toEqual([]);
        expect(read(withMine(base, differences(raw, base)))).toBe(read(raw));
      }),
    );
  });
});

describe('a visit', () => {
  const without: RawCase = { ...base, visits: base.visits.slice(1) };
  const noted = inVisit(base, 0, (visit) => ({ ...visit, note: 'looked again' }));

  test('removed in one window and left alone in the other is gone', () => {
    expect(mergeCases(base, without, base)).toEqual({ raw: without, points: [] });
    const { raw, points } = mergeCases(base, without, { ...base, question: 'why' });
    expect(points).toEqual([]);
    expect(raw.visits).toHaveLength(base.visits.length - 1);
    expect(raw.question).toBe('why');
  });

  test('removed in one window and changed in the other stays until it is decided', () => {
    for (const [mine, theirs] of [
      [without, noted],
      [noted, without],
    ] as const) {
      const { raw, points } = mergeCases(base, mine, theirs);
      expect(points.map(({ path }) => path[0])).toEqual(['visit']);
      expect(read(raw)).toBe(read(noted));
      expect(read(withMine(raw, points))).toBe(read(mine));
    }
  });

  test('begun in both windows on one day by one examiner is one visit with what either found', () => {
    const fresh = (reflex: string): RawCase => ({
      ...base,
      visits: [
        ...base.visits,
        {
          on: '2026-06-08',
          examiner: 'Wren',
          note: '',
          findings: [{ reflex, side: 'left', response: 'weak', state: 'quiet-alert', note: '' }],
          milestones: [],
        },
      ],
    });
    const { raw, points } = mergeCases(base, fresh('moro'), fresh('palmar-grasp'));
    expect(points).toEqual([]);
    const visit = raw.visits.find(({ on }) => on === '2026-06-08');
    expect(visit?.findings.map(({ reflex }) => reflex).sort()).toEqual(['moro', 'palmar-grasp']);
  });

  test('that has gone since comes back with a finding that is decided for', () => {
    const mine = inVisit(base, 0, (visit) => ({ ...visit, note: 'mine' }));
    const { points } = mergeCases(base, mine, noted);
    const visit = withMine(without, points).visits.find(({ on }) => on === base.visits[0]!.on);
    expect(visit).toMatchObject({ examiner: base.visits[0]!.examiner, note: 'mine' });
  });
});
