/** What was removed and what was saved, brought back: the bin and backups, in a real browser. */
import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { addChild, expect, listed, more, open, test } from '../support/page.ts';
import { noteOf, PLOVER, setNote, standing } from '../support/keep.ts';
import { go, setLock } from '../support/lock.ts';

test('what is removed lies in the bin, says when it goes, and comes back', async ({ page }) => {
  await open(page, '#/children');
  await more(page, 'Kestrel');
  await page.getByRole('button', { name: 'Remove Kestrel' }).click();
  await page.getByRole('link', { name: 'Bin (1)' }).click();
  await expect(page.getByText('deleted permanently on 8 July 2026')).toBeVisible();
  await page.reload();
  await page.getByRole('button', { name: 'Restore Kestrel' }).click();
  await expect(page.getByText('The bin is empty.')).toBeVisible();
  await open(page, '#/children');
  await expect(listed(page)).toHaveText(['Kestrel']);
  await more(page, 'Kestrel');
  await page.getByRole('button', { name: 'Remove Kestrel' }).click();
  await open(page, '#/keeping');
  await page.getByRole('button', { name: 'Delete Kestrel permanently' }).click();
  await page.getByRole('button', { name: 'Delete permanently' }).click();
  await expect(page.getByText('The bin is empty.')).toBeVisible();
});

test('a backup goes to another machine: what is new, changed and the same is shown first', async ({
  page,
  browser,
}) => {
  await addChild(page, PLOVER);
  await expect(standing(page)).toHaveText('Saved');
  await open(page, '#/keeping');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a backup' }).click();
  const download = await saving;
  expect(download.suggestedFilename()).toBe('tidemark-2026-06-08.tidemark-backup.json');
  const buffer = await readFile(await download.path());
  await expect(page.getByText('Last backup: 8 June 2026.')).toBeVisible();

  const elsewhere = await browser.newContext();
  const there = await elsewhere.newPage();
  await open(there, '#/visits/3');
  await setNote(there, 'only there');
  await open(there, '#/keeping');
  await there
    .getByLabel('Open a backup')
    .setInputFiles({ name: 'b.json', mimeType: 'application/json', buffer });
  await expect(there.getByText('1 new, 1 changed, 0 the same.')).toBeVisible();
  const kestrel = there.getByRole('radiogroup', { name: 'Kestrel' });
  await expect(kestrel.getByRole('radio', { name: 'keep mine' })).toBeChecked();
  await kestrel.getByRole('radio', { name: 'keep both' }).check();
  await there.getByRole('button', { name: 'Restore selected' }).click();
  await expect(there.getByText('2 entries restored from the backup.')).toBeVisible();
  await open(there, '#/children');
  await expect(listed(there)).toHaveText(['Kestrel', 'Kestrel', 'Plover']);
  await there.reload();
  await expect(listed(there)).toHaveText(['Kestrel', 'Kestrel', 'Plover']);
  await elsewhere.close();
});

test(
  'settings and answers come with a backup, are compared, and one undo takes all of it back',
  { tag: '@thorough' },
  async ({ page, browser }) => {
    await open(page, '#/settings');
    await page.getByRole('radio', { name: 'dark' }).check();
    await open(page, '#/quiz');
    await page.getByRole('link', { name: 'Start' }).click();
    await expect(page.getByText(/^Question 1 of /)).toBeVisible();
    await page.keyboard.press('1');
    await expect(page.getByRole('button', { name: 'Next question' })).toBeVisible();
    await open(page, '#/keeping');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save a backup' }).click();
    const buffer = await readFile(await (await saving).path());
    const backup = { name: 'b.json', mimeType: 'application/json', buffer };

    const elsewhere = await browser.newContext({ baseURL: new URL(page.url()).origin });
    const there = await elsewhere.newPage();
    await there.clock.setFixedTime(new Date('2026-06-08T10:00:00'));
    await open(there, '#/keeping');
    await there.getByLabel('Open a backup').setInputFiles(backup);
    await expect(there.getByText('2 new, 0 changed, 1 the same.')).toBeVisible();
    await expect(there.getByRole('checkbox', { name: /^Settings/ })).toBeChecked();
    await expect(there.getByRole('checkbox', { name: /^Answers of the self-test/ })).toBeChecked();
    await there.getByRole('button', { name: 'Restore selected' }).click();
    await expect(there.locator('html')).toHaveAttribute('data-theme', 'dark');
    await there.getByRole('button', { name: 'Undo' }).click();
    await expect(there.locator('html')).toHaveAttribute('data-theme', 'system');
    await expect(
      there.getByText('Undone: everything is as it was before the backup'),
    ).toBeVisible();
    await there.keyboard.press('Control+Shift+z');
    await expect(there.locator('html')).toHaveAttribute('data-theme', 'dark');
    await open(there, '#/quiz');
    await expect(there.getByText(/^1 subject seen so far/)).toBeVisible();

    await open(there, '#/settings');
    await there.getByRole('radio', { name: 'light' }).check();
    await open(there, '#/keeping');
    await there.getByLabel('Open a backup').setInputFiles(backup);
    await expect(there.getByText('0 new, 1 changed, 2 the same.')).toBeVisible();
    const settings = there.getByRole('radiogroup', { name: 'Settings' });
    await expect(settings.getByRole('radio')).toHaveCount(2);
    await expect(settings.getByRole('radio', { name: 'keep mine' })).toBeChecked();
    await settings.getByRole('radio', { name: 'use the backup’s' }).check();
    await there.getByRole('button', { name: 'Restore selected' }).click();
    await expect(there.locator('html')).toHaveAttribute('data-theme', 'dark');
    await there.reload();
    await expect(there.locator('html')).toHaveAttribute('data-theme', 'dark');
    await elsewhere.close();
  },
);

test(
  'one visit that was removed lies in the bin and is put back, also in another session',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/visits/2');
    await page.getByRole('button', { name: 'Remove this visit' }).click();
    await expect(standing(page)).toHaveText('Saved');
    await page.reload();
    await open(page, '#/keeping');
    await expect(page.getByText('deleted permanently on 8 July 2026')).toBeVisible();
    await page.getByRole('button', { name: /^Restore Kestrel: visit of 16 March 2026/ }).click();
    await expect(page.getByText('The bin is empty.')).toBeVisible();
    await page.keyboard.press('Control+z');
    await expect(page.getByText('Undone: it is in the bin again.')).toBeVisible();
    await expect(page.getByRole('button', { name: /^Restore Kestrel: visit/ })).toBeVisible();
    await page.keyboard.press('Control+y');
    await expect(page.getByText('The bin is empty.')).toBeVisible();
    await open(page, '#/visits');
    await page.getByRole('link', { name: '16 March 2026' }).click();
    await expect(page.getByRole('button', { name: 'Change Symmetrical tonic neck' })).toBeVisible();
  },
);

test(
  'what a backup replaces lies in the bin as it was, and is brought back from there',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/keeping');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save a backup' }).click();
    const backup = await (await saving).path();
    await open(page, '#/visits/3');
    await setNote(page, 'written after the backup');
    await expect(standing(page)).toHaveText('Saved');
    await open(page, '#/keeping');
    await page.getByLabel('Open a backup').setInputFiles(backup);
    await page.getByRole('radio', { name: 'use the backup’s' }).check();
    await page.getByRole('button', { name: 'Restore selected' }).click();
    await open(page, '#/visits/3');
    await expect(noteOf(page)).not.toHaveValue('written after the backup');
    await page.reload();
    await open(page, '#/keeping');
    await page.getByRole('button', { name: 'Restore Kestrel' }).click();
    await expect(page.getByText('The bin is empty.')).toBeVisible();
    await open(page, '#/visits/3');
    await expect(noteOf(page)).toHaveValue('written after the backup');
  },
);

test(
  'forgotten answers come back with undo, and out of the bin',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/quiz');
    await page.getByRole('link', { name: 'Start' }).click();
    await expect(page.getByText(/^Question 1 of /)).toBeVisible();
    await page.keyboard.press('1');
    await open(page, '#/quiz');
    const learnt = page.getByText(/^1 subject seen so far/);
    await expect(learnt).toBeVisible();
    await page.getByRole('button', { name: 'Forget all answers' }).click();
    await expect(learnt).toBeHidden();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(learnt).toBeVisible();
    await page.keyboard.press('Control+y');
    await expect(learnt).toBeHidden();
    await page.reload();
    await open(page, '#/keeping');
    await page.getByRole('button', { name: 'Restore Answers of the self-test' }).click();
    await expect(page.getByText('The bin is empty.')).toBeVisible();
    await open(page, '#/quiz');
    await expect(learnt).toBeVisible();
  },
);

/** The browser's own private folder stands in for one that a person would choose. */
const withStick = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    Object.assign(globalThis, {
      showDirectoryPicker: async () =>
        (await navigator.storage.getDirectory()).getDirectoryHandle('stick', { create: true }),
    });
  });

/** The day's backup in it; empty where there is none. */
const onStick = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle('stick', { create: true });
    try {
      const file = await folder.getFileHandle('tidemark-2026-06-08.tidemark-backup.json');
      return await (await file.getFile()).text();
    } catch {
      return '';
    }
  });

test(
  'under a lock nothing goes to a folder in plain text unless that is allowed',
  { tag: '@thorough' },
  async ({ page }) => {
    await withStick(page);
    await setLock(page);
    await go(page, '#/keeping');
    await page.getByRole('button', { name: 'Choose a folder' }).click();
    await expect(
      page.getByText(/^While a lock is set no backup is written to the folder “stick”/),
    ).toBeVisible();
    expect(await onStick(page)).toBe('');
    await page.getByRole('button', { name: 'Allow plain backups there' }).click();
    await expect(
      page.getByText(/^Backups are written to the folder “stick” in plain text/),
    ).toBeVisible();
    await expect.poll(() => onStick(page)).toContain('Kestrel');
    await page.getByRole('button', { name: 'Write none while a lock is set' }).click();
    await expect(page.getByText(/^While a lock is set no backup is written/)).toBeVisible();
  },
);

test('a chosen folder gets backups by itself, and is known after a reload', async ({ page }) => {
  await withStick(page);
  const written = () => onStick(page);
  await open(page, '#/keeping');
  await page.getByRole('button', { name: 'Choose a folder' }).click();
  await expect(page.getByText('Backups are written to the folder “stick”.')).toBeVisible();
  await expect.poll(written).toContain('Kestrel');
  await page.reload();
  await expect(page.getByText('Backups are written to the folder “stick”.')).toBeVisible();
  await page.clock.setFixedTime(new Date('2026-06-08T10:05:00')); // after the backup before
  await addChild(page, PLOVER);
  await expect(standing(page)).toHaveText('Saved');
  await page.evaluate(() => {
    Object.defineProperty(document, 'hidden', { value: true });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await expect.poll(written).toContain('Plover');
});
