import { hearEarly } from '$lib/state/early.ts';

export const init = hearEarly;
