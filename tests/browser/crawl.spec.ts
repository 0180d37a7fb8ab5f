/**
 * Every page, once at each size of window: no fault of accessibility, no sideways scroll, no word cut or
 * covered, no request but to the page's own server, and (by the fixture) no message in the console.
 * Colour is looked at again in the dark. The size of a target is that of WCAG 2.2, 2.5.8 (24 px).
 */
import type { Page } from '@playwright/test';
import { accessibilityFaults, CONTRAST, type AxeScope } from './support/accessibility.ts';
import { ALL, smallTargets, type Scene } from './support/pages.ts';
import { expect, open, test } from './support/page.ts';
import { sideways, textFaults } from './support/text.ts';

const HALL: AxeScope = { also: ['color-contrast-enhanced'] };

/** Goes to every scene and gathers what is wrong there, so that one run names all of it. */
async function crawl(
  page: Page,
  look: (scene: Scene) => Promise<readonly string[]>,
  scenes: readonly Scene[] = ALL,
): Promise<void> {
  const faults: string[] = [];
  for (const scene of scenes) {
    await open(page, scene.hash);
    await scene.act?.(page);
    for (const fault of await look(scene)) faults.push(`${scene.name}: ${fault}`);
  }
  expect(faults).toEqual([]);
}

/** Frames that a page may take until a chart or a figure has its room. */
const FRAMES = 60;

/** Text and boxes: what does not fit once the page has settled. */
async function layoutFaults(page: Page): Promise<string[]> {
  for (let frame = 0; ; frame++) {
    await page.evaluate(() => new Promise(requestAnimationFrame));
    const over = await sideways(page);
    const faults = [
      ...(over > 0 ? [`scrolls ${over} px sideways`] : []),
      ...(await textFaults(page)),
    ];
    if (faults.length === 0 || frame === FRAMES) return faults;
  }
}

test.describe.configure({ mode: 'parallel' });

test('at a table: access, layout, and no request elsewhere', async ({ page, context, baseURL }) => {
  const foreign: string[] = [];
  let asked = 0;
  const note = (url: string): void => {
    asked++;
    if (!/^(?:blob|data):/.test(url) && !url.startsWith(baseURL!)) foreign.push(url);
  };
  context.on('request', (request) => note(request.url()));
  page.on('websocket', (socket) => note(socket.url()));
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  await page.setViewportSize({ width: 1280, height: 720 });
  await crawl(page, async ({ isForHall }) => [
    ...(await accessibilityFaults(page, isForHall ? HALL : {})),
    ...(await layoutFaults(page)),
  ]);
  expect(foreign).toEqual([]);
  expect(asked).toBeGreaterThan(50);
});

test('in the dark: contrast', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
  await page.setViewportSize({ width: 1280, height: 720 });
  await crawl(page, ({ isForHall }) =>
    accessibilityFaults(page, isForHall ? { only: [...CONTRAST.only, ...HALL.also!] } : CONTRAST),
  );
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test('layout, and targets large enough for a thumb', async ({ page }) => {
    await crawl(page, async () => [
      ...(await layoutFaults(page)),
      ...(await smallTargets(page)).map((target) => `too small: ${target}`),
    ]);
  });
});

for (const { name, width, height, text } of [
  { name: 'on a tablet', width: 820, height: 1180, text: '100' },
  { name: 'on a wide screen', width: 1920, height: 1080, text: '100' },
  { name: 'in a hall', width: 1920, height: 1080, text: '200' },
])
  test(`${name}: layout`, async ({ page }) => {
    await page.addInitScript((size) => {
      localStorage.setItem('tidemark-settings', JSON.stringify({ text: size }));
    }, text);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.setViewportSize({ width, height });
    await crawl(page, () => layoutFaults(page));
  });

const RECORDS = ['#/family', '#/keeping', '#/lock', '#/share', '#/incoming'];

test('pages about records keep within 320 px', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  const scenes = ALL.filter(({ hash, act }) => !act && RECORDS.includes(hash));
  expect(scenes).toHaveLength(RECORDS.length);
  await crawl(page, async () => ((await sideways(page)) > 0 ? ['too wide'] : []), scenes);
});

for (const colorScheme of ['light', 'dark'] as const)
  for (const width of [1280, 390])
    test(
      `every rule of access, ${colorScheme}, ${width} wide`,
      { tag: '@thorough' },
      async ({ page }) => {
        await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
        await page.setViewportSize({ width, height: 844 });
        await crawl(page, async ({ isForHall }) => [
          ...(await accessibilityFaults(page, isForHall ? HALL : {})),
          ...(await layoutFaults(page)),
        ]);
      },
    );
