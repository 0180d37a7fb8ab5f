import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toAxisDay } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { LIMITS } from '../../src/lib/chart/viewport.ts';
import {
  lacks,
  lanesInSight,
  missingIn,
  movedStep,
  stepWithin,
  type Talk,
} from '../../src/lib/lecture/talk.ts';
import { parseTalkText, talkText, type TalkProblem } from '../../src/lib/lecture/talkFile.ts';
import { READY_IDS, readyTalk } from '../../src/lib/lecture/talks/ready.ts';
import { en } from '../../src/lib/words/en.ts';

const TALK = readyTalk('reading-a-child', ATLAS);

const parsed = (text: string): Talk => {
  const read = parseTalkText(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.talk;
};
const problemsOf = (text: string): readonly TalkProblem[] => {
  const read = parseTalkText(text);
  return read.ok ? [] : read.problems;
};
const changed = (change: (raw: Record<string, unknown>) => void): string => {
  const raw = JSON.parse(talkText(TALK)) as Record<string, unknown>;
  change(raw);
  return JSON.stringify(raw);
};
const inStep = (part: Record<string, unknown>): string =>
  changed((raw) => {
    raw['steps'] = (raw['steps'] as object[]).map((s, i) => (i === 2 ? { ...s, ...part } : s));
  });

const id = fc.stringMatching(/^[a-z][a-z-]{0,20}$/);
const ids = fc.uniqueArray(id, { maxLength: 8 });
const plain = fc.stringMatching(/^[a-zA-Z0-9 .,:;?-]{0,60}$/).map((text) => text.trim());
const step = fc
  .record({
    caption: plain,
    note: plain,
    lanes: ids,
    age: fc.double({ min: LIMITS.from, max: LIMITS.to, noNaN: true }).map(toAxisDay),
    range: fc
      .tuple(fc.integer({ min: 60, max: 500 }), fc.integer({ min: 14, max: 900 }))
      .map(([from, span]) => ({ from: toAxisDay(from), to: toAxisDay(from + span) })),
    sources: fc.oneof(fc.constantFrom('all' as const, 'default' as const), ids),
    opened: ids,
    orders: ids,
  })
  .chain((one) =>
    fc
      .record(
        {
          figure: id,
          lit: id,
          child: fc.record({ id, visits: fc.nat(9), verdicts: fc.boolean() }),
        },
        { requiredKeys: [] },
      )
      .map((rest) => ({ ...one, ...rest })),
  );
const talk: fc.Arbitrary<Talk> = fc.record({
  title: plain.map((text) => text || 'x'),
  about: plain,
  steps: fc.array(step, { minLength: 1, maxLength: 6 }),
});

describe('a talk file', () => {
  test('gives back what was written, whatever the talk', () => {
    fc.assert(
      fc.property(talk, (one) => {
        expect(parsed(talkText(one))).toEqual(JSON.parse(JSON.stringify(one)));
      }),
    );
  });

  test('of a ready-made talk opens and lacks nothing', () => {
    for (const ready of READY_IDS) {
      const one = readyTalk(ready, ATLAS);
      expect(parsed(talkText(one))).toEqual(one);
      expect(lacks(missingIn(one, ATLAS))).toBe(false);
    }
  });

  test('cut short anywhere is refused in a sentence', () => {
    const text = talkText(TALK).trimEnd();
    fc.assert(
      fc.property(fc.integer({ min: 0, max: text.length - 1 }), (at) => {
        const problems = problemsOf(text.slice(0, at));
        expect(problems.length).toBeGreaterThan(0);
        for (const problem of problems)
          expect(en.talks.faultSentence(problem)).toMatch(/^[A-Z].*[.:]/);
      }),
    );
  });

  test.each([
    ['{"format":"tidemark-case","version":1}', 'not-ours'],
    ['[]', 'not-ours'],
    ['null', 'not-ours'],
    ['hello', 'not-json'],
    ['', 'blank'],
    ['{"format":"tidemark-talk","version":2,"title":"x"}', 'newer-version'],
    ['{"format":"tidemark-talk","version":"one"}', 'unknown-version'],
    ['{"format":"tidemark-talk"}', 'missing'],
    [changed((raw) => delete raw['title']), 'missing'],
    [changed((raw) => (raw['steps'] = [])), 'empty'],
    [changed((raw) => (raw['title'] = '  ')), 'empty'],
    [changed((raw) => (raw['title'] = 'a<script>x</script>')), 'markup'],
    [inStep({ caption: '<img src=x onerror=alert(1)>' }), 'markup'],
    [inStep({ note: 'javascript:alert(1)' }), 'markup'],
    [inStep({ caption: 'two\nlines' }), 'control'],
    [inStep({ note: 'turned \u202e round' }), 'control'],
    [inStep({ note: 'x'.repeat(5000) }), 'too-long'],
    [inStep({ lanes: ['moro"><svg'] }), 'bad-name'],
    [inStep({ lanes: Array.from({ length: 500 }, (_, i) => `r${i}`) }), 'too-many'],
    [inStep({ ageDays: 1e9 }), 'out-of-range'],
    [inStep({ fromDays: 300, toDays: 300 }), 'out-of-range'],
    [inStep({ lanes: 'moro' }), 'wrong-type'],
    [inStep({ ageDays: null }), 'wrong-type'],
    [inStep({ sources: 'some' }), 'wrong-type'],
    ['x'.repeat(2_000_001), 'too-large'],
  ])('with a fault says which (%#)', (text, code) => {
    const problems = problemsOf(text);
    expect(problems.map((p) => p.code)).toContain(code);
    for (const problem of problems)
      expect(en.talks.faultSentence(problem)).not.toMatch(/undefined|NaN/);
  });

  test('says the step in which a fault is', () => {
    expect(problemsOf(inStep({ ageDays: 1e9 }))[0]).toMatchObject({ step: 3, field: 'ageDays' });
    expect(en.talks.faultSentence(problemsOf(inStep({ lanes: 3 }))[0]!)).toMatch(/^Step 3, lanes:/);
  });

  test('naming what is not at hand opens, says what, and keeps it', () => {
    const text = inStep({
      lanes: ['moro', 'own-knee'],
      sources: ['nelson', 'own-book'],
      orders: ['own-order'],
      child: { id: 'heron', visits: 1, verdicts: false },
    });
    const one = parsed(text);
    const missing = missingIn(one, ATLAS);
    expect(missing).toEqual({
      reflexes: ['own-knee'],
      sources: ['own-book'],
      orders: ['own-order'],
      children: ['heron'],
    });
    const said = en.talks.missingSentence(missing);
    for (const name of ['own-knee', 'own-book', 'own-order', 'heron']) expect(said).toContain(name);
    expect(parsed(talkText(one)).steps[2]?.lanes).toEqual(['moro', 'own-knee']);
  });
});

describe('steps', () => {
  test('moved keep every step, and the way back is the way there', () => {
    const place = fc.integer({ min: -2, max: 9 });
    fc.assert(
      fc.property(place, place, (from, to) => {
        const there = movedStep(TALK.steps, from, to);
        expect(new Set(there)).toEqual(new Set(TALK.steps));
        expect(there).toHaveLength(TALK.steps.length);
        if (there !== TALK.steps) {
          expect(there[to]).toBe(TALK.steps[from]);
          expect(movedStep(there, to, from)).toEqual(TALK.steps);
        }
      }),
    );
  });

  test('asked for beyond the ends are the ends', () => {
    expect([-3, 0, 2, 7, 99, NaN].map((n) => stepWithin(n, 8))).toEqual([0, 0, 2, 7, 7, 0]);
    expect(stepWithin(3, 0)).toBe(0);
  });
});

describe('lanes in sight', () => {
  test('are a stretch of the lanes, never more than fit nor than are wanted, and full', () => {
    const lanes = fc.uniqueArray(fc.string({ minLength: 1 }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(
        lanes,
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 1, max: 50 }),
        fc.integer({ min: -9, max: 50 }),
        (all, capacity, wanted, at) => {
          const { lanes: seen, from } = lanesInSight(all, capacity, wanted, at);
          expect(seen).toHaveLength(Math.min(capacity, wanted, all.length));
          expect(seen).toEqual(all.slice(from, from + seen.length));
        },
      ),
    );
  });
});
