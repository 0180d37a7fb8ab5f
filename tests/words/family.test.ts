/** The family's words: nothing left out in any language, every place known, dates as the language has them. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { addDays, parseCivil } from '../../src/lib/age/civil.ts';
import { writtenDate } from '../../src/lib/age/written.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { LANGUAGES, PRONOUNS } from '../../src/lib/case/family.ts';
import {
  FAMILY_WORDS,
  MEANINGS,
  REFLEX_SENTENCES,
  SENTENCES,
  type AboutAge,
} from '../../src/lib/words/family.ts';
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
    // what is to be talked about is a name in a list
    for (const id of REFLEX_SENTENCES)
      expect(words.aboutReflex[id], id).toMatch(id === 'talk' ? /^\{reflex\}$/ : /\.$/);
    for (const id of MEANINGS) {
      expect(words.means[id].firm, id).toMatch(/\.$/);
      expect(words.means[id].open, id).toMatch(/\.$/);
      const { oneSide, ofFeeding } = words.means[id];
      for (const text of [oneSide, ofFeeding?.oneSide].flatMap((one) =>
        one ? [one.firm, one.open] : [],
      ))
        expect(text, id).toMatch(/\{side\}.*\.$/);
    }
    for (const id of FAMILY_REFLEXES) {
      expect(words.reflexes[id].name, id).toMatch(/^\p{Ll}/u);
      expect(words.reflexes[id].did, id).toMatch(/\.$/);
    }
    for (const [path, text] of textsOf(words)) expect(text.trim(), path).not.toBe('');
    // the words of a tense are a language's own: each has the same of them for both
    expect(Object.keys(words.tense.then)).toEqual(Object.keys(words.tense.now));
    const paths = (of: unknown): string[] =>
      textsOf(of)
        .map(([path]) => path)
        .filter((path) => !path.startsWith('/tense'))
        .sort();
    expect(paths(words)).toEqual(paths(FAMILY_WORDS.en));
  });

  it('calls no two reflexes by the same name', () => {
    const names = FAMILY_REFLEXES.map((id) => words.reflexes[id].name);
    expect(new Set(names).size).toBe(names.length);
  });

  it('has, besides the child and the tense, the places that English has', () => {
    const own = (of: typeof words): string[] => [...CHILD, ...Object.keys(of.tense.now)];
    const others = (text: string, of: typeof words): string[] =>
      [...new Set(placesOf(text).filter((place) => !own(of).includes(place)))].sort();
    const english = new Map(textsOf(FAMILY_WORDS.en));
    for (const [path, text] of textsOf(words))
      expect(others(text, words), path).toEqual(others(english.get(path) ?? '', FAMILY_WORDS.en));
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
      expect(words.means[meaning].open).toMatch(
        /\bmay\b|some of our guides|puede|tal vez|algunas de nuestras guías/i,
      );
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
  expect(FAMILY_WORDS.en.span({ ...age, months: 2, weeks: 4 })).toBe('almost 3 months');
  expect(FAMILY_WORDS.es.span({ ...age, months: 2, weeks: 4 })).toBe('casi 3 meses');
});

test('about an age: at one, between two, and from when it is counted', () => {
  const weeks = (count: number, clock: AboutAge['clock'] = 'age') =>
    ({ unit: 'weeks', count, clock }) as const;
  const months = (count: number, clock: AboutAge['clock'] = 'age') =>
    ({ unit: 'months', count, clock }) as const;
  const said: [AboutAge, AboutAge, en: string, es: string][] = [
    [months(9), months(9), 'at about 9 months', 'hacia los 9 meses'],
    [weeks(1), weeks(1), 'at about 1 week', 'hacia la primera semana'],
    [months(6), months(9), 'at about 6 to 9 months', 'entre los 6 y los 9 meses'],
    [weeks(6), weeks(7), 'at about 6 to 7 weeks', 'entre las 6 y las 7 semanas'],
    [weeks(6), months(3), 'at about 6 weeks to 3 months', 'entre las 6 semanas y los 3 meses'],
    [weeks(0), weeks(6), 'between birth and about 6 weeks', 'entre el nacimiento y las 6 semanas'],
    [
      months(6, 'due'),
      months(9, 'due'),
      'at about 6 to 9 months after the due date',
      'entre los 6 y los 9 meses desde la fecha probable de parto',
    ],
    [
      weeks(0, 'due'),
      weeks(2, 'due'),
      'between the due date and about 2 weeks after it',
      'entre la fecha probable de parto y 2 semanas después',
    ],
    [weeks(0, 'due'), weeks(0, 'due'), 'around the due date', 'hacia la fecha probable de parto'],
    [
      weeks(-4, 'due'),
      weeks(-4, 'due'),
      'about 4 weeks before the due date',
      '4 semanas antes de la fecha probable de parto',
    ],
    [
      months(23, 'due'),
      months(26, 'birth'),
      'between about 23 months after the due date and about 26 months after birth',
      'entre los 23 meses desde la fecha probable de parto y los 26 meses desde el nacimiento',
    ],
  ];
  for (const [from, to, en, es] of said) {
    expect(FAMILY_WORDS.en.when(from, to)).toBe(en);
    expect(FAMILY_WORDS.es.when(from, to)).toBe(es);
  }
});
