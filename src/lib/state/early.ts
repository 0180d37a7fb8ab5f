/**
 * An address that changes while the page starts, as by a second click or a bookmark: the router, which
 * listens only once the first page stands, writes the first address back over it. Heard here meanwhile.
 */
let early: string | undefined;
const heard = (): void => {
  early = location.hash;
};

/** Begins to listen; to be called before the router reads the address. */
export function hearEarly(): void {
  addEventListener('hashchange', heard);
}

/** Stops listening: from here on the router does. Answers with the last address heard, once. */
export function lastEarly(): string | undefined {
  removeEventListener('hashchange', heard);
  const last = early;
  early = undefined;
  return last;
}
