import { expect, open, PAGES, test } from './support/page.ts';
import { sideways, textFaults } from './support/text.ts';

const ROOMS = [
  { name: 'phone', width: 390, height: 844, text: '100' },
  { name: 'tablet', width: 820, height: 1180, text: '100' },
  { name: 'table', width: 1280, height: 720, text: '100' },
  { name: 'wide', width: 1920, height: 1080, text: '100' },
  { name: 'hall', width: 1920, height: 1080, text: '200' },
];

for (const { name, width, height, text } of ROOMS)
  test(`every word can be read and no page scrolls sideways: ${name}`, async ({ page }) => {
    test.setTimeout(120_000);
    await page.addInitScript((size) => {
      localStorage.setItem('tidemark-settings', JSON.stringify({ text: size }));
    }, text);
    await page.setViewportSize({ width, height });
    for (const hash of PAGES) {
      await open(page, hash);
      expect(await sideways(page), hash).toBe(0);
      expect(await textFaults(page), hash).toEqual([]);
    }
  });

test('on a phone what asks for attention comes first, then the chart', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, '#/');
  const first = await page.getByText('What asks for attention').boundingBox();
  const then = await page.locator('#chart').boundingBox();
  expect(first!.y).toBeLessThan(then!.y);
});

test('every control is large enough for a thumb', async ({ browser }) => {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
  });
  const page = await context.newPage();
  for (const hash of PAGES) {
    await open(page, hash);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('button, select, summary, a.word, input:not([type=file])')]
        .filter((one) => one.checkVisibility() && !one.closest('.unseen'))
        .map((one) => (one.matches('input') ? (one.closest('label') ?? one) : one))
        .map((one) => one.getBoundingClientRect())
        .filter((rect) => rect.height < 24 || rect.width < 24)
        .map((rect) => `${Math.round(rect.width)} x ${Math.round(rect.height)}`),
    );
    expect(small, hash).toEqual([]);
  }
  await context.close();
});
