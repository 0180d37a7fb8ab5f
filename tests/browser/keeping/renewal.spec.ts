/**
 * Two versions, served one after the other at one address: the new one waits for the user's word, comes
 * at no bad moment, loses nothing, and leaves an old window able to go on.
 */
import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { Locator, Page } from '@playwright/test';
import { writeNextVersion } from '../support/nextVersion.ts';
import { arrived, expect, test, workerAnswers } from '../support/page.ts';
import { SiteServer } from '../support/server.ts';

const NEXT = 'the-next-one';
const READY = 'A new version of Tidemark is ready.';
const REPLACED = /^Another window uses a new version of Tidemark/;
const next = mkdtempSync(join(tmpdir(), 'tidemark-next-'));
const server = new SiteServer('dist');

test.use({ serviceWorkers: 'allow' });
test.describe.configure({ mode: 'serial' });
test.beforeAll(async () => {
  if (!process.env.THOROUGH) {
    writeNextVersion('dist', next, NEXT);
    return;
  }
  test.setTimeout(600_000); // a whole build
  await promisify(execFile)(
    process.execPath,
    ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'error'],
    { env: { ...process.env, APP_VERSION: NEXT, SITE_DIR: next } },
  );
});
test.afterAll(() => rmSync(next, { recursive: true, force: true }));
test.beforeEach(async () => {
  server.folder = 'dist';
  await server.start();
});
test.afterEach(() => server.kill());

const go = async (page: Page, hash: string): Promise<void> => {
  await page.goto(`${server.address}/${hash}`);
  await arrived(page);
};

/** The first visit, with the first version, up to where its worker answers for the page. */
async function visit(page: Page, hash = '#/'): Promise<void> {
  await go(page, hash);
  await workerAnswers(page);
}

/** The next version comes to the server, and the browser looks. */
async function renew(page: Page): Promise<void> {
  server.folder = next;
  await page.evaluate(async () => {
    const registration = (await navigator.serviceWorker.getRegistration())!;
    await registration.update();
    const coming = registration.installing;
    if (!coming) return;
    await new Promise<void>((resolve) => {
      coming.addEventListener('statechange', () => {
        if (coming.state === 'installed') resolve();
      });
    });
  });
}

/** Goes on within the page as by a link; an address typed in would load the page anew. */
function follow(to: string): void {
  const link = document.createElement('a');
  link.href = to;
  document.body.append(link);
  link.click();
  link.remove();
}

/** Presses what loads the page anew, and waits until it has: what is asked meanwhile would be lost. */
async function anew(page: Page, button: Locator): Promise<void> {
  const loaded = page.waitForEvent('load');
  await button.click();
  await loaded;
}

const line = (page: Page) => page.locator('.renewed');
const versionOf = async (page: Page): Promise<string> => {
  await page.evaluate(follow, '#/about');
  return page.getByText(/^This is version/).innerText();
};
/** Leaves something in the window that a reload would take away. */
const mark = (page: Page) => page.evaluate(() => void Object.assign(window, { stillHere: true }));
const isMarked = (page: Page) => page.evaluate(() => 'stillHere' in window);

test('a new version waits, is used when told to, and is then there without a network', async ({
  page,
}) => {
  await visit(page);
  const before = await versionOf(page);
  await renew(page);
  await expect(line(page)).toContainText(READY);
  await page.reload();
  await expect(line(page)).toContainText(READY);
  expect(await versionOf(page)).toBe(before);

  await mark(page);
  await anew(page, line(page).getByRole('button', { name: 'Use it now' }));
  await expect(page.getByText(`This is version ${NEXT}.`)).toBeVisible();
  expect(await isMarked(page)).toBe(false);
  await expect(line(page)).toBeEmpty();

  await server.kill();
  await go(page, '#/');
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Kestrel' })).toBeVisible();
  expect(await versionOf(page)).toContain(NEXT);
});

test(
  'put off, it stays away, and can still be used from the page about Tidemark',
  { tag: '@thorough' },
  async ({ page }) => {
    await visit(page);
    await renew(page);
    await line(page).getByRole('button', { name: 'Later' }).click();
    await expect(line(page)).toBeEmpty();
    await page.evaluate(follow, '#/sources');
    await expect(page.getByRole('heading', { name: 'Sources' })).toBeVisible();
    await expect(line(page)).toBeEmpty();
    await page.evaluate(follow, '#/about');
    await anew(page, page.getByRole('button', { name: 'Use it now' }));
    await expect(page.getByText(`This is version ${NEXT}.`)).toBeVisible();
  },
);

test(
  'nothing is said in a talk, while a visit is recorded, or while something is typed',
  { tag: '@thorough' },
  async ({ page }) => {
    await visit(page, '#/stage/first-year?step=2');
    await renew(page);
    await expect(page.locator('.hall h1')).toBeVisible();
    await expect(line(page)).toBeEmpty();
    for (const hash of ['#/visits/3', '#/visits/3/record', '#/axis', '#/quiz']) {
      await page.evaluate(follow, hash);
      await expect(page.locator('main :is(h1, h2)').first()).toBeVisible();
      await expect(line(page)).toBeEmpty();
    }
    await page.evaluate(follow, '#/children/new');
    await expect(line(page)).toContainText(READY);
    await page.getByLabel('Name or code').fill('Plover');
    await expect(line(page)).toBeEmpty();
    await page.getByLabel('Birth date').fill('2026-01-04');
    await page.getByRole('textbox', { name: 'Gestation at birth' }).fill('39w0d');
    await page.getByRole('button', { name: 'Add child' }).click();
    await expect(page.getByRole('heading', { name: 'New visit' })).toBeVisible();
    await expect(line(page)).toBeEmpty();
    await page.evaluate(follow, '#/children');
    await anew(page, line(page).getByRole('button', { name: 'Use it now' }));
    await expect(line(page)).toBeEmpty();
    await expect(page.getByRole('button', { name: 'Plover', exact: true })).toBeVisible();
  },
);

test(
  'a visit that is not kept yet outlives the new version',
  { tag: '@thorough' },
  async ({ page }) => {
    await visit(page, '#/visits/new');
    await page.getByLabel('Visit date').fill('2026-13-40');
    await renew(page);
    await page.evaluate(follow, '#/about');
    await anew(page, line(page).getByRole('button', { name: 'Use it now' }));
    await expect(page.getByText(`This is version ${NEXT}.`)).toBeVisible();
    await page.evaluate(follow, '#/visits/new');
    await expect(page.getByLabel('Visit date')).toHaveValue('2026-13-40');
  },
);

test(
  'an old window goes on with its own version, pages it has not opened yet included',
  { tag: '@thorough' },
  async ({ page, context }) => {
    await visit(page);
    const talk = await context.newPage();
    await go(talk, '#/stage/first-year?step=1');
    const before = await context.newPage();
    await go(before, '#/about');
    const old = await versionOf(before);
    await Promise.all([mark(before), mark(talk)]);

    await renew(page);
    await anew(page, line(page).getByRole('button', { name: 'Use it now' }));
    await expect(line(before)).toContainText(REPLACED);
    expect(await versionOf(page)).toContain(NEXT);
    await server.kill();

    expect(await versionOf(before)).toBe(old);
    for (const [hash, heading] of [
      ['#/quiz', 'Questions'],
      ['#/order', /sequences/i],
      ['#/reflexes/moro', /Moro/],
      ['#/children', 'Children'],
    ] as const) {
      await before.evaluate(follow, hash);
      await expect(before.getByRole('heading', { name: heading }).first()).toBeVisible();
    }
    expect(await isMarked(before)).toBe(true);

    await talk.bringToFront();
    await talk.keyboard.press('PageDown');
    await expect(talk.locator('footer .place > span').last()).toHaveText('2 of 9');
    await expect(line(talk)).toBeEmpty();
    expect(await isMarked(talk)).toBe(true);

    await anew(before, before.getByRole('button', { name: 'Reload the page' }));
    await expect(before.getByRole('heading', { name: 'Children' })).toBeVisible();
    expect(await versionOf(before)).toContain(NEXT);
  },
);

test(
  'where a part is gone for good, the page says so and can be loaded anew',
  { tag: '@thorough' },
  async ({ page, context }) => {
    await visit(page);
    const before = await context.newPage();
    await go(before, '#/about');
    await renew(page);
    await anew(page, line(page).getByRole('button', { name: 'Use it now' }));
    await expect(line(before)).toContainText(REPLACED);
    // as after one more version: what the old window is made of is no longer kept
    await page.evaluate(async (version) => {
      for (const key of await caches.keys()) if (!key.endsWith(version)) await caches.delete(key);
    }, NEXT);
    await before.evaluate(follow, '#/quiz');
    await expect(
      before.getByRole('heading', { name: 'This page could not be loaded.' }),
    ).toBeVisible();
    await anew(before, before.locator('.lost').getByRole('button', { name: 'Reload the page' }));
    await expect(before.getByRole('heading', { name: 'Questions' })).toBeVisible();
    expect(await versionOf(before)).toContain(NEXT);
  },
);

test('half a version is never used', { tag: '@thorough' }, async ({ page }) => {
  await visit(page);
  const before = await versionOf(page);
  // the new worker is there, but not all of what it names
  await page.context().route(/\/_app\/immutable\/nodes\//, (route) => route.abort());
  server.folder = next;
  const state = await page.evaluate(async () => {
    const registration = (await navigator.serviceWorker.getRegistration())!;
    await registration.update();
    const coming = registration.installing!;
    return new Promise<string>((resolve) => {
      coming.addEventListener('statechange', () => resolve(coming.state));
    });
  });
  expect(state).toBe('redundant');
  await expect(line(page)).toBeEmpty();
  await server.kill();
  await page.reload();
  expect(await versionOf(page)).toBe(before);
});
