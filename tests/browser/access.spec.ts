import { AxeBuilder } from '@axe-core/playwright';
import { expect, open, PAGES, test, verdict } from './support/page.ts';

for (const colorScheme of ['light', 'dark'] as const)
  for (const width of [1280, 390])
    test(`no page has an accessibility fault, ${colorScheme}, ${width} wide`, async ({ page }) => {
      test.setTimeout(120_000);
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

test('an opened verdict and an opened finding have no accessibility fault', async ({ page }) => {
  await open(page, '#/');
  await verdict(page, 'moro').click();
  await expect(page.locator('#ground-moro')).toContainText('Pitfalls');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await open(page, '#/visits/3');
  await page.getByRole('button', { name: 'Change Moro reflex' }).click();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});
