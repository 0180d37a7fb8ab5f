/**
 * Agreement between two judges against published worked examples, and the standard error against the
 * delta method worked out by small steps. "read": the figure was seen in print; "memory": recalled.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { kappaOf, linearWeights, plainWeights } from '../../src/lib/cohort/kappa.ts';
import type { KappaEstimate, Table, Weights } from '../../src/lib/cohort/kappa.ts';

function estimate(table: Table, weights: Weights = plainWeights(table.length)): KappaEstimate {
  const found = kappaOf(table, weights);
  if (found.code !== 'estimated') throw new Error(found.code);
  return found;
}

/** Cohen 1968, 200 cases, three diagnoses: the weights are read, the counts from memory. */
const DIAGNOSES = [
  [88, 14, 18],
  [10, 40, 10],
  [2, 6, 12],
];

/** Two skin examiners, 88 patients, four grades: a general statistics program's manual (read). */
const SKIN = [
  [10, 4, 1, 0],
  [5, 10, 12, 2],
  [2, 4, 12, 5],
  [0, 2, 6, 13],
];

describe('kappa of published tables', () => {
  test('a textbook table after Cohen 1960 (memory): 0.70 seen, 0.50 by chance, kappa 0.40', () => {
    const found = estimate([
      [20, 5],
      [10, 15],
    ]);
    expect(found.observed).toBeCloseTo(0.7, 12);
    expect(found.expected).toBeCloseTo(0.5, 12);
    expect(found.kappa).toBeCloseTo(0.4, 12);
  });

  test('Cohen 1968 (memory): kappa 0.492, and 0.348 under his weights of disagreement', () => {
    const plain = estimate(DIAGNOSES);
    expect(plain.observed).toBeCloseTo(0.7, 12);
    expect(plain.expected).toBeCloseTo(0.41, 12);
    expect(plain.kappa).toBeCloseTo(0.492, 3);
    const disagreement = [
      [0, 1, 3],
      [1, 0, 6],
      [3, 6, 0],
    ];
    const weights = disagreement.map((row) => row.map((v) => 1 - v / 6));
    expect(estimate(DIAGNOSES, weights).kappa).toBeCloseTo(0.348, 3);
  });

  test('the same table in the manual of a package for psychology (memory): 0.39 to 0.59', () => {
    const { low, high } = estimate(DIAGNOSES).interval;
    expect(low).toBeCloseTo(0.39, 2);
    expect(high).toBeCloseTo(0.59, 2);
  });

  test.each([
    ['plain', plainWeights(4), 0.3449, 0.0724, 0.203, 0.4868],
    ['linear', linearWeights(4), 0.5082, 0.0655, 0.3798, 0.6366],
  ])(
    'skin grades, %s weights (counts read, results memory)',
    (_, weights, kappa, se, low, high) => {
      const found = estimate(SKIN, weights);
      expect(found.kappa).toBeCloseTo(kappa, 4);
      expect(found.standardError).toBeCloseTo(se, 4);
      expect(found.interval.low).toBeCloseTo(low, 4);
      expect(found.interval.high).toBeCloseTo(high, 4);
    },
  );

  // Viera & Garrett 2005 (read): wheeze 79 % and 0.51, tactile fremitus 85 % and 0.01. The share
  // that both must have found, were they to find it equally often, follows from the two figures.
  test.each([
    ['wheeze', 0.79, 0.51],
    ['tactile fremitus', 0.85, 0.01],
  ])('%s: agreement %d, kappa %d', (_, agreement, kappa) => {
    const chance = (agreement - kappa) / (1 - kappa);
    const rare = (1 - Math.sqrt(2 * chance - 1)) / 2; // p² + (1 - p)² = chance
    const differ = (1 - agreement) / 2;
    const counts = [rare - differ, differ, differ, 1 - rare - differ].map((p) =>
      Math.round(p * 100_000),
    );
    const found = estimate([counts.slice(0, 2), counts.slice(2)]);
    expect(found.observed).toBeCloseTo(agreement, 4);
    expect(found.kappa).toBeCloseTo(kappa, 3);
  });
});

const tableOf = (size: number): fc.Arbitrary<number[][]> => {
  const row = fc.array(fc.nat({ max: 30 }), { minLength: size, maxLength: size });
  return fc.array(row, { minLength: size, maxLength: size });
};

describe('the standard error against the delta method', () => {
  /** kappa of shares that need not add up to 1 (they are scaled), by its definition. */
  function definition(shares: readonly number[], weights: Weights): number {
    const size = weights.length;
    const n = shares.reduce((a, b) => a + b, 0);
    const p = (i: number, j: number): number => shares[i * size + j]! / n;
    const all = Array.from({ length: size }, (_, i) => i);
    const row = all.map((i) => all.reduce((s, j) => s + p(i, j), 0));
    const column = all.map((j) => all.reduce((s, i) => s + p(i, j), 0));
    let [seen, chance] = [0, 0];
    for (const i of all)
      for (const j of all) {
        seen += weights[i]![j]! * p(i, j);
        chance += weights[i]![j]! * row[i]! * column[j]!;
      }
    return (seen - chance) / (1 - chance);
  }

  test.each([
    ['plain', plainWeights],
    ['linear', linearWeights],
  ])('%s weights: multinomial variance of the slopes', (_, weightsOf) => {
    const size = 5;
    const weights = weightsOf(size);
    fc.assert(
      fc.property(
        tableOf(size).filter(
          (t) => t.filter((r, i) => r.some((c, j) => c > 0 && i !== j)).length > 1,
        ),
        (table) => {
          const found = estimate(table, weights);
          fc.pre(found.expected < 0.9); // nearer to 1 the slopes are too steep for small steps
          const counts = table.flat();
          const n = counts.reduce((a, b) => a + b, 0);
          const shares = counts.map((count) => count / n);
          const step = 1e-5;
          const slopes = shares.map((_share, k) => {
            const moved = (by: number) => shares.map((s, i) => (i === k ? s + by : s));
            return (
              (definition(moved(step), weights) - definition(moved(-step), weights)) / (2 * step)
            );
          });
          const mean = slopes.reduce((s, slope, k) => s + slope * shares[k]!, 0);
          const square = slopes.reduce((s, slope, k) => s + slope * slope * shares[k]!, 0);
          expect(found.standardError ** 2 * n).toBeCloseTo(square - mean * mean, 5);
        },
      ),
    );
  });
});

describe('what must hold of any table', () => {
  const kappas = (table: Table): number[] =>
    [plainWeights(table.length), linearWeights(table.length)].flatMap((weights) => {
      const found = kappaOf(table, weights);
      return found.code === 'estimated' ? [found.kappa, found.standardError] : [];
    });
  let estimated = 0;
  const close = (a: number[], b: number[]): void => {
    expect(a).toHaveLength(b.length);
    estimated += a.length;
    a.forEach((value, i) => expect(value).toBeCloseTo(b[i]!, 6));
  };

  test('the judges may change places', () => {
    estimated = 0;
    fc.assert(
      fc.property(tableOf(5), (table) => {
        close(kappas(table), kappas(table.map((_, j) => table.map((row) => row[j]!))));
      }),
    );
    expect(estimated).toBeGreaterThan(0);
  });

  test('the order may be turned round', () => {
    estimated = 0;
    fc.assert(
      fc.property(tableOf(5), (table) => {
        close(kappas(table), kappas(table.map((row) => row.toReversed()).toReversed()));
      }),
    );
    expect(estimated).toBeGreaterThan(0);
  });

  test('full agreement on more than one answer is 1, on one answer it has a code', () => {
    fc.assert(
      fc.property(fc.array(fc.nat({ max: 9 }), { minLength: 5, maxLength: 5 }), (counts) => {
        const table = counts.map((count, i) => counts.map((_, j) => (i === j ? count : 0)));
        const used = counts.filter((count) => count > 0).length;
        for (const weights of [plainWeights(5), linearWeights(5)]) {
          const found = kappaOf(table, weights);
          if (used === 0) expect(found).toEqual({ code: 'no-pairs' });
          else if (used === 1) expect(found).toEqual({ code: 'one-answer' });
          else {
            expect(estimate(table, weights).kappa).toBeCloseTo(1, 12);
            expect(estimate(table, weights).standardError).toBe(0);
          }
        }
      }),
    );
  });

  test('with two answers in use, however far apart, weights change nothing', () => {
    let compared = 0;
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.nat({ max: 4 }), { minLength: 2, maxLength: 2 }),
        fc.array(fc.nat({ max: 40 }), { minLength: 4, maxLength: 4 }),
        ([a, b], cells) => {
          const table = plainWeights(5).map((row) => row.map(() => 0));
          table[a!]![a!] = cells[0]!;
          table[a!]![b!] = cells[1]!;
          table[b!]![a!] = cells[2]!;
          table[b!]![b!] = cells[3]!;
          const [plain, linear] = [
            kappaOf(table, plainWeights(5)),
            kappaOf(table, linearWeights(5)),
          ];
          if (plain.code !== 'estimated' || linear.code !== 'estimated') {
            expect(plain).toEqual(linear);
            return;
          }
          compared += 1;
          expect(linear.kappa).toBeCloseTo(plain.kappa, 9);
          // a root of what rounding leaves: of a variance of 1e-13 the root is 3e-7
          expect(linear.standardError ** 2).toBeCloseTo(plain.standardError ** 2, 10);
        },
      ),
    );
    expect(compared).toBeGreaterThan(0);
  });

  test('every figure is finite and in its range', () => {
    let found = 0;
    fc.assert(
      fc.property(tableOf(5), (table) => {
        for (const weights of [plainWeights(5), linearWeights(5)]) {
          const one = kappaOf(table, weights);
          if (one.code !== 'estimated') continue;
          found += 1;
          expect(one.kappa).toBeLessThanOrEqual(1 + 1e-12);
          expect(one.standardError).toBeGreaterThanOrEqual(0);
          expect(one.interval.low).toBeGreaterThanOrEqual(-1);
          expect(one.interval.high).toBeLessThanOrEqual(1);
          expect(one.interval.low).toBeLessThanOrEqual(one.interval.high);
        }
      }),
    );
    expect(found).toBeGreaterThan(0); // of 200
  });
});
