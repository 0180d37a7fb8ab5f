import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { Encrypter } from 'age-encryption';
import { readAge } from '../../support/age.ts';
import { asking, expect, listed, more, open, test } from '../support/page.ts';

const PASSPHRASE = 'three dunlins on the mud';

async function save(page: Page): Promise<{ name: string; bytes: Buffer }> {
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the file' }).click();
  const download = await saving;
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

const openFile = (page: Page, name: string, bytes: Buffer): Promise<void> =>
  page
    .getByLabel('Open a case file')
    .setInputFiles({ name, mimeType: 'application/octet-stream', buffer: bytes });

test('without identity, what is shown is what goes out, and the verdicts stay', async ({
  page,
}) => {
  await open(page, '#/');
  const before = await asking(page).allTextContents();
  expect(before.length).toBeGreaterThan(0);
  await open(page, '#/share');
  await expect(page.getByRole('radio', { name: /Without identity/ })).toBeChecked();
  const shown = await page.locator('pre').textContent();
  const { name, bytes } = await save(page);
  expect(name).toBe('a-child.tidemark.json');
  expect(bytes.toString('utf8')).toBe(shown);
  for (const word of ['Kestrel', 'Rowan', '2026-']) expect(shown).not.toContain(word);
  await open(page, '#/children');
  await openFile(page, name, bytes);
  await expect(page.getByRole('heading', { name: 'A child (dates moved)' })).toBeVisible();
  await expect(asking(page)).toHaveText(before);
});

/** Has the whole record encrypted, as the page does it. */
async function encrypted(page: Page): Promise<{ shown: string; name: string; bytes: Buffer }> {
  await open(page, '#/share');
  await page.getByRole('radio', { name: /The whole record/ }).check();
  await page.getByLabel(/Encrypt the file/).check();
  await expect(page.getByRole('button', { name: 'Save the file' })).toBeDisabled();
  await page.getByLabel('Passphrase of the file').fill(PASSPHRASE);
  await page.getByLabel('Repeat the passphrase').fill(PASSPHRASE);
  const shown = (await page.locator('pre').textContent()) ?? '';
  return { shown, ...(await save(page)) };
}

async function decrypt(page: Page, passphrase: string): Promise<void> {
  await expect(page.getByRole('heading', { name: 'This file is encrypted' })).toBeVisible();
  await page.getByLabel('Passphrase of the file').fill(passphrase);
  await page.getByRole('button', { name: 'Open the file' }).click();
}

test('encrypted, it opens elsewhere with its passphrase', async ({ page }) => {
  const { shown, name, bytes } = await encrypted(page);
  expect(name).toBe('kestrel.tidemark.json.age');
  expect(bytes.includes('Kestrel')).toBe(false);
  expect(readAge(bytes, PASSPHRASE)).toBe(shown);
});

test('a file encrypted elsewhere is opened, with a sentence on a wrong passphrase', async ({
  page,
}) => {
  await open(page, '#/share');
  await page.getByRole('radio', { name: /The whole record/ }).check();
  const record = JSON.parse((await page.locator('pre').textContent()) ?? '') as {
    child: { label: string };
  };
  record.child.label = 'Redwing';
  // a strength that costs next to nothing: each passphrase that is tried would take seconds
  const encrypter = new Encrypter();
  encrypter.setPassphrase(PASSPHRASE);
  encrypter.setScryptWorkFactor(4);
  const bytes = Buffer.from(await encrypter.encrypt(JSON.stringify(record)));

  await open(page, '#/children');
  await openFile(page, 'redwing.age', bytes);
  await decrypt(page, 'another one');
  await expect(page.getByText('This is not the passphrase of the file.')).toBeVisible();
  await page.getByRole('button', { name: 'Cancel' }).click();
  await expect(listed(page)).toHaveText(['Kestrel']);
  await openFile(page, 'redwing.age', bytes);
  await decrypt(page, PASSPHRASE);
  await expect(page.getByRole('heading', { name: 'Redwing' })).toBeVisible();
});

test(
  'what was encrypted here opens here, and is known again',
  { tag: '@thorough' },
  async ({ page }) => {
    const { name, bytes } = await encrypted(page);
    await open(page, '#/children');
    await more(page, 'Kestrel');
    await page.getByRole('button', { name: 'Remove Kestrel' }).click();
    await openFile(page, name, bytes);
    await decrypt(page, PASSPHRASE);
    await expect(page.getByRole('heading', { name: 'Kestrel' })).toBeVisible();
    await open(page, '#/children');
    await openFile(page, name, bytes);
    await decrypt(page, PASSPHRASE);
    await expect(page.getByText('Kestrel is already here, exactly as in this file.')).toBeVisible();
    await expect(listed(page)).toHaveText(['Kestrel']);
  },
);

test(
  'a damaged encrypted file is a sentence, and nothing has changed',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/children');
    await openFile(
      page,
      'x.age',
      Buffer.from('age-encryption.org/v1\n-> scrypt a 17\nb\n--- c\nd'),
    );
    await page.getByLabel('Passphrase of the file').fill(PASSPHRASE);
    await page.getByRole('button', { name: 'Open the file' }).click();
    await expect(page.getByText(/the file is damaged/)).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(listed(page)).toHaveText(['Kestrel']);
  },
);

test(
  'a backup can be encrypted, and comes back with its passphrase',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/keeping');
    await page.getByLabel(/Encrypt the backup/).check();
    await page.getByLabel('Passphrase of the file').fill(PASSPHRASE);
    await page.getByLabel('Repeat the passphrase').fill(PASSPHRASE);
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save a backup' }).click();
    const download = await saving;
    expect(download.suggestedFilename()).toMatch(/\.age$/);
    const bytes = await readFile(await download.path());
    expect(bytes.includes('Kestrel')).toBe(false);
    expect(readAge(bytes, PASSPHRASE)).toContain('Kestrel');
    await page.locator('input[type=file]').first().setInputFiles({
      name: 'backup.age',
      mimeType: 'application/octet-stream',
      buffer: bytes,
    });
    const ask = page.getByRole('dialog');
    await ask.getByLabel('Passphrase of the file').fill(PASSPHRASE);
    await ask.getByRole('button', { name: 'Open the file' }).click();
    await expect(ask).toHaveCount(0);
    await expect(page.getByText('0 new, 0 changed, 1 the same.')).toBeVisible();
  },
);
