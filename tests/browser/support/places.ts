/** The way from place to place, as the header offers it. */
import type { Page } from '@playwright/test';

/** A link of the header: one of the four places above, of a child's places, or of the row below. */
export const placeLink = (page: Page, name: string) =>
  page.getByRole('banner').getByRole('link', { name, exact: true });

export const goTo = (page: Page, name: string): Promise<void> => placeLink(page, name).click();

/** What of the header says where one is, as it is read: from the place above down to the page. */
export const whereabouts = (page: Page): Promise<string[]> =>
  page.getByRole('banner').locator('[aria-current]').filter({ visible: true }).allTextContents();
