/** What the tests of keeping share: what the page says of saving, and a change to be saved. */
import type { Page } from '@playwright/test';

export const standing = (page: Page) => page.locator('[data-standing]');
export const PLOVER = { label: 'Plover', born: '2026-04-01', gestation: '33w1d' };

export const noteOf = (page: Page) => page.getByLabel('Note', { exact: true }).first();

export async function setNote(page: Page, text: string): Promise<void> {
  await noteOf(page).fill(text);
  await noteOf(page).blur();
}
