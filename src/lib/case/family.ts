/**
 * What a clinician settled for the page a family is given: its language, how the child is spoken of,
 * what is told and in whose words. Part of the record, so that a page printed again says the same.
 */
import type { Place } from './problem.ts';
import { Reader } from './reader.ts';
import { MAX_EDITS, MAX_FINDINGS, MAX_TOLD, MAX_NOTE, MAX_PAGES, type RawCase } from './shape.ts';

/** Languages a family's page is written in. */
export const LANGUAGES = ['en', 'es'] as const;
export type Language = (typeof LANGUAGES)[number];

/** How the child is spoken of: by one of these, or by the name alone. */
export const PRONOUNS = ['she', 'he', 'they', 'name'] as const;
export type Pronoun = (typeof PRONOUNS)[number];

/** A sentence of the page in the clinician's own words. */
export interface FamilyEdit {
  /** The sentence it stands for. */
  key: string;
  language: Language;
  text: string;
  /** What the page said by itself when it was edited, so that a change beneath is noticed. */
  over: string;
}

/** What was settled for one page: that of a visit, or that of the whole course. */
export interface PageChoice {
  /** The visit by its id; empty for the whole course. */
  visit: string;
  /** The reflexes told of, in order; null leaves the choice to us. */
  chosen: readonly string[] | null;
  edits: readonly FamilyEdit[];
}

export interface Clinic {
  name: string;
  phone: string;
}

export interface Family {
  language: Language;
  pronoun: Pronoun;
  /** What the child is called at home; empty for "your baby". Never taken from the label. */
  calledName: string;
  /** The clinic of this child, where it is another than the one set on the machine. */
  clinic: Clinic | null;
  pages: readonly PageChoice[];
}

export const NO_FAMILY: Family = {
  language: 'en',
  pronoun: 'name',
  calledName: '',
  clinic: null,
  pages: [],
};

/** Longer than any id of a visit or key of a sentence. */
const MAX_KEY = 200;

type RawFamily = NonNullable<RawCase['family']>;
type RawPage = RawFamily['pages'][number];

const at = (field: string): Place => ({ field });

function readEdits(raws: RawPage['edits'], read: Reader): FamilyEdit[] {
  if (raws.length > MAX_EDITS)
    read.refuse(at('familyEdit'), { code: 'too-many', limit: MAX_EDITS });
  const seen = new Set<string>();
  return raws.slice(0, MAX_EDITS).flatMap((raw): FamilyEdit[] => {
    const language =
      read.oneOf(raw.language, LANGUAGES) ??
      read.refuse(at('familyLanguage'), unknown(raw.language, LANGUAGES));
    const key = read.text(raw.key, at('familyEdit'), MAX_KEY);
    const text = read.words(raw.text, at('familyEdit'), MAX_NOTE);
    const over = read.text(raw.over, at('familyEdit'), MAX_NOTE);
    if (!key) read.refuse(at('familyEdit'), { code: 'empty' });
    if (!language || seen.has(`${language} ${key}`)) return [];
    seen.add(`${language} ${key}`);
    return [{ key, language, text, over }];
  });
}

const unknown = (text: string, known: readonly string[]) =>
  ({ code: 'unknown-word', text: text.slice(0, 60), known }) as const;

function readPages(raws: RawFamily['pages'], read: Reader): PageChoice[] {
  if (raws.length > MAX_PAGES)
    read.refuse(at('familyPages'), { code: 'too-many', limit: MAX_PAGES });
  const once = [...new Map(raws.map((raw) => [raw.visit, raw])).values()];
  return once.slice(0, MAX_PAGES).map(({ visit, chosen, edits }) => {
    if (chosen && chosen.length > MAX_TOLD)
      read.refuse(at('familyChosen'), { code: 'too-many', limit: MAX_TOLD });
    const ids = chosen
      ?.slice(0, MAX_FINDINGS)
      .map((reflex) => read.line(reflex, at('familyChosen')));
    return {
      visit: read.text(visit, at('familyPages'), MAX_KEY),
      chosen: ids ? [...new Set(ids)] : null,
      edits: readEdits(edits, read),
    };
  });
}

const readClinic = ({ name, phone }: Clinic, read: Reader): Clinic => ({
  name: read.line(name, at('clinicName')),
  phone: read.line(phone, at('clinicPhone')),
});

/** Reads what a file says of the page; a file that says nothing has none. */
export function readFamily(raw: RawCase['family'], read: Reader): Family | null {
  if (!raw) return null;
  const language =
    read.oneOf(raw.language, LANGUAGES) ??
    read.refuse(at('familyLanguage'), unknown(raw.language, LANGUAGES));
  const pronoun =
    read.oneOf(raw.pronoun, PRONOUNS) ?? read.refuse(at('pronoun'), unknown(raw.pronoun, PRONOUNS));
  const calledName = read.line(raw.calledName, at('calledName'));
  const clinic = raw.clinic ? readClinic(raw.clinic, read) : null;
  const pages = readPages(raw.pages, read);
  return language && pronoun ? { language, pronoun, calledName, clinic, pages } : null;
}

/** The same as a file holds it. */
export const rawFamily = ({ clinic, pages, ...rest }: Family): RawFamily => ({
  ...rest,
  ...(clinic ? { clinic: { ...clinic } } : {}),
  pages: pages.map(({ visit, chosen, edits }) => ({
    visit,
    ...(chosen ? { chosen: [...chosen] } : {}),
    edits: edits.map((edit) => ({ ...edit })),
  })),
});
