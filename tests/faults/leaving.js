/**
 * The page left at once after an action: each action that goes on after its click, with each way of leaving
 * and so many milliseconds between. Counted is what the next page finds: all of it, nothing of it and said so,
 * nothing of it and not a word, or a part of it.
 */
import { chromium } from '@playwright/test';
import { launchOptions } from '../support/browser.js';
import { ACTIONS, PASSPHRASE } from './actions.js';

/** @typedef {import('@playwright/test').Page} Page */
/** @typedef {import('./actions.js').Rows} Rows */
/** @typedef {'link' | 'typed hash' | 'reload' | 'closed window'} Way */
/** @typedef {'completed' | 'said' | 'lost' | 'halved'} Outcome */
/** @typedef {Record<Outcome, number> & { tried: number; broken: number }} Count */

/** @type {readonly Way[]} */
const WAYS = ['link', 'typed hash', 'reload', 'closed window'];
/** Between the click and the leaving, ms. */
const DELAYS = [0, 15, 50];
/** How long it is waited for what was asked for before it counts as not done, ms. */
const PATIENCE_MS = 15_000;
/** A key is stretched from a passphrase: that alone takes seconds on a busy machine. */
const LOCK_PATIENCE_MS = 40_000;
/** Tries side by side: each has its own store, and the leaving is timed within its page. */
const AT_ONCE = 2;
const AWAY = '#/about';
/** What a page says of an action that it did not finish. */
const SAID = /was not finished|were not finished/;

/** All that is stored, read by the browser's own means. @param {Page} page @returns {Promise<Rows>} */
async function storeOf(page) {
  const read = await page.waitForFunction(async () => {
    const name = 'tidemark-children';
    // opened before the app has, it would be made anew and empty
    if (!(await indexedDB.databases()).some((one) => one.name === name)) return undefined;
    /** @template T @param {IDBRequest<T>} request @returns {Promise<T>} */
    const answer = (request) =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(new Error('the store does not open'));
      });
    const tables = ['cases', 'own', 'talks', 'bin', 'small'];
    const database = await answer(indexedDB.open(name));
    try {
      if (!tables.every((table) => database.objectStoreNames.contains(table))) return undefined;
      const asked = database.transaction(tables);
      const all = await Promise.all(
        tables.map((table) => answer(asked.objectStore(table).getAll())),
      );
      return Object.fromEntries(tables.map((table, at) => [table, all[at]]));
    } finally {
      database.close();
    }
  });
  return /** @type {any} */ (await read.jsonValue());
}

/** Opens a page by its hash, and waits until it has read its store. @param {Page} page @param {string} site */
const showing = (page, site) => async (/** @type {string} */ hash) => {
  if (page.url().startsWith(site))
    await page.evaluate((to) => {
      const link = document.createElement('a');
      link.href = to;
      document.body.append(link);
      link.click();
      link.remove();
    }, hash);
  else await page.goto(`${site}/${hash}`);
  await page.waitForFunction((to) => location.hash === to, hash);
  await page.locator('main :is(h1, h2)').first().waitFor();
  await page.waitForLoadState('networkidle');
};

/**
 * Clicks, types or gives a file, and leaves so many milliseconds later, both within the page.
 * @param {Page} page @param {import('./actions.js').Act} act @param {Way} way @param {number} ms
 */
async function actAndLeave(page, { at, types, file }, way, ms) {
  const element = await at.elementHandle();
  if (!element) throw new Error('nothing to click');
  const acting = element.evaluate(
    async (to, wanted) => {
      const leave = () => {
        if (wanted.way === 'typed hash') location.hash = wanted.away;
        else if (wanted.way === 'reload') location.reload();
        else if (wanted.way === 'link') {
          const link = document.createElement('a');
          link.href = wanted.away;
          document.body.append(link);
          link.click();
          link.remove();
        }
      };
      if (wanted.file && to instanceof HTMLInputElement) {
        const held = new DataTransfer();
        held.items.add(new File([wanted.file.text], wanted.file.name));
        to.files = held.files;
        to.dispatchEvent(new Event('change', { bubbles: true }));
      } else if (
        wanted.types &&
        (to instanceof HTMLInputElement || to instanceof HTMLTextAreaElement)
      ) {
        to.focus();
        to.value = '';
        for (const letter of wanted.types) {
          to.value += letter;
          to.dispatchEvent(new InputEvent('input', { bubbles: true, data: letter }));
          await Promise.resolve();
        }
      } else if (to instanceof HTMLElement) to.click();
      if (wanted.ms === 0) leave();
      else setTimeout(leave, wanted.ms);
    },
    { way, ms, types, file, away: AWAY },
  );
  // a page that is loaded anew answers no more
  await acting.catch(() => undefined);
  if (way !== 'closed window') return;
  await new Promise((resolve) => setTimeout(resolve, ms));
  const closed = page.waitForEvent('close');
  await page.close({ runBeforeUnload: true });
  await closed;
}

/** What a page has to say is said behind its lock. @param {Page} page */
async function unlock(page) {
  const gate = page.getByRole('heading', { name: 'Tidemark is locked' });
  if (!(await gate.isVisible())) return;
  await page.getByLabel('Passphrase').fill(PASSPHRASE);
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await gate.waitFor({ state: 'hidden' });
}

/** What stands beside what the page was asked for: notices and alerts. @param {Page} page */
const saidOn = async (page) =>
  (await page.locator('[role=alert], [role=status]').allInnerTexts()).join('\n');

/**
 * Tries an action once.
 * @param {import('@playwright/test').Browser} browser @param {string} site
 * @param {import('./actions.js').Action} action @param {Way} way @param {number} ms
 * @returns {Promise<Outcome>}
 */
async function attempt(browser, site, action, way, ms) {
  const context = await browser.newContext();
  context.setDefaultTimeout(60_000);
  try {
    let page = await context.newPage();
    let isAsked = false;
    page.on('dialog', (dialog) => {
      isAsked = true; // the page asks before it is left: who goes on all the same was told
      void dialog.accept();
    });
    const act = await action.ready(page, showing(page, site));
    const before = await storeOf(page);
    await actAndLeave(page, act, way, ms);
    if (way === 'closed window') {
      page = await context.newPage();
      await page.goto(`${site}/${AWAY}`);
    }
    await page.locator('main :is(h1, h2)').first().waitFor();
    const isLock = action.name.includes('lock') && way !== 'reload' && way !== 'closed window';
    const until = Date.now() + (isLock ? LOCK_PATIENCE_MS : PATIENCE_MS);
    let found = action.found(await storeOf(page), before);
    let isSaid = false;
    while (found !== 'whole' && !isSaid && Date.now() < until) {
      await new Promise((resolve) => setTimeout(resolve, 200));
      await unlock(page);
      found = action.found(await storeOf(page), before);
      isSaid = found === 'unchanged' && SAID.test(await saidOn(page));
    }
    if (found === 'whole') return 'completed';
    if (found === 'half') return 'halved';
    return isSaid || isAsked ? 'said' : 'lost';
  } finally {
    await context.close();
  }
}

/**
 * Every cell of the table.
 * @param {{ site: string; times: number; only?: string | undefined }} wanted tries at each delay, and a part of the actions' names
 * @returns {Promise<{ action: string; way: Way; count: Count }[]>}
 */
export async function leaving({ site, times, only = '' }) {
  const cells = ACTIONS.filter(({ name }) => name.includes(only)).flatMap((action) =>
    WAYS.map((way) => ({
      action,
      way,
      /** @type {Count} */
      count: { tried: 0, completed: 0, said: 0, lost: 0, halved: 0, broken: 0 },
    })),
  );
  const waiting = cells.flatMap((cell) =>
    DELAYS.flatMap((ms) => Array.from({ length: times }, () => ({ ...cell, ms }))),
  );
  let ended = 0;
  const all = waiting.length;
  const browser = await chromium.launch(launchOptions());
  /** Takes one try after another off the list, until it is empty. */
  const tries = async () => {
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      const { action, way, count, ms } = next;
      // a try that did not come about, as on a machine that is too busy, counts for nothing
      try {
        const outcome = await attempt(browser, site, action, way, ms);
        count[outcome] += 1;
        count.tried += 1;
        if (outcome === 'lost' || outcome === 'halved')
          process.stderr.write(`${action.name}, ${way} after ${ms} ms: ${outcome}\n`);
      } catch (error) {
        count.broken += 1;
        process.stderr.write(`${action.name}, ${way}: ${String(error).split('\n')[0]}\n`);
      }
      ended += 1;
      if (ended % 20 === 0) process.stderr.write(`${ended} of ${all} tried\n`);
    }
  };
  try {
    await Promise.all(Array.from({ length: AT_ONCE }, tries));
  } finally {
    await browser.close();
  }
  return cells.map(({ action, way, count }) => ({ action: action.name, way, count }));
}

/** A row for each action: of each way, what was completed, undone and said, lost, halved. @param {Awaited<ReturnType<typeof leaving>>} cells */
export const leavingTable = (cells) =>
  [...new Set(cells.map(({ action }) => action))].map((action) => ({
    action,
    ...Object.fromEntries(
      cells
        .filter((cell) => cell.action === action)
        .map(({ way, count: { tried, completed, said, lost, halved, broken } }) => [
          way,
          `${tried}: ${completed} / ${said} / ${lost} / ${halved}${broken ? `, ${broken} not tried` : ''}`,
        ]),
    ),
  }));
