/** What was settled for the family's page: in a file and out, and refused with a sentence where it is wrong. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { LANGUAGES, PRONOUNS } from '../../src/lib/case/family.ts';
import { parseCaseText } from '../../src/lib/case/file.ts';
import { caseText, rawOf } from '../../src/lib/case/raw.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import type { RawCase } from '../../src/lib/case/shape.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { en } from '../../src/lib/words/en.ts';

const raw = rawOf(demoCase(ATLAS));
const withFamily = (family: unknown) => parseRaw({ ...raw, family } as RawCase, ATLAS);
const said = (family: unknown): string => {
  const parsed = withFamily(family);
  return parsed.ok ? 'taken' : parsed.problems.map(en.problems.problemWords).join('\n');
};

const line = fc
  .string({ maxLength: 40, unit: fc.constantFrom('a', 'b', ' ', 'ñ', 'é', '.') })
  .map((text) => text.trim());
const families = fc.record({
  language: fc.constantFrom(...LANGUAGES),
  pronoun: fc.constantFrom(...PRONOUNS),
  calledName: line,
  clinic: fc.option(fc.record({ name: line, phone: line })),
  pages: fc.uniqueArray(
    fc.record({
      visit: fc.constantFrom('', '2026-05-18 ', '2026-05-18 Rowan'),
      chosen: fc.option(fc.uniqueArray(fc.constantFrom('moro', 'atnr', 'own-1'), { maxLength: 6 })),
      edits: fc.uniqueArray(
        fc.record({
          key: fc.constantFrom('title', 'who.born', 'item.moro.did'),
          language: fc.constantFrom(...LANGUAGES),
          text: line,
          over: line,
        }),
        { selector: ({ key, language }) => `${key} ${language}` },
      ),
    }),
    { selector: ({ visit }) => visit },
  ),
});

describe('in a file', () => {
  it('comes back as it was', () => {
    fc.assert(
      fc.property(families, (family) => {
        const record = { ...demoCase(ATLAS), family };
        const read = parseCaseText(caseText(record), ATLAS);
        expect(read).toMatchObject({ ok: true });
        if (read.ok) expect(read.value.family).toEqual(family);
      }),
    );
  });

  test('a file that says nothing of it has none, and says nothing when written', () => {
    expect(demoCase(ATLAS).family).toBeNull();
    expect(caseText(demoCase(ATLAS))).not.toContain('family');
  });

  test('a part that is left out has its default', () => {
    const parsed = withFamily({ language: 'es', pronoun: 'she', calledName: '', pages: [] });
    expect(parsed).toMatchObject({ ok: true, value: { family: { clinic: null, pages: [] } } });
  });
});

describe('is refused', () => {
  const good = { language: 'en', pronoun: 'she', calledName: '', pages: [] };
  const page = { visit: '', edits: [] };
  test.each([
    ['an unknown language', { ...good, language: 'xx' }, /Language of the family’s page.*"xx"/],
    ['an unknown pronoun', { ...good, pronoun: 'it' }, /How the child is spoken of.*"it"/],
    ['markup in a name', { ...good, calledName: '<b>Wren</b>' }, /Name used at home.*markup/],
    ['a name over two lines', { ...good, calledName: 'a\nb' }, /Name used at home/],
    [
      'an edit with a sign that cannot be seen',
      {
        ...good,
        pages: [{ ...page, edits: [{ key: 'title', language: 'en', text: 'a\u202eb', over: '' }] }],
      },
      /Edited sentence of the family’s page.*cannot be seen/,
    ],
    [
      'more reflexes than a page tells of',
      { ...good, pages: [{ ...page, chosen: 'abcdefg'.split('') }] },
      /Reflexes on the family’s page.*at most 6/,
    ],
  ])('%s', (_, family, sentence) => {
    expect(said(good)).toBe('taken');
    expect(said(family)).toMatch(sentence);
  });

  test('but not a tag in an edit: it is words, and stays as it was typed', () => {
    const edits = [{ key: 'title', language: 'en', text: 'Ask for <b>Rosa</b>.', over: '' }];
    expect(said({ ...good, pages: [{ ...page, edits }] })).toBe('taken');
  });
});
