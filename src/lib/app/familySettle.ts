/** What is settled for the open child's family page, kept in its record, with undo. */
import { NO_FAMILY, rawFamily, type Clinic, type Family } from '../case/family.ts';
import type { Problem } from '../case/problem.ts';
import type { FamilyPage, Sentence } from '../handout/model.ts';
import { withChosen, withEdit, withoutOrphans } from '../handout/settle.ts';
import { desk, judgement, settings } from './app.svelte.ts';

const current = (): Family => judgement.recorded?.family ?? NO_FAMILY;

const follow = (family: Family) => desk.follow({ family: rawFamily(family) }, 'family-changed');

/** What is wrong with it, none where it was kept: what is refused leaves the record as before. */
function keep(family: Family): readonly Problem[] {
  const tried = follow(family);
  return tried.ok ? [] : tried.problems;
}

/** Language, pronoun or name. */
export const settle = (
  change: Partial<Pick<Family, 'language' | 'pronoun' | 'calledName'>>,
): readonly Problem[] => keep({ ...current(), ...change });

/** Words that were refused, by child and place, for as long as the window is open: nothing typed is lost. */
const refusedWords = new Map<string, Refused>();

/** Words that could not be kept, and why. */
export interface Refused {
  text: string;
  problem: Problem;
}

const placeOf = ({ visit, language }: FamilyPage, { key }: Sentence): string =>
  JSON.stringify([desk.open?.id, visit, language, key]);

/** What was typed for a sentence last and refused. */
export const refusedAt = (page: FamilyPage, sentence: Sentence): Refused | undefined =>
  refusedWords.get(placeOf(page, sentence));

/** A sentence in other words; empty takes the edit away. Nothing is kept where nothing changes. */
export function settleSentence(
  page: FamilyPage,
  sentence: Sentence,
  text: string,
): Refused | undefined {
  const place = placeOf(page, sentence);
  refusedWords.delete(place);
  if (text.trim() === sentence.text) return undefined;
  const tried = follow(withEdit(current(), page, sentence, text));
  const [problem] = tried.ok ? [] : tried.problems;
  if (!problem) return undefined;
  const refused = { text, problem };
  refusedWords.set(place, refused);
  return refused;
}

export const settleChosen = (
  page: FamilyPage,
  chosen: readonly string[] | null,
): readonly Problem[] => keep(withChosen(current(), page.visit, chosen));

export const clearOrphans = (page: FamilyPage): readonly Problem[] =>
  keep(withoutOrphans(current(), page.orphans));

/** Takes away an edit whose sentence no longer stands on the page. */
export const clearUnused = (page: FamilyPage): readonly Problem[] =>
  keep(
    page.unused.reduce<Family>(
      (family, { key, over }) => withEdit(family, page, { key, ours: over }, ''),
      current(),
    ),
  );

/** The clinic: of this child where the case keeps one, else of this machine. */
export function settleClinic(change: Partial<Clinic>): readonly Problem[] {
  const family = current();
  if (family.clinic) return keep({ ...family, clinic: { ...family.clinic, ...change } });
  settings.setClinic({ ...settings.clinic, ...change });
  return [];
}
