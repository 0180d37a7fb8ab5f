import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { parseCivil } from '../../src/lib/age/civil.ts';
import { dateAtAxisDay } from '../../src/lib/age/clocks.ts';
import { toAxisDay } from '../../src/lib/age/axis.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { turningPoint } from '../../src/lib/judge/hangs.ts';
import { readAt } from '../../src/lib/judge/expectation.ts';
import { verdictOf } from '../../src/lib/judge/verdict.ts';
import { entropy, planFor, POSITION_ORDER } from '../../src/lib/judge/plan.ts';
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
    for (const upsetting of [false, true]) {
      const places = plan.lines
        .filter((line) => line.reflex.upsetting === upsetting)
        .map((line) => POSITION_ORDER.indexOf(line.reflex.position));
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

test('an answer tells most where the sources are even, and nothing where they are sure', () => {
  expect(entropy(0.5)).toBe(1);
  expect(entropy(0)).toBe(0);
  expect(entropy(1)).toBe(0);
  expect(entropy(0.2)).toBeCloseTo(entropy(0.8), 12);
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
