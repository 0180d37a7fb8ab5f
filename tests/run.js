/**
 * Runs the stages of a test command, side by side where there are processors for it, and says at the end
 * how long each took. `node tests/run.js` runs what `npm test` promises; with `--thorough` it runs what
 * that leaves out. Ends with 1 where a stage failed, after those that were under way have ended.
 */
import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { delimiter, resolve } from 'node:path';
import { isBuilt, isOffered } from '../adapters.js';
import { versionName } from '../version.js';
import { ensureBrowser } from './support/browser.js';

/**
 * @typedef {object} Stage
 * @property {string} name
 * @property {string} command as a shell takes it, without redirections
 * @property {number} [processors] how many it keeps busy; 1 unless given
 * @property {readonly string[]} [after] stages whose output it needs
 * @property {() => boolean} [isMade] whether what it makes is there already
 */

/** Sources and configuration by their content: what has this name was made of all of these, and no others. */
const version = versionName();

/**
 * Of the pages' builds one follows the other: they put together what they write in one and the same folder.
 * What was built of the same sources, as by the everyday tests a moment ago, is not built again.
 * @type {readonly Stage[]}
 */
const BUILDS = [
  {
    name: 'build: site',
    command: 'vite build --logLevel warn',
    isMade: () => isBuilt('dist', version),
  },
  {
    name: 'build: one file',
    command: 'vite build --mode single --logLevel warn',
    isMade: () => isOffered('dist', 'dist-single', version),
    after: ['build: site'], // it is put beside the site
  },
  {
    name: 'build: command line',
    command: 'vite build --config vite.cli.config.ts --logLevel warn',
  },
];
const BUILT = BUILDS.map(({ name }) => name);
/** @type {Stage} */
const CONNECTED = {
  name: 'build: connected',
  command: 'vite build --mode connected --logLevel warn',
  isMade: () => isBuilt('dist-connected', version),
  after: ['build: one file'],
};

/** @type {readonly Stage[]} */
const EVERYDAY = [
  ...BUILDS,
  { name: 'size of the first view', command: 'node tests/bench/size.js --limit', after: BUILT },
  { name: 'unit', command: 'vitest run --silent', after: ['build: command line'] },
  {
    name: 'browser',
    command: 'playwright test --grep-invert @thorough',
    processors: 2,
    after: BUILT,
  },
];

/** @type {readonly Stage[]} */
const THOROUGH = [
  ...BUILDS,
  CONNECTED,
  { name: 'types: pages', command: 'svelte-check --fail-on-warnings' },
  { name: 'types: pure folders', command: 'tsc -p tsconfig.pure.json' },
  { name: 'types: service worker', command: 'tsc -p src/service-worker' },
  { name: 'lint', command: 'eslint .' },
  { name: 'format', command: 'prettier --check --log-level warn .' },
  { name: 'unused', command: 'knip' },
  // only the tests whose counts differ: those that take them from this file. None is an error
  {
    name: 'unit, counts in full',
    command: 'vitest related --run --silent --passWithNoTests=false tests/support/runs.ts',
    after: ['build: command line'],
  },
  {
    name: 'browser, in full',
    command: 'playwright test --grep @thorough',
    processors: 2,
    after: [...BUILT, CONNECTED.name],
  },
];

const isThorough = process.argv.includes('--thorough');
const env = {
  ...process.env,
  PATH: `${resolve('node_modules/.bin')}${delimiter}${process.env.PATH ?? ''}`,
  NO_COLOR: '1',
  ...(isThorough ? { THOROUGH: '1' } : {}),
};

/** The stages whose sum is told also where all went well. */
const SUMMED = /^(?:unit|browser)/;

/** @param {number} ms */
const seconds = (ms) => `${(ms / 1000).toFixed(1)} s`;

/** @param {Stage} stage @returns {Promise<{ ok: boolean; output: string; ms: number }>} */
function run({ command }) {
  const began = performance.now();
  return new Promise((done) => {
    const child = spawn(command, { shell: true, env });
    let output = '';
    for (const stream of [child.stdout, child.stderr])
      stream.setEncoding('utf8').on('data', (text) => (output += text));
    child.on('close', (code) => done({ ok: code === 0, output, ms: performance.now() - began }));
  });
}

/** @param {readonly Stage[]} stages @returns {Promise<boolean>} whether all of them passed */
async function runAll(stages) {
  const began = performance.now();
  const waiting = [...stages];
  /** @type {Map<string, string>} */
  const took = new Map();
  /** @type {Map<string, Promise<void>>} */
  const underWay = new Map();
  const processors = Math.max(2, availableParallelism());
  let free = processors;
  let failed = false;
  while (waiting.length > 0 || underWay.size > 0) {
    const next = waiting.find(
      ({ processors: wanted = 1, after = [] }) =>
        !failed && wanted <= free && after.every((name) => took.has(name)),
    );
    if (!next) {
      if (underWay.size === 0) break;
      await Promise.race(underWay.values());
      continue;
    }
    const wanted = next.processors ?? 1;
    waiting.splice(waiting.indexOf(next), 1);
    if (next.isMade?.()) {
      took.set(next.name, 'up to date');
      process.stdout.write(`✓ ${next.name}, up to date: built of the same sources (${version})\n`);
      continue;
    }
    free -= wanted;
    process.stdout.write(`… ${next.name}\n`);
    underWay.set(
      next.name,
      run(next).then(({ ok, output, ms }) => {
        underWay.delete(next.name);
        took.set(next.name, seconds(ms));
        free += wanted;
        failed ||= !ok;
        const said = output.trim();
        process.stdout.write(
          `${ok ? '✓' : '✗'} ${next.name}, ${seconds(ms)}\n${said && (!ok || SUMMED.test(next.name)) ? `${said}\n` : ''}`,
        );
      }),
    );
  }
  process.stdout.write('\nStages\n');
  for (const { name } of stages)
    process.stdout.write(`  ${name.padEnd(24)}${took.get(name) ?? 'not run'}\n`);
  process.stdout.write(
    `  ${'all, by the clock'.padEnd(24)}${seconds(performance.now() - began)}\n`,
  );
  return !failed;
}

try {
  process.stdout.write(`browser: ${ensureBrowser()}\n`);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(1);
}
process.exitCode = (await runAll(isThorough ? THOROUGH : EVERYDAY)) ? 0 : 1;
