import { watchAddress } from '$lib/state/address.ts';

export const init = watchAddress;
