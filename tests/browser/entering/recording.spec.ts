import type { Page } from '@playwright/test';
import { DEMO_RAW } from '../../../src/lib/examples/demo.ts';
import { addChild, expect, open, RECORDING, test, VISIT, workerAnswers } from '../support/page.ts';

/** The line after the tonic neck response in the order for the invented child; it has two sides. */
const SECOND = 'body-righting-body';

const row = (page: Page, reflex: string) => page.locator(`[data-row="${reflex}"]`);
const current = (page: Page) => page.locator('[data-row][aria-current="true"]');
const give = (page: Page, side: string, response: string) =>
  page.getByRole('button', { name: `${side}: ${response}`, exact: true });

test.describe('with a finger on a tablet', () => {
  test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true });

  test('one touch a side, and the next line comes by itself', async ({ page }) => {
    await open(page, '#/visits/new/record');
    await expect(current(page)).toHaveAttribute('data-row', 'atnr');
    await expect(row(page, 'atnr')).toContainText('not tested');
    await give(page, 'left', 'elicited').tap();
    await expect(row(page, 'atnr')).toContainText('right: not tested');
    await give(page, 'right', 'weak').tap();
    await expect(row(page, 'atnr')).toContainText('right: weak');
    await expect(current(page)).toHaveAttribute('data-row', SECOND);
    await give(page, 'both sides', 'not elicited').tap();
    await expect(row(page, SECOND)).toContainText('left: not elicited');
    await expect(row(page, SECOND)).toContainText('right: not elicited');
    await expect(page.getByText(/^2 of \d+ recorded/)).toBeVisible();
  });

  test('every touch is kept: a reload loses nothing, and undo takes one back', async ({ page }) => {
    await open(page, '#/visits/new/record');
    await give(page, 'left', 'brisk').tap();
    await page.waitForURL(RECORDING);
    await page.reload();
    await expect(row(page, 'atnr')).toContainText('left: brisk');
    await give(page, 'right', 'brisk').tap();
    await expect(row(page, 'atnr')).toContainText('right: brisk');
    await page.getByRole('button', { name: 'Undo' }).first().tap();
    await expect(row(page, 'atnr')).toContainText('right: not tested');
    await expect(row(page, 'atnr')).toContainText('left: brisk');
  });

  test('which of two tests was done is asked where their ages differ, and named from then on', async ({
    page,
  }) => {
    await open(page, '#/visits/new/record');
    const which = page.getByLabel('Which was tested');
    await expect(which).toHaveCount(0);
    await row(page, 'protective-forward').tap();
    await expect(which.locator('option')).toHaveText([
      'not stated: judged by the ages of both',
      'Parachute, tipped forward in ventral suspension',
      'Propping, tipped forward in sitting',
    ]);
    await which.selectOption('Propping, tipped forward in sitting');
    await expect(page.getByRole('heading', { name: /forward: propping$/ })).toBeVisible();
    await give(page, 'both sides', 'elicited').tap();
    await page.waitForURL(RECORDING);
    await page.reload();
    await expect(row(page, 'protective-forward')).toContainText('Protective, forward: propping');
    await row(page, 'protective-forward').tap();
    await which.selectOption('Parachute, tipped forward in ventral suspension');
    await expect(row(page, 'protective-forward')).toContainText('forward: parachute');
    await page.getByRole('button', { name: 'Undo' }).first().tap();
    await expect(row(page, 'protective-forward')).toContainText('forward: propping');
    await expect(which).toHaveValue('propping');
  });

  test(
    'taking back the first touch leaves one where one was',
    { tag: '@thorough' },
    async ({ page }) => {
      await open(page, '#/visits/new/record');
      await give(page, 'left', 'brisk').tap();
      await page.waitForURL(RECORDING);
      await page.getByRole('button', { name: 'Undo' }).first().tap();
      await page.waitForURL(/visits\/new\/record/);
      await expect(row(page, 'atnr')).toContainText('not tested');
      await give(page, 'left', 'weak').tap();
      await expect(row(page, 'atnr')).toContainText('left: weak');
    },
  );

  test(
    'not assessable asks why, takes a touch for it, and goes on',
    { tag: '@thorough' },
    async ({ page }) => {
      await open(page, '#/visits/new/record');
      await give(page, 'both sides', 'not assessable').tap();
      await expect(current(page)).toHaveAttribute('data-row', 'atnr');
      await expect(page.getByText('No reason yet.')).toBeVisible();
      await page.getByRole('button', { name: 'splint or plaster' }).tap();
      await expect(current(page)).toHaveAttribute('data-row', SECOND);
      await row(page, 'atnr').tap();
      await expect(page.getByLabel('Why not, left?').last()).toHaveValue('splint or plaster');
    },
  );

  test(
    'the state counts from here on, and each can have its own',
    { tag: '@thorough' },
    async ({ page }) => {
      await open(page, '#/visits/new/record');
      await page.getByLabel('The infant is').selectOption({ label: 'quiet alert' });
      await give(page, 'both sides', 'weak').tap();
      await page.getByLabel('The infant is').selectOption({ label: 'crying' });
      await give(page, 'left', 'weak').tap();
      await row(page, 'atnr').tap();
      await expect(page.getByLabel('State for this one')).toHaveValue('quiet-alert');
      await row(page, SECOND).tap();
      await expect(page.getByLabel('State for this one')).toHaveValue('crying');
      await page.getByLabel('State for this one').selectOption({ label: 'drowsy' });
      await page.reload();
      await row(page, SECOND).tap();
      await expect(page.getByLabel('State for this one')).toHaveValue('drowsy');
    },
  );

  test('every response is a large target, in its place at the side of the thumb', async ({
    page,
  }) => {
    await open(page, '#/visits/new/record');
    const pad = page.getByRole('group', { name: 'right', exact: true });
    const targets = await page
      .locator('.thumb button, .thumb a')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON() as DOMRect));
    for (const { width, height } of targets) {
      expect(height).toBeGreaterThanOrEqual(44);
      expect(width).toBeGreaterThanOrEqual(44);
    }
    const answers = await page
      .locator('.pad button')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
    expect(Math.min(...answers)).toBeGreaterThanOrEqual(48);
    const before = (await pad.boundingBox())!;
    expect(before.x).toBeGreaterThan(410);
    expect(before.y + before.height).toBeLessThanOrEqual(1180);
    // a response, its comment and the reason asked for do not move what the thumb has found
    await give(page, 'left', 'not assessable').tap();
    await expect(page.getByText('No reason yet.')).toBeVisible();
    expect(await pad.boundingBox()).toEqual(before);
    await page.getByRole('button', { name: 'Device in the left hand' }).tap();
    expect((await pad.boundingBox())!.x).toBeLessThan(410);
    await page.reload();
    await give(page, 'left', 'weak').waitFor();
    expect((await pad.boundingBox())!.x).toBeLessThan(410);
  });

  test('the verdict is not shown until it is asked for, and then for one line', async ({
    page,
  }) => {
    await open(page, '#/visits/new/record');
    await give(page, 'left', 'obligatory').tap();
    const caution = page.getByText('A reading of published ages, not a diagnosis.');
    await expect(page.getByRole('button', { name: 'Show the verdict' })).toBeVisible();
    await expect(caution).toBeHidden();
    await expect(page.locator('main')).not.toContainText('persisting');
    await page.getByRole('button', { name: 'Show the verdict' }).tap();
    await expect(page.locator('.judged')).toContainText('persisting, discuss');
    await expect(caution).toBeVisible();
    await page.getByRole('button', { name: 'Skip' }).tap();
    await expect(caution).toBeHidden();
    await open(page, '#/settings');
    await page.getByLabel('Show verdicts while recording').check();
    await open(page, '#/visits/4/record');
    await row(page, 'atnr').tap();
    await expect(page.locator('.judged')).toContainText('persisting, discuss');
  });

  test(
    'a line beyond the sheet is added, and stands after it',
    { tag: '@thorough' },
    async ({ page }) => {
      await open(page, '#/visits/new/record');
      await page.getByText('Add another').tap();
      await page.getByRole('combobox', { name: 'Reflex or reaction' }).fill('galant');
      await page.getByRole('option', { name: 'Galant' }).tap();
      await expect(current(page)).toHaveAttribute('data-row', 'galant');
      await expect(page.getByText('Not on the sheet')).toBeVisible();
      await give(page, 'left', 'weak').tap();
      await page.waitForURL(RECORDING);
      await page.reload();
      await expect(row(page, 'galant')).toContainText('left: weak');
    },
  );
});

test.describe('without a connection', () => {
  test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true, serviceWorkers: 'allow' });

  test('it goes on', { tag: '@thorough' }, async ({ page, context }) => {
    await open(page, '#/');
    await workerAnswers(page);
    await page.reload();
    // what the page had begun to fetch before the worker took over is there first
    await page.waitForLoadState('networkidle');
    await context.setOffline(true);
    await open(page, '#/visits/new/record');
    await give(page, 'left', 'weak').tap();
    await page.getByText('Technique', { exact: true }).tap();
    await expect(page.getByText('Pitfalls')).toBeVisible();
    await page.waitForURL(RECORDING);
    await page.reload();
    await expect(row(page, 'atnr')).toContainText('left: weak');
  });
});

test('the sheet that was made is the order of recording', async ({ page }) => {
  await open(page, '#/next');
  await page.getByLabel('Plan for').fill('2026-06-08');
  await page.getByLabel('Plan for').press('Tab');
  await page.getByRole('button', { name: 'Remove Asymmetrical tonic neck reflex' }).click();
  await page.getByRole('link', { name: 'Record findings' }).click();
  await expect(page.getByText('In the order of the sheet for 8 June 2026.')).toBeVisible();
  await expect(current(page)).toHaveAttribute('data-row', SECOND);
  await expect(row(page, 'atnr')).toHaveCount(0);
});

test('a visit is recorded with the keyboard alone', async ({ page }) => {
  await open(page, '#/visits/new/record');
  await page.keyboard.press('3');
  await expect(row(page, 'atnr')).toContainText('left: elicited');
  await page.keyboard.press('2');
  await expect(row(page, 'atnr')).toContainText('right: weak');
  await expect(current(page)).toHaveAttribute('data-row', SECOND);
  await page.keyboard.press('Shift+Digit4');
  await expect(row(page, SECOND)).toContainText('right: brisk');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Backspace');
  await expect(row(page, SECOND)).toContainText('right: not tested');
  await page.keyboard.press('u');
  await expect(row(page, SECOND)).toContainText('right: brisk');
  await page.keyboard.press('c');
  await page.keyboard.type('3 tries, slow');
  await page.keyboard.press('Enter');
  await expect(row(page, SECOND)).toContainText('right: brisk');
  await page.keyboard.press('s');
  await expect(page.getByLabel('State for this one')).toBeFocused();
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('n');
  await expect(page.getByText('No reason yet.')).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(page.getByText('No reason yet.')).toBeHidden();
  await page.keyboard.press('v');
  await expect(page.getByText('Nothing is recorded here to judge.')).toBeVisible();
  await page.keyboard.press('?');
  const keys = page.getByRole('dialog', { name: 'Keys while recording' });
  await expect(keys).toContainText('Shift with 1 to 5');
  await page.keyboard.press('1');
  await page.keyboard.press('Escape');
  await expect(keys).toBeHidden();
  await expect(page.getByText(/^2 of \d+ recorded/)).toBeVisible();
  await page.reload();
  await row(page, SECOND).press('Enter');
  await page.keyboard.press('ArrowRight');
  await expect(page.getByLabel('Comment, right')).toHaveValue('3 tries, slow');
});

test(
  'a date ahead is asked about, and a reload loses nothing meanwhile',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/visits/new');
    await page.getByLabel('Examiner').fill('Linnet');
    await page.getByLabel('Visit date').fill('2026-07-01');
    await page.getByLabel('Visit date').press('Tab');
    await expect(page.getByText(/is after today, 8 June 2026/)).toBeVisible();
    await expect(page.getByText('Not saved yet: answer the question')).toBeVisible();
    await page.reload();
    await expect(page.getByLabel('Visit date')).toHaveValue('2026-07-01');
    await page.getByRole('button', { name: 'Keep it' }).click();
    await expect(page.getByText('Saved as the visit of 1 July 2026.')).toBeVisible();
    await page.getByRole('link', { name: 'Visits' }).click();
    await expect(page.getByRole('link', { name: '1 July 2026' })).toBeVisible();
  },
);

test('a date before birth is asked about, with both ways to mend it', async ({ page }) => {
  await open(page, '#/visits/3');
  await page.getByLabel('Visit date').fill('2025-09-11');
  await page.getByLabel('Visit date').press('Tab');
  await expect(page.getByText(/is before the birth date, 4 October 2025/)).toBeVisible();
  await page.getByRole('button', { name: 'Yes, correct the visit date' }).click();
  await expect(page.getByLabel('Visit date')).toBeFocused();
  await page.getByRole('link', { name: 'No, correct the birth date' }).click();
  await expect(page.getByLabel('Birth date')).toHaveValue('2025-10-04');
  await open(page, '#/visits/3');
  await expect(page.getByLabel('Visit date')).toHaveValue('2025-09-11');
  await expect(page.getByRole('button', { name: 'Change Moro reflex' })).toBeVisible();
});

test(
  'a second visit on one date leads to the first, and one out of order is sorted',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/visits/new');
    await page.getByLabel('Examiner').fill('Rowan');
    await page.getByLabel('Visit date').fill('2026-03-16');
    await page.getByLabel('Visit date').press('Tab');
    await expect(page.getByText('There is another visit on this date, by Rowan.')).toBeVisible();
    await page.getByRole('button', { name: 'Name another examiner' }).click();
    await expect(page.getByLabel('Examiner')).toBeFocused();
    await page.getByLabel('Visit date').fill('2026-02-02');
    await page.getByLabel('Visit date').press('Tab');
    await expect(
      page.getByText('Visits are listed by date: this one comes before that of 16 March 2026.'),
    ).toBeVisible();
    await page.getByLabel('Visit date').fill('2026-03-16');
    await page.getByLabel('Visit date').press('Tab');
    await page.getByRole('link', { name: 'Go to that visit' }).click();
    await expect(page.getByRole('button', { name: 'Change Symmetrical tonic neck' })).toBeVisible();
  },
);

test('another due date says which verdicts it changes before it is taken', async ({ page }) => {
  await open(page, '#/child');
  await page.getByRole('textbox', { name: 'Gestation at birth' }).fill('36w2d');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  const asked = page.getByRole('region', { name: /^This changes \d+ of \d+ verdicts/ });
  await expect(asked).toContainText('The due date moves 35 days earlier.');
  await expect(asked.getByRole('listitem').first()).toContainText('→');
  await expect(page.getByText('· born at 31w2d')).toBeVisible();
  await page.getByRole('button', { name: 'Discard' }).click();
  await expect(page.getByRole('textbox', { name: 'Gestation at birth' })).toHaveValue('31w2d');
  await page.getByRole('textbox', { name: 'Gestation at birth' }).fill('36w2d');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByRole('button', { name: 'Save the change' }).click();
  await expect(page.getByText('· born at 36w2d')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('· born at 31w2d')).toBeVisible();
});

test(
  'a child without a visit is recorded from the first touch',
  { tag: '@thorough' },
  async ({ page }) => {
    await addChild(page, { label: 'Plover', born: '2026-05-01', gestation: '39w0d' });
    await expect(page.getByRole('heading', { name: 'Plover' })).toBeVisible();
    await open(page, '#/visits/new/record');
    await page.keyboard.press('3');
    await page.waitForURL(RECORDING);
    await expect(page.getByText(/recorded. Saved at each touch/)).toBeVisible();
  },
);

test('an address that names a visit by its number, as all once did, leads to it', async ({
  page,
}) => {
  for (const [hash, at] of [
    ['#/visits/2', VISIT],
    ['#/visits/2/record', RECORDING],
  ] as const) {
    await open(page, hash);
    await expect(page).toHaveURL(at);
    expect(page.url()).toContain(DEMO_RAW.visits[1]!.id);
    await expect(page.getByRole('heading', { name: /16 March 2026/ })).toBeVisible();
  }
  await open(page, '#/visits/9');
  await expect(page.getByRole('heading', { name: 'There is no such visit.' })).toBeVisible();
});
