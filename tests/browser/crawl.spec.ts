/**
 * Every page, once at each size of window: no fault of accessibility, no sideways scroll, no word cut or
 * covered, no request but to the page's own server, and (by the fixture) no message in the console. The
 * thorough run takes further views of the same pages, and looks at access again in the dark and on a
 * phone. The size of a target is that of WCAG 2.2, 2.5.8 (24 px).
 */
import type { Page } from '@playwright/test';
import { accessibilityFaults, type AxeScope } from './support/accessibility.ts';
import { ALL, EVERYDAY, OTHERS, smallTargets, type Scene } from './support/pages.ts';
import { expect, open, test } from './support/page.ts';
import { whereabouts } from './support/places.ts';
import { sideways, textFaults } from './support/text.ts';

const HALL: AxeScope = { also: ['color-contrast-enhanced'] };

/** Goes to every scene and gathers what is wrong there, so that one run names all of it. */
async function crawl(
  page: Page,
  look: (scene: Scene) => Promise<readonly string[]>,
  scenes: readonly Scene[],
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
    // the first draws the page at its size, by which the chart and figures take theirs in the next
    await page.evaluate(
      () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
    );
    const over = await sideways(page);
    const faults = [
      ...(over > 0 ? [`scrolls ${over} px sideways`] : []),
      ...(await textFaults(page)),
    ];
    if (faults.length === 0 || frame === FRAMES) return faults;
  }
}

test.describe.configure({ mode: 'parallel' });

/** The windows that a page is looked at in without being opened anew. */
const WINDOWS = [
  { name: 'a table', width: 1280, height: 720 },
  { name: 'a tablet', width: 820, height: 1180 },
  { name: 'a wide screen', width: 1920, height: 1080 },
] as const;

/** Only an address that is none is nowhere, and what fills the window has no header. */
async function placeFaults(page: Page, { hash }: Scene): Promise<string[]> {
  if ((await page.getByRole('banner').count()) === 0 || hash === '#/nowhere') return [];
  return (await whereabouts(page)).length > 1 ? [] : ['does not say where it is'];
}

/** Access, where the page is, and the layout in each window. */
async function lookAround(page: Page, scene: Scene): Promise<string[]> {
  const faults = await accessibilityFaults(page, scene.isForHall ? HALL : {});
  faults.push(...(await placeFaults(page, scene)));
  for (const { name, ...size } of WINDOWS) {
    await page.setViewportSize(size);
    faults.push(...(await layoutFaults(page)).map((fault) => `on ${name}: ${fault}`));
  }
  await page.setViewportSize({ width: WINDOWS[0].width, height: WINDOWS[0].height });
  return faults;
}

/** The scenes are shared out, so that two windows look at half of them each. */
const half = (odd: number): readonly Scene[] => EVERYDAY.filter((_, index) => index % 2 === odd);

for (const { name, scenes, tag } of [
  { name: 'part 1', scenes: half(0), tag: [] },
  { name: 'part 2', scenes: half(1), tag: [] },
  { name: 'further views', scenes: OTHERS, tag: '@thorough' },
])
  test(
    `access, layout, and no request elsewhere: ${name}`,
    { tag },
    async ({ page, context, baseURL }) => {
      const foreign: string[] = [];
      let asked = 0;
      const note = (url: string): void => {
        asked++;
        if (!/^(?:blob|data):/.test(url) && !url.startsWith(baseURL!)) foreign.push(url);
      };
      context.on('request', (request) => note(request.url()));
      page.on('websocket', (socket) => note(socket.url()));
      await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
      await page.setViewportSize({ width: WINDOWS[0].width, height: WINDOWS[0].height });
      await crawl(page, (scene) => lookAround(page, scene), scenes);
      expect(foreign).toEqual([]);
      expect(asked).toBeGreaterThan(50);
    },
  );

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  for (const { name, scenes, tag } of [
    { name: 'of every page', scenes: EVERYDAY, tag: [] },
    { name: 'of further views', scenes: OTHERS, tag: '@thorough' },
  ])
    test(`layout, and targets large enough for a thumb, ${name}`, { tag }, async ({ page }) => {
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await crawl(
        page,
        async () => [
          ...(await layoutFaults(page)),
          ...(await smallTargets(page)).map((target) => `too small: ${target}`),
        ],
        scenes,
      );
    });
});

/** What a lecturer shows; the other pages are looked at in the thorough run. */
const isShown = ({ hash, isFurther }: Scene): boolean =>
  !isFurther &&
  /^#\/(?:$|chart|axis|order|quarrels|voices|compare\/moro|stage|quiz\/stage|reflexes\/moro)/.test(
    hash,
  );

for (const shown of [true, false])
  test(
    `in a hall, letters twice as large: the layout of ${shown ? 'what is shown' : 'all else'}`,
    { tag: shown ? [] : '@thorough' },
    async ({ page }) => {
      await page.addInitScript(() => {
        localStorage.setItem('tidemark-settings', JSON.stringify({ text: '200' }));
      });
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await page.setViewportSize({ width: 1920, height: 1080 });
      const scenes = ALL.filter((scene) => isShown(scene) === shown);
      expect(scenes.length).toBeGreaterThan(10);
      await crawl(page, () => layoutFaults(page), scenes);
    },
  );

const RECORDS = ['#/family', '#/keeping', '#/lock', '#/share', '#/incoming'];

test('pages about records keep within 320 px', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  const scenes = ALL.filter(({ hash, act }) => !act && RECORDS.includes(hash));
  expect(scenes).toHaveLength(RECORDS.length);
  await crawl(page, async () => ((await sideways(page)) > 0 ? ['too wide'] : []), scenes);
});

for (const [colorScheme, width] of [
  ['dark', 1280],
  ['light', 390],
  ['dark', 390],
] as const)
  test(
    `every rule of access, ${colorScheme}, ${width} wide`,
    { tag: '@thorough' },
    async ({ page }) => {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height: 844 });
      await crawl(
        page,
        async ({ isForHall }) => [
          ...(await accessibilityFaults(page, isForHall ? HALL : {})),
          ...(await layoutFaults(page)),
        ],
        ALL,
      );
    },
  );
