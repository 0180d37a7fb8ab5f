import type { Page } from '@playwright/test';
import { chart, expect, open, test } from '../support/page.ts';

const both = (reflex: string, response: string, tries?: number) =>
  ['left', 'right'].map((side) => ({
    reflex,
    side,
    response,
    state: 'quiet-alert',
    ...(tries ? { tries } : {}),
  }));

/** Opens an invented child born at term on 1 January 2026. */
async function openChild(page: Page, visits: readonly object[]): Promise<void> {
  const record = {
    format: 'tidemark-case',
    version: 1,
    child: { label: 'Plover', born: '2026-01-01', gestation: '40w0d', invented: true },
    visits,
  };
  await open(page, '#/children');
  await page.getByLabel('Open a case file').setInputFiles({
    name: 'plover.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(record)),
  });
  await expect(page.getByRole('heading', { name: 'Plover' })).toBeVisible();
}

test('a healthy child first seen late is not called out of order, and the figures are there on asking', async ({
  page,
}) => {
  await openChild(page, [
    {
      on: '2026-06-01',
      findings: [
        ...both('atnr', 'not-elicited'),
        { reflex: 'stnr', side: 'midline', response: 'elicited', state: 'quiet-alert' },
      ],
    },
  ]);
  await expect(chart(page)).toContainText('the visits begin too late to show it');
  const sequences = page.getByRole('region', { name: 'Sequences' });
  await expect(sequences).toContainText('the visits begin too late to show it');
  await sequences.getByText('Arms dissociated from each other, then').click();
  await expect(sequences).toContainText('Probability from the sources alone 0.94');
  await expect(sequences.locator('.signal')).toHaveCount(0);
});

test('a lost skill that the carer confirms should not wait, and the family is told so', async ({
  page,
}) => {
  await openChild(page, [
    { on: '2026-03-01', findings: [], milestones: [{ milestone: 'rolling', seen: true }] },
    {
      on: '2026-06-01',
      findings: both('moro', 'elicited'),
      milestones: [{ milestone: 'rolling', seen: false, lost: true }],
    },
  ]);
  await expect(page.getByRole('note')).toContainText('To be seen by a doctor today');
  await open(page, '#/visits/2');
  await expect(page.getByLabel('carer reports it as lost')).toBeChecked();
});

test('what was not elicited is tried once more with one touch, and then counts as missing', async ({
  page,
}) => {
  await openChild(page, [{ on: '2026-01-20', findings: both('palmar-grasp', 'not-elicited') }]);
  await expect(page.locator('[data-reflex="palmar-grasp"]')).toContainText('Tried once');
  await open(page, '#/visits/1/record');
  await page.locator('[data-row="palmar-grasp"]').click();
  await page.getByRole('button', { name: 'both sides: not elicited' }).click();
  await page.getByRole('button', { name: 'Tried once more: still not elicited' }).click();
  await expect(page.getByText('Palmar grasp: not elicited, tried 2 times.').first()).toBeVisible();
  await open(page, '#/');
  await expect(page.locator('[data-reflex="palmar-grasp"]')).toContainText('discuss');
});
