/** A clinic's own sheet with a row for each visit and a column for each reflex. */
import type { Page } from '@playwright/test';
import { dropSheet as drop, expect, test } from '../support/page.ts';

const SHEET = [
  'Infant;Seen on;Therapist;Moro L;Moro R;ATNR (lt);Galant;Landau;Weight;Comment',
  'Kestrel;13.05.2026;PT 9;present;+;;weak;;4,1;tired',
  'Kestrel;25.05.2026;PT 9;absent;;weak;;weak;4,4;',
  'Kestrel;31.02.2026;PT 9;absent;absent;;;;;',
  'Kestrel;29.05.2026;PT 9;;;;;;4,6;',
].join('\r\n');

const select = (page: Page, name: string) => page.getByLabel(name, { exact: true });

test('it is dropped, mapped, looked through, added and undone in one step', async ({ page }) => {
  await drop(page, 'ward.csv', SHEET);
  await expect(page.getByRole('radio', { name: 'one column for each reflex' })).toBeChecked();
  await expect(select(page, 'ATNR (lt)')).toHaveValue('atnr left');
  await expect(page.getByText('1 column is left out: Weight.')).toBeVisible();
  await expect(page.getByText('1 row holds no answer and would add nothing.')).toBeVisible();
  for (const sentence of [
    'Row 2, "Moro R": "+" is not decided; choose its meaning above.',
    'Row 2, "Galant": the Galant reflex is recorded on left or right; name one.',
    'Row 4, "Seen on": "31.02.2026" is not a date that exists, read as day, month, year.',
  ])
    await expect(page.getByText(sentence, { exact: true })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Add 4 findings' })).toBeVisible();

  await select(page, 'Galant').selectOption('Galant reflex, right');
  await select(page, '+').selectOption('elicited');
  await expect(
    page.getByText('1 cell is wrong; the answers that depend on it are not added.'),
  ).toBeVisible();
  await expect(page.getByText('2026-05-13, PT 9: 3 findings, a new visit')).toBeVisible();
  // a column that is left out takes its answers along
  await select(page, 'Landau').selectOption('left out');
  await expect(page.getByText('2 columns are left out: Landau, Weight.')).toBeVisible();
  await expect(page.getByText('2026-05-25, PT 9: 2 findings, a new visit')).toBeVisible();

  await page.getByLabel('Save this mapping as').fill('Ward 3');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText('Saved as Ward 3.')).toBeVisible();
  await page.getByRole('button', { name: 'Add 5 findings' }).click();
  await expect(page.getByText('13 May 2026').filter({ visible: true }).first()).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('13 May 2026')).toHaveCount(0);

  await drop(page, 'ward.csv', SHEET);
  await page.getByRole('button', { name: 'Ward 3', exact: true }).click();
  await expect(select(page, 'Galant')).toHaveValue('galant right');
  await expect(select(page, 'Landau')).toHaveValue('');
  await page.getByRole('button', { name: 'Add 5 findings' }).click();
  await expect(page.getByText('13 May 2026').filter({ visible: true }).first()).toBeVisible();
  // and once more: everything is here
  await drop(page, 'ward.csv', SHEET);
  await page.getByRole('button', { name: 'Ward 3', exact: true }).click();
  await expect(page.getByText('5 findings are here already, and the same.')).toBeVisible();
  await expect(page.getByText('Nothing would be added.')).toBeVisible();
});

test(
  'the shape can be chosen, and each keeps what was said of its columns',
  { tag: '@thorough' },
  async ({ page }) => {
    await drop(page, 'ward.csv', SHEET);
    await select(page, 'Galant').selectOption('Galant reflex, left');
    await page.getByRole('radio', { name: 'one row for each finding' }).check();
    await expect(page.getByText(/^Choose a column for: /)).toBeVisible();
    await expect(page.getByRole('heading', { name: 'Which column answers' })).toHaveCount(0);
    await page.getByRole('radio', { name: 'one column for each reflex' }).check();
    await expect(select(page, 'Galant')).toHaveValue('galant left');
    await select(page, 'Date of the visit').selectOption('no column');
    await expect(page.getByText('Choose a column for: Date of the visit.')).toBeVisible();

    await drop(page, 'plain.csv', 'Seen on;A;B\n13.05.2026;x;y');
    await page.getByRole('radio', { name: 'one column for each reflex' }).check();
    await expect(page.getByText('Choose a reflex for at least one column.')).toBeVisible();
  },
);

test(
  'a row without its child, a visit ahead of today and dates with two readings are said',
  { tag: '@thorough' },
  async ({ page }) => {
    const rows = [
      'sep=;',
      'Child;Birth;GA;Date;Moro L;Moro R',
      'Q-1;18/01/2026;40;18/05/2026;present;weak',
      'Q-1;;;09/06/2026;present;weak',
      ';;;01/05/2026;present;weak',
    ];
    await drop(page, 'ward.csv', rows.join('\n'));
    await expect(
      page.getByText('Row 4, "Child": is empty; write the child in every row.', { exact: true }),
    ).toBeVisible();
    // the pages stand on 8 June 2026
    await expect(
      page.getByText('2026-06-09: 2 findings, a new visit, a date in the future', { exact: true }),
    ).toBeVisible();
    await expect(
      page.getByText('2026-05-18: 2 findings, a new visit', { exact: true }),
    ).toBeVisible();

    await drop(page, 'ward.csv', rows.join('\n').replace('09/06/2026', '05/13/2026'));
    await expect(
      page.getByText(
        '"01/05/2026" could be read in more than one way. Choose how dates are written.',
      ),
    ).toBeVisible();
  },
);
