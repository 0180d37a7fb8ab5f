/**
 * The family's page on paper: every invented child, both languages, both sizes. The letters' size is
 * that of reference/yardsticks.json (large print begins at 14 pt); paper sizes are ISO 216 (A4) and
 * common practice, no source (Letter).
 */
import type { Page } from '@playwright/test';
import { expect, listed, open, test } from '../support/page.ts';
import { readPdf } from '../support/pdf.ts';

const LEAST_PT = 14;
/** Letters are placed to less than this, in points. */
const SLACK_PT = 0.05;
const SIZES = [
  ['A4', 595, 842],
  ['Letter', 612, 792],
] as const;

/** Prints the page that is open in both sizes and says what is wrong with either. */
async function faultsOnPaper(page: Page): Promise<string[]> {
  const faults: string[] = [];
  for (const [format, width, height] of SIZES) {
    const pages = await readPdf(await page.pdf({ format }));
    if (pages.length < 1 || pages.length > 2) faults.push(`${format}: ${pages.length} pages`);
    for (const sheet of pages) {
      if (Math.abs(sheet.width - width) > 1 || Math.abs(sheet.height - height) > 1)
        faults.push(`${format}: ${sheet.width} by ${sheet.height}`);
      if (sheet.letters.length === 0) faults.push(`${format}: an empty page`);
      for (const { text, sizePt, x, y, width: wide } of sheet.letters) {
        if (sizePt < LEAST_PT - SLACK_PT) faults.push(`${format}: ${sizePt} pt: ${text}`);
        if (x < 0 || x + wide > sheet.width || y < 0 || y + sizePt > sheet.height)
          faults.push(`${format}: outside: ${text}`);
      }
      if (sheet.pictures > 0) faults.push(`${format}: ${sheet.pictures} pictures of pixels`);
      for (const font of sheet.fonts)
        if (!font.isEmbedded) faults.push(`${format}: ${font.name} is not in the file`);
      if (sheet.fonts.length === 0) faults.push(`${format}: no fonts`);
    }
  }
  return faults;
}

/** How many sheets the page says it takes. */
async function saidSheets(page: Page): Promise<number> {
  const said = await page
    .locator('aside')
    .getByText(/^Printed, it takes/)
    .textContent();
  const [, word = ''] = /takes (\w+) sheet/.exec(said ?? '') ?? [];
  return ({ one: 1, two: 2 } as Record<string, number>)[word] ?? Number(word);
}

async function speak(page: Page, language: 'English' | 'Español'): Promise<void> {
  await page.getByRole('radio', { name: language }).check();
  const tag = language === 'English' ? /^en/ : /^es/;
  await expect(page.locator('.paper')).toHaveAttribute('lang', tag);
  await expect(page.locator('.sheet')).toHaveAttribute('lang', tag);
}

/** Every invented child, by label; the first is in the archive. */
const CHILDREN = [
  'Avocet',
  'Curlew',
  'Kestrel',
  'Dunlin',
  'Godwit',
  'Redshank',
  'Sanderling',
  'Snipe',
  'Tern',
  'Turnstone',
  'Whimbrel',
];
/** The last visit, and the whole course. */
const ABOUT = ['', '?visit=all'];

async function addChildren(page: Page): Promise<void> {
  await open(page, '#/children');
  await page.getByRole('button', { name: 'Add sample children' }).click();
  await expect(listed(page)).toHaveCount(10);
}

/** Opens the page of an invented child that was added, one in the archive too. */
async function openChild(page: Page, label: string): Promise<void> {
  await open(page, '#/children');
  if (label === 'Avocet') await page.getByRole('button', { name: /^With the archive/ }).click();
  await page.getByRole('button', { name: label, exact: true }).click();
  await expect(page.getByRole('heading', { level: 1, name: label })).toBeVisible();
  await open(page, '#/family');
  await page.locator('.paper').waitFor();
}

const LANGUAGES = ['English', 'Español'] as const;

for (const label of CHILDREN)
  test(
    `${label}, a visit and the course, in both languages, is printed on two pages of A4 and Letter`,
    {
      tag: '@thorough',
    },
    async ({ page }) => {
      await addChildren(page);
      await openChild(page, label);
      for (const about of ABOUT)
        for (const language of LANGUAGES) {
          await open(page, `#/family${about}`);
          await speak(page, language);
          expect(await faultsOnPaper(page), `${about} ${language}`).toEqual([]);
          expect(await saidSheets(page), `${about} ${language}`).toBeLessThanOrEqual(2);
        }
    },
  );

const boxes = (page: Page) =>
  page.getByRole('group', { name: 'Reflexes on the page' }).getByRole('checkbox');

for (const label of ['Curlew', 'Kestrel', 'Turnstone'])
  test(
    `${label} with six told of keeps a figure for each and fits on two pages`,
    { tag: '@thorough' },
    async ({ page }) => {
      await addChildren(page);
      await openChild(page, label);
      for (const box of await boxes(page).all())
        if ((await boxes(page).and(page.locator(':checked')).count()) < 6) await box.check();
      await expect(page.locator('.paper .item')).toHaveCount(6);
      for (const language of ['English', 'Español'] as const) {
        await speak(page, language);
        expect(await faultsOnPaper(page)).toEqual([]);
        await page.emulateMedia({ media: 'print' });
        await expect(page.locator('.sheet .figure svg:visible')).toHaveCount(6);
        await page.emulateMedia({ media: null });
      }
    },
  );

test('words that take more than two sheets are said to, before they are printed', async ({
  page,
}) => {
  await open(page, '#/family?visit=3');
  await expect(page.getByText('Printed, it takes two sheets')).toBeVisible();
  const many = 'We looked at this with care and will tell you more. '.repeat(18).trim();
  for (const key of ['help.pace', 'help.daily', 'help.no-practice']) {
    const sentence = page.locator(`[data-key="${key}"]`);
    await sentence.fill(many);
    await sentence.press('Enter');
  }
  await expect(page.getByText('Printed, it takes 3 sheets')).toContainText('shorten your text');
  expect(await readPdf(await page.pdf({ format: 'Letter' }))).toHaveLength(3);
});

test(
  'what is still being written is printed as it reads',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/family?visit=3');
    const pace = page.locator('[data-key="help.pace"]');
    await pace.fill('Ring Rowan on Mondays.');
    const pages = await readPdf(await page.pdf({ format: 'A4' }));
    const printed = pages.flatMap(({ letters }) => letters.map(({ text }) => text)).join(' ');
    expect(printed).toContain('Ring Rowan on Mondays.*');
  },
);

/** How the sheet is laid out. Runs in the page. */
function laid() {
  const sheet = document.querySelector<HTMLElement>('.sheet')!;
  return {
    tag: sheet.lang,
    figure: sheet.style.getPropertyValue('--figure'),
    how: [...sheet.classList].sort(),
    figures: sheet.querySelectorAll('.figure svg').length,
    lines: sheet.querySelectorAll('.rule').length,
  };
}

test(
  'printed at once after a change, it is laid out as when it is left to settle',
  { tag: '@thorough' },
  async ({ page }) => {
    await page.addInitScript(`globalThis.printed = () => {
    window.dispatchEvent(new Event('beforeprint'));
    return (${laid.toString()})();
  }`);
    await open(page, '#/family?visit=3');
    await expect(page.getByText('Printed, it takes two sheets')).toBeVisible();
    const settled = async () => {
      await page.evaluate(() => new Promise(requestAnimationFrame));
      return page.evaluate(laid);
    };
    const english = await settled();

    // the change and the print in one go, so that nothing settles between them
    const spanish = await page
      .getByRole('radio', { name: 'Español' })
      .evaluate((radio: HTMLInputElement) => {
        radio.click();
        return (globalThis as unknown as { printed: () => unknown }).printed();
      });
    expect(spanish).not.toEqual(english);
    expect(spanish).toEqual(await settled());

    const long = await page
      .locator('.paper [data-key="help.pace"]')
      .evaluate((sentence: HTMLElement) => {
        sentence.focus();
        sentence.textContent = 'Lo hablamos con calma en la consulta. '.repeat(12).trim();
        sentence.dispatchEvent(new InputEvent('input', { bubbles: true }));
        return (globalThis as unknown as { printed: () => unknown }).printed();
      });
    expect(long).not.toEqual(spanish);
    expect(long).toEqual(await settled());
    expect((await settled()).figures).toBe(4);
  },
);
