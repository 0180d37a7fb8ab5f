/**
 * How much script the first view needs: `npm run size`, after `npm run build`. The built page is opened
 * in a browser with empty caches, once for somebody new (the invented child) and once for each page
 * named below, and every script and style it asks for before it stands is counted as gzip would send it.
 * What the worker fetches afterwards, for use without a network, is counted apart.
 */
import { createReadStream, existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { ensureBrowser, launchOptions } from '../support/browser.js';

const SITE = 'dist';
const SINGLE = 'dist-single/tidemark.html';
/** What the script of the first view should weigh at most, kB of gzip. */
const AIM_KB = 150;
const PAGES = ['#/', '#/chart', '#/visits/3/record', '#/children', '#/reflexes', '#/talks'];
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
  await page.goto(address + hash, { waitUntil: 'networkidle' });
  await context.close();
  return [...files].filter((file) => ['.js', '.css'].includes(extname(file)));
}

process.stdout.write('gzip, before the page stands          script      style   files\n');
for (const hash of PAGES) {
  const files = await filesOf(hash);
  /** @param {string} ending */
  const sum = (ending) =>
    files
      .filter((file) => file.endsWith(ending))
      .reduce((kb, file) => kb + gzipKb(join(SITE, file)), 0);
  const script = sum('.js');
  const over = hash === '#/' ? `   aim ${AIM_KB} kB: ${script <= AIM_KB ? 'met' : 'missed'}` : '';
  process.stdout.write(
    `${hash.padEnd(34)} ${kB(script)} ${kB(sum('.css'))} ${String(files.length).padStart(7)}${over}\n`,
  );
  if (process.argv.includes('--files') && hash === '#/')
    for (const file of files.sort((a, b) => gzipKb(join(SITE, b)) - gzipKb(join(SITE, a))))
      process.stdout.write(`    ${kB(gzipKb(join(SITE, file)))} ${file}\n`);
}
const all = readdirSync(SITE, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name !== 'tidemark.html')
  .map(({ parentPath, name }) => join(parentPath, name));
const whole = all.reduce((kb, file) => kb + gzipKb(file), 0);
process.stdout.write(`${'the whole website, kept for offline'.padEnd(34)} ${kB(whole)}\n`);
if (existsSync(SINGLE))
  process.stdout.write(
    `${'the single file'.padEnd(34)} ${kB(gzipKb(SINGLE))} (${kB(statSync(SINGLE).size / 1000).trim()} unpacked)\n`,
  );
await browser.close();
server.close();
