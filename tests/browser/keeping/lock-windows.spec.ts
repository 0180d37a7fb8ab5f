/** The lock with several windows: each goes by the lock that lies in the store, and nothing is lost between them. */
import type { Page } from '@playwright/test';
import { noteOf, setNote, standing } from '../support/keep.ts';
import { gate, go, PASSPHRASE, setLock, test, unlock } from '../support/lock.ts';
import { expect, listed } from '../support/page.ts';

const NEXT = 'four godwits in the reeds';

/** Opens a window on the same store, with the same clock. */
async function second(page: Page, hash = '#/children'): Promise<Page> {
  const other = await page.context().newPage();
  await other.clock.setFixedTime(new Date('2026-06-08T10:00:00'));
  await other.goto(`/${hash}`);
  return other;
}

async function removeLock(page: Page, passphrase: string): Promise<void> {
  await page.getByLabel('Current passphrase').fill(passphrase);
  await page.getByRole('button', { name: 'Remove the lock' }).click();
}

async function changeTo(page: Page, from: string, to: string): Promise<void> {
  await page.getByLabel('Current passphrase').fill(from);
  await page.getByLabel('Passphrase', { exact: true }).fill(to);
  await page.getByLabel('Repeat the passphrase').fill(to);
  await page.getByRole('button', { name: 'Change the passphrase' }).click();
}

const wrong = (page: Page) => page.getByText(/This is not the passphrase\./);

test(
  'another window that was open when the lock was set asks for it too',
  { tag: '@thorough' },
  async ({ page, context }) => {
    const other = await context.newPage();
    await other.goto('/#/children');
    await expect(listed(other)).toHaveText(['Kestrel']);
    await setLock(page);
    await expect(gate(other)).toBeVisible();
  },
);

test(
  'a window before the gate opens by the lock that is there by then, and brings no older one back',
  { tag: '@thorough' },
  async ({ page }) => {
    await setLock(page);
    const other = await second(page);
    await expect(gate(other)).toBeVisible();
    await removeLock(page, PASSPHRASE);
    await expect(page.getByText('The lock is removed.')).toBeVisible();
    await expect(gate(other)).toBeHidden();
    await expect(listed(other)).toHaveText(['Kestrel']);
    await setLock(page, NEXT);
    await unlock(other);
    await expect(wrong(other)).toBeVisible();
    await unlock(other, NEXT);
    await expect(listed(other)).toHaveText(['Kestrel']);
    await page.reload();
    await unlock(page, NEXT);
    await go(page, '#/children');
    await expect(listed(page)).toHaveText(['Kestrel']);
  },
);

test(
  'a changed passphrase holds in every window, and the one before opens none',
  { tag: '@thorough' },
  async ({ page }) => {
    await setLock(page);
    const waiting = await second(page);
    await expect(gate(waiting)).toBeVisible();
    const using = await second(page, '#/lock');
    await unlock(using);
    await changeTo(page, PASSPHRASE, NEXT);
    await expect(page.getByText('The passphrase is changed.')).toBeVisible();
    await unlock(waiting);
    await expect(wrong(waiting)).toBeVisible();
    await unlock(waiting, NEXT);
    await expect(listed(waiting)).toHaveText(['Kestrel']);
    await unlock(using, NEXT); // it asks again, since it was in use when the passphrase was changed
    await removeLock(using, PASSPHRASE);
    await expect(wrong(using)).toBeVisible();
    await removeLock(using, NEXT);
    await expect(using.getByText('The lock is removed.')).toBeVisible();
  },
);

test(
  'an unfinished visit outlasts a lock that another window sets or removes, and lies sealed between',
  { tag: '@thorough' },
  async ({ page }) => {
    const other = await second(page, '#/visits/new');
    await other.getByLabel('Examiner').fill('Quillfeather');
    await other.getByLabel('Visit date').fill('2026-13-01');
    await other.getByLabel('Visit date').press('Tab');
    await expect(other.getByText('Not saved yet')).toBeVisible();
    await setLock(page);
    await expect(gate(other)).toBeVisible();
    expect(await other.evaluate(() => sessionStorage.getItem('tidemark-draft'))).toMatch(
      /^[0-9a-f]{100,}$/,
    );
    await unlock(other);
    await expect(other.getByLabel('Examiner')).toHaveValue('Quillfeather');
    await removeLock(page, PASSPHRASE);
    await expect(page.getByText('The lock is removed.')).toBeVisible();
    await expect(other.getByLabel('Examiner')).toHaveValue('Quillfeather');
    await other.reload();
    await expect(other.getByLabel('Examiner')).toHaveValue('Quillfeather');
  },
);

test('what is being typed when the lock falls is kept', async ({ page }) => {
  await setLock(page);
  const other = await second(page, '#/visits/3');
  await unlock(other);
  await noteOf(other).pressSequentially(' and more');
  await page.getByRole('button', { name: 'Lock now' }).click();
  await expect(gate(other)).toBeVisible();
  await unlock(other);
  await expect(noteOf(other)).toHaveValue(/ and more$/);
});

test(
  'the lock in the header stays where it is while something is saved',
  { tag: '@thorough' },
  async ({ page }) => {
    await setLock(page);
    await go(page, '#/visits/3');
    const lock = page.getByRole('banner').getByRole('button', { name: 'Lock' });
    const before = (await lock.boundingBox())?.x;
    await setNote(page, 'a note');
    await expect(standing(page)).toHaveText('Saved');
    expect((await lock.boundingBox())?.x).toBe(before);
    await noteOf(page).pressSequentially(' and more');
    await lock.click();
    await expect(gate(page)).toBeVisible();
  },
);
