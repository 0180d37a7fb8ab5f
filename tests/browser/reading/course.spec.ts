import { readFile } from 'node:fs/promises';
import { expect, open, test, verdict } from '../support/page.ts';

test('the course says first what changed, then shows reflex by visit, then what is awaited', async ({
  page,
}) => {
  await open(page, '#/course');
  const changed = page.getByRole('region', { name: 'Changes since the last visit' });
  await expect(changed.getByRole('listitem').first()).toContainText(
    'obligatory, stronger than before (elicited on 16 March 2026); was as expected, now persisting',
  );
  const fits = page.getByRole('region', { name: 'Best-fitting age over the visits' });
  await expect(fits.getByRole('img', { name: /by corrected age, in months/ })).toBeVisible();
  await expect(fits.getByRole('listitem').nth(1)).toContainText('too few findings');
  await expect(fits.getByRole('listitem').nth(2)).toContainText('transient responses: 5 mo (');
  await expect(fits).toContainText('not the developmental age of a normed test');
  const row = page.getByRole('row', { name: /^Galant/ });
  await expect(row).toContainText('integrated between 12 January 2026 and 11 May 2026');
  await expect(row.getByRole('cell').nth(1)).toHaveText('not tested');
  await page.getByRole('button', { name: '16 Mar', exact: true }).click();
  await expect(changed).toContainText('At the visit of 16 March 2026');
  await expect(page.getByRole('region', { name: 'Expected changes' })).toContainText(
    'all that give an age have expected it since 19 February 2026',
  );
});

test('what is awaited is saved as calendar entries', { tag: '@thorough' }, async ({ page }) => {
  await open(page, '#/course');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as calendar entries' }).click();
  const text = await readFile(await (await saving).path(), 'utf8');
  expect(text).toMatch(/^BEGIN:VCALENDAR\r\n/);
  expect(text).toContain('DTSTART;VALUE=DATE:20260219');
  expect(text).not.toContain('Kestrel');
});

test('what if: verdicts that change are marked in place, and one touch goes back', async ({
  page,
}) => {
  await open(page, '#/');
  const palmar = verdict(page, 'palmar-grasp');
  await page.getByRole('button', { name: 'What if' }).click();
  const panel = page.locator('#what-if');
  await expect(panel).toContainText(/persisting → expected to fade, if born at 31w4d or later/);
  await panel.getByRole('textbox', { name: 'Gestation at birth, tried' }).fill('31w5d');
  await panel.getByRole('textbox', { name: 'Gestation at birth, tried' }).press('Enter');
  await expect(panel.getByLabel('Due date, tried')).toHaveValue('2025-12-01');
  await expect(palmar).toContainText('persisting → expected to fade');
  await expect(panel.getByRole('status')).toContainText('persisting → expected to fade');
  // out of sight it is still said, on every page of the child
  await page.getByRole('button', { name: 'What if' }).click();
  await page.getByRole('link', { name: 'Course', exact: true }).click();
  await expect(page.getByText('Tried, not the record:')).toBeVisible();
  await expect(page.getByRole('row', { name: /^Palmar grasp/ })).toContainText(
    'persisting → expected to fade',
  );
  await page.getByRole('button', { name: 'Back to the record' }).click();
  await expect(page.getByText('→ expected to fade')).toHaveCount(0);
  await page.reload();
  await expect(page.getByText('born at 31w2d')).toBeVisible();
});

test(
  'what if: a gestation that cannot be is refused with a sentence, and nothing is lost',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/');
    await page.getByRole('button', { name: 'What if' }).click();
    const field = page.getByRole('textbox', { name: 'Gestation at birth, tried' });
    await field.fill('50w0d');
    await field.press('Enter');
    await expect(field).toHaveAccessibleDescription(/22w0d to 44w6d/);
    await expect(field).toHaveValue('50w0d');
    await page.getByLabel('Dated by').selectOption({ label: 'examination of the newborn' });
    await expect(page.getByText('95 of 100 such dates are within 27 days')).toBeVisible();
  },
);

test('the conference keeps the question and the decisions, steps through visits, sets two side by side', async ({
  page,
}) => {
  await open(page, '#/table');
  const question = page.getByLabel('The question to the team');
  await question.fill('Does the obligatory answer need a second opinion?');
  await question.blur();
  await page.getByLabel('Decision', { exact: true }).fill('See again with the physician');
  await page.getByLabel('Who', { exact: true }).fill('Rowan');
  await page.getByLabel('By when').fill('2026-06-30');
  await page.getByRole('button', { name: 'Record the decision' }).click();
  await expect(page.getByText('Rowan · by 30 June 2026 · decided 8 June 2026')).toBeVisible();
  await page.getByLabel('By when').fill('soon');
  await page.getByRole('button', { name: 'Record the decision' }).click();
  await expect(page.getByLabel('By when')).toHaveAccessibleDescription(/"soon"/);
  await page.locator('h2', { hasText: 'Decisions' }).click();
  await page.keyboard.press('PageUp');
  await expect(page.getByText('visit 2 of 3')).toBeVisible();
  await page.reload();
  await expect(question).toHaveValue('Does the obligatory answer need a second opinion?');
  await page.getByLabel('Done: See again with the physician').check();
  await expect(page.getByText('decided 8 June 2026 · done')).toBeVisible();
  await page.getByLabel('Side by side with').selectOption({ label: '12 January 2026, Rowan' });
  await expect(page.getByRole('row', { name: /^Galant/ })).toContainText(
    'both sides: not elicited now, elicited on 12 January 2026',
  );
});

test('the report copies, saves and prints without a name when names are off', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page, '#/report');
  await page.getByRole('button', { name: 'Copy as plain text' }).click();
  await expect(page.getByText('Copied.')).toBeVisible();
  const copied = () => page.evaluate(() => navigator.clipboard.readText());
  expect(await copied()).toContain('Kestrel');
  await page.getByRole('checkbox', { name: /With names/ }).uncheck();
  await page.getByRole('button', { name: 'Copy as plain text' }).click();
  await expect.poll(copied).not.toContain('Kestrel');
  await expect(page.locator('article')).not.toContainText(/Kestrel|Rowan|2026/);
  // Kestrel was born at 31w2d: the chart counts as the words above it do
  await expect(page.locator('article [role="slider"]')).toHaveAttribute(
    'aria-valuetext',
    /^5 mo 1 wk corrected.*7 mo 1 wk chronological.*62w4d postmenstrual$/,
  );
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the findings as CSV' }).click();
  const download = await saving;
  expect(download.suggestedFilename()).not.toContain('kestrel');
  const csv = await readFile(await download.path(), 'utf8');
  expect(csv.trim().split(/\r?\n/).length).toBeGreaterThan(40);
  expect(csv).not.toMatch(/Kestrel|Rowan|2026-/);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('heading', { name: 'Kestrel', exact: true })).toBeHidden();
});
