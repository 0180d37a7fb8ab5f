import fc from 'fast-check';
import { v4, validate } from 'uuid';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  addMonths,
  calendarSpan,
  daysBetween,
  type CivilDate,
} from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { parseCaseText } from '../../src/lib/case/file.ts';
import { caseText } from '../../src/lib/case/raw.ts';
import { withoutIdentity } from '../../src/lib/case/nameless.ts';
import { CaseJudge, judgeCase, sheetOf } from '../../src/lib/judge/judge.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { anyCase } from '../support/anyCase.ts';
import { runs } from '../support/runs.ts';

const SHEET = sheetOf(ATLAS);
const RUNS = { seed: 11, numRuns: runs(150, 30) };

const nameless = (record: Case, chance = 0, limitMonths = [24]) =>
  withoutIdentity(record, {
    label: 'A child',
    examiner: (n) => `Examiner ${String(n).padStart(3, '0')}`,
    known: ATLAS.reflexes,
    limitMonths,
    pick: (count) => Math.abs(chance) % count,
    newId: v4,
  });

/** Opened again from its file, as who receives it would. */
function received(record: Case): Case {
  const parsed = parseCaseText(caseText(record), ATLAS);
  if (!parsed.ok) throw new Error('the file did not open');
  return parsed.value;
}

/** All that is judged as plain values: dates as days since birth, texts and what is looked up left out. */
const plainly = (value: unknown, born: CivilDate): unknown =>
  JSON.parse(
    JSON.stringify(value, (key, part: unknown) => {
      // the ids of visits are made anew
      if (key === 'id' && typeof part === 'string' && validate(part)) return undefined;
      if (['note', 'examiner', 'reading', 'reflexes', 'sequence'].includes(key)) return undefined;
      if (key === 'reflex' && typeof part === 'object') return undefined;
      if (typeof part === 'string' && /^\d{4}-\d\d-\d\d$/.test(part))
        return daysBetween(born, part as CivilDate);
      return part;
    }),
  );

describe('a record without identity', () => {
  it('opens as a record with the same ages, findings, verdicts and orders', () => {
    fc.assert(
      fc.property(
        anyCase(),
        fc.nat(),
        fc.integer({ min: 0, max: 60 }),
        (record, chance, months) => {
          const given = received(nameless(record, chance, [24, months]).record);
          const limits = { pretermBelowDays: 259, untilMonths: months };
          const options = { atlas: ATLAS, sheet: SHEET, limits };
          const judged = (one: Case): unknown =>
            plainly(
              [judgeCase(one, options), new CaseJudge(one, options).sequences],
              one.child.birth.born,
            );
          expect(judged(given)).toEqual(judged(record));
          expect(given.child.birth.gestationalDays).toBe(record.child.birth.gestationalDays);
          expect(given.visits.map(({ milestones }) => milestones)).toEqual(
            record.visits.map(({ milestones }) => milestones),
          );
        },
      ),
      RUNS,
    );
  });

  it('reads every age in months and days as it did, unless it says otherwise', () => {
    let said = 0;
    fc.assert(
      fc.property(anyCase(), fc.nat(), (record, chance) => {
        const { record: given, sameMonths } = nameless(record, chance);
        const spans = ({ visits, child: { birth } }: Case) =>
          visits.map(({ on }) => [calendarSpan(birth.born, on), calendarSpan(birth.due, on)]);
        if (!sameMonths) return;
        said += 1;
        expect(spans(given)).toEqual(spans(record));
      }),
      RUNS,
    );
    expect(said).toBeGreaterThan(RUNS.numRuns / 2);
  });

  it('holds no word that stood in a free text, and no date', () => {
    const secret = fc.stringMatching(/^[b-df-hj-np-tv-xz]{9}$/).map((word) => `Q${word}`);
    fc.assert(
      fc.property(anyCase({ text: secret, name: secret }), fc.nat(), (record, chance) => {
        const before = caseText(record);
        const after = caseText(nameless(record, chance).record);
        const words = [...before.matchAll(/Q[a-z]{9}/g)].map(([word]) => word);
        const dates = [...before.matchAll(/\d{4}-\d\d-\d\d/g)].map(([date]) => date);
        expect(words.length).toBeGreaterThan(0);
        expect(dates.length).toBeGreaterThan(0);
        for (const told of [...words, ...dates]) expect(after).not.toContain(told);
      }),
      RUNS,
    );
  });

  it('is born on another day and month', () => {
    fc.assert(
      fc.property(anyCase(), fc.nat(), (record, chance) => {
        const dayOf = (one: Case): string => one.child.birth.born.slice(5);
        expect(dayOf(nameless(record, chance).record)).not.toBe(dayOf(record));
      }),
      RUNS,
    );
  });

  it('lies on dates that chance has chosen', () => {
    const record = demoCase(ATLAS);
    const births = [0, 1, 2, 3, 4].map((n) => nameless(record, n * 301).record.child.birth.born);
    expect(new Set(births).size).toBe(5);
  });

  it('finds another day even for one born at the end of a month and seen often', () => {
    const demo = demoCase(ATLAS);
    for (const month of [0, 1, 11, 12, 17]) {
      const born = addDays(addMonths('2020-02-01' as CivilDate, month), -1);
      const due = addDays(born, (month * 7) % 100);
      const birth = { ...demo.child.birth, born, due, gestationalDays: 280 - ((month * 7) % 100) };
      const visits = Array.from({ length: 200 }, (_, n) => ({
        id: v4(),
        on: addDays(born, n * 4),
        examiner: '',
        note: '',
        findings: [],
        milestones: [],
      }));
      const record = { ...demo, child: { ...demo.child, birth }, visits };
      const given = nameless(record, month * 31);
      expect(given.keepsDay, born).toBe(false);
      const sides = ({ child: { birth: at }, visits: seen }: Case) =>
        seen.map(({ on }) => on <= addMonths(at.born, 24));
      expect(sides(given.record), born).toEqual(sides(record));
    }
  });

  it('lets the names of examiners and reflexes of one’s own go, and keeps who is who', () => {
    const demo = demoCase(ATLAS);
    const [first] = demo.visits;
    const finding = { ...first!.findings[0]!, reflex: 'own-Mary-Miller' };
    const record: Case = {
      ...demo,
      visits: [
        { ...first!, examiner: 'Zed', findings: [finding] },
        { ...first!, examiner: 'Amy', findings: [] },
      ],
      sheet: { on: first!.on, reflexes: ['moro', 'Mary Miller'] },
    };
    const given = nameless(record).record;
    expect(given.visits.map(({ examiner }) => examiner)).toEqual(['Examiner 002', 'Examiner 001']);
    expect(given.visits[0]?.findings[0]?.reflex).toBe('own-1');
    expect(given.sheet?.reflexes).toEqual(['moro']);
    expect(received(given).visits).toHaveLength(2);
  });
});
