/**
 * What can go wrong, tried and counted: a row for each kind of fault, with what was lost. Serves the
 * built site itself. `npm run test:faults -- --kills 100 --seed 7`; `npm run test:faults -- leaving` makes
 * the table of actions and ways of leaving alone, with `--tries` for each delay and `--only` a part of an
 * action's name.
 */
import { parseArgs } from 'node:util';
import { preview } from 'vite';
import { blocks } from './blocks.js';
import { kills } from './kills.js';
import { leaving, leavingTable } from './leaving.js';
import { FILES } from './limits.js';
import { MOST_MS, pages, properties } from './suites.js';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    tries: { type: 'string', default: '1' },
    only: { type: 'string' },
    kills: { type: 'string', default: '100' },
    seed: { type: 'string', default: '1' },
    port: { type: 'string', default: process.env.TEST_PORT ?? '4874' },
  },
});

/** @typedef {import('./suites.js').Row} Row */

/** Each fault gives a row. @type {((site: string) => Row | Promise<Row>)[]} */
const FAULTS = [
  async (site) => {
    const sum = await kills({
      site,
      times: Number(values.kills),
      seed: Number(values.seed),
      onkill: ({ tried, lost, torn }) => {
        if (tried % 10 === 0)
          process.stderr.write(`killed ${tried} times: ${lost} lost, ${torn} half written\n`);
      },
    });
    return {
      tried: `browser killed while writing (${sum.confirmed} changes confirmed)`,
      times: sum.tried,
      lost: `${sum.lost} lost, ${sum.torn} half written`,
      failed: sum.lost + sum.torn > 0,
    };
  },
  () =>
    properties(
      'edits of two windows, in any order',
      'tests/repository/windows.test.ts',
      'none lost',
    ),
  () =>
    pages(
      'full disk, no storage, another version, two windows (in a browser)',
      'browser/keeping/',
      'full disk|keeps nothing|older page|newer page|two windows',
      'none lost, each said with a way out',
      Number(values.port) + 1,
    ),
  () =>
    properties(
      'malformed case, talk, own, lock and encrypted files',
      'tests/store/malformed.test.ts',
      'each refused or read rightly',
    ),
  () =>
    properties(
      'malformed FHIR bundles',
      'tests/exchange/fhir/hostile.test.ts',
      'each refused or read rightly',
    ),
  () =>
    properties(
      "malformed sheets of a clinic's own",
      'tests/exchange/sheet/sheet.test.ts',
      'each refused or read rightly',
    ),
  () =>
    properties(
      'malformed sheets with a column for each reflex',
      'tests/exchange/sheet/hostileVisits.test.ts',
      'each refused or read rightly',
    ),
  () =>
    properties(
      'malformed backups',
      'tests/store/backupFile.test.ts',
      'each refused or read rightly',
    ),
  () =>
    properties(
      'files made to exhaust: text, depth, numbers, masses, packed zeros',
      'tests/store/bombs.test.ts',
      'each refused or read rightly',
    ),
  async (site) => {
    const found = await blocks(site);
    return {
      tried: 'files at the limits, opened in a browser: longest block of the page',
      times: FILES.length + 2,
      lost: 'each refused or taken in',
      slowest: found.map(({ format, ms }) => `${format} ${Math.ceil(ms)} ms`).join(', '),
      failed: found.some(({ ms }) => ms > MOST_MS),
    };
  },
];

const server = await preview({
  configFile: 'preview.config.ts',
  preview: { port: Number(values.port), host: '127.0.0.1', strictPort: true },
});
/** Counted and printed: what the page does not yet carry through when it is left is no failure of the run. @param {string} site */
async function tableOfLeaving(site) {
  const cells = await leaving({ site, times: Number(values.tries), only: values.only });
  console.log('The page left 0 to 50 ms after: tried: completed / undone and said / lost / halved');
  console.table(leavingTable(cells));
}

try {
  if (!positionals.includes('leaving')) await everything(`http://127.0.0.1:${values.port}`);
  await tableOfLeaving(`http://127.0.0.1:${values.port}`);
} finally {
  await server.close();
}

/** @param {string} site */
async function everything(site) {
  const rows = [];
  for (const fault of FAULTS) rows.push(await fault(site));
  console.table(
    rows.map(({ tried, times, lost, slowest = '' }) => ({ tried, times, lost, slowest })),
  );
  if (rows.some(({ failed }) => failed)) process.exitCode = 1;
}
