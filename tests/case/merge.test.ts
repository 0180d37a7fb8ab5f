/** Two changes to one record brought together. The laws of a three-way merge are checked on any edits. */
import fc from 'fast-check';
import { v4 } from 'uuid';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { caseText, rawOf } from '../../src/lib/case/raw.ts';
import { withMine } from '../../src/lib/case/decided.ts';
import { differences, mergeCases } from '../../src/lib/case/merge.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import type { RawCase } from '../../src/lib/case/shape.ts';
import { pointWords, valueWords } from '../../src/lib/words/en/keeping.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
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
        expect(read(withMine(raw, points, v4))).toBe(read(apply([...theirs, ...mine])));
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
        expect(read(withMine(base, differences(raw, base), v4))).toBe(read(raw));
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
      expect(read(withMine(raw, points, v4))).toBe(read(mine));
    }
  });

  test('begun in both windows on one day by one examiner is one visit with what either found', () => {
    const fresh = (reflex: string): RawCase => ({
      ...base,
      visits: [
        ...base.visits,
        {
          id: v4(),
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

  test('begun in both windows goes by the id that one of them gave it', () => {
    const fresh = (id: string, note: string): RawCase => ({
      ...base,
      visits: [
        ...base.visits,
        { id, on: '2026-06-08', examiner: 'Wren', note, findings: [], milestones: [] },
      ],
    });
    const [mine, theirs] = [v4(), v4()];
    const { raw, points } = mergeCases(base, fresh(mine, 'one'), fresh(theirs, 'two'));
    expect(points).toMatchObject([
      { path: ['visit', theirs, 'field', 'note'], visit: { on: '2026-06-08', examiner: 'Wren' } },
    ]);
    expect(raw.visits.at(-1)).toMatchObject({ id: theirs, note: 'two' });
    expect(withMine(raw, points, v4).visits.at(-1)).toMatchObject({ id: theirs, note: 'one' });
  });

  test('that goes by the id of another takes what was settled for its page along', () => {
    const visit = { on: '2026-06-08', examiner: 'Wren', note: '', findings: [], milestones: [] };
    const family = { language: 'en', pronoun: 'name', calledName: '' };
    const [mine, theirs] = [v4(), v4()];
    const pages = [{ visit: mine, chosen: ['moro'], edits: [] }];
    const { raw, points } = mergeCases(
      base,
      { ...base, visits: [...base.visits, { ...visit, id: mine }], family: { ...family, pages } },
      { ...base, visits: [...base.visits, { ...visit, id: theirs }] },
    );
    expect(points).toEqual([]);
    expect(raw.family?.pages.map((page) => page.visit)).toEqual([theirs]);
  });

  test('moved to another day in one window and changed in the other is moved and changed', () => {
    const moved = inVisit(base, 0, (visit) => ({ ...visit, on: '2026-01-13', examiner: 'Wren' }));
    for (const [mine, theirs] of [
      [moved, noted],
      [noted, moved],
    ] as const) {
      const { raw, points } = mergeCases(base, mine, theirs);
      expect(points).toEqual([]);
      expect(raw.visits).toHaveLength(base.visits.length);
      const { id } = base.visits[0]!;
      expect(raw.visits.find((visit) => visit.id === id)).toMatchObject({
        on: '2026-01-13',
        examiner: 'Wren',
        note: 'looked again',
      });
    }
  });

  test('moved to two days is asked about, and goes to the one that is decided for', () => {
    const [mine, theirs] = ['2026-01-13', '2026-01-14'].map((on) =>
      inVisit(base, 0, (visit) => ({ ...visit, on })),
    ) as [RawCase, RawCase];
    const { raw, points } = mergeCases(base, mine, theirs);
    const { id, examiner } = base.visits[0]!;
    expect(points).toMatchObject([
      { path: ['visit', id, 'date'], visit: { on: '2026-01-14', examiner } },
    ]);
    expect(read(raw)).toBe(read(theirs));
    expect(read(withMine(raw, points, v4))).toBe(read(mine));
    expect(pointWords(points[0]!, (reflex) => reflex)).toBe(
      'Visit of 14 January 2026, Rowan: date and examiner',
    );
    expect(valueWords(points[0]!, points[0]!.mine)).toBe('13 January 2026, Rowan');
  });

  test('that only one of two records has is among what differs, and can be decided for', () => {
    const points = differences(base, without);
    expect(read(withMine(without, points, v4))).toBe(read(base));
    expect(read(withMine(base, differences(without, base), v4))).toBe(read(without));
  });

  test('that was named by its day and examiner where the question was kept is found by them', () => {
    const { id, on, examiner, findings: those } = base.visits[0]!;
    const key = `${on} ${examiner}`;
    const kept = { base: undefined, theirs: undefined };
    const point = { ...kept, path: ['visit', key, 'field', 'note'], mine: 'kept long ago' };
    expect(withMine(base, [point], v4)).toEqual(
      inVisit(base, 0, (visit) => ({ ...visit, note: 'kept long ago' })),
    );
    expect(pointWords(point, (reflex) => reflex)).toBe('Visit of 12 January 2026, Rowan: note');
    // a whole visit, that has gone since
    const whole: Record<string, unknown> = {
      [JSON.stringify(['visit', key])]: { on, examiner },
      [JSON.stringify(['visit', key, 'field', 'note'])]: 'kept long ago',
    };
    for (const one of those)
      whole[JSON.stringify(['visit', key, 'finding', one.reflex, one.side])] = one;
    const all = { ...kept, path: ['visit', key], mine: whole };
    const fresh = v4();
    const back = withMine(without, [all], () => fresh).visits.at(-1);
    expect(back).toEqual({
      ...{ id: fresh, on, examiner, note: 'kept long ago' },
      ...{ findings: those, milestones: [] },
    });
    expect(
      withMine(base, [all], v4)
        .visits.map((visit) => visit.id)
        .sort(),
    ).toEqual(base.visits.map((visit) => visit.id).sort());
    expect(id).not.toBe(fresh);
  });

  test('that has gone since comes back with a finding that is decided for', () => {
    const mine = inVisit(base, 0, (visit) => ({ ...visit, note: 'mine' }));
    const { points } = mergeCases(base, mine, noted);
    const visit = withMine(without, points, v4).visits.find(({ on }) => on === base.visits[0]!.on);
    expect(visit).toMatchObject({ examiner: base.visits[0]!.examiner, note: 'mine' });
  });
});

describe('a decision', () => {
  const decision = { on: '2026-05-11', text: 'See again', who: 'PT 1', by: '', done: false };
  const decided = (...decisions: NonNullable<RawCase['decisions']>): RawCase => ({
    ...base,
    decisions,
  });
  const [one, other] = [v4(), v4()];

  test('is told from others in the same words by its id', () => {
    const was = decided({ ...decision, id: one }, { ...decision, id: other });
    const mine = decided({ ...decision, id: one, done: true }, { ...decision, id: other });
    const theirs = decided({ ...decision, id: one }, { ...decision, id: other, text: 'In June' });
    const { raw, points } = mergeCases(was, mine, theirs);
    expect(points).toEqual([]);
    expect(raw.decisions).toEqual([
      { ...decision, id: one, done: true },
      { ...decision, id: other, text: 'In June' },
    ]);
  });

  test('made in both windows in the same words on one day is one', () => {
    const [mine, theirs] = [decided({ ...decision, id: one }), decided({ ...decision, id: other })];
    const { raw, points } = mergeCases(base, mine, theirs);
    expect(points).toEqual([]);
    expect(raw.decisions).toEqual(theirs.decisions);
  });

  test('on which was asked before decisions had ids is found by its day and words', () => {
    const mine = { ...decision, done: true };
    const path = ['decision', decision.on, decision.text, '0'];
    const point = { path, base: decision, mine, theirs: decision };
    const now = decided({ ...decision, id: one });
    expect(withMine(now, [point], v4).decisions).toEqual([{ ...mine, id: one }]);
    expect(withMine(base, [point], () => other).decisions).toEqual([{ ...mine, id: other }]);
    expect(pointWords(point, (reflex) => reflex)).toBe('Decision of 2026-05-11');
  });
});
