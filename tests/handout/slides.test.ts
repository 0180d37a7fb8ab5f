/** The page one idea at a time: nothing of it is lost, and no slide holds too much. */
import { describe, expect, test } from 'vitest';
import { LANGUAGES } from '../../src/lib/case/family.ts';
import { sentencesOf } from '../../src/lib/handout/page.ts';
import { slidesOf, spokenOf } from '../../src/lib/handout/slides.ts';
import { verdicts } from '../../src/lib/words/en/judge.ts';
import { CHILDREN, pageOf } from './pages.ts';

describe.each(LANGUAGES)('in %s', (language) => {
  test.each(CHILDREN)('%s: every sentence stands on a slide, and is read aloud', (_, record) => {
    for (const place of [null, ...record.visits.keys()]) {
      const page = pageOf(record, place, { language });
      const slides = slidesOf(page);
      expect(new Set(slides.map(({ id }) => id)).size).toBe(slides.length);
      const shown = slides.flatMap(({ heading, parts }) => [
        heading,
        ...parts.flatMap(({ sentences }) => sentences),
      ]);
      const silent = page.sections.find(({ id }) => id === 'clinic')?.heading.key;
      const bands = page.chart.bands.map(({ spoken }) => spoken.text);
      for (const { key, text } of sentencesOf(page)) {
        // the title stands above every slide; a clinic not set has a place on paper only
        if (key === 'title' || key === silent) continue;
        if (!bands.includes(text)) expect(shown, key).toContain(text);
      }
      const aloud = slides.map((slide) => spokenOf(slide, page)).join(' ');
      for (const text of [...shown, ...(slides.some((s) => s.isChart) ? bands : [])])
        expect(aloud).toContain(text);
    }
  });

  test.each(CHILDREN)('%s: no slide holds more than a few sentences', (_, record) => {
    for (const { parts, isChart } of slidesOf(pageOf(record, null, { language }))) {
      const count = parts.flatMap(({ sentences }) => sentences).length;
      expect(isChart ? 1 : count).toBeGreaterThan(0);
      expect(count).toBeLessThanOrEqual(8);
    }
  });
});

test('no verdict of the clinician’s stands on an English slide', () => {
  const told = CHILDREN.flatMap(([, record]) =>
    slidesOf(pageOf(record, null, { language: 'en' })).flatMap(({ parts }) =>
      parts.flatMap(({ sentences }) => sentences),
    ),
  ).join(' ');
  for (const word of ['persisting', 'missing', 'closing', 'not judged', 'obligatory', 'firm'])
    expect(told).not.toMatch(new RegExp(`\\b${word}\\b`, 'i'));
  expect(Object.values(verdicts)).toEqual(expect.arrayContaining(['persisting', 'missing']));
});
