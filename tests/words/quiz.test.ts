/** Questions in words: every one can be read, and no two choices read the same. */
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { groundOf } from '../../src/lib/lecture/questions/ground.ts';
import { DIFFICULTIES } from '../../src/lib/words/question.ts';
import { questionSet } from '../../src/lib/lecture/questions/set.ts';
import { en } from '../../src/lib/words/en.ts';

const { quiz, quizWhy } = en;
const all = DIFFICULTIES.flatMap((difficulty, seed) =>
  questionSet(groundOf(ATLAS, sheetOf(ATLAS)), { seed, count: 250, difficulty }),
);
const UNREADABLE = /undefined|NaN|Infinity|\bnull\b|\[object/;

describe('seven hundred and fifty questions', () => {
  test('are asked and explained in whole sentences', () => {
    expect(all).toHaveLength(750);
    for (const question of all) {
      const stem = quiz.stemWords(question.stem, ATLAS);
      expect(stem).toMatch(/^[A-Z].*\?$/);
      const why = quizWhy.whyWords(question, ATLAS);
      expect(why.length).toBeGreaterThan(0);
      for (const sentence of why) expect(sentence).toMatch(/^.+\.$/);
      for (const rests of question.why.rests)
        expect(quizWhy.restsWords(rests, ATLAS)).not.toMatch(UNREADABLE);
      expect([stem, ...why].join(' ')).not.toMatch(UNREADABLE);
    }
  });

  test('have choices that read differently, and no stem that holds its answer', () => {
    for (const question of all) {
      const words = question.choices.map((choice) => quiz.choiceWords(choice, ATLAS));
      expect(new Set(words).size, words.join(' / ')).toBe(words.length);
      for (const one of words) expect(one).not.toMatch(UNREADABLE);
      if (question.stem.kind === 'name')
        expect(quiz.stemWords(question.stem, ATLAS)).not.toContain(words[question.right]);
    }
  });

  test('have subjects that can be named in a list', () => {
    for (const { subject } of all)
      expect(quiz.subjectWords(subject, ATLAS)).toMatch(/^[A-Z][^|]+$/);
  });
});

test('the figure of a question is described without its name', () => {
  for (const reflex of ATLAS.reflexes.values())
    for (const pattern of reflex.patterns) {
      const words = quizWhy.figureWords(reflex, pattern, 'right');
      for (const moment of [0, 1, 2]) expect(words.describe(moment)).not.toContain(reflex.name);
    }
});
