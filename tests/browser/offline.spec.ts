import { asking, expect, open, test, verdict } from './support/page.ts';

test('after the first visit the whole of it opens without a network', async ({ page, context }) => {
  await open(page, '#/');
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.reload();
  await page.evaluate(async () => {
    const { controller } = navigator.serviceWorker;
    if (!controller)
      await new Promise((resolve) => {
        navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true });
      });
  });
  await context.setOffline(true);
  await page.reload();
  await expect(asking(page)).toHaveText(['Crossed extension', 'Asymmetrical tonic neck', 'Moro']);
  await verdict(page, 'moro').click();
  await expect(page.locator('#ground-moro')).toContainText('Pitfalls');
  await open(page, '#/sources');
  await expect(page.getByText('The evolution of primitive reflexes').first()).toBeVisible();
});
