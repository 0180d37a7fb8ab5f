/**
 * Addresses that the router does not handle by itself: a hash typed into the browser's bar, opened from
 * a bookmark, or changed by another script. For such an entry, which carries none of the router's state,
 * the router loads the whole page anew, and what an action had not written yet is lost. Here the entry
 * is numbered as the next one, so that the router goes to it within the page and Back leads back.
 */

/** The router's own keys in `history.state`: the number of an entry, and of the navigation it belongs to. */
const ENTRY = 'sveltekit:history';
const NAVIGATION = 'sveltekit:navigation';

type EntryState = Readonly<Record<string, unknown>> | null;

/** State of the entry that is shown. */
let shown: EntryState = null;
/** The hash that came while the page was starting: the router, which listens later, writes over it. */
let early: string | undefined;
let isStarted = false;

const numberOf = (state: EntryState, key: string): number => Number(state?.[key] ?? 0);

function onEntry(event: PopStateEvent): void {
  const state = event.state as EntryState;
  if (!isStarted || numberOf(state, ENTRY) > 0) return; // the router's own
  event.stopImmediatePropagation();
  const numbered = {
    ...state,
    [ENTRY]: numberOf(shown, ENTRY) + 1,
    [NAVIGATION]: numberOf(shown, NAVIGATION) + 1,
  };
  history.replaceState(numbered, '');
  dispatchEvent(new PopStateEvent('popstate', { state: numbered }));
}

function onHash(): void {
  if (!isStarted) early = location.hash;
}

/** Begins to listen; to be called before the router starts, so that its own listeners come later. */
export function watchAddress(): void {
  addEventListener('popstate', onEntry);
  addEventListener('hashchange', onHash);
}

/**
 * To be called after each navigation: remembers the entry that is shown.
 * @returns the first time, the hash that came while the page was starting, if one did
 */
export function arrived(): string | undefined {
  shown = history.state as EntryState;
  isStarted = true;
  const last = early;
  early = undefined;
  return last;
}
