/** The one desk, view, settings and judgement of the page. */
import { ATLAS_PARTS } from '../atlas/atlas.ts';
import { openStore } from '../store/store.ts';
import { DEMO_ID, demoCase } from './demo.ts';
import { Desk } from './desk.svelte.ts';
import { Incoming } from './incoming.svelte.ts';
import { Judgement } from './judgement.svelte.ts';
import { isOwn, Library } from './library.svelte.ts';
import { readDraft, writeDraft } from './draft.ts';
import { Renewal } from './renewal.svelte.ts';
import { Settings, type Shelf } from './settings.svelte.ts';
import { Talks } from './talks.svelte.ts';
import { Trial } from './trial.svelte.ts';
import { View } from './view.svelte.ts';

/** Sources and reflexes of the reader's own, and the atlas with them in it. */
export const library = new Library(ATLAS_PARTS);
export const atlas = library.atlas;

/** The browser's small storage; undefined where it is denied. */
function smallStorage(): Shelf | undefined {
  try {
    return globalThis.localStorage;
  } catch {
    return undefined;
  }
}

/** What lives as long as the page's tab, over a reload; undefined where it is denied. */
function tabStorage(): Storage | undefined {
  try {
    return globalThis.sessionStorage;
  } catch {
    return undefined;
  }
}

const OPEN = 'tidemark-open';
export const storage = smallStorage();
const lastOpen = storage?.getItem(OPEN) ?? undefined;
const seed = [{ id: DEMO_ID, record: demoCase(atlas) }];

/** A source of one's own is known only when the store has been read, and may be chosen before. */
const isKnownSource = { has: (id: string): boolean => atlas.sources.has(id) || isOwn(id) };
export const settings = new Settings(storage, isKnownSource);
export const view = new View();
/** The first time, the invented child is shown at once; later, what was open is waited for. */
export const desk = new Desk(library.known, lastOpen ? [] : seed, lastOpen);
desk.draft = readDraft(tabStorage());
/** What came from another system and waits to be looked through. */
export const incoming = new Incoming(desk, library.known);
/** Talks of the reader's own. */
export const talks = new Talks();
/** What is tried on the open child and kept nowhere. */
export const trial = new Trial(() => desk.open?.id);
export const judgement = new Judgement(atlas, desk, settings, view, trial);

/** Opens the store and takes over what it holds. */
export async function begin(): Promise<void> {
  const store = await openStore({ atlas: library.known, seed });
  await library.load(store); // first: a record may hold findings on a reflex of one's own
  await desk.load(store);
  await talks.load(store);
}

/** Opens a child and remembers which. */
export function openChild(id: string): void {
  desk.openChild(id);
  view.reset();
  remember();
}

/** Remembers which child is open, for the next time. */
export function remember(): void {
  try {
    if (desk.open) storage?.setItem(OPEN, desk.open.id);
  } catch {
    // a denied storage only means that the first child is opened next time
  }
}

/** Keeps what cannot be kept in the record yet over a reload. */
export const rememberDraft = (): void => writeDraft(tabStorage(), desk.draft);

/** A new version of Tidemark, and when it is used. */
export const renewal = new Renewal(() => location.reload());

/** Settles when all that was changed is written. */
export const settled = (): Promise<unknown> =>
  Promise.all([desk.written, library.written, talks.written]);

/** Whether a page that is loaded anew would have all that was entered. */
export const isAllKept = (): boolean =>
  desk.keeping === 'kept' && ![desk, library, talks].some(({ refusedWrite }) => refusedWrite);
