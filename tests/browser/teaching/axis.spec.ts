import type { Locator, Page } from '@playwright/test';
import { expect, open, test } from '../support/page.ts';
import { sideways, textFaults } from '../support/text.ts';

const part = (page: Page, id: string, which: 'whole' | 'begins' | 'ends'): Locator =>
  page.locator(`[data-band="${id}"][data-part="${which}"]`);

const valueOf = async (slider: Locator): Promise<number> =>
  Number(await slider.getAttribute('aria-valuenow'));

async function startle(page: Page): Promise<void> {
  await open(page, '#/axis');
  await page.getByLabel('Reflexes').selectOption({ label: 'Startle and vestibular' });
}

/** Drags from the middle of a grip by some pixels. */
async function drag(page: Page, grip: Locator, by: number): Promise<void> {
  const box = (await grip.locator('.grip').boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + by / 2, y, { steps: 3 });
  await page.mouse.move(x + by, y, { steps: 3 });
  await page.mouse.up();
}

test('by keyboard alone a band is placed, compared, and told in weeks', async ({ page }) => {
  await startle(page);
  await part(page, 'moro', 'whole').focus();
  const before = await valueOf(part(page, 'moro', 'whole'));
  await page.keyboard.press('ArrowRight');
  expect(await valueOf(part(page, 'moro', 'whole'))).toBe(before + 7);
  await page.keyboard.press('Shift+ArrowLeft');
  expect(await valueOf(part(page, 'moro', 'whole'))).toBe(before - 21);
  await page.keyboard.press('Tab');
  await expect(part(page, 'moro', 'begins')).toBeFocused();
  await page.keyboard.press('Home');
  expect(await valueOf(part(page, 'moro', 'begins'))).toBe(140);
  await page.keyboard.press('Tab');
  await page.keyboard.press('End');
  await expect(part(page, 'moro', 'ends')).toHaveAttribute('aria-valuetext', 'past the right edge');
  await page.getByRole('button', { name: 'Compare with the sources' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.total')).toContainText(/weeks off in all\. 2 bands have not/);
  const said = page.locator('section li', { hasText: 'Moro' });
  await expect(said).toContainText(/begins \d+ weeks too early, ends \d+ weeks too late/);
  await expect(page.locator('.truth .true')).toHaveCount(3);
  // what is compared stands still
  await page.keyboard.press('Shift+Tab');
  await expect(part(page, 'moro', 'whole')).toHaveAttribute('aria-disabled', 'true');
});

test('a mouse drags the whole band and either end', { tag: '@thorough' }, async ({ page }) => {
  await startle(page);
  const [begins, ends] = [part(page, 'moro', 'begins'), part(page, 'moro', 'ends')];
  const from = [await valueOf(begins), await valueOf(ends)] as const;
  await drag(page, ends, 120);
  expect(await valueOf(begins)).toBe(from[0]);
  const wide = await valueOf(ends);
  expect(wide).toBeGreaterThan(from[1] + 30);
  await drag(page, begins, -60);
  expect(await valueOf(begins)).toBeLessThan(from[0] - 15);
  expect(await valueOf(ends)).toBe(wide);
  const length = wide - (await valueOf(begins));
  await drag(page, part(page, 'moro', 'whole'), 90);
  expect(await valueOf(ends)).toBeGreaterThan(wide + 20);
  expect((await valueOf(ends)) - (await valueOf(begins))).toBe(length);
});

test('a finger drags a band on a phone, and every grip is large enough for it', async ({
  browser,
}) => {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
  });
  const page = await context.newPage();
  await startle(page);
  expect(await sideways(page)).toBe(0);
  expect(await textFaults(page)).toEqual([]);
  for (const grip of await page.locator('.grip').all()) {
    const box = (await grip.boundingBox())!;
    expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(43.9);
  }
  const ends = part(page, 'moro', 'ends');
  const before = await valueOf(ends);
  const box = (await ends.locator('.grip').boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const touch = await context.newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', at: number[]): Promise<unknown> =>
    touch.send('Input.dispatchTouchEvent', { type, touchPoints: at.map((to) => ({ x: to, y })) });
  await send('touchStart', [x]);
  for (const to of [20, 40, 60]) await send('touchMove', [x + to]);
  await send('touchEnd', []);
  await expect.poll(() => valueOf(ends)).toBeGreaterThan(before + 60);
  await context.close();
});

test('the sources’ own bands are no weeks off', { tag: '@thorough' }, async ({ page }) => {
  await startle(page);
  // the sources of the Moro response print its end between 1.5 and 9 months, its beginning from 25 weeks on
  await part(page, 'moro', 'begins').focus();
  for (let week = 0; week < 8; week++) await page.keyboard.press('ArrowLeft');
  await page.getByRole('button', { name: 'Compare with the sources' }).click();
  await expect(page.locator('.total')).toContainText('0.0 weeks off in all.');
  await page.getByRole('button', { name: 'Start again' }).click();
  await page.getByRole('button', { name: 'Compare with the sources' }).click();
  await expect(page.locator('.total')).toContainText('No band has been placed yet.');
});

test('another order holds the same reflexes', { tag: '@thorough' }, async ({ page }) => {
  await open(page, '#/axis');
  await page.getByLabel('Reflexes').selectOption('all');
  const ids = (): Promise<(string | null)[]> =>
    page
      .locator('[data-part="whole"]')
      .evaluateAll((all) => all.map((one) => one.getAttribute('data-band')));
  const first = await ids();
  await page.getByRole('button', { name: 'Another set' }).click();
  const second = await ids();
  expect(second).not.toEqual(first);
  expect(second.toSorted()).toEqual(first.toSorted());
});

/** What paper takes at the moment it is printed. */
interface Printed {
  truths: number;
  sliders: number;
  names: number;
  heightPx: number;
}

test('a blank sheet and its solution are printed, each when it is asked for', async ({ page }) => {
  await page.addInitScript(() => {
    window.print = () => {
      window.dispatchEvent(new Event('beforeprint'));
      const svg = document.querySelector('.lanes > svg')!;
      Object.assign(window, {
        printed: {
          truths: svg.querySelectorAll('.truth').length,
          sliders: svg.querySelectorAll('[role="slider"]').length,
          names: svg.querySelectorAll('text').length,
          heightPx: svg.getBoundingClientRect().height,
        },
      });
      window.dispatchEvent(new Event('afterprint'));
    };
  });
  await open(page, '#/axis');
  await page.getByLabel('Reflexes').selectOption('all');
  const lanes = await page.locator('[data-part="whole"]').count();
  const printed = async (name: string): Promise<Printed> => {
    await page.getByRole('button', { name }).click();
    return page.evaluate(() => (window as unknown as { printed: Printed }).printed);
  };
  const blank = await printed('Print a blank sheet');
  expect(blank).toMatchObject({ truths: 0, sliders: 0, names: lanes });
  expect(blank.heightPx).toBeLessThan(900); // one page of A4 with its head, 1017 px within the margins
  expect(await printed('Print the solution')).toMatchObject({
    truths: lanes,
    sliders: 0,
    names: lanes,
  });
  await expect(page.locator('[data-part="whole"]')).toHaveCount(lanes);
});

test(
  'on paper every word can be read, and no control is there',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/axis');
    await page.getByLabel('Reflexes').selectOption('all');
    await page.getByRole('button', { name: 'Compare with the sources' }).click();
    await page.setViewportSize({ width: 688, height: 1000 });
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    await expect(page.getByText('The solution: each band')).toBeVisible();
    await expect(page.getByRole('button')).toHaveCount(0);
    expect(await sideways(page)).toBe(0);
    expect(await textFaults(page)).toEqual([]);
  },
);
