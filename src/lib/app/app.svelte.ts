/** The one desk, view, settings and judgement of the page. */
import { CORE_PARTS } from '../atlas/core.ts';
import { caseText } from '../case/raw.ts';
import { openStore } from '../store/store.ts';
import { DEMO_ID, demoCase } from '../examples/demo.ts';
import { Aside } from '../repository/trash.svelte.ts';
import { Backups } from '../backup/backups.svelte.ts';
import { Desk } from '../repository/cases.svelte.ts';
import { Incoming } from '../exchange/incoming.svelte.ts';
import { Judgement } from './judgement.svelte.ts';
import { Keeping } from '../repository/saveStatus.svelte.ts';
import { isOwn, Library } from '../repository/library.svelte.ts';
import { decisionsPlace, formsPlace, visitPlace } from '../repository/draftStorage.ts';
import { DATABASE } from '../store/names.ts';
import { LOCK_ROW, LockCodec } from '../store/lockCodec.ts';
import { Lock } from '../lock/lock.svelte.ts';
import { QUESTIONS, SETTINGS, SHEETS } from '../platform/storageKeys.ts';
import { Renewal } from './appUpdate.svelte.ts';
import type { Shelf } from '../platform/persisted.svelte.ts';
import { Settings } from './settings.svelte.ts';
import { Spoken } from './spoken.svelte.ts';
import { Talks } from '../repository/talks.svelte.ts';
import { Trial } from './whatIf.svelte.ts';
import { today } from '../platform/today.ts';
import { takeTyped } from '../drafts/typedField.svelte.ts';
import {
  isAnyLeft,
  leaveBehind,
  leftBehind,
  NOTHING_LEFT,
  takeBack,
  type LeftByTable,
} from '../repository/unwritten.ts';
import { joinUndo } from '../platform/undoing.ts';
import { Underway } from '../repository/underway.svelte.ts';
import { View } from './view.svelte.ts';

/** Whether all that was changed is kept. */
export const keeping = new Keeping();

/** Sources and reflexes of the reader's own, and the atlas with them in it. */
export const library = new Library(CORE_PARTS, keeping);
export const atlas = library.atlas;

/** The browser's small storage; undefined where it is denied. */
function smallPlace(): Storage | undefined {
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

/** What stands beside the records, by name, where there is any. */
const smallTexts = (of: Readonly<Record<string, () => string | undefined>>) =>
  Object.fromEntries(
    Object.entries(of).flatMap(([name, say]) => {
      const text = say();
      return text ? [[name, text]] : [];
    }),
  ) as Record<string, string>;

const OPEN = 'tidemark-open';
export const storage: Shelf | undefined = smallPlace();
const lastOpen = storage?.getItem(OPEN) ?? undefined;
const seed = [{ id: DEMO_ID, record: demoCase(atlas, today()) }];

/** A source of one's own is known only when the store has been read, and may be chosen before. */
const isKnownSource = { has: (id: string): boolean => atlas.sources.has(id) || isOwn(id) };
export const settings = new Settings(storage, isKnownSource);
export const view = new View();
/** The first time, the invented child is shown at once; later, what was open is waited for. */
export const desk = new Desk(library.known, lastOpen ? [] : seed, lastOpen, keeping);
desk.drafts.now = visitPlace.read(tabStorage());
desk.drafts.forms = formsPlace.read(tabStorage()) ?? [];
desk.drafts.decisions = decisionsPlace.read(tabStorage()) ?? [];
/** What came from another system and waits to be looked through. */
export const incoming = new Incoming(desk, library.known);
/** Talks of the reader's own. */
export const talks = new Talks(keeping);
/** What the browser says of its storage; undefined where it says nothing. */
const browserStorage = (): StorageManager | undefined => globalThis.navigator.storage;

/** What was removed, and what two windows did otherwise. */
export const aside = new Aside();
/** What goes into a backup beside the records, by name; what a page has not loaded is as it was kept. */
export const small: Record<string, () => string | undefined> = {
  [SETTINGS]: () => settings.kept.text,
  [QUESTIONS]: () => storage?.getItem(QUESTIONS) ?? undefined,
  [SHEETS]: () => storage?.getItem(SHEETS) ?? undefined,
};
export const backups = new Backups(
  { cases: desk.backed, own: library.backed, talks: talks.backed },
  () => smallTexts(small),
  { isSealed: () => lock.standing === 'open', shelf: storage },
);
for (const one of [library, desk, talks, settings.kept]) joinUndo(one);
/** What goes on for a while after its click, and what of it pages that have gone did not finish. */
export const underway = new Underway(smallPlace);
/** What the page says of something it did beside the open child. */
export const spoken = new Spoken();
/** What is tried on the open child and kept nowhere. */
export const trial = new Trial(() => desk.open?.id);
export const judgement = new Judgement(atlas, desk, settings, view, trial);

/** The lock on what is kept here. */
export const lock = new Lock({
  shelf: storage,
  database: DATABASE,
  leaving: () => {
    const at = globalThis.document.activeElement;
    if (at instanceof HTMLElement) at.blur();
    takeTyped();
  },
  kept: async () => {
    await Promise.all([library.written, desk.written, talks.written]);
    await rememberDraft();
    if (!isAnyLeft(left())) takeBack(smallPlace()); // no plain text stays behind a lock
    return keeping.standing !== 'not-saved' || keeping.kind !== 'kept';
  },
  opened: async () => {
    if (!lock.codec) return;
    desk.drafts.now = await visitPlace.unseal(tabStorage(), lock.codec);
    desk.drafts.forms = (await formsPlace.unseal(tabStorage(), lock.codec)) ?? [];
    desk.drafts.decisions = (await decisionsPlace.unseal(tabStorage(), lock.codec)) ?? [];
  },
  reload: () => globalThis.location.reload(),
  now: () => Date.now(),
});

/** Opens the store and takes over what it holds. */
export async function begin(): Promise<void> {
  const codec = new LockCodec(() => void opened.then((rows) => lock.met(rows)));
  const opened = openStore({
    codec,
    seed: seed.map(({ id, record }) => ({ id, text: caseText(record) })),
    onblocked: () => (keeping.blocked = true),
    onoutdated: () => (keeping.outdated = true),
  });
  const rows = await opened;
  keeping.blocked = false;
  keeping.kind = rows.kind;
  lock.codec = codec;
  await underway.begin(async () => (await rows.one(LOCK_ROW))?.rev);
  await lock.begin(rows);
  await library.load(rows); // first: a record may hold findings on a reflex of one's own
  const behind = rows.kind === 'kept' ? leftBehind(smallPlace()) : undefined;
  for (const one of behind?.left ?? []) await library.catchUp(one.own ?? NOTHING_LEFT);
  await desk.load(rows);
  for (const one of behind?.left ?? []) await desk.catchUp(one.cases ?? NOTHING_LEFT);
  await talks.load(rows);
  for (const one of behind?.left ?? []) await talks.catchUp(one.talks ?? NOTHING_LEFT);
  await settled();
  if (keeping.standing !== 'not-saved') behind?.done();
  await aside.load(rows, Date.now());
  await backups.load(rows);
  await keeping.lookUp(browserStorage());
}

/** What is not written yet. */
const left = (): LeftByTable => ({
  own: library.unwritten(),
  cases: desk.unwritten(),
  talks: talks.unwritten(),
});

/**
 * The page may go now: what is typed is taken in, and what the store may have no time to write any more is
 * left for the next page. Under a lock nothing is left in plain text: there leaving is asked about before.
 * @param isLast whether it is being closed or loaded anew, and not only out of sight
 */
export function going(isLast: boolean): void {
  takeTyped();
  // the store may not have answered yet: what was typed over the child shown at once waits for it too
  const unwritten = keeping.kind === 'kept' || keeping.kind === undefined ? left() : {};
  const place = smallPlace();
  const isAny = isAnyLeft(unwritten);
  if (!isAny) takeBack(place); // what could not be written before has been since
  const isPlain = lock.standing === 'none' || lock.standing === 'unknown';
  const isLeft = isAny && isPlain && leaveBehind(place, unwritten);
  if (isLast) underway.leave(isAny && !isLeft ? ['writing'] : []);
  if (!isAny) return;
  void settled().then(() => {
    if (isAnyLeft(left())) return;
    takeBack(place);
    underway.takeBack();
  });
}

/** Once there is a child of one's own, the browser is asked not to clear it when the disk runs short. */
export function askToKeep(): void {
  const hasOwn = desk.shelf.some(({ record }) => !record.child.invented);
  if (keeping.kind === 'kept' && hasOwn) void keeping.askToKeep(browserStorage());
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
export async function rememberDraft(): Promise<void> {
  const { now: visit } = desk.drafts;
  const some = <T>(all: readonly T[]): readonly T[] | undefined =>
    all.length > 0 ? all : undefined;
  const [forms, decisions] = [some(desk.drafts.forms), some(desk.drafts.decisions)];
  const tab = tabStorage();
  if (lock.standing === 'none') {
    visitPlace.write(tab, visit);
    formsPlace.write(tab, forms);
    decisionsPlace.write(tab, decisions);
  } else if (lock.standing === 'open' && lock.codec) {
    const { codec } = lock;
    await Promise.all([
      visitPlace.seal(tab, visit, codec),
      formsPlace.seal(tab, forms, codec),
      decisionsPlace.seal(tab, decisions, codec),
    ]);
  }
}

/** A new version of Tidemark, and when it is used. */
export const renewal = new Renewal(() => location.reload());

/** Settles when all that was changed is written. */
export const settled = (): Promise<unknown> =>
  Promise.all([desk.written, library.written, talks.written]);

/** Whether a page that is loaded anew would have all that was entered. */
export const isAllKept = (): boolean =>
  keeping.kind === 'kept' && (keeping.standing ?? 'saved') === 'saved';
