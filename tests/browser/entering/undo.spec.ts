import { expect, open, test } from '../support/page.ts';

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

test(
  'details typed and not saved are there after a look elsewhere and a reload, until given up',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/children/new');
    const label = page.getByLabel('Name or code');
    await label.fill('Dunlin');
    await open(page, '#/child');
    await expect(label).toHaveValue('Kestrel');
    await expect(page.getByRole('button', { name: 'Back to what is saved' })).toBeHidden();
    await label.fill('Kestrel the second');
    await open(page, '#/children/new');
    await expect(label).toHaveValue('Dunlin');
    await expect(
      page.getByText('Not saved yet: the form shows what was typed before.'),
    ).toBeVisible();
    await page.reload();
    await expect(label).toHaveValue('Dunlin');
    await page.getByRole('button', { name: 'Clear the form' }).click();
    await expect(label).toHaveValue('');
    await open(page, '#/child');
    await expect(label).toHaveValue('Kestrel the second');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(page.getByRole('heading', { name: 'Kestrel the second' })).toBeVisible();
    await open(page, '#/child');
    await expect(page.getByText('Not saved yet')).toBeHidden();
  },
);

test(
  'Ctrl+Z in a field undoes the typing, not the record',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/visits/3');
    await page.getByRole('button', { name: 'Remove Moro reflex' }).click();
    await page.getByLabel('Examiner').click();
    await page.keyboard.type(' and Linnet');
    await page.keyboard.press('Control+z');
    await expect(page.getByRole('button', { name: 'Change Moro reflex' })).toBeHidden();
  },
);
