/**
 * How long the page is held up, at the most, while a file at the limit of its format is opened and taken
 * in: the longest task of the page's own thread, as the browser writes it down, in time of the processor,
 * since a busy machine stops any page. Of a few times the least counts.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { Encrypter } from 'age-encryption';
import { launchOptions } from '../support/browser.js';
import { backupOf, FILES, LIMITS } from './limits.js';

/** @typedef {import('@playwright/test').Page} Page */
/** @typedef {{ format: string; ms: number }} Block */

/** Tries of a file that holds the page up for longer than is quick. */
const TIMES = 3;
const QUICK_MS = 500;
const PATIENCE_MS = 600_000;
const PASSPHRASE = 'three dunlins on the mud';

/** Where a format is opened, and what the page says then. @type {Record<string, { hash: string; said: RegExp }>} */
const PLACES = {
  case: { hash: '#/children', said: /Case file opened|was not opened/ },
  bundle: { hash: '#/children', said: /^From bundle|was not opened/ },
  sheet: { hash: '#/children', said: /Nothing has changed|was not opened/ },
  table: { hash: '#/own', said: /to be mended|Choose the CSV/ },
  talk: { hash: '#/talks', said: /Talk added|was not opened/ },
  backup: { hash: '#/keeping', said: /new, \d+ changed|Nothing has changed/ },
};

/** What the browser writes down of a thread's task: microseconds by the clock and of the processor. @typedef {{ name: string; pid: number; tid: number; ts: number; dur?: number; tdur?: number; args?: { name?: string } }} Traced */

/** The last task of a record: were it missing, the record would have been cut off. */
const LAST_MS = 60;

/**
 * The longest task of the page's own thread while something is done, in milliseconds of the processor.
 * @param {import('@playwright/test').Browser} browser @param {Page} page @param {() => Promise<void>} does
 */
async function longest(browser, page, does) {
  await browser.startTracing(page, { categories: ['toplevel'] });
  await does();
  await page.evaluate(async (ms) => {
    // what was drawn last counts too
    for (let drawn = 0; drawn < 2; drawn++)
      await new Promise((resolve) => {
        requestAnimationFrame(() => setTimeout(resolve, 300));
      });
    for (const until = performance.now() + ms; performance.now() < until;);
  }, LAST_MS);
  /** @type {{ traceEvents: Traced[] }} */
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString());
  const isMain = new Set(
    traceEvents
      .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  const tasks = traceEvents.filter(
    ({ name, pid, tid }) => name.endsWith('RunTask') && isMain.has(`${pid} ${tid}`),
  );
  const long = tasks.filter(({ dur = 0 }) => dur >= 1000 * LAST_MS);
  const end = Math.max(...tasks.map(({ ts }) => ts));
  if (!long.some(({ ts }) => end - ts < 5e6)) throw new Error('the record of tasks is not whole');
  return Math.max(...long.map(({ tdur = Infinity }) => tdur)) / 1000;
}

/** Something said, or an answer that is awaited. @param {Page} page @param {RegExp} said */
const hears = (page, said) =>
  page.getByText(said).first().waitFor({ state: 'attached', timeout: PATIENCE_MS });

/** @param {Page} page @param {string} site @param {string} hash */
async function show(page, site, hash) {
  await page.goto(`${site}/${hash}`);
  await page.locator('main :is(h1, h2)').first().waitFor();
  await page.waitForLoadState('networkidle');
}

/** Opens a file and, where there is something to take in, takes it. @param {Page} page @param {string} path @param {string} format */
async function opens(page, path, format) {
  const place = PLACES[format];
  if (!place) throw new Error(`no place for ${format}`);
  await page.locator('input[type=file]').first().setInputFiles(path);
  await hears(page, place.said);
  const take = page.getByRole('button', {
    name: /^(?:Save|Restore selected|Add \d+ findings?)$/,
  });
  if (!(await take.count())) return;
  await take.click();
  await hears(page, /Records added|restored from the backup/i);
}

/** An encrypted backup, as large as may be. @param {Page} page @param {string} path */
async function decrypts(page, path) {
  await page.locator('input[type=file]').first().setInputFiles(path);
  await page.getByLabel('Passphrase of the file').fill(PASSPHRASE);
  await page.getByRole('button', { name: 'Open the file' }).click();
  await hears(page, /new, \d+ changed/);
}

/** @param {Page} page */
async function locks(page) {
  await page.getByLabel('Passphrase', { exact: true }).fill(PASSPHRASE);
  await page.getByLabel('Repeat the passphrase').fill(PASSPHRASE);
  await page.getByLabel(/I have written the passphrase down/).check();
  await page.getByRole('button', { name: 'Set a lock' }).click();
  await hears(page, /The lock is set/);
}

/**
 * The longest block of each format, in milliseconds.
 * @param {string} site
 * @returns {Promise<Block[]>}
 */
export async function blocks(site) {
  const folder = mkdtempSync(join(tmpdir(), 'tidemark-blocks-'));
  /** @type {Map<string, number>} */
  const found = new Map();
  /** @param {string} format @param {string} hash @param {(page: Page) => Promise<void>} does */
  const tries = async (format, hash, does) => {
    let least = Infinity;
    for (let time = 0; time < TIMES && least > QUICK_MS; time++) {
      const browser = await chromium.launch(launchOptions());
      try {
        const page = await browser.newPage();
        await show(page, site, hash);
        least = Math.min(least, await longest(browser, page, () => does(page)));
      } finally {
        await browser.close();
      }
    }
    process.stderr.write(`${format}: ${Math.ceil(least)} ms\n`);
    found.set(format, Math.max(found.get(format) ?? 0, least));
  };
  try {
    for (const { format, name, text } of FILES) {
      const path = join(folder, name);
      writeFileSync(path, text());
      await tries(format, PLACES[format]?.hash ?? '#/', (page) => opens(page, path, format));
    }
    const sealed = join(folder, 'backup.json.age');
    const encrypter = new Encrypter();
    encrypter.setPassphrase(PASSPHRASE);
    encrypter.setScryptWorkFactor(17);
    writeFileSync(sealed, await encrypter.encrypt(backupOf(600, LIMITS.encrypted - 1_000_000, 24)));
    await tries('encrypted', '#/keeping', (page) => decrypts(page, sealed));
    await tries('setting a lock', '#/lock', locks);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return [...found].map(([format, ms]) => ({ format, ms }));
}
