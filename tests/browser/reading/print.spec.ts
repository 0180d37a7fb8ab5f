import { expect, open, test, verdict } from '../support/page.ts';
import { sideways, textFaults } from '../support/text.ts';

/** The width of an A4 page within its margins of 14 mm, in CSS pixels. */
const PAGE_PX = Math.floor(((210 - 28) / 25.4) * 96);

test('on paper the chart, the verdicts and the caution stand, and no controls', async ({
  page,
}) => {
  await open(page, '#/');
  await page.setViewportSize({ width: PAGE_PX, height: 1000 });
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  await expect(page.getByRole('heading', { name: 'Kestrel' })).toBeVisible();
  await expect(page.getByText('visit 11 May 2026, Rowan')).toBeVisible();
  await expect(page.getByText('A reading of published ages, not a diagnosis.')).toBeVisible();
  await expect(verdict(page, 'plantar-grasp')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Milestones' })).toBeHidden();
  await expect(page.getByRole('link', { name: 'Settings' })).toBeHidden();
  expect(await sideways(page)).toBe(0);
  expect(await textFaults(page)).toEqual([]);
  const ground = await page.evaluate(
    () => getComputedStyle(document.documentElement).backgroundColor,
  );
  expect(ground).toBe('rgb(255, 255, 255)');
});

test('a PDF is made of it, with the chart as vectors and the words as text', async ({ page }) => {
  await open(page, '#/');
  const pdf = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
  expect(pdf.startsWith('%PDF')).toBe(true);
  expect(pdf).toContain('/Font');
  expect(pdf).not.toContain('/Subtype /Image');
});
