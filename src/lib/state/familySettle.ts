/** What is settled for the open child's family page, kept in its record, with undo. */
import { NO_FAMILY, rawFamily, type Clinic, type Family } from '../case/family.ts';
import type { FamilyPage, Sentence } from '../handout/model.ts';
import { withChosen, withEdit, withoutOrphans } from '../handout/settle.ts';
import { desk, judgement, settings } from './app.svelte.ts';

const current = (): Family => judgement.recorded?.family ?? NO_FAMILY;

/** Whether it could be kept: what is too long is refused, and the record is as before. */
const keep = (family: Family): boolean =>
  desk.follow({ family: rawFamily(family) }, 'family-changed').ok;

/** Language, pronoun or name. */
export const settle = (
  change: Partial<Pick<Family, 'language' | 'pronoun' | 'calledName'>>,
): boolean => keep({ ...current(), ...change });

/** A sentence in other words; empty takes the edit away. Nothing is kept where nothing changes. */
export const settleSentence = (page: FamilyPage, sentence: Sentence, text: string): boolean =>
  text.trim() === sentence.text || keep(withEdit(current(), page, sentence, text));

export const settleChosen = (page: FamilyPage, chosen: readonly string[] | null): boolean =>
  keep(withChosen(current(), page.visit, chosen));

export const clearOrphans = (page: FamilyPage): boolean =>
  keep(withoutOrphans(current(), page.orphans));

/** Takes away an edit whose sentence no longer stands on the page. */
export const clearUnused = (page: FamilyPage): boolean =>
  keep(
    page.unused.reduce<Family>(
      (family, { key, over }) => withEdit(family, page, { key, ours: over }, ''),
      current(),
    ),
  );

/** The clinic: of this child where the case keeps one, else of this machine. */
export function settleClinic(change: Partial<Clinic>): boolean {
  const family = current();
  if (family.clinic) return keep({ ...family, clinic: { ...family.clinic, ...change } });
  settings.setClinic({ ...settings.clinic, ...change });
  return true;
}
