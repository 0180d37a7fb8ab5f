import { expect, open, test } from './support/page.ts';

test('a response given by mistake is taken back beside where it was given', async ({ page }) => {
  await open(page, '#/visits/3');
  await page.getByRole('button', { name: 'Change Galant reflex' }).click();
  await page.getByRole('button', { name: 'brisk on both sides' }).click();
  await expect(page.getByRole('radio', { name: 'left: brisk' })).toBeChecked();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('radio', { name: 'left: not elicited' })).toBeChecked();
  await expect(page.getByText('Undone: the visit is as before.')).toBeVisible();
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(page.getByRole('radio', { name: 'left: brisk' })).toBeChecked();
});

test('a removed visit comes back, with all that was in it', async ({ page }) => {
  await open(page, '#/visits/2');
  await page.getByRole('button', { name: 'Remove this visit' }).click();
  await expect(page.getByText('Visit removed.')).toBeVisible();
  await expect(page.getByRole('link', { name: '16 March 2026' })).toBeHidden();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('link', { name: '16 March 2026' }).click();
  await expect(page.getByRole('button', { name: 'Change Symmetrical tonic neck' })).toBeVisible();
});

test('Ctrl+Z in a field undoes the typing, not the record', async ({ page }) => {
  await open(page, '#/visits/3');
  await page.getByRole('button', { name: 'Remove Moro reflex' }).click();
  await page.getByLabel('Examiner').click();
  await page.keyboard.type(' and Linnet');
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: 'Change Moro reflex' })).toBeHidden();
});
