import { expect, open, test } from './support/page.ts';

test('a sentence in other words is kept, marked, taken back and undone', async ({ page }) => {
  await open(page, '#/family?visit=3');
  const pace = page.locator('[data-key="help.pace"]');
  await pace.fill('Ring Rowan on Mondays.');
  await pace.press('Enter');
  await expect(page.getByText('* Written by your clinic')).toBeVisible();
  await page.reload();
  await expect(pace).toHaveText('Ring Rowan on Mondays.');
  await page.getByRole('button', { name: /^Back to ours/ }).click();
  await expect(pace).toContainText('You know your baby best');
  await expect(page.getByText('* Written by your clinic')).toBeHidden();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(pace).toHaveText('Ring Rowan on Mondays.');
});

test('what asks to be discussed and is left off is to be talked about', async ({ page }) => {
  await open(page, '#/family?visit=3');
  await page.getByRole('checkbox', { name: /^Crossed extension/ }).uncheck();
  await expect(page.getByText('Asks to be discussed, and is left off')).toBeVisible();
  await expect(page.locator('[data-section="talk"]')).toContainText('the other leg going straight');
});
