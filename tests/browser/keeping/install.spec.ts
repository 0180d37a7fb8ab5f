/** Whether the browser would install it: by Chromium's own report on the page. */
import { expect, open, test } from '../support/page.ts';

test.use({ serviceWorkers: 'allow' });

interface Icon {
  src: string;
  sizes: string;
  type: string;
  purpose: string;
}

test('the browser has nothing against installing it', async ({ page, context, request }) => {
  await open(page, '#/');
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  const browser = await context.newCDPSession(page);
  const { installabilityErrors } = await browser.send('Page.getInstallabilityErrors');
  const found = installabilityErrors.map(({ errorId }) => errorId);
  // every page of a test is a private window, which is the one thing that may be said
  expect(found.filter((id) => id !== 'in-incognito')).toEqual([]);

  const { errors, data } = await browser.send('Page.getAppManifest');
  expect(errors).toEqual([]);
  const manifest = JSON.parse(data ?? '{}') as { icons: Icon[]; id: string; start_url: string };
  expect(manifest.start_url).toBe('./');
  const purposes = manifest.icons.map(({ purpose }) => purpose);
  expect(purposes).toContain('any');
  expect(purposes).toContain('maskable');
  for (const { src, sizes, type } of manifest.icons) {
    const answer = await request.get(src);
    expect(answer.ok(), src).toBe(true);
    if (type !== 'image/png') continue;
    const size = await page.evaluate(async (address) => {
      const image = new Image();
      image.src = address;
      await image.decode();
      return `${image.naturalWidth}x${image.naturalHeight}`;
    }, src);
    expect(size, src).toBe(sizes);
  }
});

test('what a mask may cut off holds nothing of the sign', async ({ page }) => {
  await open(page, '#/about');
  // the safe zone is a circle of two fifths of the width (W3C, Web Application Manifest, icon masks)
  const outside = await page.evaluate(async () => {
    const image = new Image();
    image.src = './icon-maskable-512.png';
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = canvas.height = 512;
    const pen = canvas.getContext('2d', { willReadFrequently: true })!;
    pen.drawImage(image, 0, 0);
    const { data } = pen.getImageData(0, 0, 512, 512);
    let dark = 0;
    for (let y = 0; y < 512; y++)
      for (let x = 0; x < 512; x++) {
        const light = data[(y * 512 + x) * 4]!;
        if (Math.hypot(x - 255.5, y - 255.5) > 0.4 * 512 && light < 200) dark++;
      }
    return dark;
  });
  expect(outside).toBe(0);
});
