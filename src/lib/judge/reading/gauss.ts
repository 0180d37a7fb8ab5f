/**
 * Gauss-Legendre nodes on 0 to 1: with n of them a polynomial of degree 2 n - 1 is integrated exactly.
 * Found by Newton's method on the Legendre polynomial, from the usual cosine guess.
 */

export interface Node {
  at: number;
  weight: number;
}

const kept = new Map<number, readonly Node[]>();

function solve(n: number): readonly Node[] {
  return Array.from({ length: n }, (_, k) => {
    let x = Math.cos((Math.PI * (k + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let round = 0; round < 100; round++) {
      let [value, before] = [x, 1];
      for (let j = 2; j <= n; j++)
        [value, before] = [((2 * j - 1) * x * value - (j - 1) * before) / j, value];
      slope = (n * (x * value - before)) / (x * x - 1);
      const step = value / slope;
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    return { at: (x + 1) / 2, weight: 1 / ((1 - x * x) * slope * slope) };
  });
}

export function gaussOn(n: number): readonly Node[] {
  let nodes = kept.get(n);
  if (!nodes) kept.set(n, (nodes = solve(n)));
  return nodes;
}
