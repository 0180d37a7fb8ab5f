/** The family's words: nothing left out in any language, every place known, dates as the language has them. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { addDays, parseCivil, writtenDate } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { LANGUAGES, PRONOUNS } from '../../src/lib/case/family.ts';
import { FAMILY_WORDS, MEANINGS, REFLEX_SENTENCES, SENTENCES } from '../../src/lib/words/family.ts';
import { FAMILY_REFLEXES } from '../../src/lib/words/familyReflexes.ts';

/** Every text of a language with the path to it. */
function textsOf(value: unknown, path = ''): [string, string][] {
  if (typeof value === 'string') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => textsOf(inner, `${path}/${key}`));
}

const placesOf = (text: string): string[] =>
  [...text.matchAll(/\{(\w+)\}/g)].map(([, place = '']) => place);

const CHILD = ['name', 'Name', 'names', 'Names', 'they', 'They', 'them', 'their', 'Their'];

test('the reflexes with plain words are those of the atlas', () => {
  expect([...FAMILY_REFLEXES].sort()).toEqual([...ATLAS.reflexes.keys()].sort());
});

describe.each(LANGUAGES)('%s', (language) => {
  const words = FAMILY_WORDS[language];

  it('leaves no key out and no text empty', () => {
    for (const id of SENTENCES) expect(words.sentences[id], id).toMatch(/[.:]$/);
    for (const id of REFLEX_SENTENCES) expect(words.aboutReflex[id], id).toMatch(/\.$/);
    for (const id of MEANINGS) {
      expect(words.means[id].firm, id).toMatch(/\.$/);
      expect(words.means[id].open, id).toMatch(/\.$/);
    }
    for (const id of FAMILY_REFLEXES) {
      expect(words.reflexes[id].name, id).toMatch(/^\p{Ll}/u);
      expect(words.reflexes[id].did, id).toMatch(/\.$/);
    }
    for (const [path, text] of textsOf(words)) expect(text.trim(), path).not.toBe('');
    const paths = (of: unknown): string[] =>
      textsOf(of)
        .map(([path]) => path)
        .sort();
    expect(paths(words)).toEqual(paths(FAMILY_WORDS.en));
  });

  it('calls no two reflexes by the same name', () => {
    const names = FAMILY_REFLEXES.map((id) => words.reflexes[id].name);
    expect(new Set(names).size).toBe(names.length);
  });

  it('has, besides the child, the places that English has', () => {
    const others = (text: string): string[] =>
      [...new Set(placesOf(text).filter((place) => !CHILD.includes(place)))].sort();
    const english = new Map(textsOf(FAMILY_WORDS.en));
    for (const [path, text] of textsOf(words))
      expect(others(text), path).toEqual(others(english.get(path) ?? ''));
  });

  it('fills the places of a child in every way of speaking, and says the name', () => {
    for (const pronoun of PRONOUNS)
      for (const calledName of ['', 'Wren']) {
        const child = words.child({ calledName, pronoun });
        expect(Object.keys(child).sort()).toEqual([...CHILD].sort());
        for (const said of Object.values(child)) expect(said).not.toBe('');
        if (calledName) expect(child.name).toBe('Wren');
        if (pronoun === 'name') expect(child.they).toBe(child.name);
      }
  });

  it('hedges where the sources do not agree', () => {
    for (const meaning of ['talk-still-there', 'there', 'away', 'fading', 'may-come'] as const)
      expect(words.means[meaning].open).toMatch(/\bmay\b|puede|tal vez/i);
  });

  it('writes a date as the platform writes it in that language (Unicode CLDR by way of Intl)', () => {
    const by = new Intl.DateTimeFormat(words.tag, {
      day: 'numeric',
      month: 'long',
      year: 'numeric',
      timeZone: 'UTC',
    });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), (days) => {
        const date = addDays(parseCivil('2000-01-01')!, days);
        expect(writtenDate(date, words.tag)).toBe(by.format(new Date(`${date}T00:00:00Z`)));
      }),
    );
  });
});

test('dates and ages are written out as people say them', () => {
  const date = parseCivil('2026-05-18')!;
  expect(writtenDate(date, 'en-GB')).toBe('18 May 2026');
  expect(writtenDate(date, 'es')).toBe('18 de mayo de 2026');
  const age = { before: false, unit: 'months', months: 1, weeks: 2, days: 3 } as const;
  expect(FAMILY_WORDS.en.span(age)).toBe('1 month and 2 weeks');
  expect(FAMILY_WORDS.es.span(age)).toBe('1 mes y 2 semanas');
  expect(FAMILY_WORDS.es.span({ ...age, unit: 'weeks', weeks: 0, days: 1 })).toBe('1 día');
});
