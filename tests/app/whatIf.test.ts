import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { DATING_SD_DAYS } from '../../src/lib/age/doubt.ts';
import { DEFAULT_LIMITS } from '../../src/lib/age/clocks.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { Desk } from '../../src/lib/repository/cases.svelte.ts';
import { Judgement } from '../../src/lib/app/judgement.svelte.ts';
import { Settings } from '../../src/lib/app/settings.svelte.ts';
import { Trial } from '../../src/lib/app/whatIf.svelte.ts';
import { turningsOf } from '../../src/lib/present/sensitivity.ts';
import { View } from '../../src/lib/app/view.svelte.ts';

const record = demoCase(ATLAS);

function bench() {
  const desk = new Desk(ATLAS, [{ id: 'kestrel', record }], undefined);
  const trial = new Trial(() => desk.open?.id);
  const settings = new Settings(undefined, ATLAS.sources);
  const judgement = new Judgement(ATLAS, desk, settings, new View(), trial);
  return { desk, trial, settings, judgement };
}

const verdicts = ({ judgement }: ReturnType<typeof bench>): string[] =>
  judgement.visits.flatMap(({ findings }) => findings.map(({ judged }) => judged.verdict));

describe('what if', () => {
  test('nothing tried is the record itself', () => {
    const all = bench();
    expect(all.trial.isOn).toBe(false);
    expect(all.judgement.record).toBe(all.judgement.recorded);
    const meaning = all.judgement.recordedVisits.flatMap(({ findings }) =>
      findings.map(({ judged }) => judged.verdict),
    );
    expect(meaning).toEqual(verdicts(all));
  });

  test('another gestation moves ages and verdicts, and one step goes back to the record', () => {
    const all = bench();
    const before = verdicts(all);
    const ages = all.judgement.shown!.ages;
    all.trial.set({ gestationalDays: record.child.birth.gestationalDays - 28 });
    expect(all.judgement.shown!.ages.correctedDays).toBe(ages.correctedDays - 28);
    expect(verdicts(all)).not.toEqual(before);
    expect(all.desk.open?.record).toBe(record);
    const turned = all.judgement.shown!.findings.filter((f) => all.judgement.meantOtherwise(f));
    expect(turned.length).toBeGreaterThan(0);
    for (const found of turned)
      expect(all.judgement.meantOtherwise(found)!.finding).toBe(found.finding);
    all.trial.clear();
    expect(verdicts(all)).toEqual(before);
    expect(all.judgement.shown!.findings.some((f) => all.judgement.meantOtherwise(f))).toBe(false);
  });

  test('dating, sources and limits each reach the judgement', () => {
    const all = bench();
    all.trial.set({ dating: 'newborn-exam' });
    expect(all.judgement.shown!.ages.sdDays).toBe(DATING_SD_DAYS['newborn-exam']);
    all.trial.clear();
    all.trial.set({ limits: { ...DEFAULT_LIMITS, pretermBelowDays: 28 * 7 } });
    expect(all.judgement.shown!.ages.counts).toBe('chronological');
    all.trial.clear();
    const [source] = [...ATLAS.sources.values()].filter(({ claims }) =>
      claims.some(({ role }) => role === 'window'),
    );
    all.trial.set({ sources: { by: 'one', source: source!.id } });
    const spoken = all.judgement.visits.flatMap(({ findings }) =>
      findings.flatMap(({ reading }) => reading.compiled.windows.map((w) => w.claim.source.id)),
    );
    expect(new Set(spoken)).toEqual(new Set([source!.id]));
    expect(all.settings.sources).toEqual({ by: 'default' });
  });

  test('what is tried on one child is not tried on the next', () => {
    const all = bench();
    all.trial.set({ gestationalDays: 200 });
    all.desk.addChild({
      label: 'Tern',
      born: '2026-01-01',
      gestation: '30w0d',
      dating: 'unknown',
      invented: true,
    });
    expect(all.trial.isOn).toBe(false);
    expect(all.judgement.record?.child.birth.gestationalDays).toBe(210);
    all.desk.openChild('kestrel');
    expect(all.trial.isOn).toBe(true);
  });
});

test('each turning point turns: one day nearer the verdict is as it was, at it the new one', () => {
  const all = bench();
  const { birth } = record.child;
  const turnings = turningsOf(all.judgement.shown!, birth, DEFAULT_LIMITS);
  expect(turnings.length).toBeGreaterThan(3);
  for (const { found, was, is, way, days } of turnings) {
    const verdictIf = (gestationalDays: number): string | undefined => {
      all.trial.set({ gestationalDays });
      return all.judgement.shown!.findings.find((f) => f.finding === found.finding)?.judged.verdict;
    };
    expect(verdictIf(days)).toBe(is);
    expect(verdictIf(days + (way === 'earlier' ? 1 : -1))).toBe(was);
  }
});
