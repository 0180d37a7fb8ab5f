/**
 * `npm run simulate`: the rules of reading a child, tried on children drawn by chance from one seed, as the
 * tables of docs/simulation.md. `npm run simulate -- SEED` takes another seed.
 */
import { join } from 'node:path';
import { runnerImport } from 'vite';

/** @type {{ module: typeof import('./simulate.ts') }} */
const { module: simulate } = await runnerImport(join(import.meta.dirname, 'simulate.ts'));
/** @type {{ module: typeof import('./burden.ts') }} */
const { module: burden } = await runnerImport(join(import.meta.dirname, 'burden.ts'));

const HEALTHY = 1000;
const REVERSED = 500;
const VISITS = 500;

const seed = Number(process.argv[2] ?? 14);
/** @param {number} part @param {number} of */
const percent = (part, of) => (of === 0 ? '-' : `${((100 * part) / of).toFixed(1)} %`);
/** @param {...(string | number)} cells */
const row = (...cells) => console.log(`| ${cells.join(' | ')} |`);
/** @param {string} title @param {...string} heads */
const table = (title, ...heads) => {
  console.log(`\n**${title}**\n`);
  row(...heads);
  row(...heads.map(() => '---'));
};

console.log(`Seed ${seed}`);

/** @param {string} name @param {import('./simulate.ts').OrderShare} share */
const orders = (name, { pairs, reversed, against, inOrder }) =>
  row(name, pairs, ...[reversed, against, inOrder].map((one) => percent(one, pairs)));
table('Orders', 'children', 'orders', 'reversed', 'against', 'in order');
const { sure, kept } = simulate.healthyOrders(HEALTHY, seed);
orders('healthy; orders the sources are sure of', sure);
orders('healthy; all orders that are true of the child', kept);
for (const turned of simulate.TURNED) {
  const name = `reversed; ${turned.reflexes.join(' and ')}`;
  const each = /** @type {const} */ ([1, 2]).map((between) => {
    const share = simulate.reversedOrders(REVERSED / 2, seed + between, turned, between);
    return { between, share };
  });
  for (const { between, share } of each) orders(`${name}; visits between: ${between}`, share);
  orders(`${name}; all`, simulate.summed(each.map(({ share }) => share)));
}

table('Best-fitting age', 'at', 'of', 'shown', 'holds the age, where shown');
const fits = burden.AGES.flatMap((months) => simulate.fitCoverage(VISITS, seed, months));
for (const { kind, months, shown, covered, visits } of fits)
  row(`${months} months`, kind, percent(shown, visits), percent(covered, shown));
for (const kind of /** @type {const} */ (['primitive', 'postural', 'milestones'])) {
  const of = fits.filter((one) => one.kind === kind);
  /** @param {'shown' | 'covered' | 'visits'} what */
  const sum = (what) => of.reduce((total, one) => total + one[what], 0);
  row(
    'all ages',
    kind,
    percent(sum('shown'), sum('visits')),
    percent(sum('covered'), sum('shown')),
  );
}

table('Seen before, not now', 'healthy children seen at', 'not now', 'lost');
for (const months of simulate.LOST_VISITS) {
  const { notNow, lost } = simulate.lostShare(HEALTHY, seed, months);
  row(`${months.join(', ')} months`, percent(notNow, HEALTHY), percent(lost, HEALTHY));
}

for (const before of [false, true])
  for (const twice of [false, true]) {
    const seen = { before, twice };
    table(
      `Asked for: ${before ? 'seen at each age so far' : 'a first visit'}, ${twice ? 'what is missing tried twice' : 'each tried once'}`,
      'at',
      'healthy visits with a discussion',
      'watched a healthy visit',
      'truly absent: asked about (where shown; discussed)',
      'truly persisting: asked about (where shown; discussed)',
    );
    for (const months of burden.AGES) {
      const { visits, discussed, watched } = burden.burdenAt(
        burden.graded,
        VISITS,
        seed,
        months,
        seen,
      );
      const asked = /** @type {const} */ (['absent', 'persisting']).map((kind) => {
        const one = burden.askedAt(burden.graded, VISITS, seed, kind, months, seen);
        return one
          ? `${percent(one.asked, one.children)} (${percent(one.askedOfShown, one.shown)}; ${percent(one.discussed, one.children)})`
          : 'none is sure';
      });
      row(`${months} months`, percent(discussed, visits), (watched / visits).toFixed(2), ...asked);
    }
  }

const REASONS = ['persisting', 'missing', 'returned', 'lost', 'today'];
table('Why: healthy visits with a discussion', 'seen', 'at', ...REASONS);
for (const before of [false, true])
  for (const twice of [false, true])
    for (const months of burden.AGES) {
      const reasons = burden.reasonsAt(VISITS, seed, months, { before, twice });
      const name = `${before ? 'at each age so far' : 'first visit'}, tried ${twice ? 'twice' : 'once'}`;
      row(
        name,
        `${months} months`,
        ...REASONS.map((reason) => percent(reasons.get(reason) ?? 0, VISITS)),
      );
    }
