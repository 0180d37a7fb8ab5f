/**
 * What a clinician settles for a page, as a new `Family`: nothing is changed in place. The result is
 * given to the record through its door (`rawFamily`, then the parser).
 */
import { NO_FAMILY, type Family, type Language, type PageChoice } from '../case/family.ts';
import type { Sentence } from './model.ts';

const isEmpty = ({ chosen, edits }: PageChoice): boolean => chosen === null && edits.length === 0;

function withPage(
  family: Family | null,
  visit: string,
  change: (page: PageChoice) => PageChoice,
): Family {
  const before = family ?? NO_FAMILY;
  const page = change(
    before.pages.find((one) => one.visit === visit) ?? { visit, chosen: null, edits: [] },
  );
  const others = before.pages.filter((one) => one.visit !== visit);
  return { ...before, pages: isEmpty(page) ? others : [...others, page] };
}

/**
 * A sentence in other words. An empty text, or the page's own, takes the edit away; any other is kept
 * with what the page said by itself at the time.
 * @param visit the page's, as in `FamilyPage.visit`
 */
export function withEdit(
  family: Family | null,
  { visit, language }: { visit: string; language: Language },
  { key, ours }: Pick<Sentence, 'key' | 'ours'>,
  text: string,
): Family {
  const said = text.trim();
  return withPage(family, visit, (page) => {
    const edits = page.edits.filter((edit) => edit.key !== key || edit.language !== language);
    const isOurs = said === '' || said === ours;
    return {
      ...page,
      edits: isOurs ? edits : [...edits, { key, language, text: said, over: ours }],
    };
  });
}

/** The reflexes a page tells of, in order; null leaves the choice to the page again. */
export const withChosen = (
  family: Family | null,
  visit: string,
  chosen: readonly string[] | null,
): Family => withPage(family, visit, (page) => ({ ...page, chosen }));

/** Takes away what was settled for visits that are gone. */
export const withoutOrphans = (family: Family, orphans: readonly PageChoice[]): Family => ({
  ...family,
  pages: family.pages.filter(({ visit }) => !orphans.some((gone) => gone.visit === visit)),
});
