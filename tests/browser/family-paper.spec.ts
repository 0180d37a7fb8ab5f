/**
 * The family's page on paper: every invented child, both languages, both sizes. The letters' size is
 * that of reference/yardsticks.json (large print begins at 14 pt); paper sizes are ISO 216 (A4) and
 * common practice, no source (Letter).
 */
import type { Page } from '@playwright/test';
import { expect, listed, open, test } from './support/page.ts';
import { readPdf } from './support/pdf.ts';

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

async function inBothLanguages(page: Page, label: string): Promise<string[]> {
  const faults: string[] = [];
  for (const language of ['English', 'Español']) {
    await page.getByRole('radio', { name: language }).check();
    await expect(page.locator('.paper')).toHaveAttribute(
      'lang',
      language === 'English' ? /^en/ : /^es/,
    );
    for (const fault of await faultsOnPaper(page)) faults.push(`${label}, ${language}, ${fault}`);
  }
  return faults;
}

for (const label of [
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
])
  test(`${label} in both languages fits on two pages of A4 and Letter`, async ({ page }) => {
    await open(page, '#/children');
    await page.getByRole('button', { name: 'Add invented children' }).click();
    await expect(listed(page)).toHaveCount(10);
    await page.getByRole('button', { name: label, exact: true }).click();
    await expect(page.getByRole('heading', { level: 1, name: label })).toBeVisible();
    await page.getByRole('link', { name: 'For the family' }).click();
    await page.locator('.paper').waitFor();
    expect(await inBothLanguages(page, label)).toEqual([]);
  });
