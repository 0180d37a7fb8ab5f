/**
 * The browser killed while it writes. A Chromium with a folder of its own is driven through edits and
 * killed outright at random moments; started again on the same folder, it must have everything that was
 * said to be saved, and nothing half of it.
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { findBrowser, launchOptions } from '../support/browser.js';

/** Random numbers from 0 to 1 that are the same for the same seed (mulberry32, public domain). */
function randomFrom(/** @type {number} */ seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Starts a browser in a process group of its own. @param {string} folder */
async function start(folder) {
  const path = findBrowser();
  if (!path) throw new Error('no browser found');
  const child = spawn(
    path,
    [
      ...(launchOptions().args ?? []),
      '--headless=new',
      '--remote-debugging-port=0',
      `--user-data-dir=${folder}`,
      'about:blank',
    ],
    { detached: true, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  let said = '';
  /** @type {string} */
  const address = await new Promise((resolve, reject) => {
    child.once('exit', () => reject(new Error(`the browser did not start: ${said.slice(-500)}`)));
    child.stderr.on('data', (/** @type {Buffer} */ bytes) => {
      said += bytes.toString();
      const found = /listening on (ws:\S+)/.exec(said)?.[1];
      if (found) resolve(found);
    });
  });
  const browser = await chromium.connectOverCDP(address);
  const [context] = browser.contexts();
  if (!context) throw new Error('the browser has no window');
  return { child, browser, page: context.pages()[0] ?? (await context.newPage()) };
}

/** Ends every process of a browser at once, as a power cut would end it. @param {import('node:child_process').ChildProcess} child */
async function kill(child) {
  const ended = once(child, 'exit');
  if (child.pid) process.kill(-child.pid, 'SIGKILL');
  await ended;
}

/** @param {import('@playwright/test').Page} page @param {string} site */
async function openKestrel(page, site) {
  await page.goto(`${site}/#/children`);
  await page
    .getByRole('link', { name: /^Kestrel/ })
    .or(page.getByRole('button', { name: /^Kestrel/ }))
    .first()
    .click();
}

/** @param {import('@playwright/test').Page} page @param {string} site */
async function noteField(page, site) {
  // which child was open is remembered less strictly than the records are
  await openKestrel(page, site);
  await page.goto(`${site}/#/visits/3`);
  const note = page.getByLabel('Note', { exact: true }).first();
  await note.waitFor();
  return note;
}

/** The number in a note of ours; 0 in one that was never written. @param {string} text */
const numberIn = (text) => Number(/^edit (\d+) \1 \1$/.exec(text)?.[1] ?? 0);

/** Every row of the store, read by the browser's own means. @param {import('@playwright/test').Page} page */
async function rowsOf(page) {
  await page.waitForFunction(async () =>
    (await indexedDB.databases()).some(
      ({ name, version = 0 }) => name === 'tidemark-children' && version >= 40,
    ),
  );
  return page.evaluate(async () => {
    /** @template T @param {IDBRequest<T>} request @returns {Promise<T>} */
    const answer = (request) =>
      new Promise((resolve, reject) => {
        Object.assign(globalThis, { request }); // held, so that it is not cleared away
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(new Error('the store does not open'));
      });
    const database = await answer(indexedDB.open('tidemark-children'));
    const asked = database.transaction(['cases', 'bin']);
    const [cases, bin] = [asked.objectStore('cases').getAll(), asked.objectStore('bin').getAll()];
    const rows = { cases: await answer(cases), bin: await answer(bin) };
    database.close();
    return rows;
  });
}

/**
 * Kills a browser so many times, at moments drawn from the seed, while it writes at the site.
 * @param {{ site: string; times: number; seed: number; onkill?: (sum: { tried: number; lost: number; torn: number }) => void }} wanted
 * @returns {Promise<{ tried: number; confirmed: number; lost: number; torn: number }>}
 */
export async function kills({ site, times, seed, onkill }) {
  const random = randomFrom(seed);
  const folder = await mkdtemp(join(tmpdir(), 'tidemark-kills-'));
  const sum = { tried: 0, confirmed: 0, lost: 0, torn: 0 };
  let edit = 0;
  let saved = 0;
  let hasRow = false;
  try {
    for (let round = 0; round <= times; round++) {
      const { child, browser, page } = await start(folder);
      page.setDefaultTimeout(60_000); // a busy machine is slow; a step that never ends is an error
      const note = await noteField(page, site);
      /** @type {any} */
      const rows = await rowsOf(page);
      const kestrel = rows.cases.find((/** @type {any} */ row) => row.id === 'kestrel');
      const text = isWhole(kestrel?.body) ? JSON.parse(kestrel.body).visits[2].note : '';
      const found = numberIn(text);
      if (saved > 0 && found < saved) sum.lost += 1;
      // what lies in the store is also what the page comes to show
      await page.waitForFunction(
        ([field, said]) => field instanceof HTMLTextAreaElement && field.value === said,
        /** @type {const} */ ([await note.elementHandle(), text]),
      );
      // a child is in the list or in the bin, and never in both or neither: both change in one stroke
      const whole = rows.cases.every((/** @type {any} */ row) => isWhole(row.body));
      const binned = rows.bin.map((/** @type {any} */ row) =>
        String(row.id).replace(/^cases /, ''),
      );
      const twice = rows.cases.some((/** @type {any} */ row) => binned.includes(row.id));
      const number = rows.cases.length + binned.length;
      if (!whole || twice || (saved > 0 && found === 0) || (hasRow && number !== 2)) sum.torn += 1;
      if (round === times) {
        await kill(child);
        await browser.close().catch(() => undefined);
        break;
      }
      if (number < 2) await addSecond(page, site);
      hasRow = true;
      const field = await noteField(page, site);
      // the moment is drawn before, in steps of editing and in milliseconds within the last of them
      const steps = 1 + Math.floor(random() * 3);
      const delay = Math.floor(random() * 120);
      for (let step = 0; step < steps; step++) {
        edit = Math.max(edit, found, saved) + 1;
        await field.fill(`edit ${edit} ${edit} ${edit}`);
        await field.blur();
        await page.locator('[data-standing="saved"]').waitFor();
        saved = edit;
        sum.confirmed += 1;
      }
      edit += 1;
      const going = (
        random() < 0.5
          ? field.fill(`edit ${edit} ${edit} ${edit}`).then(() => field.blur())
          : toAndFro(page, site)
      ).catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, delay));
      await kill(child);
      void going; // what it waited for has gone with the browser
      await browser.close().catch(() => undefined);
      sum.tried += 1;
      onkill?.(sum);
    }
  } finally {
    await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  }
  return sum;
}

/** Whether a stored text is a whole case file. @param {string} body */
function isWhole(body) {
  try {
    return JSON.parse(body).format === 'tidemark-case';
  } catch {
    return false;
  }
}

/** A second child, that goes into the bin and comes back. @param {import('@playwright/test').Page} page @param {string} site */
async function addSecond(page, site) {
  await page.goto(`${site}/#/children/new`);
  await page.getByLabel('Name or code').fill('Plover');
  await page.getByLabel('Birth date').fill('2026-04-01');
  await page.getByRole('textbox', { name: 'Gestation at birth' }).fill('33w1d');
  await page.getByRole('button', { name: 'Add child' }).click();
  await page.locator('[data-standing="saved"]').waitFor();
}

/** The second child into the bin, or out of it. @param {import('@playwright/test').Page} page @param {string} site */
async function toAndFro(page, site) {
  await page.goto(`${site}/#/keeping`);
  const back = page.getByRole('button', { name: 'Restore Plover' });
  await page.getByRole('heading', { name: 'Bin' }).waitFor();
  if ((await back.count()) > 0) return back.click();
  await page.goto(`${site}/#/children`);
  await page.getByRole('button', { name: 'More about Plover', exact: true }).click();
  return page.getByRole('button', { name: 'Remove Plover' }).click();
}
