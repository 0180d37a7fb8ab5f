import { turningsOfOne } from '../../src/lib/present/sensitivity.ts';
import { describe, expect, it } from 'vitest';
import { addDays, daysBetween } from '../../src/lib/age/civil.ts';
import { DEFAULT_LIMITS } from '../../src/lib/age/clocks.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { CaseJudge, judgeCase, sheetOf } from '../../src/lib/judge/judge.ts';
import { nextVisit } from '../../src/lib/judge/nextVisit.ts';
import { WRITTEN_FOR } from '../../src/lib/examples/shift.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { entriesOf, isPlainlyUneven } from '../../src/lib/present/verdictEntries.ts';
import { groundOf } from '../../src/lib/present/ground.ts';
import { en } from '../../src/lib/words/en.ts';

const record = demoCase(ATLAS);
const visits = judgeCase(record, { atlas: ATLAS, sheet: sheetOf(ATLAS) });
const last = visits.at(-1)!;
const entries = entriesOf([last], visits.slice(0, -1));
const entry = (reflex: string) => entries.find((one) => one.reflex.id === reflex)!;

describe('the invented child', () => {
  it('is marked as invented and 5 months 1 week corrected at the last visit', () => {
    expect(record.child.invented).toBe(true);
    expect(en.ages.correctedWords(last.ages)).toBe('5 mo 1 wk');
    expect(en.ages.chronologicalWords(last.ages, record.child.birth.born)).toBe('7 mo 1 wk');
  });

  it('has a response that persists firmly', () => {
    const { attention, lead } = entry('crossed-extension');
    expect(lead.judged).toMatchObject({ verdict: 'persisting', firm: true });
    expect(attention).toBe('discuss');
  });

  it('has an answer that is obligatory to the left', () => {
    const { attention, lead } = entry('atnr');
    expect(attention).toBe('discuss');
    expect(lead.finding).toMatchObject({ side: 'left', response: 'obligatory' });
    expect(lead.raised.map(({ flag }) => flag)).toContain('obligatory');
  });

  it('has a pair that is weaker on the right at every visit', () => {
    const { attention, weaker } = entry('moro');
    expect(attention).toBe('watch');
    expect(weaker).toEqual({
      side: 'right',
      response: 'weak',
      other: 'elicited',
      visits: 3,
      trend: 'same',
    });
  });

  it('has a verdict that hangs on the due date', () => {
    const { lead } = entry('atnr');
    const { birth } = record.child;
    const likely = turningsOfOne(lead, last.visit.on, birth, DEFAULT_LIMITS, true).filter(
      (turning) => turning.likely,
    );
    expect(likely).toMatchObject([{ way: 'earlier', days: 213 }]);
  });

  it('has what fits, and what is not judged since it was asked of a crying infant', () => {
    expect(entries.filter(({ attention }) => attention === 'fits').length).toBeGreaterThan(5);
    expect(entry('optical-righting').lead.judged).toMatchObject({
      verdict: 'not-judged',
      why: { code: 'unfit-state', state: 'crying' },
    });
  });

  it('has limbs that come apart in their order', () => {
    const checks = new CaseJudge(record, { atlas: ATLAS, sheet: sheetOf(ATLAS) }).sequences;
    expect(checks.find(({ sequence }) => sequence.id === 'arms-then-legs')?.order).toBe('in-order');
  });

  it('is told beside the forward protection, and nowhere else, that two tests are read together', () => {
    for (const one of entries) {
      const said = en.attention.entrySentences({ ...one, plainlyUneven: isPlainlyUneven(one) });
      expect(said.some((sentence) => sentence.startsWith('Two tests are read together'))).toBe(
        one.reflex.id === 'protective-forward',
      );
    }
  });

  it('has one entry a reflex, what asks for most first', () => {
    expect(new Set(entries.map(({ reflex }) => reflex.id)).size).toBe(entries.length);
    const rank = ['today', 'discuss', 'watch', 'fits', 'not-judged'];
    const ranks = entries.map(({ attention }) => rank.indexOf(attention));
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
  });

  it('has each verdict resting on claims that are all in reach', () => {
    for (const { lead, reflex } of entries) {
      const { speaking, silent, context } = groundOf(lead, ATLAS);
      expect(speaking.length + silent.length + context.length).toBe(
        ATLAS.claims.get(reflex.id)?.length,
      );
    }
  });
});

describe('on any day', () => {
  const DAYS = [-400, -1, 0, 1, 30, 61, 366, 1000];
  const options = { atlas: ATLAS, sheet: sheetOf(ATLAS), limits: DEFAULT_LIMITS };
  const onDay = (days: number) => demoCase(ATLAS, addDays(WRITTEN_FOR, days));

  it.each(DAYS)('%i days later it is as old, was seen as lately, and has the same ids', (days) => {
    const later = onDay(days);
    const agesOf = (of: typeof record) =>
      judgeCase(of, options).map(({ visit, ages }) => [
        visit.id,
        ages.chronologicalDays,
        ages.axisDay,
      ]);
    expect(agesOf(later)).toEqual(agesOf(record));
    expect(daysBetween(later.visits.at(-1)!.on, addDays(WRITTEN_FOR, days))).toBe(28);
    expect(later.question).toBe(record.question);
  });

  it('is what it was on the day it was written for, and is never long overdue', () => {
    expect(onDay(0)).toEqual(demoCase(ATLAS));
    expect(record.child.birth.born).toBe('2025-10-04');
    const judge = new CaseJudge(onDay(500), options);
    const next = nextVisit(judge, options);
    expect(daysBetween(next!.by, addDays(WRITTEN_FOR, 500))).toBeLessThanOrEqual(14);
  });
});
