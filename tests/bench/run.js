/**
 * The benchmark: how long a step of the full chart takes in a browser, how large its script is, how fast
 * findings are judged and how long it takes to read a child. `npm run bench`; needs a Chromium. Compare figures of one machine only.
 */
import {
  createReadStream,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
} from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join, normalize } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { build } from 'vite';
import { ensureBrowser, launchOptions } from '../support/browser.js';
import { script, workload } from './workload.js';

const ROUNDS = 3;
const SETTLE_MS = 8;
/** One frame at 120 Hz. */
const AIM_MS = 8.3;
/** Children read over visits: before it is timed, and timed; and how long each may take. */
const READ_BEFORE = 100;
const READ_CHILDREN = 300;
const READ_AIM_MS = 20;

/** @typedef {import('./workload.js').Script} Script */

/** @param {readonly number[]} values @param {number} share */
function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? NaN;
}

/** @param {string} folder */
function serve(folder) {
  const types = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css' };
  const server = createServer((request, response) => {
    const path = normalize(new URL(request.url ?? '/', 'http://localhost').pathname);
    const file = join(folder, path.endsWith('/') ? `${path}index.html` : path);
    if (!existsSync(file)) return void response.writeHead(404).end();
    const type = types[/** @type {keyof typeof types} */ (extname(file))];
    response.writeHead(200, { 'content-type': type, 'cache-control': 'no-store' });
    createReadStream(file).pipe(response);
  });
  return new Promise((resolve) => {
    server.listen(0, '127.0.0.1', () => resolve(server));
  });
}

/**
 * Every step of one kind, each after a short rest, from the call to the end of the frame that shows
 * it. Runs in the page. @param {{ name: keyof Script, steps: unknown[], settle: number }} what
 */
async function timeSteps({ name, steps, settle }) {
  const bench = /** @type {any} */ (window).bench;
  const frameEnd = () =>
    new Promise((resolve) => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = resolve;
        port2.postMessage(0);
      });
    });
  const times = [];
  for (const step of steps) {
    await new Promise((resolve) => setTimeout(resolve, settle));
    const start = performance.now();
    bench[name](step);
    await frameEnd();
    times.push(performance.now() - start);
  }
  return times;
}

/** The full render and all steps of one fresh page. @param {string} url */
async function measure(url) {
  const options = launchOptions();
  const browser = await chromium.launch({
    ...options,
    args: [...options.args, '--disable-frame-rate-limit', '--disable-gpu-vsync'],
  });
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    page.on('pageerror', (error) => {
      throw error;
    });
    await page.addInitScript(() => Object.assign(window, { __harness: {} }));
    await page.goto(url);
    const work = workload();
    const full = await page.evaluate(async (given) => {
      const start = performance.now();
      /** @type {any} */ (window).bench.load(given);
      await new Promise((resolve) => {
        requestAnimationFrame(() => requestAnimationFrame(resolve));
      });
      return performance.now() - start;
    }, work);
    const steps = script(work);
    /** @type {Record<string, number[]>} */
    const times = {};
    for (const [name, list] of Object.entries(steps))
      times[name] = await page.evaluate(timeSteps, {
        name: /** @type {keyof Script} */ (name),
        steps: list,
        settle: SETTLE_MS,
      });
    return { full, times };
  } finally {
    await browser.close();
  }
}

const folder = mkdtempSync(join(tmpdir(), 'chart-bench-'));
try {
  await build({
    configFile: join(import.meta.dirname, 'vite.config.js'),
    build: { outDir: join(folder, 'page'), emptyOutDir: true },
  });
  await build({
    configFile: false,
    logLevel: 'warn',
    build: {
      ssr: true,
      outDir: join(folder, 'judging'),
      emptyOutDir: true,
      rolldownOptions: {
        input: ['judging', 'reading'].map((name) => join(import.meta.dirname, `${name}.ts`)),
        output: { entryFileNames: '[name].mjs' },
      },
    },
    ssr: { noExternal: true },
  });

  const assets = join(folder, 'page', 'assets');
  const scriptBytes = readdirSync(assets)
    .filter((name) => name.endsWith('.js'))
    .reduce(
      (sum, name) => sum + gzipSync(readFileSync(join(assets, name)), { level: 9 }).length,
      0,
    );

  ensureBrowser();
  const server = await serve(join(folder, 'page'));
  const { port } = /** @type {import('node:net').AddressInfo} */ (server.address());
  /** @type {number[]} */ const full = [];
  /** @type {Record<string, number[]>} */ const times = {};
  for (let round = 0; round < ROUNDS; round++) {
    const run = await measure(`http://127.0.0.1:${port}/`);
    full.push(run.full);
    for (const [name, list] of Object.entries(run.times)) (times[name] ??= []).push(...list);
  }
  server.close();

  const lines = Object.entries(times).map(
    ([name, list]) =>
      `${name.padEnd(14)} p50 ${quantile(list, 0.5).toFixed(1).padStart(6)} ms   p95 ${quantile(list, 0.95).toFixed(1).padStart(6)} ms   (${list.length} steps)`,
  );
  process.stdout.write(
    `The chart under load: 40 lanes, 240 windows, 960 findings; ${ROUNDS} fresh pages; the aim is p95 at ${AIM_MS} ms\n` +
      `${lines.join('\n')}\n` +
      `full render    p50 ${quantile(full, 0.5).toFixed(0).padStart(6)} ms\n` +
      `script         ${(scriptBytes / 1000).toFixed(1).padStart(10)} kB gzipped\n`,
  );

  const { judge } = await import(pathToFileURL(join(folder, 'judging', 'judging.mjs')).href);
  judge(500, () => performance.now()); // until the engine has made up its mind
  const judged = judge(4000, () => performance.now());
  process.stdout.write(
    `judging        ${Math.round(judged.perSecond).toLocaleString('en')} findings a second on one core ` +
      `(${judged.findings.toLocaleString('en')} findings, ${judged.windows.toLocaleString('en')} windows read)\n`,
  );

  const { readChildren } = await import(pathToFileURL(join(folder, 'judging', 'reading.mjs')).href);
  for (const [name, gestationalDays] of Object.entries({ term: 280, preterm: 238 })) {
    readChildren(READ_BEFORE, gestationalDays, () => performance.now());
    const read = readChildren(READ_CHILDREN, gestationalDays, () => performance.now());
    process.stdout.write(
      `a child read   p50 ${quantile(read, 0.5).toFixed(1).padStart(6)} ms   p95 ${quantile(read, 0.95).toFixed(1).padStart(6)} ms   ` +
        `(${name}, 6 visits of 40 findings; the aim is ${READ_AIM_MS} ms)\n`,
    );
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
