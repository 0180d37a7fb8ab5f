/**
 * Chance that can be had again: a linear congruential generator (d3-random's, multiplier 1664525,
 * increment 1013904223, modulus 2^32) started from a whole number. Neighbouring seeds would begin
 * alike, so a seed's bits are mixed first. Nothing here is secret; it only deals.
 */
import { randomLcg, shuffler } from 'd3';

/** Seeds are whole numbers from 0 to this, short enough to be read out and typed. */
export const MAX_SEED = 999_999;

export interface Chance {
  /** From 0 up to, not including, 1. */
  next(): number;
  /** A whole number from `low` to `high`, both included. */
  whole(low: number, high: number): number;
  /** One of several; undefined of none. */
  one<T>(of: readonly T[]): T | undefined;
  /** The same things in another order. */
  shuffled<T>(of: readonly T[]): T[];
}

/** Spreads the bits of a seed over all 32, so that 1 and 2 have nothing in common. */
function mixed(seed: number): number {
  let bits = Math.trunc(seed) | 0;
  bits = Math.imul(bits ^ (bits >>> 16), 0x45d9f3b);
  bits = Math.imul(bits ^ (bits >>> 15), 0x2c1b3c6d);
  return (bits ^ (bits >>> 16)) >>> 0;
}

/** The chance of one seed: the same seed deals the same. */
export function chanceOf(seed: number): Chance {
  const next = randomLcg(mixed(seed) + 1);
  const shuffle = shuffler(next);
  const whole = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  return {
    next,
    whole,
    one: (of) => of[whole(0, of.length - 1)],
    shuffled: (of) => shuffle([...of]),
  };
}
