/** The family's page on a screen turned round: one idea at a time, by hand, keys, voice. */
import type { Page } from '@playwright/test';
import { accessibilityFaults, CONTRAST } from '../support/accessibility.ts';
import { expect, open, openFew, test } from '../support/page.ts';
import { sideways, textFaults } from '../support/text.ts';

const place = (page: Page) => page.locator('.show .place');
const heading = (page: Page) => page.locator('.show h1');
const next = (page: Page) => page.locator('.show .next');

/** Goes to the slide with a heading, from wherever the page stands. */
async function reach(page: Page, name: RegExp): Promise<void> {
  await page.keyboard.press('Home');
  for (let at = 0; at < 60; at += 1) {
    if (name.test((await heading(page).textContent()) ?? '')) return;
    await page.keyboard.press('ArrowRight');
  }
  throw new Error(`No slide is called ${String(name)}.`);
}

test('one idea at a time, by keys, by hand and by a swipe, and back without a menu', async ({
  page,
}) => {
  await open(page, '#/show');
  await expect(page.locator('.show')).toBeVisible();
  await expect(page.getByRole('navigation')).toHaveCount(0); // none that can be reached
  const first = await heading(page).textContent();
  await expect(place(page)).toHaveText(/^1 of \d+$/);
  await next(page).click();
  await expect(place(page)).toHaveText(/^2 of /);
  await page.keyboard.press('ArrowRight');
  await expect(place(page)).toHaveText(/^3 of /);
  await page.keyboard.press('PageUp');
  await page.keyboard.press('Home');
  await expect(heading(page)).toHaveText(first ?? '');
  await page.keyboard.press('End');
  await expect(next(page)).toHaveText('Close');
  await page.keyboard.press('Escape');
  await expect(page.locator('.show')).toHaveCount(0);
  expect(new URL(page.url()).hash).toMatch(/^#\/family/);
});

test.describe('with a finger', () => {
  test.use({ hasTouch: true });

  test(
    'a swipe goes on and back, a stroke down does not',
    { tag: '@thorough' },
    async ({ page }) => {
      await open(page, '#/show');
      const stroke = (from: number, to: number, down = 0) =>
        page.locator('.show .slide').evaluate(
          (node, { from, to, down }) => {
            const at = (type: string, clientX: number, clientY: number) =>
              node.dispatchEvent(
                new PointerEvent(type, { clientX, clientY, pointerType: 'touch', bubbles: true }),
              );
            at('pointerdown', from, 300);
            at('pointerup', to, 300 + down);
          },
          { from, to, down },
        );
      await stroke(600, 300);
      await expect(place(page)).toHaveText(/^2 of /);
      await stroke(300, 380, 300);
      await expect(place(page)).toHaveText(/^2 of /);
      await stroke(300, 600);
      await expect(place(page)).toHaveText(/^1 of /);
    },
  );
});

test(
  'the figure moves until it is held; the chart has words for ticks and no source',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/show');
    await reach(page, /Moro/);
    const drawn = () => page.locator('.moving > svg').innerHTML();
    const before = await drawn();
    await expect.poll(drawn).not.toBe(before);
    await page.getByRole('button', { name: 'Hold it still' }).click();
    await expect(page.getByRole('button', { name: 'Show it move' })).toBeVisible();
    await page.keyboard.press('End');
    await reach(page, /picture so far/i);
    const chart = page.locator('.bands');
    await expect(chart.locator('text').first()).toBeVisible();
    const words = await chart.locator('text').allTextContents();
    expect(words).toContain('due date');
    expect(words.join(' ')).toMatch(/\d+ months/);
    expect(words.join(' ')).not.toMatch(/20\d\d|et al|w\d?d/);
    const bands = await chart.locator('.name').count();
    expect(bands).toBeGreaterThanOrEqual(3);
    expect(bands).toBeLessThanOrEqual(6);
    await expect(page.locator('.show ul.unseen li')).toHaveCount(bands);
  },
);

test('on a phone it says how far one has come, and the emergency number needs no scrolling', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, '#/show');
  await expect(place(page)).toBeVisible();
  await reach(page, /Call right away/);
  const last = page.locator('.show .words p').last();
  await expect(last).toContainText('emergency number');
  await expect(last).toBeInViewport({ ratio: 1 });
  const isCut = () =>
    page.locator('.show .slide').evaluate((node) => node.scrollHeight > node.clientHeight + 1);
  expect(await isCut()).toBe(false);
});

test('no word of a verdict and nothing red on any slide', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' }); // every moment of a figure at once
  await open(page, '#/show');
  const red = await page.evaluate(() => {
    const probe = document.createElement('p');
    probe.style.color = 'var(--signal)';
    document.body.append(probe);
    const colour = getComputedStyle(probe).color;
    probe.remove();
    return colour;
  });
  const count = Number(/of (\d+)/.exec((await place(page).textContent())!)![1]);
  for (let at = 1; at <= count; at += 1) {
    await expect(place(page)).toHaveText(`${at} of ${count}`);
    const said = await page.locator('.show').innerText();
    expect(said).not.toMatch(/\b(persisting|missing|abnormal|normal|diagnos|verdict|obligatory)/i);
    const colours = await page.locator('.show *').evaluateAll((all) =>
      all.flatMap((one) => {
        const { color, fill, stroke } = getComputedStyle(one);
        return [color, fill, stroke];
      }),
    );
    expect(colours).not.toContain(red);
    await expect.poll(() => textFaults(page)).toEqual([]);
    await page.keyboard.press('ArrowRight');
  }
});

test(
  'under reduced motion the moments stand side by side',
  { tag: '@thorough' },
  async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await open(page, '#/show');
    await reach(page, /Moro/);
    expect(await page.locator('.stills svg').count()).toBeGreaterThanOrEqual(3);
    await expect(page.getByRole('button', { name: 'Hold it still' })).toHaveCount(0);
  },
);

/** Voices and what they say, in the place of the browser's own. */
const speak = (page: Page, voices: readonly { lang: string; localService: boolean }[]) =>
  page.addInitScript((given) => {
    const said: string[] = [];
    const synthesis = Object.assign(new EventTarget(), {
      getVoices: () => given,
      speak: ({ text, lang }: { text: string; lang: string }) => said.push(`${lang}: ${text}`),
      cancel: () => said.push('quiet'),
    });
    Object.defineProperty(globalThis, 'speechSynthesis', { value: synthesis });
    class Utterance {
      voice = null;
      lang = '';
      rate = 1;
      readonly text: string;
      constructor(text: string) {
        this.text = text;
      }
    }
    Object.assign(globalThis, { SpeechSynthesisUtterance: Utterance, said });
  }, voices);

test(
  'it is read aloud by a voice of this machine, and quiet when one goes on',
  { tag: '@thorough' },
  async ({ page }) => {
    await speak(page, [
      { lang: 'es-ES', localService: true },
      { lang: 'en-GB', localService: true },
    ]);
    await open(page, '#/show');
    const said = () => page.evaluate(() => (globalThis as unknown as { said: string[] }).said);
    await page.getByRole('button', { name: 'Read aloud' }).click();
    const first = (await said()).at(-1)!;
    expect(first).toMatch(/^en-GB: /);
    expect(first).toContain((await heading(page).textContent())!);
    await next(page).click();
    expect((await said()).at(-1)).toBe('quiet');
    await expect(page.getByRole('button', { name: 'Read aloud' })).toBeVisible();
  },
);

test(
  'where there is no such voice, or only one elsewhere, none is offered',
  { tag: '@thorough' },
  async ({ page }) => {
    await speak(page, [
      { lang: 'en-GB', localService: false },
      { lang: 'es-ES', localService: true },
    ]);
    await open(page, '#/show');
    await expect(next(page)).toBeVisible();
    await expect(page.getByRole('button', { name: 'Read aloud' })).toHaveCount(0);
  },
);

test('in Spanish all of it is Spanish, and marked so', { tag: '@thorough' }, async ({ page }) => {
  await openFew(page, 'Heron', { language: 'es', calledName: 'Luz' });
  await open(page, '#/show');
  await expect(page.locator('.show')).toHaveAttribute('lang', /^es/);
  await expect(next(page)).toHaveText('Siguiente');
  const count = Number(/de (\d+)/.exec((await place(page).textContent())!)![1]);
  const said: string[] = [];
  for (let at = 1; at <= count; at += 1) {
    said.push(await page.locator('.show').innerText());
    await page.keyboard.press('ArrowRight');
  }
  const all = said.join('\n');
  expect(all).toContain('Luz');
  expect(all).not.toMatch(/\b(the|and|your|baby|months|weeks|next|close)\b/i);
});

/** Goes through all slides and looks at each. */
async function eachSlide(page: Page, look: (at: number, count: number) => Promise<void>) {
  await open(page, '#/show');
  const count = Number(/of (\d+)/.exec((await place(page).textContent())!)![1]);
  expect(count).toBeGreaterThan(6);
  for (let at = 1; at <= count; at += 1) {
    await expect(place(page)).toHaveText(`${at} of ${count}`);
    await look(at, count);
    await page.keyboard.press('ArrowRight');
  }
}

for (const size of [
  { width: 1280, height: 720 },
  { width: 820, height: 1180 },
  { width: 640, height: 360 }, // 1280 by 720 at 200 %
  { width: 320, height: 640 },
])
  test(
    `nothing is cut, ${size.width} wide`,
    { tag: size.width === 320 ? [] : '@thorough' },
    async ({ page }) => {
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await page.setViewportSize(size);
      await eachSlide(page, async () => {
        expect(await sideways(page)).toBe(0);
        await expect.poll(() => textFaults(page)).toEqual([]); // the chart knows its room a frame later
      });
    },
  );

test('no fault of access, and none of contrast in the dark', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await eachSlide(page, async (at, count) => {
    if (at > 6 && at < count) return; // one for each reflex: alike but for what they show
    await page.emulateMedia({ colorScheme: 'light' });
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await accessibilityFaults(page, CONTRAST)).toEqual([]);
  });
});

for (const colorScheme of ['light', 'dark'] as const)
  for (const width of [820, 640, 320])
    test(
      `every rule of access, ${width} wide, ${colorScheme}`,
      { tag: '@thorough' },
      async ({ page }) => {
        await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
        await page.setViewportSize({ width, height: 640 });
        await eachSlide(page, async () => expect(await accessibilityFaults(page)).toEqual([]));
      },
    );
