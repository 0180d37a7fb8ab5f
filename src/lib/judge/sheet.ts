/** The windows of the chosen sources, compiled once and read at any age. */
import type { Atlas, SourcedClaim } from '../atlas/atlas.ts';
import { compile, type Compiled } from './expectation.ts';
import { windowsOf } from './window.ts';

/**
 * The sources judged by: those that judge by default (`judgedByDefault` of a claim), all of them, or
 * those whose ids are named.
 */
export type Chosen = 'default' | 'all' | ReadonlySet<string>;

const isChosen = ({ source, judgedByDefault }: SourcedClaim, chosen: Chosen): boolean =>
  chosen === 'all' || (chosen === 'default' ? judgedByDefault : chosen.has(source.id));

/** Every reflex's windows under the chosen sources, ready to read at any age. */
export type Sheet = ReadonlyMap<string, Compiled>;

export function sheetOf(atlas: Atlas, chosen: Chosen = 'all'): Sheet {
  const sheet = new Map<string, Compiled>();
  for (const [id, claims] of atlas.claims) {
    const windows = windowsOf(claims);
    sheet.set(id, compile(windows.filter(({ claim }) => isChosen(claim, chosen))));
  }
  return sheet;
}
