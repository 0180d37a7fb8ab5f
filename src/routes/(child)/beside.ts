/** What the list of findings shows beside its sentences: fetched with the page, not waited for. */
export { default as Counts } from './Counts.svelte';
export { default as Do } from './Do.svelte';
