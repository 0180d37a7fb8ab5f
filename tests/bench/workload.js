/**
 * The work a step of the benchmark does: a chart far fuller than any child's. 40 lanes of six sources,
 * twelve visits at which both sides of every lane were looked at, and four kinds of step. It is drawn
 * from a seed, so that every run does the same. Ages are weeks of gestation; names mean nothing.
 */

export const TERM_WEEKS = 40;
const WEEKS_PER_MONTH = 365.25 / 12 / 7;

/** A small generator of numbers from 0 to 1: a linear congruence of 48 bits, the high bits used. @param {number} seed */
function numbersFrom(seed) {
  let state = BigInt(seed);
  const next = () => {
    state = (state * 0x5deece66dn + 0xbn) & 0xffffffffffffn;
    return Number(state >> 16n) / 0x100000000;
  };
  return {
    /** @param {number} low @param {number} high */
    between: (low, high) => low + (high - low) * next(),
    /** @param {number} share */
    chance: (share) => next() < share,
    /** A number about 0, spread like a normal one: twelve draws summed. */
    about: () => Array.from({ length: 12 }, next).reduce((sum, x) => sum + x, -6),
    /** @template T @param {readonly T[]} items @returns {T[]} */
    shuffled(items) {
      const mixed = [...items];
      for (let last = mixed.length - 1; last > 0; last--) {
        const at = Math.floor(next() * (last + 1));
        [mixed[last], mixed[at]] = /** @type {[T, T]} */ ([mixed[at], mixed[last]]);
      }
      return mixed;
    },
  };
}

/** @param {number} weeks */
const hundredth = (weeks) => Math.round(weeks * 100) / 100;

const COLOURS = ['#1b6ca8', '#c8553d', '#588157', '#8e5ea2', '#b08900', '#00838f'];

/**
 * @typedef {{ id: string, source: string, a0: number, a1: number, b0: number | null, b1: number | null }} Band
 * @typedef {{ id: string, label: string, bands: Band[] }} Lane
 * @typedef {{ id: string, age: number, sd: number }} Visit
 * @typedef {{ id: string, visit: string, lane: string, side: 'L' | 'R', age: number, lo: number, hi: number, value: number }} FindingMark
 * @typedef {{ term: number, domain: [number, number], sources: { id: string, label: string, color: string }[], lanes: Lane[], visits: Visit[], findings: FindingMark[] }} Workload
 * @typedef {{ cursor: number[], zoom: [number, number][], toggleSource: string[], sort: string[][] }} Script
 */

/** @param {number} seed @returns {Workload} */
export function workload(seed = 20260101) {
  const draw = numbersFrom(seed);
  const end = hundredth(TERM_WEEKS + 36 * WEEKS_PER_MONTH);
  const sources = COLOURS.map((color, i) => ({ id: `s${i}`, label: `Source ${i + 1}`, color }));
  const lanes = Array.from({ length: 40 }, (_, i) => {
    const appears = draw.between(10, 60);
    const lasts = draw.between(12, 110);
    const lifelong = draw.chance(0.2);
    const bands = sources.map((source) => {
      const a0 = Math.max(8.5, appears + 2.5 * draw.about());
      const a1 = a0 + draw.between(0.8, 5);
      const b0 = Math.min(Math.max(a1 + 3, appears + lasts + 6 * draw.about()), end - 2);
      const b1 = Math.min(b0 + draw.between(1, 12), end - 1);
      const open = draw.chance(lifelong ? 0.8 : 0.06);
      return {
        id: `L${i}${source.id}`,
        source: source.id,
        a0: hundredth(a0),
        a1: hundredth(a1),
        b0: open ? null : hundredth(b0),
        b1: open ? null : hundredth(b1),
      };
    });
    return { id: `L${i}`, label: `Reflex ${String(i + 1).padStart(2, '0')}`, bands };
  });
  const visits = [30, 34, 38, 42, 48, 56, 66, 80, 96, 118, 148, 184].map((weeks, i) => ({
    id: `V${i}`,
    age: hundredth(weeks + draw.between(-1, 1)),
    sd: hundredth(draw.between(0.4, 2.2)),
  }));
  const findings = visits.flatMap(({ id, age, sd }) =>
    lanes.flatMap((lane) =>
      /** @type {const} */ (['L', 'R']).map((side) => ({
        id: id + lane.id + side,
        visit: id,
        lane: lane.id,
        side,
        age,
        lo: hundredth(age - 1.96 * sd),
        hi: hundredth(age + 1.96 * sd),
        value: Math.floor(draw.between(0, 4)),
      })),
    ),
  );
  return { term: TERM_WEEKS, domain: [8, end], sources, lanes, visits, findings };
}

/**
 * The steps: the age line along the whole axis, a way in to term, across to three years and out, every
 * source off and on again, and twenty orders of the lanes. @param {Workload} work @param {number} seed
 * @returns {Script}
 */
export function script({ domain, sources, lanes }, seed = 7) {
  const draw = numbersFrom(seed);
  const ids = lanes.map((lane) => lane.id);
  /** @param {[number, number]} from @param {[number, number]} to @param {number} steps @returns {[number, number][]} */
  const way = (from, to, steps) =>
    Array.from({ length: steps }, (_, i) => {
      const share = (i + 1) / steps;
      return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
    });
  /** @type {[number, number]} */ const near = [28, 58];
  /** @type {[number, number]} */ const far = [110, 140];
  return {
    cursor: Array.from(
      { length: 200 },
      (_, i) => domain[0] + ((i + 0.5) / 200) * (domain[1] - domain[0]),
    ),
    zoom: [...way(domain, near, 35), ...way(near, far, 35), ...way(far, domain, 30)],
    toggleSource: Array.from(
      { length: 50 },
      (_, i) => sources[(i >> 1) % sources.length]?.id ?? '',
    ),
    sort: [...Array.from({ length: 19 }, () => draw.shuffled(ids)), ids],
  };
}
