/** What ready-made talks claim, held against the atlas and the invented child. */
import { describe, expect, test } from 'vitest';
import { TERM_DAYS } from '../../src/lib/age/axis.ts';
import { agesOn } from '../../src/lib/age/clocks.ts';
import { formatGestation } from '../../src/lib/age/gestation.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { setsApart } from '../../src/lib/atlas/apart.ts';
import { likenessOf } from '../../src/lib/atlas/likeness.ts';
import type { Station } from '../../src/lib/atlas/types.ts';
import { datesOf, supportFor, tally } from '../../src/lib/judge/support.ts';
import { MAX_CAPTION } from '../../src/lib/lecture/talkFile.ts';
import { PAIRS } from '../../src/lib/lecture/talks/lookAlikes.ts';
import { VISITS } from '../../src/lib/lecture/talks/readingChild.ts';
import { READY_IDS, readyTalk } from '../../src/lib/lecture/talks/ready.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { en } from '../../src/lib/words/en.ts';

const talks = READY_IDS.map((id) => [id, readyTalk(id, ATLAS)] as const);
const kestrel = demoCase(ATLAS);
const { birth } = kestrel.child;

const appears = (reflex: string): Station => ({ event: 'appears', reflex });
const integrates = (reflex: string): Station => ({ event: 'integrates', reflex });
const counted = (before: Station, after: Station) => tally(supportFor(before, after, ATLAS));

describe.each(talks)('%s', (_id, talk) => {
  test('has six to twelve steps, each named and noted', () => {
    expect(talk.steps.length).toBeGreaterThanOrEqual(6);
    expect(talk.steps.length).toBeLessThanOrEqual(12);
    for (const { caption, note } of talk.steps) {
      expect(caption.length).toBeGreaterThan(10);
      expect(caption.length).toBeLessThanOrEqual(MAX_CAPTION / 2);
      expect(note.length).toBeGreaterThan(80);
      expect(note).not.toMatch(/undefined|NaN|: →| {2}/);
    }
  });

  test('names only what is at hand, and shows what it lights, opens and pictures', () => {
    for (const step of talk.steps) {
      for (const id of [...step.lanes, ...step.opened, step.figure, step.lit])
        if (id !== undefined) expect(ATLAS.reflexes.has(id), id).toBe(true);
      for (const id of [...step.opened, step.figure, step.lit])
        if (id !== undefined) expect(step.lanes).toContain(id);
      if (step.sources !== 'all')
        for (const id of step.sources) {
          expect(ATLAS.sources.has(id), id).toBe(true);
          const says = step.lanes.some((lane) =>
            ATLAS.claims.get(lane)?.some((c) => c.source.id === id && c.role === 'window'),
          );
          expect(says, `${id} speaks of a lane`).toBe(true);
        }
      expect(step.age).toBeGreaterThanOrEqual(step.range.from);
      expect(step.age).toBeLessThanOrEqual(step.range.to);
    }
  });

  test('never says what a child has', () => {
    for (const { caption, note } of talk.steps)
      expect(`${caption} ${note}`).not.toMatch(
        /\b(cerebral palsy|is abnormal|suffers|diagnosed)\b/i,
      );
  });
});

test('handling is shown only with a caution in the note', () => {
  const careful =
    /\b(never|support|hold|keep|stop|ready|guard|gentle|slowly|lightly|light touch|without haste)/i;
  const shown = talks.flatMap(([, talk]) => talk.steps).filter(({ figure }) => figure);
  expect(shown.length).toBeGreaterThan(5);
  for (const { note } of shown) expect(note).toMatch(careful);
});

describe('claims of order', () => {
  test('"the hand lets go before the foot": no pair of windows the other way round', () => {
    const { supports, contradicts } = counted(
      integrates('palmar-grasp'),
      integrates('plantar-grasp'),
    );
    expect(contradicts).toBe(0);
    expect(supports).toBeGreaterThan(0);
  });

  test('"the asymmetrical one is there by term or soon after, the other later"', () => {
    const { supports, contradicts } = counted(appears('atnr'), appears('stnr'));
    expect(contradicts).toBe(0);
    expect(supports).toBeGreaterThan(0);
  });

  test('"first arm from arm": the pairs named in the note are those of the atlas', () => {
    expect(setsApart(ATLAS.reflexes.get('atnr')!)).toBe('arms-from-each-other');
    expect(setsApart(ATLAS.reflexes.get('stnr')!)).toBe('arms-from-legs');
    const counts = counted(
      { event: 'sets-apart', apart: 'arms-from-each-other' },
      { event: 'sets-apart', apart: 'arms-from-legs' },
    );
    expect(counts.contradicts).toBe(0);
    const note = readyTalk('arms-legs', ATLAS).steps[3]?.note;
    expect(note).toContain(`${counts.supports} pairs support the order`);
  });

  test('"backward: the last to come" of the four directions, by the middle of what sources print', () => {
    const middle = (reflex: string): number => {
      const dates = datesOf(appears(reflex), ATLAS).map(({ from, to }) => (from + to) / 2);
      return dates.sort((a, b) => a - b)[Math.floor(dates.length / 2)]!;
    };
    for (const other of ['downward', 'forward', 'sideways'])
      expect(middle('protective-backward')).toBeGreaterThan(middle(`protective-${other}`));
  });

  test('"they come, and stay for life": every protective window but none that ends', () => {
    for (const { lanes } of readyTalk('protective', ATLAS).steps)
      for (const lane of lanes) expect(datesOf(integrates(lane), ATLAS)).toEqual([]);
  });

  test('"from two months to seven": the sources of that step print those ends', () => {
    const step = readyTalk('tables', ATLAS).steps[2]!;
    const ends = datesOf(integrates('atnr'), ATLAS).filter((d) => step.sources.includes(d.source));
    const months = (day: number): number => (day - TERM_DAYS) / 30.4375;
    expect(Math.min(...ends.map((d) => months((d.from + d.to) / 2)))).toBeCloseTo(2, 1);
    expect(Math.max(...ends.map((d) => months(d.to)))).toBeCloseTo(7, 1);
  });

  test('"the foot: half a year apart": so far are the outermost sources of that step', () => {
    const step = readyTalk('tables', ATLAS).steps[4]!;
    const ends = datesOf(integrates('plantar-grasp'), ATLAS)
      .filter((d) => step.sources.includes(d.source))
      .map((d) => (d.from + d.to) / 2);
    expect((Math.max(...ends) - Math.min(...ends)) / 30.4375).toBeGreaterThan(6);
  });
});

describe('look-alikes', () => {
  test.each(PAIRS)(
    '%s and %s look alike, and are told apart by stimulus, sight or position',
    (a, b) => {
      const [one, two] = [ATLAS.reflexes.get(a)!, ATLAS.reflexes.get(b)!];
      expect(likenessOf(one, two)).toBeGreaterThanOrEqual(0.4);
      const same = one.stimulus === two.stimulus && one.position === two.position;
      // both are a tip of the body, with the eyes covered or open: the caption tells those apart
      expect(same).toBe(a === 'labyrinthine-righting');
    },
  );
});

describe('one child counted four ways', () => {
  const text = readyTalk('before-term', ATLAS);

  test('the days named are those of the first visit', () => {
    const ages = agesOn(birth, kestrel.visits[0]!.on);
    const note = text.steps[4]!.note;
    expect(note).toContain(`Chronological: ${ages.chronologicalDays} days`);
    expect(note).toContain(`Corrected: ${ages.correctedDays} days`);
    expect(note).toContain(`Postmenstrual: ${formatGestation(ages.postmenstrualDays)}`);
    expect(note).toContain(en.ages.dateWords(ages.on));
    expect(text.steps[4]!.age).toBe(ages.axisDay);
    expect(text.steps[5]!.age).toBe(TERM_DAYS + ages.chronologicalDays);
  });

  test('the birth is as the child has it', () => {
    const note = text.steps[3]!.note;
    expect(note).toContain(en.ages.dateWords(birth.born));
    expect(note).toContain(formatGestation(birth.gestationalDays));
    expect(note).toContain(`${TERM_DAYS - birth.gestationalDays} days away`);
    expect(text.steps[3]!.age).toBe(birth.gestationalDays);
  });
});

test('reading a child stands at the ages of its visits, each judged by the hall first', () => {
  expect(VISITS).toEqual(kestrel.visits.map(({ on }) => agesOn(birth, on).axisDay));
  const { steps } = readyTalk('reading-a-child', ATLAS);
  steps.forEach(({ child }, index) => {
    if (!child?.verdicts) return;
    expect(steps[index - 1]?.child).toEqual({ ...child, verdicts: false });
  });
  expect(steps.filter(({ child }) => child?.verdicts)).toHaveLength(kestrel.visits.length);
});
