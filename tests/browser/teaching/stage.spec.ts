/** A talk on the wall: a presenter's keys, the speaker's window in step, letters read from the back. */
import { accessibilityFaults } from '../support/accessibility.ts';
import type { Page } from '@playwright/test';
import { expect, open, openAnew, test } from '../support/page.ts';
import { textFaults } from '../support/text.ts';

const TALKS = [
  'first-year',
  'before-term',
  'look-alikes',
  'arms-legs',
  'protective',
  'tables',
  'reading-a-child',
] as const;

const place = (page: Page) => page.locator('footer .place > span').last();
const caption = (page: Page) => page.locator('.hall h1');
const still = (page: Page) => page.locator('[data-moving="false"]');

interface Letter {
  words: string;
  /** The height of a capital, px. */
  capitalPx: number;
  /** Against what it stands on, the lower of paper and the ground before term. */
  contrast: number;
}

/** Every text as it is drawn: the height of its capitals by the browser's own measure, and its contrast (WCAG 2.2). */
const letters = (page: Page): Promise<Letter[]> =>
  page.evaluate(() => {
    const pen = document.createElement('canvas').getContext('2d', { willReadFrequently: true })!;
    const rgba = (colour: string): number[] => {
      pen.clearRect(0, 0, 1, 1);
      pen.fillStyle = colour;
      pen.fillRect(0, 0, 1, 1);
      return [...pen.getImageData(0, 0, 1, 1).data];
    };
    const light = (colour: readonly number[]): number => {
      const [r, g, b] = colour.slice(0, 3).map((c) => {
        const share = c / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      }) as [number, number, number];
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const against = (a: readonly number[], b: readonly number[]): number => {
      const [low, high] = [light(a), light(b)].sort((x, y) => x - y) as [number, number];
      return (high + 0.05) / (low + 0.05);
    };
    const hall = document.querySelector('.hall')!;
    const root = getComputedStyle(hall);
    const grounds = ['--paper', '--womb'].map((name) => rgba(root.getPropertyValue(name)));
    const found: Letter[] = [];
    const walker = document.createTreeWalker(hall, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const words = node.textContent?.trim() ?? '';
      const element = node.parentElement;
      if (!words || !element || element.closest('.unseen, title, desc, style')) continue;
      const style = getComputedStyle(element);
      pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
      const isDrawn = element instanceof SVGElement;
      const colour = rgba(isDrawn ? style.fill : style.color);
      // the age is written on a label of its own, whose colour is then its ground
      const label = isDrawn && element.closest('[role="slider"]')?.querySelector(':scope > rect');
      const behind = label ? [rgba(getComputedStyle(label).fill)] : grounds;
      let seen = (colour[3] ?? 255) / 255;
      for (let at: Element | null = element; at; at = at.parentElement)
        seen *= Number(getComputedStyle(at).opacity);
      const onGround = (ground: readonly number[]): number =>
        against(
          colour.map((c, i) => c * seen + ground[i]! * (1 - seen)),
          ground,
        );
      found.push({
        words,
        capitalPx: pen.measureText('H').actualBoundingBoxAscent,
        contrast: Math.min(...behind.map(onGround)),
      });
    }
    return found;
  });

test('the keys of a presenter’s remote go through a talk', async ({ page }) => {
  await open(page, '#/stage/first-year?step=1');
  await expect(page.getByRole('navigation')).toHaveCount(0);
  await expect(caption(page)).toHaveText('Every response has its time on one age axis');
  await page.keyboard.press('PageDown');
  await expect(place(page)).toHaveText('2 of 9');
  await page.keyboard.press('End');
  await expect(place(page)).toHaveText('9 of 9');
  await page.keyboard.press('PageDown');
  await expect(place(page)).toHaveText('9 of 9');
  await page.keyboard.press('PageUp');
  await expect(place(page)).toHaveText('8 of 9');
  await page.keyboard.press('Home');
  await expect(place(page)).toHaveText('1 of 9');
  await page.keyboard.type('5');
  await expect(page.getByText('Step 5: Enter')).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(caption(page)).toHaveText('Startle: the Moro reflex fades by about half a year');
});

test(
  'B makes the screen black, and the step is the same after it',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/stage/tables?step=3');
    await page.keyboard.press('b');
    await expect(page.locator('.black')).toBeVisible();
    const [width, height] = await page
      .locator('.black')
      .evaluate((node) => [node.clientWidth, node.clientHeight]);
    expect([width, height]).toEqual([1280, 720]);
    await expect(page.locator('.black')).toHaveCSS('background-color', 'rgb(0, 0, 0)');
    await page.keyboard.press('.');
    await expect(page.locator('.black')).toHaveCount(0);
    await expect(place(page)).toHaveText('3 of 7');
  },
);

test(
  'lanes are zoomed into and left without losing the step',
  { tag: '@thorough' },
  async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await open(page, '#/stage/first-year?step=9');
    const lanes = page.locator('.hall [data-lane]');
    await expect(lanes).toHaveCount(8);
    const size = () =>
      lanes
        .first()
        .locator('text')
        .evaluate((n) => n.getBoundingClientRect().height);
    const before = await size();
    await page.keyboard.press('+');
    await expect(lanes).toHaveCount(3);
    expect(await size()).toBeGreaterThan(before);
    await expect(page.getByText('lanes 1 to 3 of 8')).toBeVisible();
    await page.keyboard.press('ArrowDown');
    await expect(page.getByText('lanes 2 to 4 of 8')).toBeVisible();
    await page.keyboard.press('-');
    await expect(lanes).toHaveCount(8);
    await lanes.filter({ hasText: 'Moro' }).click();
    await expect(lanes).toHaveCount(1);
    await page.keyboard.press('Escape');
    await expect(lanes).toHaveCount(8);
    await expect(place(page)).toHaveText('9 of 9');
  },
);

test(
  'the pointer, the keys and dark are called by their keys',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/stage/protective?step=1');
    await page.keyboard.press('p');
    await page.mouse.move(400, 300);
    const box = (await page.locator('.pointer').boundingBox())!;
    expect(box.x + box.width / 2).toBeCloseTo(400, 0);
    expect(box.height).toBeGreaterThan(720 / 15);
    await page.keyboard.press('?');
    await expect(page.getByRole('dialog', { name: 'Keys' })).toContainText('speaker’s window');
    await page.keyboard.press('PageDown');
    await page.keyboard.press('Escape');
    await expect(page.getByRole('dialog')).toHaveCount(0);
    await expect(place(page)).toHaveText('1 of 8');
    const paper = () => page.locator('.hall').evaluate((n) => getComputedStyle(n).backgroundColor);
    const before = await paper();
    await page.keyboard.press('d');
    expect(await paper()).not.toBe(before);
  },
);

test('the speaker’s window is in step both ways, with the note and what comes next', async ({
  page,
  context,
}) => {
  await open(page, '#/stage/first-year?step=2');
  const opening = context.waitForEvent('page');
  await page.keyboard.press('s');
  const speaker = await opening;
  await expect(
    speaker.getByRole('heading', { name: 'Many are present before term' }),
  ).toBeVisible();
  await expect(speaker.locator('.note')).toContainText('An infant born early');
  await expect(speaker.locator('.next')).toContainText('Feeding: rooting and sucking');
  await expect(speaker.getByText('The stage is not open')).toHaveCount(0);
  await page.keyboard.press('PageDown');
  await expect(speaker.getByText('Step 3 of 9')).toBeVisible();
  await speaker.keyboard.press('PageDown');
  await expect(place(page)).toHaveText('4 of 9');
  await speaker.getByRole('button', { name: 'Black' }).click();
  await expect(page.locator('.black')).toBeVisible();
  await page.keyboard.press('b');
  await expect(speaker.getByText('The picture is black.')).toHaveCount(0);
  await expect(speaker.locator('dd').first()).toHaveText(/^\d+:\d\d$/);
  expect(await accessibilityFaults(speaker)).toEqual([]);
});

test('after a reload, or a window closed by accident, it goes on at its step', async ({
  page,
  context,
}) => {
  await open(page, '#/stage/look-alikes?step=1');
  await page.keyboard.press('PageDown');
  await page.keyboard.press('PageDown');
  await expect(place(page)).toHaveText('3 of 8');
  await expect(page).toHaveURL(/step=3/);
  await page.reload();
  await expect(place(page)).toHaveText('3 of 8');
  const again = await context.newPage();
  await page.close();
  await again.goto('/#/talks');
  await again.getByRole('link', { name: 'Continue at step 3: Look-alikes' }).click();
  await expect(place(again)).toHaveText('3 of 8');
});

test(
  'between two steps the chart moves, and under reduced motion it does not',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/stage/first-year?step=1');
    await expect(still(page)).toHaveCount(1);
    await page.evaluate(() => {
      const seen = new Set<string>();
      Object.assign(window, { seen });
      const chart = document.querySelector('[data-moving]')!;
      const look = () =>
        seen.add(chart.querySelector('[data-lane="moro"]')!.getAttribute('transform')!);
      new MutationObserver(look).observe(chart, { subtree: true, attributes: true });
      look();
    });
    const places = () =>
      page.evaluate(() => (window as unknown as { seen: Set<string> }).seen.size);
    await page.keyboard.press('PageDown');
    await expect(page.locator('.hall [data-lane]')).toHaveCount(6);
    await expect(still(page)).toHaveCount(1);
    expect(await places()).toBeGreaterThan(2);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    const before = await places();
    await page.keyboard.press('PageUp');
    await expect(place(page)).toHaveText('1 of 9');
    await expect(page.locator('.hall [data-lane="landau"]')).toHaveCount(1);
    expect((await places()) - before).toBeLessThanOrEqual(1);
  },
);

/** By how many pixels the chart hangs below the room it is given. */
const overhangPx = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const bottom = (selector: string): number =>
      document.querySelector(selector)!.getBoundingClientRect().bottom;
    return bottom('[data-moving]') - bottom('.room');
  });

/** How a talk is shown: the longest is looked at each time. */
const HALLS = [
  { size: { width: 1920, height: 1080 }, talks: ['reading-a-child'] },
  { size: { width: 1280, height: 720 }, talks: TALKS },
  { size: { width: 1920, height: 1080 }, talks: TALKS },
] as const;

for (const { size, talks } of HALLS)
  test(
    `every letter is read from the back, ${size.width} wide: ${talks.join(', ')}`,
    { tag: talks === TALKS ? '@thorough' : [] },
    async ({ page }) => {
      await page.emulateMedia({ reducedMotion: 'reduce', colorScheme: 'light' });
      await page.setViewportSize(size);
      let looked = 0;
      for (const talk of talks) {
        await page.goto('about:blank'); // so that nothing of the talk before is measured
        await open(page, `#/stage/${talk}?step=1`);
        const steps = Number((await place(page).textContent())!.split(' of ')[1]);
        for (let step = 1; step <= steps; step += 1) {
          await expect(place(page)).toHaveText(`${step} of ${steps}`);
          await expect(page.locator('.hall [data-lane]').first()).toBeVisible();
          const at = `${talk} ${step}`;
          // what stands beside the chart takes its room a frame later, and the chart follows
          await expect.poll(() => textFaults(page), { message: at }).toEqual([]);
          await expect.poll(() => overhangPx(page), { message: at }).toBeLessThanOrEqual(1);
          const light = await letters(page);
          expect(light.length, at).toBeGreaterThan(8);
          const small = light.filter((letter) => letter.capitalPx < size.height / 40);
          expect(
            small.map(({ words, capitalPx }) => `${words} ${capitalPx}`),
            at,
          ).toEqual([]);
          await page.emulateMedia({ colorScheme: 'dark' });
          const all = [...light, ...(await letters(page))];
          await page.emulateMedia({ colorScheme: 'light' });
          expect(
            all.filter(({ contrast }) => contrast < 7).map(({ words }) => words),
            at,
          ).toEqual([]);
          looked += all.length;
          await page.keyboard.press('PageDown');
        }
      }
      expect(looked).toBeGreaterThan(talks.length * 20);
    },
  );

test(
  'a talk that is not there says so, and a step beyond the end is the last',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/stage/nothing');
    await expect(page.getByText('There is no such talk here.')).toBeVisible();
    await openAnew(page, '#/stage/tables?step=99');
    await expect(place(page)).toHaveText('7 of 7');
    await openAnew(page, '#/stage/tables?step=soon');
    await expect(place(page)).toHaveText('1 of 7');
  },
);

test(
  'the whole screen is taken and given back by F, and left with the talk',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/stage/protective?step=2');
    const isFull = () => page.evaluate(() => document.fullscreenElement !== null);
    await page.keyboard.press('f');
    await expect.poll(isFull).toBe(true);
    await page.keyboard.press('PageDown');
    await expect(place(page)).toHaveText('3 of 8');
    await page.keyboard.press('f');
    await expect.poll(isFull).toBe(false);
    await expect(place(page)).toHaveText('3 of 8');
    await page.keyboard.press('f');
    await expect.poll(isFull).toBe(true);
    await page.evaluate(() => {
      location.hash = '#/talks';
    });
    await expect(page.getByRole('heading', { name: 'Talks', level: 1 })).toBeVisible();
  },
);

test(
  'sleep is held off while the stage is seen, and no longer',
  { tag: '@thorough' },
  async ({ page }) => {
    await page.addInitScript(() => {
      const held: string[] = [];
      Object.assign(window, { held });
      const request = (kind: string) => {
        held.push(kind);
        return Promise.resolve({ release: () => Promise.resolve(void held.pop()) });
      };
      Object.defineProperty(navigator, 'wakeLock', { value: { request } });
    });
    const held = () => page.evaluate(() => (window as unknown as { held: string[] }).held.length);
    await open(page, '#/talks');
    expect(await held()).toBe(0);
    await page.evaluate(() => {
      location.hash = '#/stage/protective?step=1';
    });
    await expect(place(page)).toHaveText('1 of 8');
    await expect.poll(held).toBe(1);
    await page.keyboard.press('Escape');
    await expect(page.locator('.hall')).toHaveCount(0);
    await expect.poll(held).toBe(0);
  },
);

test('M moves the figure of a step', { tag: '@thorough' }, async ({ page }) => {
  await open(page, '#/stage/first-year?step=5');
  const drawn = () => page.locator('.side .player > svg').innerHTML();
  await page.locator('.side .player > svg').waitFor();
  const before = await drawn();
  await page.keyboard.press('m');
  await expect.poll(drawn).not.toBe(before);
});
