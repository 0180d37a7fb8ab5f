import { AxeBuilder } from '@axe-core/playwright';
import { expect, open, test } from './support/page.ts';

// these walk through several pages each, on a machine that may be busy
const ATLAS_PAGES = [
  '#/reflexes',
  '#/reflexes?does=arms-unlike',
  '#/reflexes/moro',
  '#/reflexes/atnr',
  '#/reflexes/nowhere',
  '#/compare',
  '#/compare/moro/acoustic-startle',
  '#/compare/stepping/placing-leg/positive-support/protective-downward',
  '#/order',
  '#/quarrels',
  '#/own',
  '#/own/source/new',
  '#/own/reflex/new',
] as const;

for (const colorScheme of ['light', 'dark'] as const)
  for (const width of [1280, 390])
    test(`no page of the atlas has an accessibility fault, ${colorScheme}, ${width} wide`, async ({
      page,
    }) => {
      test.setTimeout(180_000);
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height: 844 });
      for (const hash of ATLAS_PAGES) {
        await open(page, hash);
        const { violations } = await new AxeBuilder({ page }).analyze();
        const said = violations.map(
          ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
        );
        expect(said, hash).toEqual([]);
      }
    });

for (const size of [
  { width: 1280, height: 720 },
  { width: 1920, height: 1080 },
  { width: 820, height: 1180 },
  { width: 390, height: 844 },
])
  test(`no page of the atlas is wider than a window of ${size.width}`, async ({ page }) => {
    await page.setViewportSize(size);
    for (const hash of ATLAS_PAGES) {
      await open(page, hash);
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over, hash).toBeLessThanOrEqual(0);
    }
  });

test('a reflex has its figure, its steps, its handling, its sources and its counts', async ({
  page,
}) => {
  await open(page, '#/reflexes/atnr');
  await expect(page.getByRole('heading', { name: 'How it is elicited' })).toBeInViewport();
  await expect(page.getByRole('heading', { name: 'Handling' })).toBeVisible();
  await expect(page.getByText('fencing posture')).toBeVisible();
  await page.getByRole('button', { name: 'Response', exact: true }).click();
  const figure = page.getByRole('img', { name: /Asymmetrical tonic neck reflex, the response/ });
  const left = await figure.innerHTML();
  await page.getByRole('button', { name: 'right', exact: true }).click();
  expect(await figure.innerHTML()).not.toBe(left);
  await expect(page.getByRole('row', { name: /Shapiro et al. 1981/ }).first()).toBeVisible();
  await expect(
    page.getByRole('img', { name: /Shapiro et al. 1981.*6 months: 42 % of 249/ }),
  ).toBeVisible();
  await expect(page.getByText('not a diagnosis').first()).toBeVisible();
  await page.getByRole('link', { name: /^Next/ }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Symmetrical tonic neck reflex');
});

test('side by side says what differs, and takes up to four', async ({ page }) => {
  await open(page, '#/compare/moro/acoustic-startle');
  await expect(page.getByText(/hands open instead of closed.*instead of a sound/)).toBeVisible();
  await expect(page.getByRole('row', { name: /^hands, then/ })).toContainText('over by then');
  for (const name of ['Tonic labyrinthine reflex', 'Landau reaction'])
    await page.getByLabel('Add another').selectOption({ label: name });
  await expect(page.getByRole('button', { name: /^Take out/ })).toHaveCount(4);
  await expect(page.getByLabel('Add another')).toHaveCount(0);
  await page.getByRole('button', { name: 'Stimulus', exact: true }).click();
  await expect(page.getByRole('img', { name: /the stimulus:/ })).toHaveCount(4);
});

test('a reflex is found by a slip, by its limbs, and by an age', async ({ page }) => {
  await open(page, '#/reflexes');
  await page.getByLabel('Name or synonym').fill('fensing');
  await expect(page.getByText('1 of 44.')).toBeVisible();
  await expect(page.getByRole('link', { name: /^Asymmetrical tonic neck/ })).toBeVisible();
  await page.getByRole('button', { name: 'Show all' }).click();
  await page.getByText('By what the limbs do').click();
  await page.getByRole('button', { name: 'arms: unlike each other' }).click();
  await expect(page.getByText('4 of 44.')).toBeVisible();
  await expect(page).toHaveURL(/does=arms-unlike/);
  await page.getByRole('textbox', { name: 'At the age of' }).fill('4');
  await page.keyboard.press('Tab');
  await expect(page.getByText('At 4 mo after term:')).toBeVisible();
  await expect(
    page.locator('section').filter({ hasText: 'Should be gone' }).getByText('Crawling'),
  ).toBeVisible();
  await page.getByRole('textbox', { name: 'At the age of' }).fill('soon');
  await page.keyboard.press('Tab');
  await expect(page.getByText('Write an age as a number, such as 4.')).toBeVisible();
});

test('the order of things answers the classic question with its windows', async ({ page }) => {
  await open(page, '#/order');
  await expect(
    page.getByText(/The two arms come apart from each other first.*all \d+ pairs/),
  ).toBeVisible();
  const pairs = page.getByText(/^All \d+ pairs of windows$/).first();
  const n = Number(/\d+/.exec((await pairs.textContent()) ?? '')?.[0]);
  await pairs.click();
  await expect(page.locator('details[open] tbody tr')).toHaveCount(n);
});

test('the biggest quarrels are told in sentences', async ({ page }) => {
  await open(page, '#/quarrels');
  await expect(page.getByText(/^On \d+ of the \d+ days on which two or more/)).toHaveCount(5);
});

test('the atlas is reached by keyboard from the header', async ({ page }) => {
  await open(page, '#/about');
  await page.getByRole('link', { name: 'Reflexes', exact: true }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Reflexes and reactions');
});
