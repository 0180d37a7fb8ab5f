/** What was answered and what is to be reviewed; addresses. The spacing itself is ts-fsrs's. */
import { describe, expect, test } from 'vitest';
import { fsrs, createEmptyCard, Rating } from 'ts-fsrs';
import { QuizProgress } from '../../src/lib/teaching/quizProgress.svelte.ts';
import {
  queryIn,
  stageAddress,
  testAddress,
  wholeIn,
  wishIn,
} from '../../src/lib/teaching/quizAddress.ts';

class Shelf {
  kept = new Map<string, string>();
  getItem = (key: string): string | null => this.kept.get(key) ?? null;
  setItem = (key: string, value: string): void => void this.kept.set(key, value);
}

const NOON = new Date('2026-06-08T12:00:00');
const later = (days: number): Date => new Date(NOON.getTime() + days * 86_400_000);

describe('progress', () => {
  test('a wrong answer is due before a right one, as the library itself would have it', () => {
    const progress = new QuizProgress(new Shelf());
    progress.answered('phase|moro integrated', true, NOON);
    progress.answered('phase|atnr integrated', false, NOON);
    expect(progress.dueOn(NOON)).toEqual([]);
    const plain = fsrs({ enable_short_term: false, enable_fuzz: false });
    const [right, wrong] = [Rating.Good, Rating.Again].map(
      (rating) =>
        plain.next(createEmptyCard(NOON), NOON, rating as Rating.Good).card.scheduled_days,
    ) as [number, number];
    expect(wrong).toBeLessThan(right);
    expect(progress.dueOn(later(wrong))).toEqual(['phase|atnr integrated']);
    expect(progress.dueOn(later(right))).toEqual([
      'phase|atnr integrated',
      'phase|moro integrated',
    ]);
  });

  test('each further right answer puts it off longer', () => {
    const progress = new QuizProgress(new Shelf());
    let now = NOON;
    let last = 0;
    for (let i = 0; i < 4; i++) {
      progress.answered('name|moro head-drop', true, now);
      const due = Date.parse(progress.subjects['name|moro head-drop']!.card.due);
      const days = (due - now.getTime()) / 86_400_000;
      expect(days).toBeGreaterThan(last);
      last = days;
      now = new Date(due);
    }
    expect(progress.totals).toEqual({ subjects: 1, right: 4, asked: 4 });
  });

  test('is read again from where it was kept, and forgotten when told', () => {
    const shelf = new Shelf();
    const before = new QuizProgress(shelf);
    before.answered('phase|moro integrated', false, NOON);
    before.setRun({ address: '#/quiz?seed=5', subjects: null, answers: [2] });
    const after = new QuizProgress(shelf);
    expect(after.subjects).toEqual(before.subjects);
    expect(after.run).toEqual(before.run);
    after.forget();
    expect(new QuizProgress(shelf).totals.asked).toBe(0);
  });

  test.each([
    'no JSON',
    '[]',
    '{"subjects":7,"run":"x"}',
    '{"run":{"address":"#/quiz","subjects":null,"answers":[9]}}',
  ])('what is not understood is left out: %s', (text) => {
    const shelf = new Shelf();
    shelf.kept.set('tidemark-questions', text);
    const progress = new QuizProgress(shelf);
    expect(progress.totals.asked).toBe(0);
    expect(progress.run).toBeNull();
  });

  test('one damaged subject does not cost the others', () => {
    const shelf = new Shelf();
    const before = new QuizProgress(shelf);
    before.answered('phase|moro integrated', true, NOON);
    const kept = JSON.parse(shelf.getItem('tidemark-questions')!) as {
      subjects: Record<string, unknown>;
    };
    kept.subjects['phase|atnr integrated'] = { card: { due: 'tomorrow' }, right: -1, asked: 1 };
    shelf.kept.set('tidemark-questions', JSON.stringify(kept));
    expect(Object.keys(new QuizProgress(shelf).subjects)).toEqual(['phase|moro integrated']);
  });

  test('a denied storage forgets with the page and breaks nothing', () => {
    const progress = new QuizProgress(undefined);
    progress.answered('phase|moro integrated', true, NOON);
    expect(progress.totals.asked).toBe(1);
  });
});

describe('addresses', () => {
  const wish = {
    seed: 48213,
    count: 12,
    kinds: ['phase', 'name'],
    groups: ['feeding'],
    difficulty: 'hard',
  } as const;

  test('say the same wish again', () => {
    const query = queryIn(testAddress(wish));
    expect(wishIn(query, query.get('seed'))).toEqual(wish);
    const stage = stageAddress(wish);
    expect(wishIn(queryIn(stage), /stage\/(\d+)/.exec(stage)![1]!)).toEqual(wish);
  });

  test.each([
    ['count=0&difficulty=impossible&kinds=nothing', { count: 10, difficulty: 'medium', kinds: [] }],
    ['count=61', { count: 10 }],
    ['count=60&groups=grasp.nowhere', { count: 60, groups: ['grasp'] }],
  ])('fall back where they are not understood: %s', (query, wanted) => {
    expect(wishIn(new URLSearchParams(query), '1')).toMatchObject(wanted);
  });

  test.each([null, '', '-1', '1e3', '1000000', 'x'])(
    'without a number there is no set: %j',
    (seed) => {
      expect(wishIn(new URLSearchParams(), seed)).toBeUndefined();
    },
  );

  test('whole numbers are read within their limits', () => {
    expect(wholeIn(' 60 ', 1, 60)).toBe(60);
    expect(wholeIn('61', 1, 60)).toBeUndefined();
    expect(wholeIn('2.5', 1, 60)).toBeUndefined();
  });
});

describe('answers that were forgotten', () => {
  test('come back with undo; what was answered since stays as it is', () => {
    const shelf = new Shelf();
    const progress = new QuizProgress(shelf);
    progress.answered('phase|moro', true, NOON);
    progress.answered('name|atnr', false, NOON);
    progress.setRun({ address: '#/quiz?seed=5', subjects: null, answers: [2] });
    const before = progress.kept.now;
    progress.forget();
    expect(progress.totals.asked).toBe(0);
    expect(progress.kept.undo()).toBe('forgotten');
    expect(progress.kept.now).toEqual(before);
    expect(progress.kept.redo()).toBe('forgotten');
    expect(new QuizProgress(shelf).totals.asked).toBe(0);
    progress.answered('phase|moro', false, later(1));
    const since = progress.subjects['phase|moro'];
    progress.kept.undo();
    expect(progress.subjects['phase|moro']).toEqual(since);
    expect(progress.subjects['name|atnr']).toEqual(before.subjects['name|atnr']);
  });
});
