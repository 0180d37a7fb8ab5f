/** Talks of one's own: made, reordered, undone, saved, opened, refused; and all of it without a network. */
import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, open, test, workerAnswers } from '../support/page.ts';

const steps = (page: Page) => page.locator('ol .choose');

/** Makes a talk of one's own from the ready-made one, and waits until it is open. */
async function makeOwn(page: Page, title = 'Look-alikes'): Promise<void> {
  await open(page, '#/talks');
  await page.getByRole('button', { name: `Copy to edit: ${title}` }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(`${title} (copy)`);
}

const openFile = (page: Page, text: string) =>
  page.getByLabel('Open a talk file').setInputFiles({
    name: 'lecture.talk.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });

test('a ready-made talk is looked through, started, and not changed', async ({ page }) => {
  await open(page, '#/talks');
  await page.getByRole('link', { name: 'The arms before the legs', exact: true }).click();
  await expect(steps(page)).toHaveCount(7);
  await expect(page.getByLabel('Caption')).toHaveCount(0);
  await steps(page).nth(3).click();
  await expect(page.getByText('pairs support the order')).toBeVisible();
  await page.getByRole('link', { name: 'Start at this step' }).click();
  await expect(page.locator('.hall h1')).toHaveText('First arm from arm, then arms from legs');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Talks');
});

test('one’s own is made from it, its text changed, and it is there after a reload', async ({
  page,
}) => {
  await makeOwn(page);
  await page.getByLabel('Title').fill('For the autumn course');
  await page.getByLabel('Caption').fill('Two that look the same');
  await page.getByLabel('Your note').fill('Ask the second row.');
  await expect(steps(page).first()).toHaveText('1Two that look the same');
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('For the autumn course');
  await expect(page.getByLabel('Your note')).toHaveValue('Ask the second row.');
  await page.getByRole('link', { name: 'Start' }).click();
  await expect(page.locator('.hall h1')).toHaveText('Two that look the same');
});

test(
  'steps are moved by keys, by buttons and by dragging, and each is undone',
  { tag: '@thorough' },
  async ({ page }) => {
    await makeOwn(page);
    const first = (await steps(page).nth(0).textContent())!.slice(1);
    const second = (await steps(page).nth(1).textContent())!.slice(1);
    await steps(page).nth(0).focus();
    await page.keyboard.press('Alt+ArrowDown');
    await expect(steps(page).nth(1)).toHaveText(`2${first}`);
    await expect(steps(page).nth(1)).toBeFocused();
    await expect(page.getByText('Moved to place 2 of 8.')).toBeAttached();
    await page.getByRole('button', { name: 'Up', exact: true }).click();
    await expect(steps(page).nth(0)).toHaveText(`1${first}`);
    await steps(page).nth(0).dragTo(steps(page).nth(3));
    await expect(steps(page).nth(3)).toHaveText(`4${first}`);
    await expect(steps(page).nth(0)).toHaveText(`1${second}`);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(steps(page).nth(0)).toHaveText(`1${first}`);
    await steps(page).nth(0).focus();
    await page.keyboard.press('Control+Shift+z');
    await expect(steps(page).nth(3)).toHaveText(`4${first}`);
    await page.keyboard.press('ArrowDown');
    await expect(steps(page).nth(1)).toBeFocused();
  },
);

test(
  'the present view is kept, in a step, as a new one, and from the chart',
  { tag: '@thorough' },
  async ({ page }) => {
    await makeOwn(page);
    const line = page.getByRole('slider');
    const before = await line.getAttribute('aria-valuenow');
    await line.focus();
    await page.keyboard.press('ArrowRight');
    const moved = await line.getAttribute('aria-valuenow');
    expect(moved).not.toBe(before);
    await page.getByRole('button', { name: 'Save this view as a new step' }).click();
    await expect(steps(page)).toHaveCount(9);
    await expect(page.getByText('Saved as step 2.')).toBeVisible();
    await expect(line).toHaveAttribute('aria-valuenow', moved!);
    await steps(page).first().click();
    await expect(line).toHaveAttribute('aria-valuenow', before!);
    await open(page, '#/chart');
    await page.getByLabel('Save this view as a step of').selectOption('Look-alikes (copy)');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByRole('link', { name: 'Open the talk' }).click();
    await expect(steps(page)).toHaveCount(10);
    await steps(page).last().click();
    // those that judge by default, as README.md counts them
    await expect(page.getByText('Sources: the 45 default sources, 42 voices')).toBeVisible();
  },
);

test(
  'lanes, sources, figure, order and child of a step are chosen',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/talks');
    await page.getByRole('button', { name: 'Start an empty talk' }).click();
    await page.getByText('Lanes: 3 lanes').click();
    await page.getByRole('checkbox', { name: 'Landau' }).check();
    await expect(page.getByText('Lanes: 4 lanes')).toBeVisible();
    await page.getByLabel('Figure').selectOption('Moro');
    await page
      .getByLabel('Child', { exact: true })
      .selectOption('Kestrel (fictional): up to visit 2');
    await page.getByRole('link', { name: 'Start' }).click();
    await expect(page.locator('.hall [data-lane]')).toHaveCount(4);
    await expect(page.locator('footer')).toContainText('Kestrel, fictional');
    await expect(page.getByRole('button', { name: 'Play' })).toBeVisible();
  },
);

test('it is saved as a file, removed, taken back, and opened again', async ({ page }) => {
  await makeOwn(page);
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as file' }).click();
  const file = await saving;
  expect(file.suggestedFilename()).toBe('look-alikes-copy.talk.json');
  const text = await readFile(await file.path(), 'utf8');
  await open(page, '#/talks');
  const own = page.locator('section[aria-labelledby="own"] li');
  await page.getByRole('button', { name: 'Remove: Look-alikes (copy)' }).click();
  await expect(own).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(own).toHaveCount(1);
  await openFile(page, text);
  await expect(own).toHaveCount(2);
});

test(
  'a file that is not a talk is refused in a sentence, and nothing is lost',
  { tag: '@thorough' },
  async ({ page }) => {
    await makeOwn(page);
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as file' }).click();
    const text = await readFile(await (await saving).path(), 'utf8');
    await open(page, '#/talks');
    const alert = page.getByRole('alert').filter({ hasText: 'The talk was not opened' });
    for (const [bad, said] of [
      [text.slice(0, 900), 'ends in the middle'],
      [text.replace('"version": 1', '"version": 2'), 'a newer Tidemark (version 2)'],
      ['{"format":"tidemark-case","version":1}', 'is one child’s case. Open it under Children'],
      ['{"format":"other","version":1}', 'is not a Tidemark talk'],
      [
        text.replace('Alike in appearance', '<img src=x onerror=alert(1)>'),
        'Step 1, caption: holds markup',
      ],
    ] as const) {
      await openFile(page, bad);
      await expect(alert).toContainText(said);
      await expect(alert).toContainText('nothing has changed');
    }
    await expect(page.locator('section[aria-labelledby="own"] li')).toHaveCount(1);
  },
);

test(
  'a talk naming what is not at hand opens, says what, and is given without it',
  { tag: '@thorough' },
  async ({ page }) => {
    await makeOwn(page);
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as file' }).click();
    const text = await readFile(await (await saving).path(), 'utf8');
    await open(page, '#/talks');
    await openFile(
      page,
      text.replace('"acoustic-startle"', '"own-kneejerk"').replace('"(copy)"', '""'),
    );
    await expect(page.getByText('Not available here: reflexes “own-kneejerk”.')).toBeVisible();
    await page.getByRole('link', { name: 'Start: Look-alikes (copy)' }).last().click();
    await expect(page.locator('.hall [data-lane]')).toHaveCount(5);
  },
);

test(
  'text that could not be opened again is said and not kept',
  { tag: '@thorough' },
  async ({ page }) => {
    await makeOwn(page);
    const before = await page.getByLabel('Caption').inputValue();
    await page.getByLabel('Caption').fill('<b onclick=alert(1)>bold</b>');
    await expect(page.getByText('Caption: holds markup or script')).toBeVisible();
    await page.reload();
    await expect(page.getByLabel('Caption')).toHaveValue(before);
  },
);

test.describe('without a network', () => {
  test.use({ serviceWorkers: 'allow' });

  test('talks open', { tag: '@thorough' }, async ({ page, context }) => {
    await open(page, '#/');
    await workerAnswers(page);
    await page.reload();
    await context.setOffline(true);
    await page.reload();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Kestrel');
    await open(page, '#/talks');
    await page.getByRole('link', { name: 'Start: Reading a child' }).click();
    await expect(page.locator('.hall h1')).toHaveText('Kestrel: fictional, born at 31 weeks');
    await page.keyboard.press('End');
    await expect(page.locator('.hall h1')).toHaveText('A reason to recheck, never a diagnosis');
  });
});
