/** The page one idea at a time: nothing of it is lost, and no slide holds too much. */
import { describe, expect, test } from 'vitest';
import { LANGUAGES, NO_FAMILY } from '../../src/lib/case/family.ts';
import { sentencesOf } from '../../src/lib/handout/page.ts';
import { withEdit } from '../../src/lib/handout/settle.ts';
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
  for (const word of [
    'persisting',
    'not elicited',
    'expected to fade',
    'not judged',
    'obligatory',
    'firm',
  ])
    expect(told).not.toMatch(new RegExp(`\\b${word}\\b`, 'i'));
  expect(Object.values(verdicts)).toEqual(
    expect.arrayContaining(['persisting', 'expected to fade']),
  );
});

test('the clinician’s words are marked on their slide, and the mark is not read aloud', () => {
  const [, record] = CHILDREN.at(-1)!;
  const family = withEdit(
    NO_FAMILY,
    pageOf(record),
    sentencesOf(pageOf(record)).find(({ key }) => key === 'help.pace')!,
    'Ring Rowan on Mondays.',
  );
  const page = pageOf({ ...record, family });
  const { edited, invented } = page.labels;
  const marked = slidesOf(page).filter(({ notes }) => notes?.includes(`* ${edited}`));
  expect(marked).toHaveLength(1);
  expect(marked[0]!.parts.flatMap(({ sentences }) => sentences)).toContain(
    'Ring Rowan on Mondays.*',
  );
  expect(spokenOf(marked[0]!, page)).toContain('Ring Rowan on Mondays.');
  expect(spokenOf(marked[0]!, page)).not.toContain('*');
  expect(slidesOf(page).map(({ notes }) => notes?.includes(invented))).toEqual(
    slidesOf(page).map((_, at) => at === 0),
  );
});

test('both ways to count an age stand on one slide', () => {
  let seen = 0;
  for (const [, record] of CHILDREN)
    for (const place of [null, ...record.visits.keys()]) {
      const page = pageOf(record, place);
      const text = (key: string) => sentencesOf(page).find((one) => one.key === key)?.text;
      const [birth, due] = [text('who.age-birth'), text('who.age-due')];
      if (!birth || !due) continue;
      seen += 1;
      const of = slidesOf(page).filter(({ parts }) =>
        parts.some(({ sentences }) => sentences.includes(birth) || sentences.includes(due)),
      );
      expect(of).toHaveLength(1);
    }
  expect(seen).toBeGreaterThan(5);
});
