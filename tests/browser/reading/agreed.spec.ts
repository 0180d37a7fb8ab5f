import { asking, expect, open, test, verdict } from '../support/page.ts';

test('two examiners of a day: both count, one agreed answer is recorded beside both and judged', async ({
  page,
}) => {
  await open(page, '#/children');
  await page.getByRole('button', { name: 'Add sample children' }).click();
  await page.getByRole('button', { name: 'Turnstone', exact: true }).click();
  await open(page, '#/');
  const atnr = page.locator('li[data-reflex="atnr"]');
  await expect(asking(page)).toContainText(['Asymmetrical tonic neck']);
  await expect(atnr).toContainText('The examiners differ on the left:');
  await expect(atnr).toContainText('Do: Look again together and agree on one answer');
  await open(page, '#/report');
  await expect(page.getByRole('article')).toContainText('The examiners differ on the left:');
  await open(page, '#/table');
  const differ = page.getByRole('region', { name: 'Where the examiners differ' });
  const one = differ.getByRole('group', { name: 'Asymmetrical tonic neck, left' });
  await one.getByLabel('Agreed answer').selectOption('elicited');
  await expect(page.getByText('Agreed answer changed.')).toBeVisible();
  await expect(one.getByRole('listitem')).toHaveCount(2);
  await page.reload();
  await expect(one.getByLabel('Agreed answer')).toHaveValue('elicited');
  await open(page, '#/');
  await expect(verdict(page, 'atnr')).not.toContainText('Obligatory');
  await expect(page.locator('li[data-reflex="atnr"]')).toContainText('Agreed: elicited.');
});
