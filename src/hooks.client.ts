import { watchAddress } from '$lib/app/address.ts';

export const init = watchAddress;
