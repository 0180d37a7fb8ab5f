/**
 * Sources that are one voice, confirmed by hand. `copies.ts` works out over all claims which pairs
 * print the same ages; a pair is taken as one voice only where this list has it, and `takenOver.ts` says why. Pairs that look
 * alike and are not listed are shown as such, and keep their own voices.
 */

/** One taking over of ages. */
export interface TakenOver {
  /** The source that took the ages over. */
  by: string;
  /** The source it has them from. */
  from: string;
  /**
   * `cites` = it names the other for these ages; `same-ages` = it prints the other's ages in its terms; `one-printout` = both
   * were read from one table.
   */
  how: 'cites' | 'same-ages' | 'one-printout';
}

export const TAKEN_OVER: readonly TakenOver[] = [
  {
    by: 'futagi-2012',
    from: 'allen-capute-1986',
    how: 'cites',
  },
  {
    by: 'statpearls-moro',
    from: 'allen-capute-1986',
    how: 'same-ages',
  },
  {
    by: 'molnar-handout',
    from: 'osullivan-handout',
    how: 'one-printout',
  },
];

/**
 * The family of every source that shares one: its id is that of the source the others have it from.
 * Families join where they share a member.
 */
export function familiesOf(taken: readonly TakenOver[]): ReadonlyMap<string, string> {
  const family = new Map<string, string>();
  for (const { by, from } of taken) {
    const [left, right] = [family.get(by) ?? by, family.get(from) ?? from];
    for (const [member, id] of family) if (id === left) family.set(member, right);
    family.set(by, right).set(from, right);
  }
  return family;
}

const FAMILIES = familiesOf(TAKEN_OVER);

/** The voice a source speaks with: its family of copies, or itself. */
export const familyOf = (source: string): string => FAMILIES.get(source) ?? source;

/** A number of sources, and of the independent voices they speak with. */
export interface SourceCount {
  sources: number;
  voices: number;
}

/** How many sources some ids name, each once, and how many voices those are. */
export function sourceCount(ids: Iterable<string>): SourceCount {
  const sources = new Set(ids);
  return { sources: sources.size, voices: new Set([...sources].map(familyOf)).size };
}
