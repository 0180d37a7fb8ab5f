import { AxeBuilder } from '@axe-core/playwright';
import { expect, open, PAGES, test, verdict } from './support/page.ts';
import { sideways } from './support/text.ts';

for (const colorScheme of ['light', 'dark'] as const)
  for (const width of [1280, 390])
    test(`no page has an accessibility fault, ${colorScheme}, ${width} wide`, async ({ page }) => {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height: 844 });
      for (const hash of PAGES) {
        await open(page, hash);
        const { violations } = await new AxeBuilder({ page }).analyze();
        const said = violations.map(
          ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
        );
        expect(said, hash).toEqual([]);
      }
    });

/** Where records are kept, locked, handed over and told of. */
const OF_RECORDS = ['#/family', '#/keeping', '#/lock', '#/share', '#/incoming'] as const;

for (const colorScheme of ['light', 'dark'] as const)
  for (const width of [1280, 320])
    test(`no page about records has a fault or is too wide, ${colorScheme}, ${width} wide`, async ({
      page,
    }) => {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height: 844 });
      for (const hash of OF_RECORDS) {
        await open(page, hash);
        const { violations } = await new AxeBuilder({ page }).analyze();
        const said = violations.map(
          ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
        );
        expect(said, hash).toEqual([]);
        expect(await sideways(page), hash).toBe(0);
      }
    });

test('an opened verdict and an opened finding have no accessibility fault', async ({ page }) => {
  await open(page, '#/');
  await verdict(page, 'moro').click();
  await expect(page.locator('#ground-moro')).toContainText('Pitfalls');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await open(page, '#/visits/3');
  await page.getByRole('button', { name: 'Change Moro reflex' }).click();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});
