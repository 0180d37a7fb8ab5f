import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CivilDate } from '../../src/lib/age/civil.ts';
import { addDays, addMonths } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { CaseJudge, sheetOf } from '../../src/lib/judge/judge.ts';
import { nextVisit } from '../../src/lib/judge/nextVisit.ts';
import { openQuestions } from '../../src/lib/judge/questions.ts';
import { USUAL_MONTHS, WATCHED_AGAIN_DAYS } from '../../src/lib/judge/reading/constants.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { examplesOn, WRITTEN_FOR } from '../../src/lib/examples/examples.ts';
import { folded } from '../../src/lib/platform/foldText.ts';
import { rollOf, type RollLine } from '../../src/lib/present/roster.ts';
import {
  AGE_BAND_NAMES,
  ASKINGS,
  DUES,
  EVERYONE,
  examinersIn,
  fitting,
  isNarrowed,
  queryOf,
  SORTS,
  sorted,
  tagsIn,
  wantedFrom,
  type Wanted,
} from '../../src/lib/present/rosterFilter.ts';
import { childCase } from '../support/kestrel.ts';

const options = { atlas: ATLAS, sheet: sheetOf(ATLAS) };
const on = (text: string): CivilDate => text as CivilDate;
const lineOf = (record: Case, day: string = WRITTEN_FOR): RollLine =>
  rollOf([{ id: 'x', record }], on(day), options)[0]!;

const shelf = [
  { id: 'kestrel', record: demoCase(ATLAS) },
  ...examplesOn(WRITTEN_FOR, ATLAS),
  ...examplesOn(addDays(WRITTEN_FOR, -200), ATLAS).map(({ id, record }) => ({
    id: `older-${id}`,
    record,
  })),
];
const roll = rollOf(shelf, WRITTEN_FOR, options);
const labels = (lines: readonly RollLine[]): string[] => lines.map(({ label }) => label);
const fit = (wanted: Partial<Wanted>): RollLine[] => fitting(roll, { ...EVERYONE, ...wanted });

describe('what a line says', () => {
  it('counts a reflex once, by what asks most on either side', () => {
    // the invented child that is shown first: two to discuss, one to watch (tests/examples/demo.test.ts)
    expect(lineOf(demoCase(ATLAS)).asks).toEqual({ discuss: 2, watch: 1 });
  });

  it('takes the last day whole: what either examiner saw asks', () => {
    const turnstone = roll.find(({ id }) => id === 'example-turnstone')!;
    expect(turnstone.asks.discuss).toBe(1);
    expect(turnstone.days).toHaveLength(2);
    expect(turnstone.examiners).toEqual(['Rowan', 'Alder']);
  });

  it('has no age before birth, and a first visit due from birth on', () => {
    const line = lineOf(childCase({ born: '2026-07-01', gestation: '39w0d' }, []));
    expect(line.ages).toBeUndefined();
    expect(line.thin.now).toBeUndefined();
    expect(line.isDue).toBe(false);
    const born = lineOf(line.record, '2026-07-01');
    expect(born.ages?.chronologicalDays).toBe(0);
    expect(born.isDue).toBe(true);
    expect(born.next).toEqual({ by: '2026-07-01', why: { code: 'first' } });
  });

  it('lays birth at the gestation of a child born early, and at term of one that was not', () => {
    expect(lineOf(childCase({ born: '2026-05-01', gestation: '33w1d' }, [])).thin.born).toBe(232);
    expect(lineOf(childCase({ born: '2026-05-01', gestation: '38w0d' }, [])).thin.born).toBe(280);
  });
});

describe('when a check falls due', () => {
  /** At 10 months with a Moro gone, nothing waits for a change: only time makes a check fall due. */
  const calm = childCase({ born: '2025-08-01', gestation: '40w0d' }, [
    { on: '2026-06-01', findings: [['moro', 'left', 'not-elicited']] },
  ]);

  it(`by time: ${USUAL_MONTHS} months after the last visit`, () => {
    expect(openQuestions(calm, calm.visits[0]!.on, options)).toEqual([]);
    expect(lineOf(calm).next).toEqual({ by: '2026-09-01', why: { code: 'usual' } });
    expect(lineOf(calm, '2026-08-31').isDue).toBe(false);
    expect(lineOf(calm, '2026-09-01').isDue).toBe(true);
  });

  it('never by time alone past 24 months', () => {
    const late = childCase({ born: '2024-06-01', gestation: '40w0d' }, [
      { on: '2026-04-01', findings: [['moro', 'left', 'not-elicited']] },
    ]);
    expect(lineOf(late).next).toBeUndefined();
    const justBefore = childCase({ born: '2024-06-01', gestation: '40w0d' }, [
      { on: '2026-02-27', findings: [['moro', 'left', 'not-elicited']] },
    ]);
    expect(lineOf(justBefore).next?.by).toBe('2026-05-27');
  });

  it('by a visit that was prepared, unless it lies behind', () => {
    const sheet = (day: string): Case => ({ ...calm, sheet: { on: on(day), reflexes: ['moro'] } });
    expect(lineOf(sheet('2026-06-20')).next).toEqual({
      by: '2026-06-20',
      why: { code: 'prepared' },
    });
    expect(lineOf(sheet('2026-06-01')).next?.why.code).toBe('usual');
  });

  it('by the change that half of the awaited ones are done with, no sooner than a recheck', () => {
    const closing = childCase({ born: '2026-01-26', gestation: '40w0d' }, [
      {
        on: '2026-06-01',
        findings: [
          ['atnr', 'left', 'elicited'],
          ['tlr', 'midline', 'elicited'],
        ],
      },
    ]);
    const line = lineOf(closing);
    expect(line.asks).toEqual({ discuss: 0, watch: 0 });
    expect(line.open).toBe(2);
    expect(line.next?.why).toMatchObject({ code: 'awaited', of: 2 });
    expect(line.next!.by >= addDays(on('2026-06-01'), WATCHED_AGAIN_DAYS)).toBe(true);
  });

  it('is the date and the reason that the plan says, and never later than a visit prepared', () => {
    let dated = 0;
    for (const { record, next } of roll) {
      expect(next).toEqual(nextVisit(new CaseJudge(record, options), options));
      const last = record.visits.at(-1)?.on;
      if (!last || !next) continue;
      dated += 1;
      if (record.sheet && record.sheet.on > last) expect(next.by <= record.sheet.on).toBe(true);
      expect(next.by <= addMonths(last, USUAL_MONTHS)).toBe(true);
      expect(next.by > last || next.why.code === 'today').toBe(true);
    }
    expect(dated).toBeGreaterThan(0);
  });
});

describe('what is reckoned once', () => {
  it('a line stays as it is while its child, the day and the sources do', () => {
    const again = rollOf([...shelf], WRITTEN_FOR, options);
    for (const [index, line] of again.entries()) expect(line).toBe(roll[index]);
  });

  it('only the changed child is read anew', () => {
    const [first, ...rest] = shelf;
    const changed = { ...first!, record: { ...first!.record, visits: [] } };
    const again = rollOf([changed, ...rest], WRITTEN_FOR, options);
    expect(again[0]!.asks).toEqual({ discuss: 0, watch: 0 });
    expect(again.slice(1)).toEqual(roll.slice(1));
    expect(rollOf(shelf, addDays(WRITTEN_FOR, 1), options)[0]).not.toBe(roll[0]);
  });
});

describe('looking for children', () => {
  it('leaves the archive out unless asked for', () => {
    expect(labels(fit({}))).not.toContain('Avocet');
    expect(labels(fit({ archived: true }))).toContain('Avocet');
  });

  it.each([
    [{ asks: 'unseen' }, ['Redshank']],
    [{ tag: 'conference' }, ['Curlew', 'Godwit']],
    [{ find: 'EARLY dun' }, ['Dunlin']],
    [{ age: 'before-term' }, ['Redshank']],
    [{ check: 'due', asks: 'discuss', age: '0-3' }, ['Snipe']],
    [{ asks: 'nothing', age: '6-12' }, ['Tern']],
  ] as const)('%j finds the newer of %j', (wanted, found) => {
    const newer = fit(wanted).filter(({ id }) => !id.startsWith('older-'));
    expect(labels(sorted(newer, 'label'))).toEqual(found);
  });

  it('offers every tag and examiner there is, once', () => {
    const tags = tagsIn(roll);
    expect(new Set(tags).size).toBe(tags.length);
    expect(tags).toContain('second look');
    expect(examinersIn(roll)).toEqual(['Alder', 'Rowan']);
  });

  const wantedAny: fc.Arbitrary<Wanted> = fc.record({
    find: fc.constantFrom('', 'er', 'rowan', 'TERN', 'early'),
    age: fc.constantFrom('' as const, ...AGE_BAND_NAMES),
    asks: fc.constantFrom('' as const, ...ASKINGS),
    check: fc.constantFrom('' as const, ...DUES),
    tag: fc.constantFrom('', ...tagsIn(roll)),
    examiner: fc.constantFrom('', 'Rowan', 'Alder'),
    archived: fc.boolean(),
    sort: fc.constantFrom(...SORTS),
  });

  it('one filter more only narrows', () => {
    fc.assert(
      fc.property(
        wantedAny,
        fc.constantFrom('find', 'age', 'asks', 'check', 'tag', 'examiner'),
        (wanted, part) => {
          const wider = new Set(fitting(roll, { ...wanted, [part]: '' }));
          for (const line of fitting(roll, wanted)) expect(wider.has(line)).toBe(true);
        },
      ),
    );
  });

  it('filters keep the order they were given, and an age lies in one band', () => {
    fc.assert(
      fc.property(wantedAny, (wanted) => {
        const found = fitting(roll, wanted);
        expect(found).toEqual(roll.filter((line) => found.includes(line)));
      }),
    );
    const bands = AGE_BAND_NAMES.map((age) => fit({ age, archived: true }).length);
    expect(bands.reduce((sum, n) => sum + n, 0)).toBe(roll.length);
  });

  it('an order is a permutation, the same from any order before it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SORTS),
        fc.shuffledSubarray([...roll], { minLength: roll.length }),
        (sort, mixed) => {
          const inOrder = sorted(mixed, sort);
          expect(new Set(inOrder)).toEqual(new Set(roll));
          expect(inOrder).toHaveLength(roll.length);
          expect(inOrder).toEqual(sorted(roll, sort));
        },
      ),
    );
  });

  it('each order does what it says', () => {
    const pairs = (sort: (typeof SORTS)[number]) => {
      const all = sorted(roll, sort);
      return all.slice(1).map((line, index) => [all[index]!, line] as const);
    };
    for (const [a, b] of pairs('age')) expect(a.ages!.axisDay).toBeLessThanOrEqual(b.ages!.axisDay);
    for (const [a, b] of pairs('asks'))
      expect(
        a.asks.discuss > b.asks.discuss ||
          (a.asks.discuss === b.asks.discuss && a.asks.watch >= b.asks.watch),
      ).toBe(true);
    for (const [a, b] of pairs('check'))
      expect(!b.next || (a.next && a.next.by <= b.next.by)).toBeTruthy();
    for (const [a, b] of pairs('seen')) expect((a.lastSeen ?? '') <= (b.lastSeen ?? '')).toBe(true);
    const numbered = ['Child 10', 'Child 9'].map((label, index) => ({
      id: String(index),
      record: { ...shelf[0]!.record, child: { ...shelf[0]!.record.child, label } },
    }));
    expect(labels(sorted(rollOf(numbered, WRITTEN_FOR, options), 'label'))).toEqual([
      'Child 9',
      'Child 10',
    ]);
  });

  it('stands in an address, and comes back from it', () => {
    fc.assert(
      fc.property(wantedAny, (wanted) => {
        expect(wantedFrom(new URLSearchParams(queryOf(wanted).slice(1)))).toEqual(wanted);
      }),
    );
    expect(queryOf(EVERYONE)).toBe('');
    expect(isNarrowed(EVERYONE)).toBe(false);
    expect(wantedFrom(new URLSearchParams('age=old&sort=worst&check=never'))).toEqual(EVERYONE);
  });
});

describe('folding', () => {
  /** Letters that differ at base strength differ here, and no others: ECMA-402, Intl.Collator. */
  const base = new Intl.Collator('en', { sensitivity: 'base' });
  const letters = fc.stringMatching(/^[a-zA-ZÀ-ÖÙ-öù-ÿĀ-ďĒ-ĥĨ-İĴ-ķĹ-ľŃ-ňŌ-ŐŔ-ťŨ-ſ]{1,12}$/);

  it('changes no text at base strength, as the standard collation of the language has it', () => {
    fc.assert(
      fc.property(letters, (text) => {
        fc.pre(!/[ıĸŀŁłŦŧŐĐđŊŋØøÐðÞþÆæŒœ]/.test(text));
        expect(base.compare(folded(text), text)).toBe(0);
      }),
    );
  });

  it('is the same for every case and composition of one text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 20 }), (text) => {
        const once = folded(text);
        expect(folded(text.normalize('NFD'))).toBe(once);
        expect(folded(text.normalize('NFC'))).toBe(once);
        expect(folded(once)).toBe(once);
      }),
    );
  });

  it.each([
    ['Émile', 'emile'],
    ['ZOË', 'zoe'],
    ['Straße', 'strasse'],
    ['STRAẞE', 'strasse'],
    ['Ångström', 'angstrom'],
    ['Ναί', 'ναι'],
  ])('%s is found by %s', (label, typed) => {
    const record = { ...shelf[0]!.record, child: { ...shelf[0]!.record.child, label } };
    const lines = rollOf([{ id: 'one', record }], WRITTEN_FOR, options);
    for (const find of [
      typed,
      typed.toUpperCase(),
      label,
      label.normalize('NFD'),
      typed.slice(1, 4),
    ])
      expect(fitting(lines, { ...EVERYONE, find })).toHaveLength(1);
    expect(fitting(lines, { ...EVERYONE, find: `${typed}x` })).toHaveLength(0);
  });
});
