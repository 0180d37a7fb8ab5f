/** What a bundle would change among the children that are here, before anything does. */
import { caseText, rawOf } from '../case/raw.ts';
import type { Case } from '../case/case.ts';
import { differences, namedAs, type Point } from '../case/merge.ts';
import type { PlannedChild } from './sheet/applyPlan.ts';
import type { BundleChild } from './fhir/open.ts';
import { addressOf } from './fhir/names.ts';
import type { Kept } from '../store/store.ts';
import { newId } from '../platform/ids.ts';

/** How a child of a bundle stands to those here. */
export type Standing = 'new' | 'same' | 'changed';
export type Way = 'add' | 'replace' | 'leave';

export interface Offer {
  record: Case;
  standing: Standing;
  /** The child here that it is, by the address both go by. */
  here: Kept | undefined;
  /** The name a child that is not here is to be kept under, so that it stays the same child elsewhere. */
  id: string;
  /** What can be done with it, the first unless another is chosen. */
  ways: readonly Way[];
  /** All that differs from the child here: `mine` is what stands here, `theirs` what has come. */
  points: readonly Point[];
}

const WAYS: Readonly<Record<Standing, readonly Way[]>> = {
  new: ['add', 'leave'],
  same: ['leave', 'add'],
  // what is here is replaced by nothing that was not asked for
  changed: ['leave', 'replace', 'add'],
};

/** Lays children of one bundle beside those here, each by the address it goes by. */
export function offering(shelf: readonly Kept[]): (child: BundleChild) => Offer {
  const known = new Map(shelf.map((kept) => [addressOf(kept.id), kept]));
  const taken = new Set<string>();
  return ({ addresses, id, record: given }) => {
    const here = addresses.map((address) => known.get(address)).find((kept) => kept !== undefined);
    const record = here ? namedAs(given, here.record) : given;
    const same = here && caseText(here.record) === caseText(record);
    // one that stands twice in a bundle is two children, of which only one can keep the name
    const free = here || id === undefined || taken.has(id) ? newId() : id;
    taken.add(free);
    const standing: Standing = !here ? 'new' : same ? 'same' : 'changed';
    const points = here && !same ? differences(rawOf(here.record), rawOf(record)) : [];
    return { record, standing, here, id: free, ways: WAYS[standing], points };
  };
}

/** Each child of a bundle beside the one here that has its address. */
export const offersOf = (children: readonly BundleChild[], shelf: readonly Kept[]): Offer[] =>
  children.map(offering(shelf));

/** What is put on the desk: records under the id of the one they replace, or under one of their own. */
export const takenFrom = (offers: readonly { offer: Offer; way: Way }[]): Kept[] =>
  offers.flatMap(({ offer: { record, here, id }, way }) => {
    if (way === 'leave') return [];
    return [{ id: way === 'replace' && here ? here.id : id, record }];
  });

/** Children of a sheet as they are put on the desk: with what was added, or as new ones. */
export const addedTo = (children: readonly PlannedChild[]): Kept[] =>
  children.map(({ here, record }) => ({ id: here?.id ?? newId(), record }));
