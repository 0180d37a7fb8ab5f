import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, more, open, test } from '../support/page.ts';
import { sideways, textFaults } from '../support/text.ts';

const line = (page: Page, reflex: string) => page.locator(`[data-line="${reflex}"]`);

test('each line says why with a date, by how much it would tell, and how to handle', async ({
  page,
}) => {
  await open(page, '#/next');
  const moro = line(page, 'moro');
  await expect(moro).toContainText('asymmetric, expected to fade last time (11 May)');
  await expect(moro).toContainText('integrated by 20 June 2026 in every source that dates it');
  await expect(moro).toContainText(/(informative|little information) [01]\.\d\d/);
  await expect(moro).toContainText('never drop freely, never shake');
  await expect(line(page, 'snout')).toContainText('not tested yet');
  await expect(line(page, 'optical-righting')).toContainText(
    'no answer last time (11 May): crying',
  );
  await expect(page.getByText('the entropy of a yes-or-no answer, in bits')).toBeVisible();
  await expect(line(page, 'galant')).toBeHidden();
  await moro.getByText('Technique').click();
  await expect(moro).toContainText('Pitfalls');
});

test('the date of the next visit and why come first, then the core set, ten minutes beside', async ({
  page,
}) => {
  await open(page, '#/next');
  const next = page.locator('[data-part="next-visit"]');
  await expect(next.getByRole('heading')).toHaveText('Next visit by 25 May 2026');
  await expect(next).toContainText(
    'To be discussed with the team: Crossed extension and Asymmetrical tonic neck',
  );
  await expect(next).toContainText('within 2 weeks of the visit on 11 May 2026');
  const core = page.locator('[data-part="core"]');
  await expect(core.locator('[data-line="palmar-grasp"]')).toBeVisible();
  await expect(page.locator('[data-part="ten"]')).toContainText('min');
  const minutes = await page.locator('[data-part="ten"] li span').allTextContents();
  const half = (text: string): number =>
    Number(/^\d+/.exec(text)?.[0] ?? 0) + (text.includes('½') ? 0.5 : 0);
  expect(minutes.reduce((sum, text) => sum + half(text), 0)).toBeLessThanOrEqual(10);
  await next.getByRole('button', { name: 'Plan for this date' }).click();
  await expect(page.getByLabel('Plan for')).toHaveValue('2026-05-25');
});

test('in one hand the plan has what was flagged first, and what is beyond the core set folded', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, '#/next');
  const flagged = page.locator('[data-part="flagged"]');
  await expect(flagged.locator('[data-line]')).toHaveCount(3);
  await expect(line(page, 'palmar-grasp')).toBeVisible();
  await expect(line(page, 'snout')).toBeHidden();
  const moro = line(page, 'moro');
  const handling = moro.getByText('never drop freely, never shake').first();
  await expect(handling).toBeHidden();
  await moro.getByText('Handling and technique').click();
  await expect(handling).toBeVisible();
  await page.getByText(/^Also: \d+$/).click();
  await expect(line(page, 'snout')).toBeVisible();
});

test('what may upset stands last', { tag: '@thorough' }, async ({ page }) => {
  await open(page, '#/next');
  const last = page.getByRole('heading', { name: 'Last, as they may upset' });
  const heading = (await last.boundingBox())!;
  expect((await line(page, 'moro').boundingBox())!.y).toBeGreaterThan(heading.y);
  expect((await line(page, 'snout').boundingBox())!.y).toBeLessThan(heading.y);
});

test(
  'lines are dropped and added, kept with the child, undone, and put back as reckoned',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/next');
    await page.getByRole('button', { name: 'Remove Snout' }).click();
    await expect(line(page, 'snout')).toBeHidden();
    await page.getByText(/Not on the sheet: \d+ more/).click();
    await page.getByRole('button', { name: 'Add Galant' }).click();
    await expect(line(page, 'galant')).toContainText('added by hand');
    await page.reload();
    await expect(line(page, 'galant')).toBeVisible();
    await expect(line(page, 'snout')).toBeHidden();
    await page.getByRole('button', { name: 'Put back Snout' }).click();
    await expect(line(page, 'snout')).toBeVisible();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(line(page, 'snout')).toBeHidden();
    await page.getByRole('button', { name: 'Reset to suggested' }).click();
    await expect(line(page, 'snout')).toBeVisible();
    await expect(line(page, 'galant')).toBeHidden();
  },
);

test(
  'a sheet for another date is said, shown and taken over',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/next');
    await page.getByLabel('Plan for').fill('2026-06-12');
    await page.getByLabel('Plan for').press('Tab');
    await page.getByRole('button', { name: 'Remove Snout' }).click();
    await page.getByLabel('Plan for').fill('2026-06-15');
    await page.getByLabel('Plan for').press('Tab');
    await expect(page.getByText('A sheet for 12 June 2026 is saved.')).toBeVisible();
    await expect(line(page, 'snout')).toBeVisible();
    await page.getByRole('button', { name: 'Move it to this date' }).click();
    await expect(line(page, 'snout')).toBeHidden();
    await page.reload();
    await expect(page.getByLabel('Plan for')).toHaveValue('2026-06-15');
  },
);

/** How many pages a PDF has. */
const pagesOf = (pdf: Buffer): number =>
  (pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;

for (const hash of ['#/next', '#/sheet'])
  for (const [format, widthMm] of [
    ['A4', 210],
    ['Letter', 215.9],
  ] as const)
    test(
      `${hash} prints on one page of ${format}, every word within it`,
      { tag: hash === '#/sheet' && format === 'A4' ? [] : '@thorough' },
      async ({ page }) => {
        await open(page, hash);
        // what is printed is loaded when the page is opened
        await expect(page.locator('.paper')).toContainText('Moro');
        expect(pagesOf(await page.pdf({ format }))).toBe(1);
        await page.setViewportSize({
          width: Math.floor(((widthMm - 24) / 25.4) * 96),
          height: 1000,
        });
        await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
        await expect(page.locator('.paper')).toBeVisible();
        await expect(page.getByRole('button')).toHaveCount(0);
        expect(await sideways(page)).toBe(0);
        expect(await textFaults(page)).toEqual([]);
        // six boxes for each side, for every line
        const rows = page.locator('.paper tbody tr:not(.run)');
        const boxes = await rows.evaluateAll((all) =>
          all.map((row) => row.querySelectorAll('.box').length),
        );
        expect(boxes.length).toBeGreaterThan(15);
        expect(new Set(boxes)).toEqual(new Set([6, 12]));
      },
    );

test(
  'the paper carries the child, its age on that date, and the cautions once each',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/next');
    await page.getByLabel('Plan for').fill('2026-06-12');
    await page.getByLabel('Plan for').press('Tab');
    await page.emulateMedia({ media: 'print' });
    const paper = page.locator('.paper');
    await expect(paper).toContainText('Kestrel (fictional)');
    await expect(paper).toContainText('6 mo 1 wk corrected');
    await expect(paper).toContainText('12 June 2026');
    await expect(paper.getByText('Stop at distress', { exact: false })).toHaveCount(1);
    await expect(paper).toContainText('A line without a tick counts as not tested.');
    await expect(page.getByRole('heading', { name: 'Kestrel' })).toBeHidden();
  },
);

test('a sheet for an age needs no child', { tag: '@thorough' }, async ({ page }) => {
  await open(page, '#/sheet');
  await page.getByLabel('Gestation at birth').fill('30w0d');
  await page.getByRole('radio', { name: 'postmenstrual' }).check();
  await page.getByLabel('Age', { exact: true }).fill('36w0d');
  await expect(page.getByRole('heading', { name: /^Age 36w0d postmenstrual/ })).toBeVisible();
  await expect(line(page, 'palmar-grasp')).toContainText('expected to be established');
  await expect(line(page, 'moro')).toContainText('expected to appear: present by term');
  await expect(line(page, 'landau')).toBeHidden();
  await page.getByLabel('Age', { exact: true }).fill('29w0d');
  await expect(page.getByText('This age is before birth')).toBeVisible();
  await page.getByLabel('Gestation at birth').fill('soon');
  await expect(page.getByText('Write weeks and days between 22w0d and 44w6d')).toBeVisible();
});

test(
  'a reflex of the sheet that was removed stays on it, and says so',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/children');
    await more(page, 'Kestrel');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save to a case file Kestrel' }).click();
    const text = await readFile(await (await saving).path(), 'utf8');
    const raw = JSON.parse(text) as {
      child: { label: string };
      sheet: unknown;
      visits: { findings: unknown[] }[];
    };
    raw.child.label = 'Plover';
    raw.sheet = { on: '2026-06-12', reflexes: ['moro', 'own-fencer'] };
    raw.visits.at(-1)!.findings.push({
      reflex: 'own-fencer',
      side: 'left',
      response: 'weak',
      state: 'quiet-alert',
      note: '',
    });
    await page.getByLabel('Open a case file').setInputFiles({
      name: 'case.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(raw)),
    });
    await expect(page.getByRole('heading', { name: 'Plover' })).toBeVisible();
    const said = /Recorded for “own-fencer”, which is no longer in the atlas/;
    await expect(page.getByText(said)).toBeVisible();
    await open(page, '#/next');
    await expect(page.getByText('“own-fencer” is no longer in the atlas')).toBeVisible();
    await open(page, '#/visits/3');
    await expect(page.getByText(said)).toBeVisible();
    // changing the visit keeps it
    await page.getByLabel('Note', { exact: true }).fill('Looked at again.');
    await page.getByLabel('Note', { exact: true }).press('Tab');
    await expect(page.getByText('Saved as the visit of 11 May 2026.')).toBeVisible();
    await page.reload();
    await expect(page.getByText(said)).toBeVisible();
    await open(page, '#/visits/3/record');
    await expect(page.getByText(said)).toBeVisible();
  },
);
