import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DAYS_PER_MONTH } from '../../src/lib/age/axis.ts';
import type { CivilDate } from '../../src/lib/age/civil.ts';
import { DEFAULT_LIMITS } from '../../src/lib/age/clocks.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { inOrder, planFor } from '../../src/lib/judge/plan.ts';
import { blankAge } from '../../src/lib/present/blankSheetAge.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { planDate } from '../../src/lib/present/plan.ts';
import {
  partsOf,
  sharedCautions,
  sheetWith,
  withLine,
  withoutLine,
} from '../../src/lib/present/planSheet.ts';

const record = demoCase(ATLAS);
const plan = planFor(record, '2026-06-08' as CivilDate, {
  atlas: ATLAS,
  sheet: sheetOf(ATLAS),
});
const proposed = plan.lines.map(({ reflex }) => reflex.id);

describe('the sheet of a visit', () => {
  it('is what the plan proposes until something is changed', () => {
    const sheet = sheetWith(plan, undefined);
    expect(sheet.ids).toEqual(proposed);
    expect(sheet.lines.every(({ byHand }) => !byHand)).toBe(true);
    expect(sheet.dropped).toEqual([]);
    expect(sheet.more).toEqual(plan.rest.filter(({ reflex }) => reflex.id !== 'swimming'));
  });

  it('drops a line, offers it again, and takes it back where it stood', () => {
    const whole = sheetWith(plan, undefined);
    for (const id of proposed) {
      const without = sheetWith(plan, withoutLine(whole, id));
      expect(without.dropped.map(({ reflex }) => reflex.id)).toEqual([id]);
      expect(withLine(without, without.dropped[0]!)).toEqual(proposed);
    }
  });

  it('says which lines were added by hand, and puts them in the order of testing', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([...plan.rest]), (added) => {
        let sheet = sheetWith(plan, undefined);
        for (const line of added) sheet = sheetWith(plan, withLine(sheet, line));
        expect(new Set(sheet.lines.filter((l) => l.byHand).map((l) => l.reflex.id))).toEqual(
          new Set(added.map((l) => l.reflex.id)),
        );
        const ids = sheet.lines.map(({ reflex }) => reflex.id);
        expect([...sheet.lines].sort(inOrder).map(({ reflex }) => reflex.id)).toEqual(ids);
      }),
    );
  });

  it('keeps what is no longer in the atlas until it is dropped', () => {
    const sheet = sheetWith(plan, ['own-fencer', 'moro']);
    expect(sheet.unknown).toEqual(['own-fencer']);
    expect(sheet.lines.map(({ reflex }) => reflex.id)).toEqual(['moro']);
    expect(withLine(sheet, sheet.dropped[0]!)).toContain('own-fencer');
    expect(withoutLine(sheet, 'own-fencer')).toEqual(['moro']);
  });

  it('has the core set, then what else, what may upset at the end, in runs of one position', () => {
    const parts = partsOf(sheetWith(plan, undefined).lines);
    expect(parts.map(({ part }) => part)).toEqual(['core', 'also', 'upsetting']);
    for (const { part, runs } of parts)
      for (const { position, lines } of runs)
        for (const { reflex, coreVoices } of lines) {
          expect(part === 'upsetting').toBe(reflex.upsetting);
          if (part === 'upsetting') continue;
          expect(coreVoices > 0).toBe(part === 'core');
          expect(reflex.position).toBe(position);
        }
    const all = parts.flatMap(({ runs }) => runs.flatMap(({ lines }) => lines));
    expect(all.map(({ reflex }) => reflex.id)).toEqual(proposed);
  });

  it('has what was flagged last time ahead of the rest where that is asked for, and each line once', () => {
    const { lines } = sheetWith(plan, undefined);
    const [flagged, ...rest] = partsOf(lines, true);
    const idsOf = (parts: readonly (typeof flagged)[]) =>
      parts.flatMap((part) =>
        part!.runs.flatMap((run) => run.lines.map(({ reflex }) => reflex.id)),
      );
    expect(flagged!.part).toBe('flagged');
    // what Kestrel had flagged on 11 May, upsetting or not
    expect(idsOf([flagged]).toSorted()).toEqual(['atnr', 'crossed-extension', 'moro']);
    expect(rest.map(({ part }) => part)).toEqual(['core', 'also', 'upsetting']);
    expect([...idsOf([flagged]), ...idsOf(rest)].toSorted()).toEqual(proposed.toSorted());
  });

  it('says together only the cautions that every line has', () => {
    const { lines } = sheetWith(plan, undefined);
    const shared = sharedCautions(lines);
    expect(shared).toContain('stop-if-distress');
    for (const { reflex } of lines) expect(reflex.cautions).toEqual(expect.arrayContaining(shared));
    expect(sharedCautions(lines.slice(0, 1))).toEqual([]);
  });

  it('is made for the date of the sheet that is kept, while no visit is later', () => {
    const kept = (on: string) => ({ ...record, sheet: { on: on as CivilDate, reflexes: [] } });
    expect(planDate(kept('2026-06-15'), '2026-06-01' as CivilDate)).toBe('2026-06-15');
    expect(planDate(kept('2026-04-01'), '2026-06-01' as CivilDate)).toBe('2026-05-11');
  });
});

describe('the age of a sheet without a child', () => {
  const age = (gestation: string, text: string, clock: Parameters<typeof blankAge>[2]) =>
    blankAge(gestation, text, clock, DEFAULT_LIMITS);

  // AAP 2004: corrected age = age since birth less the weeks born before 40
  it('born at 30w0d, five months since birth are those less ten weeks', () => {
    expect(age('30w0d', '5', 'birth')).toEqual({
      axisDay: 280 + 5 * DAYS_PER_MONTH - 70,
      counts: 'corrected',
      gestationalDays: 210,
    });
  });

  it('born at 30w0d, a corrected age lies that long after term', () => {
    expect(age('30w0d', '2,5', 'corrected')).toMatchObject({ axisDay: 280 + 2.5 * DAYS_PER_MONTH });
  });

  it('born at 39w0d, the age since birth counts: a week less than from the due date is added', () => {
    expect(age('39w0d', '3', 'birth')).toMatchObject({
      axisDay: 280 + 3 * DAYS_PER_MONTH,
      counts: 'chronological',
    });
    expect(age('39w0d', '3', 'corrected')).toMatchObject({
      axisDay: 280 + 3 * DAYS_PER_MONTH + 7,
    });
  });

  it('before term the weeks since the last period are the place on the axis', () => {
    expect(age('29w0d', '34w2d', 'gestation')).toMatchObject({ axisDay: 34 * 7 + 2 });
  });

  it('past 24 months the age since birth counts', () => {
    expect(age('30w0d', '25', 'birth')).toMatchObject({
      counts: 'chronological',
      axisDay: 280 + 25 * DAYS_PER_MONTH,
    });
  });

  it.each([
    ['50w0d', '4', 'corrected', 'bad-gestation'],
    ['soon', '4', 'corrected', 'bad-gestation'],
    ['40w0d', 'four', 'corrected', 'bad-months'],
    ['40w0d', '99', 'birth', 'bad-months'],
    ['40w0d', '4', 'gestation', 'before-birth'],
    ['40w0d', 'x', 'gestation', 'bad-postmenstrual'],
    ['40w0d', '-1', 'corrected', 'before-birth'],
  ] as const)('%s, %s %s is refused: %s', (gestation, text, clock, problem) => {
    expect(age(gestation, text, clock)).toBe(problem);
  });
});
