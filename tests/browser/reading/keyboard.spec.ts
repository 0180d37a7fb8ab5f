import type { Page } from '@playwright/test';
import { asking, chart, expect, open, test } from '../support/page.ts';

/** Presses Tab until something with this name has the focus. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let presses = 0; presses < 120; presses++) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate(() => {
      const at = document.activeElement;
      const label = at instanceof HTMLInputElement ? at.labels?.[0]?.textContent : undefined;
      return (at?.getAttribute('aria-label') ?? label ?? at?.textContent ?? '').trim();
    });
    if (name.test(focused)) return;
  }
  throw new Error(`Tab never reached ${name.source}`);
}

test('a visit is entered and its verdict read with the keyboard alone', async ({ page }) => {
  await open(page, '#/');
  await tabTo(page, /^Visits$/);
  await page.keyboard.press('Enter');
  await tabTo(page, /^Add a visit$/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'New visit' })).toBeVisible();
  await tabTo(page, /^Reflex or reaction/);
  await page.keyboard.type('traction');
  await expect(page.getByRole('option', { name: 'Traction' })).toBeVisible();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('radio', { name: 'left: not tested' })).toBeFocused();
  for (let presses = 0; presses < 3; presses++) await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('radio', { name: 'left: elicited', exact: true })).toBeChecked();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('combobox', { name: 'Reflex or reaction' })).toBeFocused();
  await expect(page.getByText('Saved as the visit of 8 June 2026.')).toBeVisible();
  await tabTo(page, /^See the verdicts$/);
  await page.keyboard.press('Enter');
  await expect(asking(page)).toHaveText(['Traction']);
  await tabTo(page, /^Traction/);
  await page.keyboard.press('Enter');
  await expect(page.locator('#ground-traction')).toBeVisible();
});

test(
  'Ctrl+Z takes the last change back and Ctrl+Shift+Z makes it again',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/visits/3');
    await page.getByRole('button', { name: 'Remove Moro reflex' }).click();
    const row = page.getByRole('button', { name: 'Change Moro reflex' });
    await expect(row).toBeHidden();
    await page.keyboard.press('Control+z');
    await expect(row).toBeVisible();
    await expect(page.getByText('Undone: the visit is as before.')).toBeVisible();
    await page.keyboard.press('Control+Shift+z');
    await expect(row).toBeHidden();
  },
);

test('the age line moves by arrows and says its clocks', async ({ page }) => {
  await open(page, '#/');
  await chart(page).getByRole('slider').focus();
  await page.keyboard.press('ArrowRight');
  await expect(chart(page).getByText('12 May 2026')).toBeVisible();
});

test('the link past the navigation leads to the page', { tag: '@thorough' }, async ({ page }) => {
  await open(page, '#/about');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the page' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.locator('main')).toBeFocused();
});
