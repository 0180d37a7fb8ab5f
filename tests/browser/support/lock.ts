/** What the tests of the lock share: setting it, the gate before it, going on within the app. */
import type { Page } from '@playwright/test';
import { expect, open } from './page.ts';

export const PASSPHRASE = 'three dunlins on the mud';

export async function setLock(page: Page, passphrase = PASSPHRASE): Promise<void> {
  await open(page, '#/lock');
  await page.getByLabel('Passphrase', { exact: true }).fill(passphrase);
  await page.getByLabel('The same again').fill(passphrase);
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
  await page.waitForFunction((to) => location.hash === to, hash);
}

export const gate = (page: Page) => page.getByRole('heading', { name: 'Tidemark is locked' });

export async function unlock(page: Page, passphrase = PASSPHRASE): Promise<void> {
  await expect(gate(page)).toBeVisible();
  await page.getByLabel('Passphrase').fill(passphrase);
  await page.getByRole('button', { name: 'Open', exact: true }).click();
}
