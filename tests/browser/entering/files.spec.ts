import { readFile } from 'node:fs/promises';
import { asking, expect, more, open, test } from '../support/page.ts';

test('a case is saved to a file and opens from it as the same case', async ({ page }) => {
  await open(page, '#/children');
  await more(page, 'Kestrel');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save to a case file Kestrel' }).click();
  const download = await saving;
  expect(download.suggestedFilename()).toBe('kestrel.tidemark.json');
  const first = await readFile(await download.path(), 'utf8');

  await page.getByRole('button', { name: 'Remove Kestrel' }).click();
  await expect(page.getByText('No child is saved here.')).toBeVisible();
  await page.getByLabel('Open a case file').setInputFiles({
    name: 'kestrel.tidemark.json',
    mimeType: 'application/json',
    buffer: Buffer.from(first),
  });
  await expect(page.getByRole('heading', { name: 'Kestrel' })).toBeVisible();
  await expect(asking(page)).toHaveText(['Crossed extension', 'Asymmetrical tonic neck', 'Moro']);

  await open(page, '#/children');
  await more(page, 'Kestrel');
  const again = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save to a case file Kestrel' }).click();
  expect(await readFile(await (await again).path(), 'utf8')).toBe(first);
});

test('without a child the page says what can be done', async ({ page }) => {
  await open(page, '#/children');
  await more(page, 'Kestrel');
  await page.getByRole('button', { name: 'Remove Kestrel' }).click();
  await expect(async () => {
    await page.reload();
    await expect(page.getByText('No child is saved here.')).toBeVisible();
  }).toPass();
  await open(page, '#/');
  await expect(page.getByRole('heading', { name: 'No child is open.' })).toBeVisible();
  await page.locator('#main').getByRole('link', { name: 'New child' }).click();
  await expect(page.getByRole('heading', { name: 'New child' })).toBeVisible();
});
