/** Questions: one right answer each, none twice in a set, and every answer found again another way. */
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { likenessOf } from '../../src/lib/atlas/likeness.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { groundOf } from '../../src/lib/lecture/questions/ground.ts';
import {
  DIFFICULTIES,
  KINDS,
  kindOf,
  type Difficulty,
  type Question,
  type QuestionKind,
} from '../../src/lib/words/question.ts';
import { questionSet } from '../../src/lib/lecture/questions/set.ts';
import { rowsOf } from './printed.ts';
import { truthOf } from './truth.ts';

const ground = groundOf(ATLAS, sheetOf(ATLAS));

/** Sets of 25 from consecutive seeds, all three difficulties in turn, a thousand questions and more. */
const SETS = Array.from({ length: 45 }, (_, seed) =>
  questionSet(ground, { seed, count: 25, difficulty: DIFFICULTIES[seed % 3]! }),
);
const ALL = SETS.flat();

const told = (q: Question): string => JSON.stringify({ ...q, why: undefined });

/** What is wrong with the answers of a question, by the other path. */
function faults(question: Question, chosen?: string): string[] {
  return question.choices.flatMap((choice, i) => {
    const truth = truthOf(question, choice, chosen);
    const wanted = i === question.right ? 'right' : 'wrong';
    return truth === wanted ? [] : [`${told(question)} choice ${i} is ${truth}`];
  });
}

describe('a thousand questions', () => {
  test('are there, of every kind and difficulty', () => {
    expect(ALL.length).toBeGreaterThanOrEqual(1000);
    for (const difficulty of DIFFICULTIES)
      for (const kind of KINDS)
        expect(
          ALL.some((q) => q.difficulty === difficulty && kindOf(q) === kind),
          `${difficulty} ${kind}`,
        ).toBe(true);
  });

  test('have one right answer each, found again from the printed figures; every other is wrong', () => {
    expect(ALL.flatMap((question) => faults(question))).toEqual([]);
  });

  test('offer three or four choices, no two alike', () => {
    for (const { choices, right } of ALL) {
      expect(choices.length).toBeGreaterThanOrEqual(3);
      expect(choices.length).toBeLessThanOrEqual(4);
      expect(choices[right]).toBeDefined();
      expect(new Set(choices.map((choice) => JSON.stringify(choice))).size).toBe(choices.length);
    }
  });

  test('are not repeated within a set, in words or in numbers', () => {
    for (const set of SETS) {
      expect(new Set(set.map(({ key }) => key)).size).toBe(set.length);
      const asked = set.map(({ stem, choices, right }) => JSON.stringify([stem, choices[right]]));
      expect(new Set(asked).size).toBe(set.length);
    }
  });

  test('put the right answer in every place, none of them by far the most often', () => {
    const four = ALL.filter(({ choices, stem }) => choices.length === 4 && stem.kind !== 'verdict');
    for (const place of [0, 1, 2, 3]) {
      const share = four.filter(({ right }) => right === place).length / four.length;
      expect(Math.abs(share - 0.25)).toBeLessThan(0.07);
    }
  });

  test('rest on two sources or more for every reflex whose age decides', () => {
    for (const { stem, why } of ALL)
      if (['phase', 'born', 'verdict'].includes(stem.kind))
        for (const { sources } of why.rests) expect(sources.length).toBeGreaterThanOrEqual(2);
  });
});

test('the same seed gives the same set, another seed another', () => {
  const options = { count: 20, difficulty: 'medium' } as const;
  const once = questionSet(ground, { ...options, seed: 48213 });
  expect(questionSet(groundOf(ATLAS, sheetOf(ATLAS)), { ...options, seed: 48213 })).toEqual(once);
  expect(questionSet(ground, { ...options, seed: 48214 })).not.toEqual(once);
});

test('only the kinds and groups that were chosen are asked', () => {
  const feeding = groundOf(ATLAS, sheetOf(ATLAS), ['feeding']);
  const set = questionSet(feeding, {
    seed: 7,
    count: 30,
    kinds: ['phase', 'verdict'],
    difficulty: 'hard',
  });
  expect(set.length).toBeGreaterThan(3);
  for (const { stem, choices, right } of set) {
    expect(['phase', 'verdict']).toContain(stem.kind);
    const choice = choices[right]!;
    const reflex =
      stem.kind === 'verdict' ? stem.reflex : choice.is === 'reflex' ? choice.reflex : '';
    expect(ATLAS.reflexes.get(reflex)?.group).toBe('feeding');
  }
});

const JUDGING = [...ATLAS.sources.values()]
  .filter((source) => source.claims.some((claim) => claim.role === 'window'))
  .map((source, index) => [source.id, DIFFICULTIES[index % 3]!] as const);

test.each(JUDGING)(
  'by %s alone (%s) there may be fewer questions, and none that it does not bear out',
  (source, difficulty) => {
    const alone = groundOf(ATLAS, sheetOf(ATLAS, new Set([source])));
    const kinds = ['first', 'next', 'order', 'phase', 'born', 'verdict'] as const;
    const set = questionSet(alone, { seed: 5, count: 30, kinds, difficulty });
    expect(set.flatMap((question) => faults(question, source))).toEqual([]);
  },
);

test('the sources that date most each give a set by themselves', () => {
  for (const source of ['dreeben-2008', 'fiorentino-1963', 'osullivan-handout']) {
    const alone = groundOf(ATLAS, sheetOf(ATLAS, new Set([source])));
    const set = questionSet(alone, {
      seed: 2,
      count: 20,
      kinds: ['phase', 'verdict', 'order'],
      difficulty: 'medium',
    });
    expect(set.length, source).toBe(20);
  }
});

test('with no source chosen nothing that rests on ages is asked, and the rest still is', () => {
  const none = groundOf(ATLAS, sheetOf(ATLAS, new Set<string>()));
  const kinds = new Set(questionSet(none, { seed: 1, count: 40, difficulty: 'easy' }).map(kindOf));
  expect([...kinds].sort()).toEqual(['apart', 'arithmetic', 'does', 'limb', 'name']);
});

describe('the harder, the nearer', () => {
  const of = (difficulty: Difficulty, kinds: readonly QuestionKind[]): Question[] =>
    [1, 2, 3].flatMap((seed) => questionSet(ground, { seed, count: 60, kinds, difficulty }));
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, value) => sum + value, 0) / values.length;

  test('the asked age lies nearer to a printed edge', () => {
    const edges = (reflex: string): number[] =>
      rowsOf(reflex)
        .flatMap((r) => [...(r.comes ?? []), ...(r.goes ?? [])])
        .filter(Number.isFinite);
    const away = (difficulty: Difficulty): number =>
      mean(
        of(difficulty, ['verdict']).map(({ stem }) =>
          stem.kind === 'verdict'
            ? Math.min(...edges(stem.reflex).map((edge) => Math.abs(edge - stem.age.axisDay)))
            : NaN,
        ),
      );
    expect(away('hard')).toBeLessThan(away('medium'));
    expect(away('medium')).toBeLessThan(away('easy'));
  });

  test('the wrong names look more alike, and even the easiest are a little alike', () => {
    const likes = (difficulty: Difficulty): number[] =>
      of(difficulty, ['name']).flatMap(({ stem, choices, right }) =>
        choices.flatMap((choice, i) =>
          stem.kind === 'name' && choice.is === 'reflex' && i !== right
            ? [likenessOf(ATLAS.reflexes.get(stem.reflex)!, ATLAS.reflexes.get(choice.reflex)!)]
            : [],
        ),
      );
    expect(mean(likes('hard'))).toBeGreaterThan(mean(likes('medium')));
    expect(mean(likes('medium'))).toBeGreaterThan(mean(likes('easy')));
    expect(Math.min(...likes('easy'))).toBeGreaterThan(0);
  });

  test('what looks the same in every part is never offered beside the right name', () => {
    // the head is righted alike, whether the eyes are covered or open
    const TWINS = ['labyrinthine-righting', 'optical-righting'];
    const about = of('hard', ['name']).filter(
      ({ stem }) => stem.kind === 'name' && TWINS.includes(stem.reflex),
    );
    expect(about.length).toBeGreaterThan(0);
    for (const { choices } of about)
      expect(choices.filter((c) => c.is === 'reflex' && TWINS.includes(c.reflex)).length).toBe(1);
  });
});
