/** Where a line may break: never between a number and what it counts. */
import { expect, test } from 'vitest';
import { together } from '../../src/lib/handout/together.ts';
import { LANGUAGES } from '../../src/lib/case/family.ts';
import { sentencesOf } from '../../src/lib/handout/page.ts';
import { CHILDREN, pageOf } from './pages.ts';

test('a number stays with its word, and nothing else is bound', () => {
  expect(together('7 months and 1 week old on 4 May 2026.')).toBe(
    '7\u00a0months and 1\u00a0week old on 4\u00a0May 2026.',
  );
  expect(together('Llame al 555 0100.')).toBe('Llame al 555 0100.');
});

test.each(LANGUAGES)(
  'in %s only spaces change, and no line ends with a bare number',
  (language) => {
    const texts = CHILDREN.flatMap(([, record]) =>
      sentencesOf(pageOf(record, null, { language })).map(({ text }) => text),
    );
    expect(texts.some((text) => together(text) !== text)).toBe(true);
    for (const text of texts) {
      expect(together(text).replaceAll('\u00a0', ' ')).toBe(text);
      expect(together(text)).not.toMatch(/\d \p{L}/u);
    }
  },
);
