import { readFile } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import type { Download, Locator, Page } from '@playwright/test';
import { expect, open, test } from '../support/page.ts';
import { difference, pixelsOf } from '../support/pixels.ts';

/**
 * Three pixels in two thousand may differ. A file is drawn with its places rounded to a hundredth of a
 * pixel and its transforms worked in, so that an edge may fall to the other side of a pixel here and
 * there (one in a thousand on the smallest, one in ten thousand elsewhere). One foreign letter in each row
 * of a chart already changes ten in a thousand.
 */
const TOLERANCE = 0.0015;

const panel = (page: Page): Locator => page.locator('.take-away');

async function openPanel(page: Page, name: RegExp): Promise<void> {
  await page.getByRole('button', { name }).click();
  await panel(page).locator('img').waitFor();
}

async function save(page: Page): Promise<Download> {
  const saving = page.waitForEvent('download');
  await panel(page).getByRole('button', { name: 'Save', exact: true }).click();
  return saving;
}

const pathOf = (download: Download): Promise<string> =>
  download.path().then(async (path) => {
    const named = `${path}-${download.suggestedFilename()}`;
    await download.saveAs(named);
    return named;
  });

/** The part of the page as it stands there, moved to whole pixels so that it is smoothed alike. */
async function asSeen(page: Page, part: Locator): Promise<Buffer> {
  await page.mouse.move(1, 1);
  const box = await part.evaluate((element: HTMLElement) => {
    const at = element.getBoundingClientRect();
    element.style.position = 'relative';
    element.style.left = `${Math.ceil(at.left) - at.left}px`;
    element.style.top = `${Math.ceil(at.top) - at.top}px`;
    const { x, y, width, height } = element.getBoundingClientRect();
    return { x, y, width, height };
  });
  return page.screenshot({ clip: box, animations: 'disabled' });
}

/** The saved file by itself, in a page that has nothing else. */
async function alone(page: Page, path: string): Promise<Buffer> {
  const other = await page.context().newPage();
  await other.setViewportSize({ width: 1400, height: 2400 });
  await other.goto(pathToFileURL(path).href);
  const size = await other.evaluate(() => {
    const root = document.documentElement as unknown as SVGSVGElement;
    return { width: root.width.baseVal.value, height: root.height.baseVal.value };
  });
  const seen = await other.screenshot({ clip: { x: 0, y: 0, ...size } });
  await other.close();
  return seen;
}

/** Everything a file by itself must not have. */
function expectSelfContained(svg: string): void {
  expect(svg).not.toContain('var(');
  expect(svg).not.toMatch(/\s(class|data-[\w-]+|aria-[\w-]+|role|tabindex|href|xlink:href)=/);
  expect(svg).not.toMatch(/url\((?!#|data:)/);
  expect(svg.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:/);
  expect(svg).not.toMatch(/vector-effect|paint-order|color-mix/);
}

const PARTS = [
  { what: "a child's chart", hash: '#/', name: /^Export figure: Kestrel/, part: '#drawn-chart' },
  { what: 'the plain chart', hash: '#/chart', name: /^Export figure/, part: '#drawn-chart' },
  {
    what: 'a figure',
    hash: '#/reflexes/moro',
    name: /^Export figure: Moro reflex$/,
    part: '.figure > .no-print:has(> .player)',
  },
  {
    what: "a reflex's sources",
    hash: '#/reflexes/moro',
    name: /^Export figure: Moro reflex: when/,
    part: 'section[aria-labelledby="when"] > div:has([data-block])',
  },
] as const;

for (const { what, hash, name, part } of PARTS)
  test(
    `${what}, saved, is by itself what it was on the page`,
    { tag: hash === '#/' ? [] : '@thorough' },
    async ({ page }) => {
      // so high that nothing is scrolled and no axis lies over the lanes
      await page.setViewportSize({ width: 1280, height: 2400 });
      await open(page, hash);
      await openPanel(page, name);
      await panel(page).getByLabel('With title, legend and sources').uncheck();
      const path = await pathOf(await save(page));
      expectSelfContained(await readFile(path, 'utf8'));
      await panel(page).getByRole('button', { name: 'Close' }).click();
      await expect(panel(page)).toBeHidden();
      const file = await alone(page, path);
      const seen = await asSeen(page, page.locator(part));
      expect(difference(seen, file)).toBeLessThan(TOLERANCE);
      // and there is something on it: against bare paper far more differs
      await page.locator(part).evaluate((element: HTMLElement) => {
        element.style.opacity = '0';
      });
      expect(difference(await asSeen(page, page.locator(part)), file)).toBeGreaterThan(
        10 * TOLERANCE,
      );
    },
  );

test('the child’s chart has its title, its legend and its sources with it', async ({ page }) => {
  await open(page, '#/');
  await openPanel(page, /^Export figure: Kestrel/);
  const download = await save(page);
  expect(download.suggestedFilename()).toMatch(/^kestrel.*\.svg$/);
  await expect(panel(page).getByText(/^Saved as kestrel/)).toBeVisible();
  const svg = await readFile(await pathOf(download), 'utf8');
  expectSelfContained(svg);
  for (const said of [
    'Kestrel (fictional)',
    'not elicited',
    'After: ',
    'Drawn with Tidemark, a reading',
    'font/woff2;base64,',
  ])
    expect(svg).toContain(said);
});

test(
  'a PNG is as large as asked for, has its letters, and can be transparent',
  { tag: '@thorough' },
  async ({ page }) => {
    await page.setViewportSize({ width: 1280, height: 1000 });
    await open(page, '#/');
    await openPanel(page, /^Export figure: Kestrel/);
    await panel(page).getByLabel('With title, legend and sources').uncheck();
    const vector = await alone(page, await pathOf(await save(page)));
    await panel(page).getByLabel('PNG').check();
    const png = async (size: string): Promise<Buffer> => {
      await panel(page).getByLabel(size, { exact: true }).check();
      return readFile(await pathOf(await save(page)));
    };
    const one = await png('1×');
    const four = await png('4×');
    const { width, height } = pixelsOf(vector);
    expect(pixelsOf(one)).toMatchObject({ width, height, corner: 255 });
    expect(pixelsOf(four)).toMatchObject({ width: 4 * width, height: 4 * height });
    expect(difference(one, vector)).toBeLessThan(TOLERANCE);
    await panel(page).getByLabel('transparent').check();
    await panel(page).locator('.clear img').waitFor();
    expect(pixelsOf(await png('1×')).corner).toBe(0);
  },
);

test(
  'it is put on the clipboard, as a picture and as text',
  { tag: '@thorough' },
  async ({ page, context }) => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await open(page, '#/reflexes/moro');
    await openPanel(page, /^Export figure: Moro reflex$/);
    const copy = panel(page).getByRole('button', { name: 'Copy', exact: true });
    const held = (): Promise<Record<string, number>> =>
      page.evaluate(async () => {
        const [item] = await navigator.clipboard.read();
        const sizes = (item?.types ?? []).map(async (type): Promise<[string, number]> => {
          const blob = await item!.getType(type);
          return [type, type === 'image/png' ? (await createImageBitmap(blob)).width : blob.size];
        });
        return Object.fromEntries(await Promise.all(sizes));
      });
    await copy.click();
    await expect(panel(page).getByText('Copied.')).toBeVisible();
    const sizes = await held();
    expect(sizes['text/plain']).toBeGreaterThan(80_000); // with its letters
    expect(sizes['image/svg+xml']).toBeGreaterThan(5_000);
    await panel(page).getByLabel('PNG').check();
    await panel(page).getByLabel('3×').check();
    await copy.click();
    await expect(panel(page).getByText('Copied.')).toBeVisible();
    const size = await panel(page).locator('.size').textContent();
    expect((await held())['image/png']).toBe(Number(/^\d+/.exec(size!.trim())![0]));
  },
);

for (const colorScheme of ['light', 'dark'] as const)
  test(
    `on a phone it is reached by keys and left to where it was called, ${colorScheme}`,
    { tag: '@thorough' },
    async ({ page }) => {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width: 390, height: 844 });
      await open(page, '#/chart');
      await page.getByRole('button', { name: 'Chart options' }).click();
      await page.getByRole('button', { name: /^Export figure/ }).focus();
      await page.keyboard.press('Enter');
      await panel(page).locator('img').waitFor();
      await expect(
        panel(page).getByLabel(`for a ${colorScheme} background`, { exact: true }),
      ).toBeChecked();
      await page.keyboard.press('Escape');
      await expect(page.getByRole('button', { name: /^Export figure/ })).toBeFocused();
    },
  );

test(
  'a question is taken with its choices, and its answer with the chart',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/quiz?seed=5&count=6&difficulty=medium&kinds=phase.verdict');
    const asked = (await page.locator('h1').textContent())!;
    const choices = await page.locator('main ol button .words').allTextContents();
    await openPanel(page, /^Export figure/);
    const question = await readFile(await pathOf(await save(page)), 'utf8');
    expectSelfContained(question);
    for (const words of [asked, ...choices])
      for (const word of words.split(/\s+/)) expect(question).toContain(word);
    expect(question).toMatch(/After: [^<]+/);
    await panel(page).getByRole('button', { name: 'Close' }).click();
    await page.keyboard.press('1');
    await page.locator('.why [data-block], .why svg').first().waitFor();
    await openPanel(page, /^Export figure: .+\?$/);
    const answer = await readFile(await pathOf(await save(page)), 'utf8');
    expectSelfContained(answer);
    expect(answer).toMatch(/After: [^<]+/);
    expect(answer.match(/<path/g)!.length).toBeGreaterThan(3);
  },
);
