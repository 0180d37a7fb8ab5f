import { addChild, addFinding, asking, expect, more, open, test } from './support/page.ts';

test('a child born early, two visits, verdicts with reasons, and all of it after a reload', async ({
  page,
}) => {
  await addChild(page, {
    label: 'Plover',
    born: '20260104',
    gestation: '33w1d',
    dating: 'ultrasound to 13w6d',
  });

  await expect(page.getByRole('heading', { name: 'New visit' })).toBeVisible();
  await page.getByLabel('Visit date').fill('2026-03-02');
  await page.getByLabel('State of the infant').first().selectOption('quiet alert');
  await addFinding(page, 'mor', 'Moro reflex', { left: 'elicited', right: 'elicited' });
  await expect(page.getByText('Saved as the visit of 2 March 2026.')).toBeVisible();
  await addFinding(page, 'galant', 'Galant', { left: 'elicited', right: 'not elicited' });

  await page.getByRole('link', { name: 'Visits' }).click();
  await page.getByRole('link', { name: 'Add a visit' }).click();
  await expect(page.getByLabel('Visit date')).toHaveValue('2026-06-08');
  await page.getByLabel('State of the infant').first().selectOption('quiet alert');
  await page.getByText('From the groups').click();
  await page.getByRole('button', { name: 'Crossed extension', exact: true }).click();
  await page.getByRole('button', { name: 'elicited on both sides', exact: true }).click();
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: 'See the verdicts' }).click();

  await expect(page.getByText('born at 33w1d').first()).toBeVisible();
  await expect(page.getByText('3 mo 2 wk corrected').first()).toBeVisible();
  await expect(asking(page)).toHaveText(['Crossed extension']);
  await expect(
    page.getByText('Still present; all 4 sources, 3 voices, expect integration by this age.'),
  ).toBeVisible();

  await page.reload();
  await expect(page.getByRole('heading', { name: 'Plover' })).toBeVisible();
  await expect(asking(page)).toHaveText(['Crossed extension']);
  await page.getByRole('combobox', { name: 'seen' }).selectOption({ label: '2 March 2026' });
  await expect(page.getByText('Not elicited on the right, elicited on the left.')).toBeVisible();
});

test('the ages are told in words, with why one counts, while the form is filled', async ({
  page,
}) => {
  await open(page, '#/children/new');
  await page.getByLabel('Birth date').fill('2026-01-04');
  await page.getByRole('radio', { name: 'Due date' }).check();
  await page.getByRole('textbox', { name: 'Due date' }).fill('2026-02-21');
  await expect(page.getByText('Gestation at birth: 33w1d.')).toBeVisible();
  await expect(
    page.getByText(/Born at 33w1d, before 37w0d.*the corrected age counts/),
  ).toBeVisible();
});

test('a child can be switched, changed and removed', async ({ page }) => {
  await addChild(page, { label: 'Plover', born: '2026-01-04', gestation: '39w0d' });
  await open(page, '#/children');
  await page.getByRole('button', { name: 'Kestrel', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'Kestrel' })).toBeVisible();
  await page.getByRole('link', { name: 'Details' }).click();
  await page.getByLabel('Name or code').fill('Kestrel the second');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'Kestrel the second' })).toBeVisible();
  await open(page, '#/children');
  await more(page, 'Plover');
  await page.getByRole('button', { name: 'Remove Plover' }).click();
  await expect(page.getByRole('button', { name: 'Plover', exact: true })).toBeHidden();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('button', { name: 'Plover', exact: true })).toBeVisible();
});
