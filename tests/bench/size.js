/**
 * How much script the first view needs: `npm run size`, after `npm run build`. The built page is opened
 * in a browser with empty caches, and what it asks for is counted as gzip would send it. "At once" is
 * what must have come before the page is drawn: its entry, its nodes, and all that these import. "Beside"
 * is what the drawn page fetches by itself, such as the database and the figures. What the worker keeps
 * for use without a network comes after that, and is counted apart. Ends with status 1 where the first
 * view needs more than its limit; `--limit` looks at the first view alone.
 */
import { createReadStream, existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { dirname, extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { ensureBrowser, launchOptions } from '../support/browser.js';

const SITE = 'dist';
const SINGLE = 'dist-single/tidemark.html';
/** What the first view's script may weigh, kB of gzip: it goes down with every saving, so that none is lost. */
const LIMIT_KB = 150;
const FIRST = '#/';
const OTHERS = ['#/chart', '#/visits/3/record', '#/children', '#/reflexes', '#/talks'];
const PAGES = process.argv.includes('--limit') ? [FIRST] : [FIRST, ...OTHERS];
const TYPES = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css' };

/** @param {string} file */
const gzipKb = (file) => gzipSync(readFileSync(file), { level: 9 }).length / 1000;
/** @param {number} kb */
const kB = (kb) => `${kb.toFixed(1).padStart(7)} kB`;

if (!existsSync(SITE)) {
  process.stderr.write('Nothing is built yet: npm run build\n');
  process.exit(1);
}
ensureBrowser();
const server = createServer((request, response) => {
  const { pathname } = new URL(request.url ?? '/', 'http://localhost');
  const file = join(SITE, pathname === '/' ? 'index.html' : pathname);
  if (!existsSync(file)) return void response.writeHead(404).end();
  const type = TYPES[/** @type {keyof typeof TYPES} */ (extname(file))];
  response.writeHead(200, type ? { 'content-type': type } : {});
  createReadStream(file).pipe(response);
});
await new Promise((resolve) => {
  server.listen(0, '127.0.0.1', () => resolve(undefined));
});
const at = server.address();
const address = `http://127.0.0.1:${at && typeof at === 'object' ? at.port : 0}/`;
const browser = await chromium.launch(launchOptions());

/** The files a page asks for until it stands. @param {string} hash */
async function filesOf(hash) {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  /** @type {Set<string>} */
  const files = new Set();
  page.on('request', (request) => files.add(new URL(request.url()).pathname.slice(1)));
  await page.goto(address + hash);
  await page.locator('main :is(h1, h2)').first().waitFor();
  // the database is the last that a page fetches by itself
  await page.waitForFunction(async () => (await indexedDB.databases()).length > 0);
  await page.waitForLoadState('networkidle');
  await context.close();
  return [...files].filter((file) => ['.js', '.css'].includes(extname(file)));
}

/** What a script must have before it runs, itself included. @param {string} file @param {Set<string>} known */
function imported(file, known = new Set()) {
  if (known.has(file)) return known;
  known.add(file);
  const text = readFileSync(join(SITE, file), 'utf8');
  for (const [, path] of text.matchAll(/(?:from|import)\s*["'](\.[^"']+\.js)["']/g))
    imported(join(dirname(file), path ?? ''), known);
  return known;
}

process.stdout.write('scripts and styles, as gzip         at once      beside       style\n');
for (const hash of PAGES) {
  const files = await filesOf(hash);
  const scripts = files.filter((file) => file.endsWith('.js'));
  const atOnce = new Set(
    scripts
      .filter((file) => /\/(?:entry|nodes)\//.test(file))
      .flatMap((file) => [...imported(file)]),
  );
  /** @param {string[]} some */
  const sum = (some) => some.reduce((kb, file) => kb + gzipKb(join(SITE, file)), 0);
  const first = sum([...atOnce]);
  const beside = sum(scripts.filter((file) => !atOnce.has(file)));
  const style = sum(files.filter((file) => file.endsWith('.css')));
  if (hash === FIRST && first > LIMIT_KB) process.exitCode = 1;
  const over =
    hash === FIRST ? `   limit ${LIMIT_KB} kB: ${first <= LIMIT_KB ? 'met' : 'missed'}` : '';
  process.stdout.write(`${hash.padEnd(32)} ${kB(first)}  ${kB(beside)}  ${kB(style)}${over}\n`);
  if (process.argv.includes('--files') && hash === FIRST)
    for (const file of files.sort((a, b) => gzipKb(join(SITE, b)) - gzipKb(join(SITE, a))))
      process.stdout.write(
        `    ${kB(gzipKb(join(SITE, file)))} ${atOnce.has(file) ? 'at once' : 'beside '} ${file}\n`,
      );
}
const all = readdirSync(SITE, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name !== 'tidemark.html')
  .map(({ parentPath, name }) => join(parentPath, name));
const whole = all.reduce((kb, file) => kb + gzipKb(file), 0);
process.stdout.write(`${'the whole website, kept for offline'.padEnd(32)} ${kB(whole)}\n`);
if (existsSync(SINGLE))
  process.stdout.write(
    `${'the single file'.padEnd(32)} ${kB(gzipKb(SINGLE))} (${kB(statSync(SINGLE).size / 1000).trim()} unpacked)\n`,
  );
await browser.close();
server.close();
