import { expect, open, test } from '../support/page.ts';
import { placeLink } from '../support/places.ts';

test('a reflex has its figure, its steps, its handling, its sources and its counts', async ({
  page,
}) => {
  await open(page, '#/reflexes/atnr');
  const figure = page.getByRole('img', { name: /Asymmetrical tonic neck reflex, the response/ });
  await expect(figure).toBeInViewport();
  const ages = page.getByRole('heading', { name: 'When it appears and integrates, by source' });
  await expect(ages).toBeInViewport();
  await expect(page.getByRole('heading', { name: 'Technique', exact: true })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Handling' })).toBeVisible();
  await expect(page.getByText('fencing posture')).toBeVisible();
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
  // as it is taught, the startle spreads the arms like the Moro: the stimulus tells them apart
  await expect(page.getByText(/Same arms, hands.*head drop instead of a sound/)).toBeVisible();
  await expect(page.getByRole('row', { name: /^Elicited by/ })).toContainText('a sound');
  for (const name of ['Tonic labyrinthine reflex', 'Landau reaction'])
    await page.getByLabel('Add another').selectOption({ label: name });
  await expect(page.getByRole('button', { name: /^Remove/ })).toHaveCount(4);
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
  await page.getByText('By limb movement').click();
  await page.getByRole('button', { name: 'arms: differ' }).click();
  await expect(page.getByText('4 of 44.')).toBeVisible();
  await expect(page).toHaveURL(/does=arms-unlike/);
  await page.getByRole('textbox', { name: 'At the age of' }).fill('4');
  await page.keyboard.press('Tab');
  await expect(page.getByText('At 4 mo after term:')).toBeVisible();
  await expect(
    page.locator('section').filter({ hasText: 'Expected to be integrated' }).getByText('Crawling'),
  ).toBeVisible();
  await page.getByRole('textbox', { name: 'At the age of' }).fill('soon');
  await page.keyboard.press('Tab');
  await expect(page.getByText('Write an age as a number, such as 4.')).toBeVisible();
});

test('the order of things answers the classic question with its windows', async ({ page }) => {
  await open(page, '#/order');
  await expect(
    page.getByText(/The arms dissociate from each other first.*all \d+ pairs/),
  ).toBeVisible();
  const pairs = page.getByText(/^All \d+ pairs of windows$/).first();
  const n = Number(/\d+/.exec((await pairs.textContent()) ?? '')?.[0]);
  await pairs.click();
  await expect(page.locator('details[open] tbody tr')).toHaveCount(n);
});

test('the biggest quarrels are told in sentences', { tag: '@thorough' }, async ({ page }) => {
  await open(page, '#/quarrels');
  await expect(page.getByText(/^On \d+ of the \d+ days for which two or more/)).toHaveCount(5);
});

test('the atlas is reached by keyboard from the header', { tag: '@thorough' }, async ({ page }) => {
  await open(page, '#/about');
  await placeLink(page, 'Reflexes').focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Reflexes and reactions');
});
