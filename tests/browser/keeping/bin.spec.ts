/** Findings in the bin, in a real browser: taken out and brought back, in the way of another, only corrected. */
import { accessibilityFaults } from '../support/accessibility.ts';
import type { Page } from '@playwright/test';
import { standing } from '../support/keep.ts';
import { expect, open, test } from '../support/page.ts';

const NECK = 'Symmetrical tonic neck';
const NAME = `Kestrel: ${NECK} reflex, not elicited, visit of 16 March 2026, Rowan`;
const binned = (page: Page) => page.getByRole('button', { name: `Restore ${NAME}` });
const panel = (page: Page) => page.locator('[data-panel]');
const change = (page: Page) => page.getByRole('button', { name: `Change ${NECK}` });

/** Takes a finding out of the second visit, and leaves for another session. */
async function takenOut(page: Page): Promise<void> {
  await open(page, '#/visits/2');
  await change(page).click();
  await panel(page).getByRole('radio', { name: 'not tested' }).check();
  await expect(standing(page)).toHaveText('Saved');
  await page.reload();
}

test('a finding that was taken out lies in the bin and is put back, also in another session', async ({
  page,
}) => {
  await takenOut(page);
  await open(page, '#/keeping');
  await expect(page.getByText('finding, deleted permanently on 8 July 2026')).toBeVisible();
  await expect(binned(page)).toBeVisible();
  expect(await accessibilityFaults(page)).toEqual([]);
  await binned(page).click();
  await expect(page.getByText(`Restored: ${NAME}.`)).toBeVisible();
  await expect(page.getByText('The bin is empty.')).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(page.getByText('Undone: it is in the bin again.')).toBeVisible();
  await expect(binned(page)).toBeVisible();
  await page.keyboard.press('Control+y');
  await expect(page.getByText('The bin is empty.')).toBeVisible();
  await open(page, '#/visits/2');
  await change(page).click();
  await expect(panel(page).getByRole('radio', { name: 'not elicited' })).toBeChecked();
});

test(
  'what the visit says by now of the same side is not written over',
  { tag: '@thorough' },
  async ({ page }) => {
    await takenOut(page);
    await open(page, '#/visits/2');
    await page.getByLabel('Reflex or reaction').fill(NECK);
    await page.getByRole('option', { name: NECK }).first().click();
    await panel(page).getByRole('radio', { name: 'weak' }).check();
    await open(page, '#/keeping');
    await binned(page).click();
    await expect(
      page.getByRole('alert').filter({ hasText: 'the visit now has another finding' }),
    ).toBeVisible();
    await expect(binned(page)).toBeVisible();
    await open(page, '#/visits/2');
    await change(page).click();
    await expect(panel(page).getByRole('radio', { name: 'weak' })).toBeChecked();
    // once that is taken out, the other goes in; what was said just now would be a touch that was corrected
    await page.reload();
    await change(page).click();
    await panel(page).getByRole('radio', { name: 'not tested' }).check();
    await expect(standing(page)).toHaveText('Saved');
    await open(page, '#/keeping');
    await binned(page).click();
    await expect(binned(page)).toBeHidden();
    await expect(page.getByRole('button', { name: /^Restore .* reflex, weak,/ })).toBeVisible();
  },
);

test(
  'touches that are corrected while recording leave nothing in the bin',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/visits/new/record');
    const left = (response: string) =>
      page.getByRole('button', { name: `left: ${response}`, exact: true });
    const row = page.locator('[data-row="atnr"]');
    for (const response of ['brisk', 'weak']) {
      await left(response).click();
      await expect(row).toContainText(`left: ${response}`);
      await row.click();
    }
    await page.getByRole('button', { name: 'Clear', exact: true }).click();
    await expect(row).not.toContainText('weak');
    await expect(standing(page)).toHaveText('Saved');
    await open(page, '#/keeping');
    await expect(page.getByText('The bin is empty.')).toBeVisible();
  },
);
