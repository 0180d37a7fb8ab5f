/** What the tests of the lock share: setting it, the gate before it, going on within the app. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext, Page } from '@playwright/test';
import { STRENGTH } from '../../../src/lib/store/derive.ts';
import { arrived, expect, open, test as base } from './page.ts';

export const PASSPHRASE = 'three dunlins on the mud';

const CHUNKS = 'dist/_app/immutable/chunks';
const said = (memoryKiB: number, passes: number): string =>
  `{memoryKiB:${memoryKiB},passes:${passes},lanes:${STRENGTH.lanes}}`;

/** Serves the script that stretches a passphrase with a strength that costs next to nothing. */
async function weaken(context: BrowserContext): Promise<void> {
  const strong = said(STRENGTH.memoryKiB, STRENGTH.passes);
  const files = readdirSync(CHUNKS).map((name) => ({
    name,
    text: readFileSync(join(CHUNKS, name), 'utf8'),
  }));
  const found = files.filter(({ text }) => text.includes(strong));
  expect(found, 'the one script that says how strong a lock is').toHaveLength(1);
  const { name, text } = found[0]!;
  await context.route(`**/${name}`, (route) =>
    route.fulfill({
      contentType: 'text/javascript',
      body: text.replace(strong, said(64, 1)),
    }),
  );
}

/**
 * A test of what a lock does, not of how strong it is: that takes seconds for each passphrase, and is
 * told by lock.spec.ts (on the disk) and the tests of the store.
 */
export const test = base.extend<{ quick: undefined }>({
  quick: [
    async ({ context }, use) => {
      await weaken(context);
      await use(undefined);
    },
    { auto: true },
  ],
});

export async function setLock(page: Page, passphrase = PASSPHRASE): Promise<void> {
  await open(page, '#/lock');
  await page.getByLabel('Passphrase', { exact: true }).fill(passphrase);
  await page.getByLabel('Repeat the passphrase').fill(passphrase);
  await page.getByLabel(/I have written the passphrase down/).check();
  await page.getByRole('button', { name: 'Set a lock' }).click();
  await expect(page.getByText('The lock is set.')).toBeVisible();
}

/** Follows a link within the app: an address typed in loads it anew, and asks for the passphrase. */
export async function go(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    const link = document.createElement('a');
    link.href = to;
    document.body.append(link);
    link.click();
    link.remove();
  }, hash);
  // an address that names a visit by its number leads to the one that names its id
  if (/^#\/visits\/\d+(?:\/|$)/.test(hash)) await arrived(page);
  else await page.waitForFunction((to) => location.hash === to, hash);
}

export const gate = (page: Page) => page.getByRole('heading', { name: 'Tidemark is locked' });

export async function unlock(page: Page, passphrase = PASSPHRASE): Promise<void> {
  await expect(gate(page)).toBeVisible();
  await page.getByLabel('Passphrase').fill(passphrase);
  await page.getByRole('button', { name: 'Open', exact: true }).click();
}
