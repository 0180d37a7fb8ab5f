/** While a file is read the page goes on, and reading can be given up: then nothing has changed. */
import { writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { backupOf, caseOf } from '../../faults/limits.js';
import { expect, listed, open, test } from '../support/page.ts';

/** The first piece of what a worker reads is asked for, and no more until `__goOn` is called. */
const hold = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const held = new Promise<void>((goOn) => Object.assign(globalThis, { __goOn: goOn }));
    globalThis.Worker = class extends Worker {
      override postMessage(said: object): void {
        if ('more' in said) void held.then(() => super.postMessage(said));
        else super.postMessage(said);
      }
    };
  });

const goOn = (page: Page): Promise<void> =>
  page.evaluate(() => (globalThis as unknown as { __goOn: () => void }).__goOn());

const notice = (page: Page) => page.getByRole('region', { name: 'A file that is being read' });
const childFile = {
  name: 'plover.json',
  mimeType: 'application/json',
  buffer: Buffer.from(caseOf('Plover', 400, 4_900_000)),
};

test(
  'a large backup is read beside the page: it takes what is typed, and reading is given up',
  { tag: '@thorough' },
  async ({ page }, info) => {
    const file = info.outputPath('large.json');
    writeFileSync(file, backupOf(400, 60_000_000, 24));
    await hold(page);
    await open(page, '#/keeping');
    await page.getByLabel('Open a backup').setInputFiles(file);
    await expect(notice(page)).toContainText('Reading the file “large.json”…');
    expect(page.workers()).toHaveLength(1);
    await page.getByRole('checkbox', { name: /^Encrypt/ }).check();
    const typed = page.getByLabel('Passphrase of the file').first();
    await typed.fill('typed while it is read');
    await expect(typed).toHaveValue('typed while it is read');

    await notice(page).getByRole('button', { name: 'Cancel' }).click();
    await expect(notice(page)).toBeHidden();
    await expect.poll(() => page.workers()).toHaveLength(0);
    await goOn(page);
    await expect(page.getByRole('group', { name: /^Backup of/ })).toHaveCount(0);
    await expect(page.getByRole('alert').filter({ hasText: /\S/ })).toHaveCount(0);
    await expect(typed).toHaveValue('typed while it is read');

    await page.getByLabel('Open a backup').setInputFiles(file);
    await expect(page.getByText('400 new, 0 changed, 0 the same.')).toBeVisible();
    await expect(
      page.getByText('200 more are not listed yet. They are selected too.'),
    ).toBeVisible();
    await page.getByRole('button', { name: 'List more' }).click();
    await expect(page.getByRole('checkbox', { name: 'Invented 399' })).toBeChecked();
    await open(page, '#/children');
    await expect(listed(page)).toHaveText(['Kestrel']);
  },
);

test('a case is added only once it is read whole', { tag: '@thorough' }, async ({ page }) => {
  await hold(page);
  await open(page, '#/children');
  const pick = page.getByLabel('Open a case file');
  await pick.setInputFiles(childFile);
  await expect(notice(page)).toBeVisible();
  await notice(page).getByRole('button', { name: 'Cancel' }).click();
  await goOn(page);
  await expect(notice(page)).toBeHidden();
  await expect(listed(page)).toHaveText(['Kestrel']);
  await pick.setInputFiles(childFile);
  await expect(page.getByText('Case file opened.')).toBeVisible();
});

test(
  'reading that breaks off is a sentence, and nothing has changed',
  { tag: '@thorough' },
  async ({ page }) => {
    await page.addInitScript(() => {
      Worker.prototype.postMessage = function (this: Worker): void {
        this.dispatchEvent(new ErrorEvent('error', { message: 'out of memory', cancelable: true }));
      };
    });
    await open(page, '#/children');
    await page.getByLabel('Open a case file').setInputFiles(childFile);
    await expect(page.getByText('The file could not be read to its end')).toBeVisible();
    await expect(listed(page)).toHaveText(['Kestrel']);
  },
);

test('where no worker begins the page reads by itself', { tag: '@thorough' }, async ({ page }) => {
  await page.addInitScript(() => {
    Reflect.deleteProperty(globalThis, 'Worker');
  });
  await open(page, '#/children');
  await page.getByLabel('Open a case file').setInputFiles(childFile);
  await expect(page.getByText('Case file opened.')).toBeVisible();
});
