/**
 * `npm run simulate`: the rules of reading a child, tried on children drawn by chance from one seed.
 * `npm run simulate -- SEED` takes another seed.
 */
import { join } from 'node:path';
import { runnerImport } from 'vite';

/** @type {{ module: typeof import('./simulate.ts') }} */
const { module: simulate } = await runnerImport(join(import.meta.dirname, 'simulate.ts'));

const seed = Number(process.argv[2] ?? 14);
/** @param {number} part @param {number} of */
const percent = (part, of) => (of === 0 ? '-' : `${((100 * part) / of).toFixed(1)} %`);

/** @param {string} name @param {import('./simulate.ts').OrderShare} share */
const row = (name, { pairs, reversed, against, inOrder }) => {
  const shares = [reversed, against, inOrder].map((one) => percent(one, pairs));
  console.log(`${name}: ${pairs} orders; reversed, against, in order: ${shares.join(', ')}`);
};

console.log(`seed ${seed}`);
const { sure, kept } = simulate.healthyOrders(1000, seed);
row('healthy, orders the sources are sure of', sure);
row('healthy, all orders that are true of the child', kept);
for (const turned of simulate.TURNED)
  row(
    `truly reversed, ${turned.reflexes.join(' and ')}`,
    simulate.reversedOrders(500, seed, turned),
  );
for (const months of [1, 3, 5, 7, 9, 12])
  for (const { kind, shown, covered, visits } of simulate.fitCoverage(500, seed, months))
    console.log(
      `best-fitting age, ${kind}, ${months} months: shown ${percent(shown, visits)}, holds the age ${percent(covered, shown)}`,
    );
const { notNow, lost } = simulate.lostShare(1000, seed);
console.log(
  `healthy, five lifelong reactions at four visits: seen before and not now ${percent(notNow, 1000)}, lost ${percent(lost, 1000)}`,
);
