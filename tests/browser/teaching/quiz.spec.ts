/** Questions: by keyboard alone, on a stage, on paper. */
import type { Page } from '@playwright/test';
import { expect, open, test } from '../support/page.ts';
import { sideways, textFaults } from '../support/text.ts';

const SET = 'seed=5&count=6&difficulty=medium';
const stem = (page: Page) => page.locator('h1');
const choices = (page: Page) => page.locator('main ol button');

/** The number of the right choice, read off the page once it is shown. */
const rightOne = async (page: Page): Promise<string> =>
  (await page.locator('main ol button.right .number').textContent()) ?? '';

test('a set is answered by keyboard alone; why is shown, with sources, on the chart', async ({
  page,
}) => {
  await open(page, `#/quiz?${SET}&kinds=phase.verdict`);
  await expect(page.getByText('Question 1 of 6')).toBeVisible();
  const first = await stem(page).textContent();
  await page.keyboard.press('1');
  await expect(page.getByText(/^(Right\.|Not right\. The answer is:)/)).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Why' })).toBeVisible();
  await expect(
    page
      .getByText(/in (all \d+ sources|the one source) that gives? an age/)
      .or(page.getByText(/all \d+ sources/))
      .first(),
  ).toBeVisible();
  await expect(page.getByRole('slider', { name: 'Age marker' })).toBeVisible();
  await expect(page.locator('.why li span').first()).toContainText(/\d{4}|guide|textbook|notes/);
  await page.keyboard.press('Enter');
  await expect(page.getByText('Question 2 of 6')).toBeVisible();
  await expect(stem(page)).not.toHaveText(first ?? '');
  await expect(stem(page)).toBeFocused();
  for (let at = 2; at <= 6; at++) {
    await page.keyboard.press('2');
    await page.keyboard.press('Enter');
  }
  await expect(stem(page)).toHaveText('Result');
  await expect(page.getByText(/^\d of 6 right\.$/)).toBeVisible();
});

test('what was answered survives a reload, and what was missed is to be reviewed', async ({
  page,
}) => {
  await open(page, `#/quiz?${SET}`);
  await page.keyboard.press('1');
  const right = await rightOne(page);
  await page.keyboard.press('Enter');
  await expect(page.getByText('Question 2 of 6')).toBeVisible();
  const second = await stem(page).textContent();
  await page.reload();
  await expect(page.getByText('Question 2 of 6')).toBeVisible();
  await expect(stem(page)).toHaveText(second ?? '');
  await open(page, '#/quiz');
  await expect(page.getByText(/^1 subject seen so far, [01] of 1 answer right/)).toBeVisible();
  await expect(page.getByText('Nothing is to be reviewed today.')).toBeVisible();
  // a day on, a missed one is due; a right one later
  await page.clock.setFixedTime(new Date('2026-07-20T10:00:00'));
  await page.reload();
  await expect(page.getByText('1 subject is to be reviewed today.')).toBeVisible();
  await page.getByRole('link', { name: 'Review them' }).click();
  await expect(page.getByText('Question 1 of 1')).toBeVisible();
  await expect(choices(page)).not.toHaveCount(0);
  expect(right).toMatch(/^[1-4]$/);
});

test(
  'the same address gives the same set, and another number another',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, `#/quiz/paper/48213?count=8&difficulty=hard`);
    const asked = await page.locator('.stem').allTextContents();
    expect(asked).toHaveLength(16);
    await page.reload();
    await expect(page.locator('.stem')).toHaveText(asked);
    await open(page, `#/quiz/paper/48214?count=8&difficulty=hard`);
    expect(await page.locator('.stem').allTextContents()).not.toEqual(asked);
  },
);

test('on a stage a key shows the answer and goes on, in letters large enough for a hall', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1920, height: 1080 });
  await open(page, `#/quiz/stage/5?count=6&difficulty=medium&kinds=phase.next`);
  const first = await stem(page).textContent();
  await expect(page.locator('.stage ol li')).toHaveCount(4);
  await expect(page.locator('.right')).toHaveCount(0);
  await page.keyboard.press('Space');
  await expect(page.locator('.right')).toHaveCount(1);
  await expect(page.getByText(/^Sources:/)).toBeVisible();
  const letters = await page.evaluate(() =>
    [...document.querySelectorAll('.stage *')]
      .filter(
        (element) =>
          [...element.childNodes].some((n) => n.nodeType === 3 && n.textContent?.trim()) &&
          element.checkVisibility() &&
          !element.closest('.unseen, title, desc'),
      )
      .map((element) => parseFloat(getComputedStyle(element).fontSize)),
  );
  expect(letters.length).toBeGreaterThan(10);
  expect(Math.min(...letters)).toBeGreaterThanOrEqual(1080 / 40);
  await page.keyboard.press('PageDown');
  await expect(page.locator('.right')).toHaveCount(0);
  await expect(stem(page)).not.toHaveText(first ?? '');
  await page.keyboard.press('Enter');
  await expect(page.locator('.right')).toHaveCount(1);
  await page.keyboard.press('PageUp');
  await page.keyboard.press('PageUp');
  await expect(stem(page)).toHaveText(first ?? '');
});

test(
  'the figure gives no name away, and is played by keyboard',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/quiz?seed=9&count=3&difficulty=hard&kinds=name');
    const names = await page.locator('main ol button .words').allTextContents();
    const label =
      (await page.locator('main svg[role="img"]').first().getAttribute('aria-label')) ?? '';
    expect(label).toMatch(/^At rest: an infant/);
    await page.getByRole('button', { name: 'Response', exact: true }).focus();
    await page.keyboard.press('Enter');
    const shown = page.getByRole('img', { name: /^The response:/ });
    await expect(shown).toBeVisible();
    for (const name of names) await expect(shown).not.toHaveAccessibleName(new RegExp(name, 'i'));
    // Enter on a control of the figure did not answer
    await expect(page.getByText('Question 1 of 3')).toBeVisible();
  },
);

test('on paper the key stands on a page of its own, and both carry the number of the set', async ({
  page,
}) => {
  await open(page, '#/quiz/paper/5?count=6&difficulty=medium');
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('link', { name: 'Start' })).toBeHidden();
  expect(await page.locator('.key').evaluate((key) => getComputedStyle(key).breakBefore)).toBe(
    'page',
  );
  await expect(page.getByText('Set 5, medium, 6 questions')).toHaveCount(2);
  expect(await sideways(page)).toBe(0);
  expect(await textFaults(page)).toEqual([]);
  const pdf = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBeGreaterThanOrEqual(2);
});

test(
  'what is typed wrongly is said, and nothing is begun by it',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/quiz');
    await page.getByLabel('Number of questions').fill('1000');
    await expect(page.getByText('Write a whole number from 1 to 60.')).toBeVisible();
    await page.getByLabel('Number of questions').fill('4');
    await page.getByLabel('Set number').fill('77');
    await page.getByRole('checkbox', { name: 'Calculating ages' }).check();
    await expect(page.getByRole('checkbox', { name: 'All types' })).not.toBeChecked();
    await page.getByRole('link', { name: 'Start' }).click();
    await expect(page).toHaveURL(/seed=77&count=4&difficulty=medium&kinds=arithmetic$/);
    await expect(page.getByText('Question 1 of 4')).toBeVisible();
    await expect(stem(page)).toContainText(/^Born on/);
  },
);
