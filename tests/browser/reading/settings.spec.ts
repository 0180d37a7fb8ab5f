import { asking, chart, expect, open, test } from '../support/page.ts';

test('the sources chosen are in force everywhere, said, and kept', async ({ page }) => {
  await open(page, '#/settings');
  await page.getByRole('radio', { name: 'One source' }).check();
  await page.getByLabel('Which source').selectOption({ label: 'Shapiro et al. 1981' });
  await open(page, '#/');
  await expect(page.getByText('Judged by: Shapiro et al. 1981.')).toBeVisible();
  await expect(asking(page).first()).toHaveText('Asymmetrical tonic neck');
  await expect(page.getByText('12 not judged').first()).toBeVisible();
  await page.reload();
  await expect(page.getByText('Judged by: Shapiro et al. 1981.')).toBeVisible();
  await open(page, '#/settings');
  await page.getByRole('button', { name: 'Reset to default' }).click();
  await open(page, '#/');
  await expect(asking(page)).toHaveText(['Crossed extension', 'Asymmetrical tonic neck', 'Moro']);
});

test('a limit of correction changes the age that counts, and says so', async ({ page }) => {
  await open(page, '#/settings');
  await page.getByLabel('Up to a chronological age of, months').fill('3');
  await page.getByLabel('Up to a chronological age of, months').press('Tab');
  await page.getByLabel('Born before').fill('99w9d');
  await page.getByLabel('Born before').press('Tab');
  await expect(page.getByText(/Write weeks and days between 22w0d and 44w6d/)).toBeVisible();
  await open(page, '#/');
  await expect(page.getByText('7 mo 1 wk chronological').first()).toBeVisible();
  await expect(page.getByText(/up to a chronological age of 3 months/)).toBeVisible();
});

test('theme and text size are taken at once and kept', { tag: '@thorough' }, async ({ page }) => {
  await open(page, '#/settings');
  await page.getByRole('radio', { name: 'dark' }).check();
  await page.getByRole('radio', { name: '200 %' }).check();
  await page.reload();
  await expect(page.locator('html')).toHaveCSS('background-color', 'rgb(20, 25, 28)');
  await expect(page.locator('html')).toHaveCSS('font-size', '32px');
});

test('the chart without a child has lanes, an order, milestones and a table', async ({ page }) => {
  await open(page, '#/chart');
  await expect(
    page.getByRole('heading', { name: 'When each reflex appears and integrates' }),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Milestones' }).click();
  await expect(page.getByText('Sits alone')).toBeVisible();
  await page.getByRole('button', { name: 'group', exact: true }).click();
  await page.getByRole('button', { name: 'Table' }).click();
  await expect(page.getByRole('columnheader', { name: 'Appears' })).toBeVisible();
  await expect(page.getByRole('rowheader', { name: 'Moro' })).toBeVisible();
});

test(
  'lanes can be only those that ask, those looked at, or all',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/');
    const name = (reflex: string) => chart(page).getByText(reflex, { exact: true });
    await expect(name('Plantar grasp')).toBeVisible();
    await page.getByRole('button', { name: 'flagged', exact: true }).click();
    await expect(name('Plantar grasp')).toBeHidden();
    await expect(name('Moro')).toBeVisible();
    await page.getByRole('button', { name: 'all', exact: true }).click();
    await expect(name('Babkin')).toBeVisible();
  },
);

test(
  'an address that leads nowhere is answered in words',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/nowhere/at-all');
    await expect(page.getByRole('heading', { name: 'There is no such page.' })).toBeVisible();
    await page.getByRole('link', { name: 'Back to the chart' }).click();
    await expect(page.getByRole('heading', { name: 'Kestrel' })).toBeVisible();
  },
);

test(
  'settings are undone and redone, by keys and by hand',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/settings');
    const root = page.locator('html');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
    await page.getByRole('radio', { name: 'dark' }).check();
    await page.getByLabel('Up to a chronological age of, months').fill('3');
    await page.getByLabel('Up to a chronological age of, months').press('Tab');
    await page.getByRole('button', { name: 'Reset to default' }).click();
    await expect(page.getByLabel('Up to a chronological age of, months')).toHaveValue('24');
    await page.keyboard.press('Control+z');
    await expect(page.getByLabel('Up to a chronological age of, months')).toHaveValue('3');
    await page.keyboard.press('Control+z');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(root).toHaveAttribute('data-theme', 'system');
    await expect(page.getByRole('radio', { name: 'match the system' })).toBeChecked();
    await page.getByRole('button', { name: 'Redo' }).click();
    await expect(root).toHaveAttribute('data-theme', 'dark');
    await page.reload();
    await expect(root).toHaveAttribute('data-theme', 'dark');
  },
);
