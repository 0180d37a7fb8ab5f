/** The windows of the chosen sources, compiled once and read at any age. */
import type { Atlas, SourcedClaim } from '../atlas/atlas.ts';
import { isOfVariant } from '../atlas/variants.ts';
import { testOf } from '../case/finding.ts';
import { compile, type Compiled } from './expectation.ts';
import { windowsOf } from './window.ts';

/**
 * The sources judged by: those that judge by default (`judgedByDefault` of a claim), all of them, or
 * those whose ids are named.
 */
export type Chosen = 'default' | 'all' | ReadonlySet<string>;

const isChosen = ({ source, judgedByDefault }: SourcedClaim, chosen: Chosen): boolean =>
  chosen === 'all' || (chosen === 'default' ? judgedByDefault : chosen.has(source.id));

/**
 * Every reflex's windows under the chosen sources, ready to read at any age; of one whose variants are dated
 * apart also those of each variant, under the key of its test (`testOf`): what is said of it, and what does not
 * say of which it is.
 */
export type Sheet = ReadonlyMap<string, Compiled>;

export function sheetOf(atlas: Atlas, chosen: Chosen = 'all'): Sheet {
  const sheet = new Map<string, Compiled>();
  for (const [id, claims] of atlas.claims)
    for (const variant of [undefined, ...(atlas.variants.get(id) ?? [])]) {
      const windows = windowsOf(claims.filter((claim) => isOfVariant(claim, variant)));
      const judging = windows.filter(({ claim }) => isChosen(claim, chosen));
      sheet.set(testOf({ reflex: id, variant }), compile(judging));
    }
  return sheet;
}
