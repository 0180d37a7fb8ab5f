import { mkdir, readFile, truncate, writeFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, open, test } from '../support/page.ts';

// these walk through several pages each, on a machine that may be busy
const GOOD =
  'reflex,appears,integrates,note\nMoro reflex,28 wk,3-4 mo,p. 112\nATNR,birth,4-6 mo,\n';

const openCsv = (page: Page, text: string | Buffer, name = 'lecture book.csv') =>
  page.getByLabel('Open a CSV file').setInputFiles({
    name,
    mimeType: 'text/csv',
    buffer: Buffer.from(text),
  });

/** Opens a table and takes it into the atlas. */
async function take(page: Page, text = GOOD, name = 'Lecture book 2020'): Promise<void> {
  await open(page, '#/own');
  await openCsv(page, text);
  await page.getByLabel('Name', { exact: true }).fill(name);
  await page.getByRole('button', { name: 'Save and use' }).click();
  await expect(page.getByText('Added: it is used from now on.')).toBeVisible();
}

test('a table is used everywhere, survives a reload, and is switched off and on', async ({
  page,
}) => {
  await take(page);
  await open(page, '#/reflexes/moro');
  await expect(page.getByRole('row', { name: /Lecture book 2020.*28 wk/ })).toBeVisible();
  await page.reload();
  await expect(page.getByRole('row', { name: /Lecture book 2020.*28 wk/ })).toBeVisible();
  await open(page, '#/sources');
  await expect(page.getByText('Lecture book 2020')).toBeVisible();
  await open(page, '#/settings');
  await page.getByLabel('One source').check();
  await page.getByLabel('Which source').selectOption({ label: 'Lecture book 2020' });
  await page.reload();
  await expect(page.getByLabel('Which source')).toHaveValue(/^own-/);
  await open(page, '#/own');
  await page.getByRole('button', { name: 'Switch off: Lecture book 2020' }).click();
  await open(page, '#/reflexes/moro');
  await expect(page.getByRole('row', { name: /Lecture book 2020/ })).toHaveCount(0);
});

test(
  'a removed source comes back with undo, and a saved one opens again',
  { tag: '@thorough' },
  async ({ page }) => {
    await take(page);
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as CSV: Lecture book 2020' }).click();
    const download = await saving;
    expect(download.suggestedFilename()).toBe('lecture-book-2020.csv');
    const saved = await readFile(await download.path(), 'utf8');
    await page.getByRole('button', { name: 'Remove: Lecture book 2020' }).click();
    await expect(page.getByText('No source added yet.')).toBeVisible();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page.getByText('textbook, 2 reflexes, in use')).toBeVisible();
    await openCsv(page, saved);
    await expect(page.getByLabel('Reflex, row 1')).toHaveValue('Moro reflex');
    await expect(page.getByLabel('Integrates, as printed, row 2')).toHaveValue('4-6 mo');
  },
);

test('every bad cell has its sentence, and nothing is taken until all are mended', async ({
  page,
}) => {
  await open(page, '#/own');
  await openCsv(
    page,
    [
      'reflex,appears,integrates,note',
      'Moro reflex,28 wk,6,',
      'palmar grasp refelx,birth,5 mo,',
      'Galant reflex,32 wk,=2+3,',
      'ATNR,birth,6-4 mo,',
      'Landau reaction,4 mo,2 wk - 12 mo,',
      'Stepping reflex,birth,2 mo,<script>alert(1)</script>',
      'Moro,28 wk,5 mo,',
    ].join('\n'),
  );
  const cells = [
    ['Integrates, as printed, row 1', /without a unit/],
    ['Reflex, row 2', /No reflex of the atlas has this name/],
    ['Integrates, as printed, row 3', /like a formula/],
    ['Integrates, as printed, row 4', /first age is above the second/],
    ['Integrates, as printed, row 5', /Two units in one range/],
    ['Note, row 6', /markup or script/],
  ] as const;
  for (const [cell, sentence] of cells)
    await expect(page.getByLabel(cell)).toHaveAccessibleDescription(sentence);
  await page.getByRole('button', { name: 'Save and use' }).click();
  await expect(page.getByLabel('Integrates, as printed, row 1')).toBeFocused();
  await expect(page.getByText('6 cells must be corrected first.')).toBeVisible();
  await page.getByRole('button', { name: 'Use Palmar grasp reflex' }).click();
  await expect(page.getByLabel('Reflex, row 2')).toHaveValue('Palmar grasp reflex');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByLabel('Reflex, row 2')).toHaveValue('palmar grasp refelx');
  // mended, the first row can be read, and the last one names the same reflex
  await page.getByLabel('Integrates, as printed, row 1').fill('6 mo');
  await expect(page.getByLabel('Reflex, row 7')).toHaveAccessibleDescription(/is already in row 1/);
});

const REFUSED = [
  ['other columns', 'name;from;to\nMoro;1;2\n', /no column "reflex", "appears", "integrates"/],
  ['a column too many', 'reflex,appears,integrates,colour\nMoro,birth,4 mo,red\n', /"colour"/],
  ['no rows', 'reflex,appears,integrates\n', /has no row below/],
  ['no text', '\0\0\0', /not a table of text/],
] as const;
test('a file that cannot be a table is refused with a sentence', async ({ page }) => {
  await open(page, '#/own');
  for (const [what, text, sentence] of REFUSED) {
    await openCsv(page, text);
    await expect(page.getByRole('alert').filter({ hasText: sentence }), what).toBeVisible();
    await expect(page.getByText('No source added yet.'), what).toBeVisible();
  }
});

test('50 MB are refused before they are read', { tag: '@thorough' }, async ({ page }, info) => {
  const large = info.outputPath('large.csv');
  await mkdir(info.outputDir, { recursive: true });
  await writeFile(large, '');
  await truncate(large, 50_000_000);
  await open(page, '#/own');
  await page.getByLabel('Open a CSV file').setInputFiles(large);
  await expect(
    page.getByText(/about 50 MB; a table is at most 1 MB. It was not read/),
  ).toBeVisible();
});

test(
  'a reflex of one’s own joins the order of its limbs and is found by them',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/own/reflex/new');
    await page.getByLabel('Name', { exact: true }).fill('Moro reflex');
    await page.getByRole('button', { name: 'Save and use' }).click();
    await expect(page.getByLabel('Name', { exact: true })).toHaveAccessibleDescription(
      /nothing built in can be overwritten/,
    );
    await page.getByLabel('Name', { exact: true }).fill('Fencer prone');
    await page.getByLabel('Position').selectOption('prone');
    for (const [limb, token] of [
      ['Left arm', 'extended'],
      ['Right arm', 'flexed'],
    ] as const)
      await page.getByRole('group', { name: limb }).getByRole('button', { name: token }).click();
    await expect(
      page.getByText('It shows limb dissociation (arms dissociated from each other'),
    ).toBeVisible();
    await page.getByLabel('Source', { exact: true }).fill('Own notes');
    await page.getByLabel('Appears, as printed').fill('28 wk');
    await page.getByLabel('Integrates, as printed').fill('5 mo');
    await page.getByRole('button', { name: 'Save and use' }).click();
    await expect(page.getByText('Added: it is used from now on.')).toBeVisible();
    await open(page, '#/order');
    await expect(page.getByRole('link', { name: 'Fencer prone' })).toBeVisible();
    await open(page, '#/reflexes?does=arms-unlike');
    await expect(page.getByText('5 of 45.')).toBeVisible();
    await page.getByRole('link', { name: /^Fencer prone/ }).click();
    await expect(page.getByRole('row', { name: /Own notes.*28 wk.*5 mo/ })).toBeVisible();
  },
);

test(
  'a table let go over the page is opened there, and is not taken for a case file',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/own');
    const dropped = await page.evaluateHandle((text) => {
      const carried = new DataTransfer();
      carried.items.add(new File([text], 'lecture book.csv', { type: 'text/csv' }));
      return carried;
    }, GOOD);
    const room = page.locator('.room');
    await room.dispatchEvent('dragenter', { dataTransfer: dropped });
    await room.dispatchEvent('dragover', { dataTransfer: dropped });
    await expect(room.getByRole('status').first()).toBeVisible();
    await room.dispatchEvent('drop', { dataTransfer: dropped });
    await expect(page.getByLabel('Reflex, row 1')).toHaveValue('Moro reflex');
    await expect(page.getByText('The file was not opened')).toHaveCount(0);
  },
);

test('a reflex of one’s own is typed with undo, and the keys go to it and not to the child', async ({
  page,
}) => {
  await open(page, '#/own/reflex/new');
  const position = page.getByLabel('Position', { exact: true });
  await position.selectOption('prone');
  await position.selectOption('sitting');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(position).toHaveValue('prone');
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(position).toHaveValue('sitting');
  await position.focus();
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect(position).toHaveValue('supine');
  await page.keyboard.press('Control+y');
  await expect(position).toHaveValue('prone');
});

test(
  'on the list of one’s own the keys bring back what was removed there',
  { tag: '@thorough' },
  async ({ page }) => {
    await take(page);
    await page.getByRole('button', { name: 'Remove: Lecture book 2020' }).click();
    await expect(page.getByText('No source added yet.')).toBeVisible();
    await page.keyboard.press('Control+z');
    await expect(page.getByText('textbook, 2 reflexes, in use')).toBeVisible();
  },
);
