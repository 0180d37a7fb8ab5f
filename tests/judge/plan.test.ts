import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { parseCivil } from '../../src/lib/age/civil.ts';
import { dateAtAxisDay } from '../../src/lib/age/clocks.ts';
import { toAxisDay } from '../../src/lib/age/axis.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { turningPoint } from '../../src/lib/judge/hangs.ts';
import { readAt } from '../../src/lib/judge/expectation.ts';
import { verdictOf } from '../../src/lib/judge/verdict.ts';
import { inOrder, partOf, PARTS, planFor, POSITION_ORDER } from '../../src/lib/judge/plan.ts';
import {
  agesOn,
  birthFromGestation,
  DEFAULT_LIMITS,
  type Birth,
} from '../../src/lib/age/clocks.ts';
import { childCase } from '../support/kestrel.ts';

const options = { atlas: ATLAS, sheet: sheetOf(ATLAS) };
const record = childCase({ born: '2025-10-08', gestation: '31w2d', dating: 'last-period' }, [
  {
    on: '2026-06-18',
    findings: [
      ['palmar-grasp', 'left', 'elicited'],
      ['moro', 'left', 'elicited'],
      ['moro', 'right', 'weak'],
      ['protective-forward', 'left', 'not-elicited'],
    ],
  },
]);
const on = parseCivil('2026-07-15')!;

describe('a plan for a date', () => {
  const plan = planFor(record, on, options);

  test('turns the infant as little as possible, upsetting ones last', () => {
    for (const part of PARTS) {
      const of = plan.lines.filter((line) => partOf(line) === part);
      const core = of.filter((line) => line.coreVoices > 0);
      expect(of.slice(0, core.length)).toEqual(core);
      const lines = part === 'upsetting' ? core : of;
      const places = lines.map((line) => POSITION_ORDER.indexOf(line.reflex.position));
      expect(new Set(places).size).toBeGreaterThan(part === 'upsetting' ? 0 : 2);
      expect(places).toEqual([...places].sort((a, b) => a - b));
    }
    const kinds = plan.lines.map((line) => Number(line.reflex.upsetting));
    expect(kinds).toEqual([...kinds].sort((a, b) => a - b));
  });

  test('names the open question of last time, and what was never tested', () => {
    const why = (id: string) => plan.lines.find((l) => l.reflex.id === id)?.why.map((w) => w.code);
    expect(why('palmar-grasp')).toContain('open-question');
    expect(why('landau')).toContain('never-tested');
  });

  test('dates each open question by the sources that date it', () => {
    const moro = plan.questions.find((q) => q.reflex === 'moro' && q.side === 'left')!;
    const latest = Math.max(
      ...options.sheet
        .get('moro')!
        .windows.map((w) => (Number.isFinite(w.integratesTo) ? w.integratesTo : 0)),
    );
    expect(moro.awaits).toBe('to-integrate');
    expect(moro.every).toBe(dateAtAxisDay(record.child.birth, toAxisDay(latest)));
    expect(moro.most! <= moro.every!).toBe(true);
  });

  test('asks nothing that every source is silent on', () => {
    for (const line of plan.lines) {
      const reading = readAt(options.sheet.get(line.reflex.id)!, plan.ages.axisDay, 0);
      expect(reading.phases.some((p, i) => i % 6 !== 0 && p > 0)).toBe(true);
    }
  });
});

describe('why a reflex is on the plan', () => {
  const term = { born: '2026-01-05', gestation: '40w0d' };
  const why = (visits: Parameters<typeof childCase>[1], id: string, day = '2026-04-20') => {
    const plan = planFor(childCase(term, visits), parseCivil(day)!, options);
    const of = (lines: typeof plan.lines) => lines.find((line) => line.reflex.id === id)?.why;
    return { asked: of(plan.lines), rest: of(plan.rest) };
  };
  const moro = (left: 'elicited' | 'weak' | 'not-elicited', right = left, on = '2026-03-02') => ({
    on,
    findings: [
      ['moro', 'left', left] as ['moro', 'left', typeof left],
      ['moro', 'right', right] as ['moro', 'right', typeof left],
    ],
  });

  test('a window that closes is dated by the source that lets it go last', () => {
    const closing = why([], 'moro').asked!.find(({ code }) => code === 'closing')!;
    const ends = options.sheet.get('moro')!.windows.map((w) => w.integratesTo);
    const latest = Math.max(...ends.filter(Number.isFinite));
    // born at term, so that an axis day is a day since birth
    const days = (Date.parse('2026-01-05') - 0) / 86_400_000 + Math.ceil(latest - 280);
    expect(closing).toMatchObject({
      by: latest,
      date: new Date(days * 86_400_000).toISOString().slice(0, 10),
      byAll: ends.every(Number.isFinite),
    });
  });

  test('what was uneven, obligatory or had returned last time is named', () => {
    const flagsOf = (visits: Parameters<typeof childCase>[1], id: string) =>
      why(visits, id).asked!.flatMap((w) => (w.code === 'open-question' ? w.flags : []));
    expect(flagsOf([moro('elicited', 'weak')], 'moro')).toContain('uneven');
    expect(
      flagsOf([{ on: '2026-03-02', findings: [['atnr', 'left', 'obligatory']] }], 'atnr'),
    ).toContain('obligatory');
    expect(
      flagsOf(
        [
          moro('elicited', 'elicited', '2026-01-12'),
          moro('not-elicited', 'not-elicited', '2026-02-09'),
          moro('elicited', 'elicited', '2026-03-02'),
        ],
        'moro',
      ),
    ).toContain('returned');
  });

  test('what could not be read last time is asked again, and only until it is answered', () => {
    const crying = {
      on: '2026-03-02',
      findings: [['landau', 'midline', 'not-elicited', 'crying'] as never],
    };
    expect(why([crying], 'landau').asked).toContainEqual({
      code: 'unread',
      response: 'not-elicited',
      state: 'crying',
      on: '2026-03-02',
    });
    const answered = { on: '2026-03-09', findings: [['landau', 'midline', 'elicited'] as never] };
    const { asked, rest } = why([crying, answered], 'landau');
    expect([...(asked ?? []), ...(rest ?? [])].map(({ code }) => code)).not.toContain('unread');
  });

  test('a response seen to have gone on both sides is left off, with the day it was seen', () => {
    const gone = [moro('elicited', 'elicited', '2026-02-02'), moro('not-elicited')];
    const late = gone.map((visit, i) => ({ ...visit, on: ['2026-05-04', '2026-08-03'][i]! }));
    expect(why(late, 'moro', '2026-08-31')).toEqual({
      asked: undefined,
      rest: expect.arrayContaining([{ code: 'settled', now: 'gone', on: '2026-08-03' }]) as unknown,
    });
    const oneSide = [{ on: '2026-08-03', findings: [['moro', 'left', 'not-elicited'] as never] }];
    expect(why(oneSide, 'moro', '2026-08-31').rest ?? []).not.toContainEqual(
      expect.objectContaining({ code: 'settled' }),
    );
  });

  test('a reflex no chosen source speaks of is never proposed, and says so', () => {
    const none = { atlas: ATLAS, sheet: sheetOf(ATLAS, new Set()) };
    const plan = planFor(childCase(term, []), on, none);
    expect(plan.lines).toEqual([]);
    expect(plan.rest).toHaveLength(ATLAS.reflexes.size);
    for (const { why: all, tells } of plan.rest) {
      expect(all).toEqual([{ code: 'silent' }]);
      expect(tells).toBe(0);
    }
  });

  test('what was missing once asks for a second try, on its sides, until it was tried twice', () => {
    const missing = (tries: number, right: 'elicited' | 'not-elicited' = 'not-elicited') => ({
      on: '2026-03-02',
      findings: [
        ['moro', 'left', 'not-elicited', 'quiet-alert', tries] as never,
        ['moro', 'right', right, 'quiet-alert', right === 'elicited' ? 1 : tries] as never,
      ],
    });
    const asked = why([missing(1)], 'moro').asked!;
    expect(asked).toContainEqual({
      code: 'second-try',
      sides: ['left', 'right'],
      on: '2026-03-02',
    });
    const codes = (visits: Parameters<typeof childCase>[1]) =>
      why(visits, 'moro').asked!.map(({ code }) => code);
    expect(codes([missing(1)])).toContain('open-question');
    expect(codes([missing(2)])).not.toContain('second-try');
    // one side beside one that answers needs none
    expect(codes([missing(1, 'elicited')])).not.toContain('second-try');
  });

  test('what is described in water is never proposed, also where it was recorded', () => {
    for (const day of ['2026-01-20', '2026-04-20', '2026-09-20']) {
      const seen = { on: '2026-01-12', findings: [['swimming', 'midline', 'weak'] as never] };
      const { asked, rest } = why([seen], 'swimming', day);
      expect(asked).toBeUndefined();
      expect(rest!.map(({ code }) => code)).toContain('teaching-only');
    }
  });

  test('what is not expected yet and whose absence tells little is left off, and comes later', () => {
    const at = (day: string) => why([], 'stnr', day);
    expect(at('2026-04-20').rest!.map(({ code }) => code)).toContain('tells-nothing');
    expect(at('2026-08-20').asked).toBeDefined();
  });

  test('every reflex is on the plan or off it, each list in the order of testing', () => {
    const anyDay = fc.integer({ min: 0, max: 700 });
    fc.assert(
      fc.property(anyDay, (days) => {
        const day = dateAtAxisDay(childCase(term, []).child.birth, toAxisDay(280 + days));
        const { lines, rest } = planFor(record, day < on ? on : day, options);
        const ids = [...lines, ...rest].map(({ reflex }) => reflex.id);
        expect(new Set(ids).size).toBe(ATLAS.reflexes.size);
        for (const list of [lines, rest])
          expect([...list].sort(inOrder).map((l) => l.reflex.id)).toEqual(
            list.map((l) => l.reflex.id),
          );
      }),
      { numRuns: 30 },
    );
  });
});

test('a turning point is where a scan over every day of gestation finds it', () => {
  let turned = 0;
  for (const reflex of ['moro', 'palmar-grasp', 'atnr', 'stepping', 'landau', 'galant'])
    for (let months = 1; months < 9; months++) {
      const birth = birthFromGestation(parseCivil('2026-01-01')!, 219, 'last-period') as Birth;
      const visit = parseCivil(`2026-${String(months + 1).padStart(2, '0')}-20`)!;
      const finding = {
        reflex,
        side: 'left',
        response: 'elicited',
        state: 'quiet-alert',
        note: '',
      } as const;
      const compiled = options.sheet.get(reflex)!;
      const ages = agesOn(birth, visit);
      const judged = verdictOf(finding, readAt(compiled, ages.axisDay, ages.sdDays));
      if (judged.verdict === 'not-judged') continue;
      const turning = turningPoint(finding, judged.verdict, compiled, birth, visit, DEFAULT_LIMITS);
      if (!turning) continue;
      turned++;
      const good = (gestation: number): boolean => {
        const shifted = birthFromGestation(birth.born, gestation, birth.dating) as Birth;
        const exact = verdictOf(finding, readAt(compiled, agesOn(shifted, visit).axisDay, 0));
        return exact.verdict === judged.verdict && (turning.kind === 'holds' || exact.firm);
      };
      if (turning.fromDays !== null) {
        expect(good(turning.fromDays)).toBe(true);
        expect(good(turning.fromDays - 1)).toBe(false);
      }
      if (turning.toDays !== null) {
        expect(good(turning.toDays)).toBe(true);
        expect(good(turning.toDays + 1)).toBe(false);
      }
    }
  expect(turned).toBeGreaterThan(5);
});
