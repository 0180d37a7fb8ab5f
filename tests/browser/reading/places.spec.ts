import { expect, open, test, TODAY } from '../support/page.ts';
import { goTo, placeLink, whereabouts } from '../support/places.ts';

test('the search goes to a reflex, a page and a child, by keys alone and over a slip', async ({
  page,
}) => {
  await open(page, '#/about');
  const field = page.getByRole('combobox', { name: 'Find a child, reflex or page' });
  const chosen = page.getByRole('option', { selected: true });
  await page.keyboard.press('Control+k');
  await page.keyboard.type('asymetrical'); // an m too few, and typed before the search has come
  await expect(field).toHaveValue('asymetrical');
  await expect(field).toBeFocused();
  await expect(chosen).toContainText('Asymmetrical tonic neck');
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/#\/reflexes\/atnr$/);
  await expect(field).toBeHidden();

  await placeLink(page, 'Settings').focus();
  await page.keyboard.press('Control+k');
  await expect(field).toBeFocused();
  await field.fill('kestrel');
  await expect(chosen).toContainText('Kestrel');
  await page.keyboard.press('ArrowDown');
  await expect(chosen).toContainText('of Kestrel');
  await expect(field).toHaveAttribute('aria-activedescendant', (await chosen.getAttribute('id'))!);
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await expect(chosen).toHaveCount(1);
  await page.keyboard.press('Escape');
  await expect(field).toBeHidden();
  await expect(placeLink(page, 'Settings')).toBeFocused();

  await page.getByRole('button', { name: 'Find a child, reflex or page' }).click();
  await field.fill('backup');
  await page.getByRole('option', { name: 'Storage and backup' }).click();
  await expect(page).toHaveURL(/#\/keeping$/);
  await page.keyboard.press('Control+k');
  await field.fill('kestrel');
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/#\/$/);
  await expect(page.getByRole('heading', { name: 'Kestrel' })).toBeVisible();
});

test('a page says where it is, from the place above down to itself', async ({ page }) => {
  await open(page, '#/voices');
  await expect.poll(() => whereabouts(page)).toEqual(['Reflexes', 'Sources']);
  await goTo(page, 'Teach');
  await goTo(page, 'Practice');
  await expect.poll(() => whereabouts(page)).toEqual(['Teach', 'Practice']);
  await open(page, '#/');
  await goTo(page, 'Share');
  await goTo(page, 'Report');
  await expect.poll(() => whereabouts(page)).toEqual(['Children', 'Share', 'Report']);
  await expect(placeLink(page, 'Report')).toHaveAttribute('aria-current', 'page');
  await expect(placeLink(page, 'Share')).toHaveAttribute('aria-current', 'true');
});

test('the head speaks of the visit that is on the screen', async ({ page }) => {
  await open(page, '#/visits/1');
  const head = page.getByRole('banner');
  const visit = head.getByRole('combobox', { name: 'visit' });
  await expect(visit.locator('option:checked')).toHaveText('12 January 2026');
  await expect(head).toContainText('5 wk 4 d corrected');
  await visit.selectOption({ label: '11 May 2026' });
  await expect(page.getByRole('heading', { level: 2 }).first()).toHaveText('11 May 2026');
  await expect(head).toContainText('5 mo 1 wk corrected');
  await open(page, '#/visits/1/record');
  await expect(visit.locator('option:checked')).toHaveText('12 January 2026');
  await expect(head).toContainText('5 wk 4 d corrected');
  // a visit that is begun has no other's date, age or examiner
  await open(page, '#/visits/new');
  await expect(head).toContainText('new visit 8 June 2026');
  await expect(head).not.toContainText('Rowan');
  await page.getByLabel('Visit date').fill('2026-06-01');
  await page.getByLabel('Visit date').press('Tab');
  await expect(head).toContainText('new visit 1 June 2026');
  expect(TODAY).toBe('2026-06-08');
  await open(page, '#/');
  await expect(visit.locator('option:checked')).toHaveText('11 May 2026');
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test('four places lie under the thumb, and one row is before the content', async ({ page }) => {
    for (const hash of ['#/', '#/visits/1', '#/sources', '#/settings']) {
      await open(page, hash);
      const main = await page.locator('main').boundingBox();
      expect(main!.y, hash).toBeLessThan(64);
      const bar = await page.getByRole('navigation', { name: 'Pages', exact: true }).boundingBox();
      expect(bar!.y + bar!.height, hash).toBe(844);
      expect(bar!.height, hash).toBeGreaterThanOrEqual(44);
    }
    await page.getByRole('navigation', { name: 'Pages', exact: true }).getByText('Reflexes').tap();
    await expect(page).toHaveURL(/#\/reflexes$/);
    await expect(placeLink(page, 'Compare')).toBeHidden();
    await page.getByRole('button', { name: 'All reflexes: other pages' }).tap();
    await goTo(page, 'Compare');
    await expect(page).toHaveURL(/#\/compare$/);
    await expect(placeLink(page, 'Sources')).toBeHidden();
  });
});

test.describe('enlarged twofold on a small screen', () => {
  test.use({ viewport: { width: 640, height: 360 } });

  test('lanes of the chart and all responses of a recording are in sight', async ({ page }) => {
    await open(page, '#/');
    const inSight = () =>
      page
        .locator('#chart [data-lane]')
        .evaluateAll(
          (lanes) =>
            lanes.filter((one) => one.getBoundingClientRect().bottom <= innerHeight).length,
        );
    await expect.poll(inSight).toBeGreaterThanOrEqual(3);
    await open(page, '#/visits/new/record');
    for (const response of ['not elicited', 'obligatory', 'not assessable'])
      await expect(
        page.getByRole('button', { name: `left: ${response}`, exact: true }),
      ).toBeInViewport({ ratio: 0.99 });
  });
});

test('the conference shows every lane that was tested at once', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 720 });
  await open(page, '#/table');
  const lanes = page.locator('[data-lane]');
  await expect(lanes).toHaveCount(14);
  for (const lane of await lanes.all()) await expect(lane).toBeInViewport({ ratio: 0.99 });
});
