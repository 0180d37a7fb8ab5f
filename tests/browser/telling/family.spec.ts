import type { Page } from '@playwright/test';
import { expect, open, openFew, test } from '../support/page.ts';

const paper = (page: Page) => page.locator('main article').first();

test('a sentence in other words is kept, marked, taken back and undone', async ({ page }) => {
  await open(page, '#/family?visit=3');
  const pace = page.locator('[data-key="help.pace"]');
  await pace.fill('Ring Rowan on Mondays.');
  await pace.press('Enter');
  await expect(paper(page).getByText('* Written by your clinic')).toBeVisible();
  await page.reload();
  await expect(pace).toHaveText('Ring Rowan on Mondays.');
  await page.getByRole('button', { name: /^Reset to standard text/ }).click();
  await expect(pace).toContainText('You see your baby every day');
  await expect(paper(page).getByText('* Written by your clinic')).toBeHidden();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(pace).toHaveText('Ring Rowan on Mondays.');
});

test(
  'signs around a word are kept as they were typed, on the page, on paper and on the slides',
  { tag: '@thorough' },
  async ({ page }) => {
    const words = 'Ask for <b>Rosa</b> <img src=x onerror="globalThis.ran=1"> on Mondays.';
    await open(page, '#/family?visit=3');
    const pace = page.locator('[data-key="help.pace"]');
    await pace.fill(words);
    await pace.press('Enter');
    await expect(paper(page).getByText('* Written by your clinic')).toBeVisible();
    await expect(page.locator('.sheet')).toContainText(words);
    await open(page, '#/show?visit=3');
    for (let at = 0; at < 40; at += 1) {
      if (((await page.locator('.show div.words').textContent()) ?? '').includes(words)) break;
      await page.keyboard.press('ArrowRight');
    }
    await expect(page.locator('.show div.words')).toContainText(words);
    await page.keyboard.press('Escape');
    await expect(page.locator('.show')).toHaveCount(0);
    await page.reload();
    await expect(pace).toHaveText(words);
    expect(await page.evaluate(() => 'ran' in globalThis)).toBe(false);
  },
);

test(
  'words that cannot be kept say why, and stand there when one comes back',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/family?visit=3');
    const pace = page.locator('[data-key="help.pace"]');
    const long = 'a '.repeat(2100).trim();
    await pace.fill(long);
    await pace.press('Enter');
    const why = page.getByRole('alert').getByText('keep it to 4000 characters');
    await expect(why).toBeVisible();
    await page.getByRole('link', { name: 'Show to the family' }).click();
    await expect(page.locator('.show h1')).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(page.locator('.show')).toHaveCount(0);
    await expect(pace).toHaveText(long);
    await expect(why).toBeVisible();
    await pace.fill('Ask for Rosa.');
    await pace.press('Enter');
    await expect(why).toHaveCount(0);
    await expect(pace).toHaveText('Ask for Rosa.');
  },
);

test(
  'a name that cannot be kept says why, and stands until it is mended',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/family');
    const name = page.getByLabel('Name used by the family');
    await name.fill('<b>Rosa</b>');
    await name.blur();
    await expect(page.getByText(/^Name used at home: holds markup or script/)).toBeVisible();
    await expect(name).toHaveValue('<b>Rosa</b>');
    await name.fill('Rosa');
    await name.blur();
    await expect(page.getByText(/^Name used at home/)).toBeHidden();
    await expect(page.getByRole('heading', { name: 'About Rosa’s visit' })).toBeVisible();
  },
);

test(
  'what asks to be discussed and is left off is to be talked about',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/family?visit=3');
    await page.getByRole('checkbox', { name: /^Crossed extension/ }).uncheck();
    await expect(page.getByText('To be discussed, and left off')).toBeVisible();
    await expect(page.locator('[data-section="talk"]')).toContainText(
      'The other leg going straight',
    );
  },
);

test('where few were looked at, it says so', { tag: '@thorough' }, async ({ page }) => {
  await openFew(page, 'Heron');
  await open(page, '#/family');
  await expect(page.locator('[data-key="looked.few"]')).toBeVisible();
});

test('in Spanish all of it is Spanish, and marked so; the choice is kept', async ({ page }) => {
  await open(page, '#/family');
  await page.getByRole('radio', { name: 'Español' }).check();
  await expect(paper(page)).toHaveAttribute('lang', /^es/);
  // a word for the clinician's own eyes is marked as English
  const said = await paper(page).evaluate((node) => {
    const own = node.cloneNode(true) as HTMLElement;
    for (const word of own.querySelectorAll('[lang=en]')) word.remove();
    return own.textContent;
  });
  expect(said).not.toMatch(/\b(the|and|your|baby|months|weeks|we|saw|clinic|call)\b/i);
  await page.reload();
  await expect(paper(page)).toHaveAttribute('lang', /^es/);
});

test('twins do not mix: neither name, words nor findings of the other', async ({ page }) => {
  await openFew(page, 'Heron', { calledName: 'Ada' });
  await open(page, '#/family');
  const pace = page.locator('[data-key="help.pace"]');
  await pace.fill('Ada likes the blue ball.');
  await pace.press('Enter');
  await openFew(page, 'Egret', { calledName: 'Bea' });
  await open(page, '#/family');
  await expect(paper(page)).toContainText('Bea');
  await expect(paper(page)).not.toContainText('Ada');
  await open(page, '#/show');
  await page.keyboard.press('End');
  await expect(page.locator('.show')).not.toContainText('Ada');
});

test(
  'nothing on the page is red, the marks of a stimulus included',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/family');
    const { red, drawn } = await page.evaluate(() => {
      const probe = document.createElement('p');
      probe.style.color = 'var(--signal)';
      document.body.append(probe);
      const red = getComputedStyle(probe).color;
      probe.remove();
      const drawn = [...document.querySelectorAll('main article *')].flatMap((one) => {
        const { color, fill, stroke } = getComputedStyle(one);
        return [color, fill, stroke];
      });
      return { red, drawn };
    });
    expect(drawn.length).toBeGreaterThan(100);
    expect(drawn).not.toContain(red);
  },
);

test(
  'the clinic named in the settings stands on the page',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/settings');
    await page.getByLabel('Clinic’s name').fill('Harbour Clinic');
    await page.getByLabel('Clinic’s number').fill('555 0100');
    await page.getByLabel('Clinic’s number').press('Enter');
    await open(page, '#/family');
    await expect(paper(page)).toContainText('Harbour Clinic');
    await expect(paper(page)).toContainText('555 0100');
    await expect(page.locator('.sheet')).toContainText('Harbour Clinic');
  },
);
