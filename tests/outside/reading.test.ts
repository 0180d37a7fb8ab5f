/**
 * How hard a family's page is to read, by published formulas; first the formulas and the counting of
 * syllables themselves, against published examples.
 * Yardsticks: reading grade 6 at most (American Medical Association, from memory; 5 to 6 in a paper of
 * the American Academy of Family Physicians, below 8 at the National Institutes of Health, read).
 */
import { syllabifyEs } from 'simi-syllable';
import { syllable } from 'syllable';
import { describe, expect, it, test } from 'vitest';
import { LANGUAGES, type Language } from '../../src/lib/case/family.ts';
import { fill } from '../../src/lib/handout/speaker.ts';
import { FAMILY_WORDS, MEANINGS } from '../../src/lib/words/family.ts';
import { FAMILY_REFLEXES } from '../../src/lib/words/familyReflexes.ts';
import { CHILDREN, pagesOf, textOf } from '../handout/pages.ts';
import {
  countsOf,
  fernandezHuerta,
  gradeOf,
  perspicuity,
  together,
  type Counts,
} from '../support/reading.ts';

describe('the formulas', () => {
  test('Flesch-Kincaid: 13 words with 24 syllables in a sentence are 11.26 (encyclopaedia article on the formula, from memory)', () => {
    expect(gradeOf({ sentences: 1, words: 13, syllables: 24 })).toBeCloseTo(11.26, 2);
  });

  test('Flesch-Kincaid: one word of one syllable gives the least grade, -3.40 (same article, read)', () => {
    expect(gradeOf({ sentences: 1, words: 1, syllables: 1 })).toBeCloseTo(-3.4, 10);
  });

  test('five words with seven syllables in a sentence: 117.74 and 114.615 (tests of the textstat library, read)', () => {
    const counts = { sentences: 1, words: 5, syllables: 7 };
    expect(fernandezHuerta(counts)).toBeCloseTo(117.74, 10);
    expect(perspicuity(counts)).toBeCloseTo(114.615, 10);
  });

  test('English counts: the worked example has 13 words and 24 syllables (from memory); the library counts two too many', () => {
    const text =
      'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.';
    // Aus-tra-li-an and rep-til-i-an, so that a text seems harder
    expect(countsOf(text, 'en')).toEqual({ sentences: 1, words: 13, syllables: 26 });
  });

  test.each(
    'ba-by of-ten ex-pect bod-y ta-ble de-cem-ber e-mer-gen-cy to-geth-er hun-gry'.split(' '),
  )('English: %s has as many syllables as a dictionary divides it into (from memory)', (entry) => {
    const parts = entry.split('-');
    expect(syllable(parts.join(''))).toBe(parts.length);
  });

  test('figures count as they are spoken (Flesch 1948, from memory)', () => {
    expect(countsOf('25 May 2026.', 'en')).toEqual({
      sentences: 1,
      words: 3,
      syllables: 3 + 1 + 5,
    });
    // vein-te cin-co de ma-yo de dos mil vein-te seis
    expect(countsOf('25 de mayo de 2026.', 'es')).toMatchObject({ words: 5, syllables: 13 });
  });

  // Divided words as printed: a school page on the syllable (lenguayliteratura38, 2015), a page from
  // "Conocimientos básicos de la lengua española" (Ramón Areces), a course page (profldiaz69, 2011), silabas.com
  const PRINTED =
    'a-ma-ne-cer al-ba-ñil a-le-gre bi-ci-cle-ta ins-crip-ción ra-dio-trans-mi-sor ma-ña-na cor-tés ga-mo cien miau a-tar-de-cer a-griéis bú-ho mon-ta-ña ca-lor pei-ne vien-to can-ta-bais ai-re boi-na sue-ño con-fié ac-tuó viei-ra o-pioi-de te-a-tro ha-bí-a pa-ís a-tra-er va-hí-do re-hén al-de-a le-ón ba-hí-a o-í-do fan-ta-sí-a mú-si-ca';

  test.each(PRINTED.split(' '))('Spanish: %s is divided as printed', (printed) => {
    expect(syllabifyEs(printed.replaceAll('-', '')).join('-')).toBe(printed);
  });

  test('where the Spanish library errs on printed words it counts too many, so that a text seems harder', () => {
    for (const printed of ['ahi-ja-do', 'ahu-ma-do', 'prohi-bir', 'a-cuí-fe-ro', 're-ci-bí-ais'])
      expect(syllabifyEs(printed.replaceAll('-', '')).length).toBeGreaterThan(
        printed.split('-').length,
      );
  });
});

/** At most the 6th grade in English; "easy", the 5th grade, and at least "quite easy" in Spanish. */
function expectEasy(counts: Counts, language: Language, text: string): void {
  expect(counts.words / counts.sentences, text).toBeLessThan(18);
  if (language === 'en') expect(gradeOf(counts), text).toBeLessThanOrEqual(6);
  else {
    expect(fernandezHuerta(counts), text).toBeGreaterThanOrEqual(80);
    expect(perspicuity(counts), text).toBeGreaterThanOrEqual(65);
  }
}

describe.each(LANGUAGES)('the page in %s', (language) => {
  it.each(CHILDREN)('of %s is easy, for every visit and the course', (_, record) => {
    for (const page of pagesOf(record, { language })) {
      const text = textOf(page);
      expectEasy(countsOf(text, language), language, text);
    }
  });

  it('is easy in every meaning, firm or not, of every reflex', () => {
    const words = FAMILY_WORDS[language];
    const places = {
      ...words.child({ calledName: '', pronoun: 'name' }),
      state: words.states.drowsy,
      side: words.sides.right,
    };
    const counted = (text: string, tense: 'now' | 'then' = 'now') => {
      const filled = fill(text, { ...places, ...words.tense[tense] });
      return { text: filled, counts: countsOf(filled, language) };
    };
    const saw = counted(words.saw['not-counted'].both);
    const means = MEANINGS.flatMap((meaning) => {
      const { oneSide, ofFeeding, ...graded } = words.means[meaning];
      return [graded, oneSide, ofFeeding, ofFeeding?.oneSide].flatMap((of) =>
        of ? [counted(of.firm), counted(of.open), counted(of.open, 'then')] : [],
      );
    });
    let looked = 0;
    for (const reflex of FAMILY_REFLEXES) {
      const plain = counted(`${words.reflexes[reflex].name}.\n${words.reflexes[reflex].did}`);
      for (const meant of means) {
        looked += 1;
        const counts = together([plain.counts, saw.counts, meant.counts]);
        expectEasy(counts, language, [plain.text, saw.text, meant.text].join('\n'));
      }
    }
    expect(looked).toBeGreaterThanOrEqual(44 * MEANINGS.length * 2);
  });

  /** Ours: words of the trade, and words that judge a child. Names of reflexes in brackets are exempt. */
  const JARGON = {
    en: 'reflex primitive postural posture integrat elicit stimul respons assess examin bilateral lateral prone supine flex extens abduct adduct hypoton spastic neuro motor gestation corrected chronolog menstrual preterm premature neonat infant vestibul milestone prognos patholog symptom diagnos normal abnormal disorder deficit delay palsy percentil obligatory brisk persist verdict evaluat clinician referral intervention monitor',
    es: 'reflejo primitiv postural integra estímulo estimul respuesta evalua evalúa bilateral lateral prono supino flexi extensi abduc aducc hipoton espástic neuro motor gestaci gestante corregid cronológic prematur pretérmino neonat lactante vestibul hito pronóstic patol síntoma diagnóstic normal anormal trastorno déficit retraso parálisis percentil obligatori veredicto intervención monitor',
  } as const;

  it.each(CHILDREN)(
    'of %s holds no word of the trade and none that judges the child',
    (_, record) => {
      const [first, ...rest] = JARGON[language].split(' ');
      const jargon = new RegExp(`(?<!\\p{L})(?:${[first, ...rest].join('|')})\\p{L}*`, 'giu');
      for (const page of pagesOf(record, { language }))
        expect(
          textOf(page)
            .replace(/\([^)]*\)/g, '')
            .match(jargon),
        ).toBeNull();
    },
  );

  it('nor does any sentence it could hold', () => {
    const jargon = new RegExp(
      `(?<!\\p{L})(?:${JARGON[language].split(' ').join('|')})\\p{L}*`,
      'giu',
    );
    const all = JSON.stringify(FAMILY_WORDS[language], (key, value: unknown) =>
      key === 'tag' ? undefined : value,
    );
    const said = [...all.matchAll(/:"((?:[^"\\]|\\.)*)"/g)].map(([, text = '']) =>
      text.replace(/\([^)]*\)/g, '').replace(/\{\w+\}/g, ''),
    );
    expect(said.length).toBeGreaterThan(200);
    expect(said.flatMap((text) => text.match(jargon) ?? [])).toEqual([]);
  });
});
