import { readdir, readFile } from 'node:fs/promises';
import { accessibilityFaults } from '../support/accessibility.ts';
import { noteOf, setNote, standing } from '../support/keep.ts';
import { expect, listed, more, open, test } from '../support/page.ts';
import { goTo } from '../support/places.ts';

const give = (name: string, mimeType: string, text: string) => ({
  name,
  mimeType,
  buffer: Buffer.from(text),
});

test('a child goes out as a FHIR bundle and comes in again, in one step that can be undone', async ({
  page,
}) => {
  await open(page, '#/report');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as FHIR R4 bundle' }).click();
  const download = await saving;
  expect(download.suggestedFilename()).toBe('kestrel.fhir.json');
  const text = await readFile(await download.path(), 'utf8');
  expect(JSON.parse(text)).toMatchObject({ resourceType: 'Bundle', type: 'collection' });

  await open(page, '#/children');
  const file = page.getByLabel('Open a case file');
  await file.setInputFiles(give('kestrel.fhir.json', 'application/fhir+json', text));
  await expect(page.getByRole('heading', { name: 'A FHIR bundle' })).toBeVisible();
  await expect(page.getByText('here already, and the same')).toBeVisible();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText('Nothing is selected')).toBeVisible();
  await page.getByRole('button', { name: 'Cancel' }).click();

  await more(page, 'Kestrel');
  await page.getByRole('button', { name: 'Remove Kestrel' }).click();
  await file.setInputFiles(give('kestrel.fhir.json', 'application/fhir+json', text));
  await expect(page.getByText('not here yet')).toBeVisible();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'Kestrel' })).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('Undone: everything is as it was before.')).toBeVisible();
});

test(
  'a child of a bundle that is here and differs: both are kept, the one here as it was, until undone',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/report');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as FHIR R4 bundle' }).click();
    const text = await readFile(await (await saving).path(), 'utf8');
    await open(page, '#/visits/3');
    const theirs = await noteOf(page).inputValue();
    const mine = 'Said here since the bundle was saved.';
    await setNote(page, mine);
    await expect(standing(page)).toHaveText('Saved');

    await open(page, '#/children');
    const file = page.getByLabel('Open a case file');
    await file.setInputFiles(give('kestrel.fhir.json', 'application/fhir+json', text));
    await expect(page.getByText('here already, and different')).toBeVisible();
    await expect(page.getByRole('radio', { name: 'Keep mine' })).toBeChecked();
    await page.getByRole('radio', { name: 'Keep both' }).check();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(page.getByRole('heading', { name: 'Kestrel' })).toBeVisible();
    await goTo(page, 'Children');
    await expect(listed(page)).toHaveText(['Kestrel', 'Kestrel']);
    /** What a child of the list says in its last visit. */
    const noted = async (index: number): Promise<string> => {
      await listed(page).nth(index).click();
      await goTo(page, 'Visits');
      await page.getByRole('link', { name: '11 May 2026' }).click();
      await expect(noteOf(page)).toBeVisible();
      const note = await noteOf(page).inputValue();
      await goTo(page, 'Children');
      return note;
    };
    expect([await noted(0), await noted(1)].toSorted()).toEqual([mine, theirs].toSorted());

    await page.keyboard.press('Control+z');
    await expect(page.getByText('Undone: everything is as it was before.')).toBeVisible();
    await expect(listed(page)).toHaveText(['Kestrel']);
    expect(await noted(0)).toBe(mine);
    await page.keyboard.press('Control+y');
    await expect(listed(page)).toHaveText(['Kestrel', 'Kestrel']);
    await expect(standing(page)).toHaveText('Saved');
    await page.reload();
    await expect(listed(page)).toHaveText(['Kestrel', 'Kestrel']);
  },
);

test(
  'what a bundle holds and is not read is told; a bad one is refused, naming the entry',
  { tag: '@thorough' },
  async ({ page }) => {
    const patient = { resourceType: 'Patient', id: 'p', birthDate: '2026-01-05' };
    const gestation = {
      resourceType: 'Observation',
      status: 'final',
      subject: { reference: 'Patient/p' },
      code: { coding: [{ system: 'http://loinc.org', code: '11884-4' }] },
      valueQuantity: { value: 36, code: 'wk' },
    };
    const bundle = (...resources: object[]) =>
      JSON.stringify({
        resourceType: 'Bundle',
        type: 'collection',
        entry: resources.map((resource) => ({ resource })),
      });
    await open(page, '#/children');
    const file = page.getByLabel('Open a case file');
    const named = { ...patient, name: [{ text: 'Plover' }] };
    await file.setInputFiles(
      give('a.json', 'application/json', bundle(named, gestation, { resourceType: 'Goal' })),
    );
    await expect(page.getByText('1 entry is not read: 1 × Goal, not used here.')).toBeVisible();
    await page.getByRole('button', { name: 'Cancel' }).click();
    await file.setInputFiles(
      give(
        'b.json',
        'application/json',
        bundle(named, { ...gestation, valueQuantity: { value: 36.2, code: 'wk' } }),
      ),
    );
    await expect(page.getByText('Entry 2 (Observation)')).toBeVisible();
  },
);

const SHEET = [
  'Infant;Seen on;Therapist;Item;Side;Result;Comment',
  'Kestrel;03.04.2026;PT 9;Moro;l;+;',
  'Kestrel;03.04.2026;PT 9;Moro;r;+;café € 5',
  'Kestrel;25.04.2026;PT 9;Mystery;l;+;',
  'Kestrel;05.13.2026;PT 9;Galant;l;+;',
].join('\r\n');

/** As Windows-1252 writes it: the euro sign is the byte 0x80 (Encoding Standard, index windows-1252). */
const WINDOWS = Buffer.from(SHEET.replace('€', '\u0080'), 'latin1');

test(
  "a clinic's own sheet is mapped, looked through, added and undone in one step",
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/children');
    await page.getByLabel('Open a case file').setInputFiles({
      name: 'ward.csv',
      mimeType: 'text/csv',
      buffer: WINDOWS,
    });
    await expect(page.getByRole('heading', { name: 'A sheet of findings' })).toBeVisible();
    await page.getByLabel('Date of the visit').selectOption('Seen on');
    await page.getByRole('radio', { name: 'day, month, year' }).check();
    await page.getByLabel('+', { exact: true }).selectOption('elicited');
    await expect(page.getByText('Row 4, "Item": "Mystery" is not decided')).toBeVisible();
    await expect(page.getByText('Row 5, "Seen on": "05.13.2026" is not a date')).toBeVisible();
    await expect(page.getByText('2026-04-03, PT 9: 2 findings, a new visit')).toBeVisible();
    expect(await accessibilityFaults(page)).toEqual([]);

    await page.getByLabel('Save this mapping as').fill('Ward 3');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(page.getByText('Saved as Ward 3.')).toBeVisible();
    await page.getByRole('button', { name: 'Add 2 findings' }).click();
    await expect(page.getByText('3 April 2026').filter({ visible: true }).first()).toBeVisible();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page.getByText('3 April 2026')).toHaveCount(0);

    await open(page, '#/children');
    await page.getByLabel('Open a case file').setInputFiles({
      name: 'ward.csv',
      mimeType: 'text/csv',
      buffer: WINDOWS,
    });
    await page.getByRole('button', { name: 'Ward 3', exact: true }).click();
    await expect(page.getByRole('button', { name: 'Add 2 findings' })).toBeVisible();
  },
);

test(
  'the page of what was opened says so when nothing was',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/incoming');
    await expect(page.getByRole('heading', { name: 'Nothing has been opened.' })).toBeVisible();
    await page.getByRole('link', { name: 'To the children' }).click();
    await expect(page.getByRole('heading', { name: 'Children', level: 1 })).toBeVisible();
    // where the way leads, there is what the words promise
    await expect(page.getByLabel('Open a case file')).toBeAttached();
  },
);

test('the usual build holds nothing that asks a server', async ({ page }) => {
  await open(page, '#/server');
  await expect(page.getByRole('heading', { name: 'There is no such page.' })).toBeVisible();
  const files = await readdir('dist', { recursive: true });
  const scripts = files.filter((name) => name.endsWith('.js'));
  expect(scripts.length).toBeGreaterThan(10);
  for (const name of scripts)
    expect(await readFile(`dist/${name}`, 'utf8'), name).not.toMatch(/if-none-exist|Bearer /);
  expect(await readFile('dist/index.html', 'utf8')).toContain("connect-src 'none'");
});
