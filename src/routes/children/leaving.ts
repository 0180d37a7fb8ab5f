import { desk, view } from '$lib/app/app.svelte.ts';

/** Where the open child goes with a change, nothing of it stays in view. */
export function leaving(change: () => void): void {
  const before = desk.open?.id;
  change();
  if (desk.open?.id !== before) view.reset();
}
