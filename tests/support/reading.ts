/**
 * How hard a text is to read, by published formulas. Words and sentences are cut by the language's own
 * rules (Unicode text segmentation); syllables are counted by a library for each language. A figure
 * counts as the syllables it is spoken with, as Flesch (1948) asks, so that dates make a text harder.
 */
import { fleschKincaid } from 'flesch-kincaid';
import { countEs } from 'simi-syllable';
import { syllable } from 'syllable';

export interface Counts {
  sentences: number;
  words: number;
  syllables: number;
}

const EN_ONES =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const EN_TENS = '  twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const ES_ONES =
  'cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve'.split(
    ' ',
  );
const ES_TENS = '  veinte treinta cuarenta cincuenta sesenta setenta ochenta noventa'.split(' ');

/** A figure below 100 as it is spoken, for counting only. */
function below100(n: number, ones: readonly string[], tens: readonly string[]): string {
  if (n < 20) return ones[n] ?? '';
  const rest = n % 10 ? ` ${ones[n % 10] ?? ''}` : '';
  return `${tens[Math.floor(n / 10)] ?? ''}${rest}`;
}

/** A day, a count or a year as it is spoken. */
function spoken(figure: string, language: string): string {
  const n = Number(figure);
  if (language === 'en')
    return n < 100
      ? below100(n, EN_ONES, EN_TENS)
      : `${below100(Math.floor(n / 100), EN_ONES, EN_TENS)} ${below100(n % 100, EN_ONES, EN_TENS)}`;
  return n < 100 ? below100(n, ES_ONES, ES_TENS) : `dos mil ${below100(n % 100, ES_ONES, ES_TENS)}`;
}

const syllablesOf = (word: string, language: string): number => {
  const text = /^\d+$/.test(word) ? spoken(word, language) : word;
  return text
    .split(' ')
    .reduce((sum, one) => sum + Math.max(1, language === 'en' ? syllable(one) : countEs(one)), 0);
};

/** Sentences end where the language's rules end them, and with every line. */
export function countsOf(text: string, language: string): Counts {
  const cut = (granularity: 'sentence' | 'word', of: string) => [
    ...new Intl.Segmenter(language, { granularity }).segment(of),
  ];
  const wordsIn = (of: string): string[] =>
    cut('word', of).flatMap(({ segment, isWordLike }) => (isWordLike ? [segment] : []));
  const words = wordsIn(text);
  return {
    sentences: text
      .split('\n')
      .flatMap((line) => cut('sentence', line))
      .filter(({ segment }) => wordsIn(segment).length > 0).length,
    words: words.length,
    syllables: words.reduce((sum, word) => sum + syllablesOf(word, language), 0),
  };
}

/** Texts counted apart, as one. */
export const together = (parts: readonly Counts[]): Counts => ({
  sentences: parts.reduce((sum, one) => sum + one.sentences, 0),
  words: parts.reduce((sum, one) => sum + one.words, 0),
  syllables: parts.reduce((sum, one) => sum + one.syllables, 0),
});

/** School grade in the United States (Kincaid and others 1975); the formula is the library's. */
export const gradeOf = ({ sentences, words, syllables }: Counts): number =>
  fleschKincaid({ sentence: sentences, word: words, syllable: syllables });

/**
 * Fernández Huerta (1959), "Medidas sencillas de lecturabilidad", with words in a sentence as the third
 * term, as corrected by Law (2011). 80 to 90 is "easy", the 5th grade; 70 to 80 "rather easy", the 6th.
 */
export const fernandezHuerta = ({ sentences, words, syllables }: Counts): number =>
  206.84 - 60 * (syllables / words) - 1.02 * (words / sentences);

/**
 * Szigriszt Pazos (1993), read on the scale of Barrio (2008): 65 to 80 "quite easy", above 80 "very easy".
 */
export const perspicuity = ({ sentences, words, syllables }: Counts): number =>
  206.835 - 62.3 * (syllables / words) - words / sentences;
