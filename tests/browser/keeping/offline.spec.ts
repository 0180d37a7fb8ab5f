/** Without a network: the server is killed after the first visit, and all of Tidemark is still there. */
import { readdirSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { arrived, asking, expect, test, verdict, workerAnswers } from '../support/page.ts';
import { PAGES } from '../support/pages.ts';
import { SiteServer } from '../support/server.ts';

const server = new SiteServer('dist');
test.use({ baseURL: undefined, serviceWorkers: 'allow' });
test.beforeEach(() => server.start());
test.afterEach(() => server.kill());
// one server, killed in each test
test.describe.configure({ mode: 'serial' });

/** Beside those of every test, pages that load much of their own. */
const MORE = [
  '#/talks/first-year',
  '#/stage/first-year?step=2',
  '#/stage/first-year/speaker',
  '#/quiz/stage/1',
] as const;

/** The first visit, up to where the worker has all of it and answers for this page. */
async function visit(page: Page): Promise<void> {
  await page.goto(server.address);
  await workerAnswers(page);
}

test('after the first visit the server may be gone', async ({ page }) => {
  await visit(page);
  await server.kill();
  await page.reload();
  await expect(asking(page)).toHaveText(['Crossed extension', 'Asymmetrical tonic neck', 'Moro']);
  await verdict(page, 'moro').click();
  await expect(page.locator('#ground-moro')).toContainText('Pitfalls');
});

test('every page opens by itself with the server gone', { tag: '@thorough' }, async ({ page }) => {
  await visit(page);
  await server.kill();
  for (const hash of [...PAGES, ...MORE]) {
    await page.goto(`${server.address}/${hash}`);
    await arrived(page);
    if (!/nowhere|incoming/.test(hash))
      await expect(page.locator('.lost'), `${hash} is there`).toHaveCount(0);
  }
});

test('every file that the website is made of is kept on the machine', async ({ page }) => {
  await visit(page);
  const kept = await page.evaluate(async () => {
    const found: string[] = [];
    for (const key of await caches.keys())
      for (const { url } of await (await caches.open(key)).keys())
        found.push(new URL(url).pathname);
    return found;
  });
  // the worker itself is kept by the browser; the rest is not for a page
  const apart = ['service-worker.js', 'tidemark.html', 'index.html', '_app/version.json'];
  const made = readdirSync('dist', { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => `${parentPath}/${name}`.slice('dist/'.length))
    .filter((path) => !apart.includes(path));
  expect(made.length).toBeGreaterThan(50);
  expect(made.filter((path) => !kept.includes(`/${path}`))).toEqual([]);
});

test(
  'what is loaded only when it is asked for works with the server gone',
  { tag: '@thorough' },
  async ({ page }) => {
    await visit(page);
    await server.kill();
    await page.reload();
    // a picture, with its letters inside
    await page
      .getByRole('button', { name: /^Export figure/ })
      .first()
      .click();
    const picture = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    expect((await picture).suggestedFilename()).toMatch(/\.svg$/);
    // a table of findings
    await page.goto(`${server.address}/#/children`);
    await page.getByRole('button', { name: 'More about Kestrel', exact: true }).click();
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save to a case file Kestrel' }).click();
    expect((await saving).suggestedFilename()).toBe('kestrel.tidemark.json');
    // the invented children
    await page
      .getByRole('button', { name: /sample children/ })
      .first()
      .click();
    await expect(page.locator('.rows .name').nth(2)).toBeVisible();
  },
);

test(
  'the single file is the server’s to give, never the page in its place',
  { tag: '@thorough' },
  async ({ page }) => {
    await visit(page);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.goto(`${server.address}/#/about`).then(async () => {
        await page.getByRole('link', { name: 'Tidemark in one file' }).click();
      }),
    ]);
    expect(download.suggestedFilename()).toBe('tidemark.html');
    const answer = await page.goto(`${server.address}/tidemark.html`);
    expect(answer?.fromServiceWorker()).toBe(false);
    expect((await answer!.body()).length).toBeGreaterThan(1_000_000);
  },
);
