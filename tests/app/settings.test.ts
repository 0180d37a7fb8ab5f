import { describe, expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../src/lib/age/clocks.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { chosenBy, judgingSources } from '../../src/lib/present/sourceChoice.ts';
import { Settings } from '../../src/lib/app/settings.svelte.ts';
import type { Shelf } from '../../src/lib/platform/persisted.svelte.ts';

const known = new Set(ATLAS.sources.keys());

function shelf(kept?: string): Shelf & { kept: string | null } {
  return {
    kept: kept ?? null,
    getItem() {
      return this.kept;
    },
    setItem(_key, value) {
      this.kept = value;
    },
  };
}

describe('settings', () => {
  it('are kept and read again', () => {
    const place = shelf();
    const first = new Settings(place, known);
    first.setTheme('dark');
    first.setText('200');
    first.chooseSources({ by: 'kinds', kinds: ['primary-study'] });
    first.setLimits({ pretermBelowDays: 252, untilMonths: 12 });
    first.setHand('left');
    first.setVerdicts(true);
    const second = new Settings(place, known);
    expect(second.theme).toBe('dark');
    expect(second.text).toBe('200');
    expect(second.sources).toEqual({ by: 'kinds', kinds: ['primary-study'] });
    expect(second.limits).toEqual({ pretermBelowDays: 252, untilMonths: 12 });
    expect(second.byCustom).toBe(false);
    expect(second.hand).toBe('left');
    expect(second.verdicts).toBe(true);
  });

  it.each([
    ['no JSON', '{{{'],
    ['null', 'null'],
    [
      'wrong kinds of values',
      '{"theme":7,"text":"900","hand":"both","verdicts":"yes","sources":"all","limits":{"untilMonths":-1}}',
    ],
    ['a source that is not held', '{"sources":{"by":"one","source":"nowhere"}}'],
    ['limits out of range', '{"limits":{"pretermBelowDays":9999,"untilMonths":24}}'],
  ])('fall back to custom when what was kept is %s', (_, kept) => {
    const settings = new Settings(shelf(kept), known);
    expect(settings.theme).toBe('system');
    expect(settings.text).toBe('100');
    expect(settings.hand).toBe('right');
    expect(settings.verdicts).toBe(false);
    expect(settings.limits).toEqual(DEFAULT_LIMITS);
    expect(settings.byCustom).toBe(true);
  });

  it('go back and forth step by step, and what was kept goes with them', () => {
    const place = shelf();
    const settings = new Settings(place, known);
    settings.setTheme('dark');
    settings.setLimits({ pretermBelowDays: 252, untilMonths: 12 });
    settings.chooseSources({ by: 'kinds', kinds: ['textbook'] });
    settings.setByCustom();
    expect(settings.byCustom).toBe(true);
    expect(settings.kept.undo()).toBe('by-custom');
    expect(settings.limits.untilMonths).toBe(12);
    expect(settings.sources).toEqual({ by: 'kinds', kinds: ['textbook'] });
    settings.kept.undo();
    settings.kept.undo();
    settings.kept.undo();
    expect(settings.theme).toBe('system');
    expect(settings.kept.undo()).toBeUndefined();
    expect(new Settings(place, known).theme).toBe('system');
    settings.kept.redo();
    expect(new Settings(place, known).theme).toBe('dark');
  });

  it('hold without any storage, and when it is full', () => {
    const full: Shelf = {
      getItem: () => null,
      setItem: () => {
        throw new Error('full');
      },
    };
    for (const place of [undefined, full]) {
      const settings = new Settings(place, known);
      settings.setText('150');
      expect(settings.text).toBe('150');
    }
  });
});

describe('the choice of sources', () => {
  const judgedBy = (choice: Parameters<typeof chosenBy>[0]): Set<string> =>
    new Set(
      [...sheetOf(ATLAS, chosenBy(choice, ATLAS)).values()].flatMap(({ windows }) =>
        windows.map((window) => window.claim.source.id),
      ),
    );

  it('takes all, those of a kind, or one', () => {
    expect(judgedBy({ by: 'all' }).size).toBe(judgingSources(ATLAS).length);
    const textbooks = judgedBy({ by: 'kinds', kinds: ['textbook'] });
    expect(textbooks.size).toBeGreaterThan(1);
    for (const id of textbooks) expect(ATLAS.sources.get(id)?.tier).toBe('textbook');
    const [one] = judgingSources(ATLAS);
    expect([...judgedBy({ by: 'one', source: one!.id })]).toEqual([one!.id]);
    expect(judgedBy({ by: 'kinds', kinds: [] }).size).toBe(0);
  });
});
