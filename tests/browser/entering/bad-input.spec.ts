import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { addFinding, expect, listed, more, open, test } from '../support/page.ts';

/** The invented child's record, as the page would save it. */
async function savedText(page: Page): Promise<string> {
  await open(page, '#/children');
  const save = page.getByRole('button', { name: 'Save to a case file Kestrel' });
  if (!(await save.isVisible())) await more(page, 'Kestrel');
  const saving = page.waitForEvent('download');
  await save.click();
  return readFile(await (await saving).path(), 'utf8');
}

const CHILD = [
  [
    'a birth date that does not exist',
    { born: '2026-02-30' },
    /Birth date: "2026-02-30" is not a date/,
  ],
  ['no label', { label: '' }, /Name or code: is empty/],
  ['a gestation out of range', { gestation: '50w0d' }, /Gestation at birth: 50w0d is outside/],
  [
    'a gestation that is none',
    { gestation: 'seven' },
    /Gestation at birth: "seven" is not understood/,
  ],
  ['no dating at all', { gestation: '' }, /Gestation at birth: is needed/],
  [
    'script in the label',
    { label: '<script>alert(1)</script>' },
    /Name or code: holds markup or script/,
  ],
] as const;

/** Tries to add a child with one thing wrong. */
async function expectRefused(
  page: Page,
  [what, wrong, sentence]: (typeof CHILD)[number],
): Promise<void> {
  await open(page, '#/children/new');
  const typed = { label: 'Plover', born: '2026-01-04', gestation: '33w1d', ...wrong };
  await page.getByLabel('Name or code').fill(typed.label);
  await page.getByLabel('Birth date').fill(typed.born);
  await page.getByRole('textbox', { name: 'Gestation at birth' }).fill(typed.gestation);
  await page.getByRole('button', { name: 'Add child' }).click();
  await expect(page.getByText(sentence), what).toBeVisible();
  await expect(page.getByLabel('Name or code'), what).toHaveValue(typed.label);
  await expect(page.getByLabel('Birth date'), what).toHaveValue(typed.born);
  await open(page, '#/children');
  await expect(listed(page), what).toHaveText(['Kestrel']);
}

test('a new child that cannot be is refused with a sentence, and what was typed stays', async ({
  page,
}) => {
  await expectRefused(page, CHILD[0]);
});

test(
  'each of the other things wrong with a new child is refused with its sentence',
  { tag: '@thorough' },
  async ({ page }) => {
    for (const wrong of CHILD.slice(1)) await expectRefused(page, wrong);
  },
);

test(
  'a due date that contradicts the birth is refused with a sentence',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/children/new');
    await page.getByLabel('Name or code').fill('Plover');
    await page.getByLabel('Birth date').fill('2026-01-04');
    await page.getByRole('radio', { name: 'Due date' }).check();
    await page.getByRole('textbox', { name: 'Due date' }).fill('2026-09-01');
    await page.getByRole('button', { name: 'Add child' }).click();
    await expect(page.getByText(/Due date: 2026-09-01 would mean birth at/)).toBeVisible();
  },
);

const VISIT = [
  ['before birth', '2025-01-01', /Visit date: 2025-01-01 is before the birth/],
  ['on a day that does not exist', '2026-13-01', /Visit date: "2026-13-01" is not a date/],
] as const;

// what the page asks about a date before birth is tried in recording.spec.ts too, in the everyday run
for (const [what, on, sentence] of VISIT)
  test(
    `a visit ${what} is not kept, and nothing entered is lost`,
    { tag: '@thorough' },
    async ({ page }) => {
      const before = await savedText(page);
      await open(page, '#/visits/new');
      await addFinding(page, 'moro', 'Moro reflex', { left: 'elicited' });
      await page.getByLabel('Visit date').fill(on);
      await page.getByLabel('Visit date').press('Tab');
      await expect(page.getByText(sentence)).toBeVisible();
      await expect(page.getByText('Not saved yet')).toBeVisible();
      await page.getByRole('link', { name: 'Visits' }).click();
      await page.getByRole('link', { name: 'Finish it' }).click();
      await expect(page.getByLabel('Visit date')).toHaveValue(on);
      await expect(page.getByRole('button', { name: 'Change Moro reflex' })).toBeVisible();
      const kept = JSON.parse(await savedText(page)) as { visits: { on: string }[] };
      expect(kept.visits.map((visit) => visit.on)).not.toContain(on);
      expect(kept.visits.slice(0, 3)).toEqual(
        (JSON.parse(before) as typeof kept).visits.slice(0, 3),
      );
    },
  );

test(
  'a second visit of one examiner on one date is refused with a sentence',
  { tag: '@thorough' },
  async ({ page }) => {
    const before = await savedText(page);
    await open(page, '#/visits/new');
    await page.getByLabel('Visit date').fill('2026-05-11');
    await page.getByLabel('Examiner').fill('Rowan');
    await page.getByLabel('Examiner').press('Tab');
    await expect(
      page.getByText(/Visit date: 2026-05-11 already has a visit by Rowan/),
    ).toBeVisible();
    expect(await savedText(page)).toBe(before);
  },
);

test(
  'script in a note is refused, and the visit before stands',
  { tag: '@thorough' },
  async ({ page }) => {
    const before = await savedText(page);
    await open(page, '#/visits/3');
    await page.getByLabel('Note', { exact: true }).fill('<img src=x onerror=alert(1)>');
    await page.getByLabel('Note', { exact: true }).press('Tab');
    await expect(page.getByText(/Note: holds markup or script/)).toBeVisible();
    expect(await savedText(page)).toBe(before);
  },
);

const change = (text: string, edit: (raw: Record<string, never>) => unknown): string =>
  JSON.stringify(edit(JSON.parse(text) as Record<string, never>));

const FILES: [string, (text: string) => string, RegExp][] = [
  ['no JSON', () => 'hello', /is neither a case file nor a table/],
  ['another program’s', () => '{"format":"other"}', /is not a Tidemark case/],
  ['cut short', (text) => text.slice(0, text.length / 2), /ends in the middle/],
  ['newer', (text) => text.replace('"version": 2', '"version": 9'), /saved by a newer Tidemark/],
  [
    'one with a finding twice',
    (text) =>
      change(text, (raw) => {
        const { visits } = raw as unknown as { visits: { findings: unknown[] }[] };
        visits[0]!.findings.push(visits[0]!.findings[0]);
        return raw;
      }),
    /is recorded twice at this visit/,
  ],
  [
    'one with script in a string',
    (text) => text.replace('"Kestrel"', '"<script>alert(1)</script>"'),
    /holds markup or script/,
  ],
  [
    'one with a reflex mistyped',
    (text) => text.replaceAll('"moro"', '"morro"'),
    /did you mean "moro"\?/,
  ],
];

test('a file that cannot be read is refused with a sentence, and nothing has changed', async ({
  page,
}) => {
  const before = await savedText(page);
  for (const [what, spoil, sentence] of FILES) {
    await page.getByLabel('Open a case file').setInputFiles({
      name: `${what}.json`,
      mimeType: 'application/json',
      buffer: Buffer.from(spoil(before)),
    });
    await expect(page.getByText(sentence).first(), what).toBeVisible();
    await expect(page.getByText('The file was not opened; nothing has changed.')).toBeVisible();
    await expect(listed(page), what).toHaveText(['Kestrel']);
  }
  expect(await savedText(page)).toBe(before);
});

test('a file of 200 MB is refused before it is read', { tag: '@thorough' }, async ({ page }) => {
  await open(page, '#/');
  await page.evaluate(() => {
    const file = new File(['{}'], 'large.json', { type: 'application/json' });
    Object.defineProperty(file, 'size', { value: 200_000_000 });
    Object.defineProperty(file, 'text', {
      value: () => {
        throw new Error('the file was read');
      },
    });
    const carried = new DataTransfer();
    carried.items.add(file);
    const drop = new DragEvent('drop', { bubbles: true, cancelable: true, dataTransfer: carried });
    Object.defineProperty(drop, 'dataTransfer', { value: { types: ['Files'], files: [file] } });
    document.body.dispatchEvent(drop);
  });
  await expect(
    page.getByText(/The file: is about 200 MB; a case file is at most 5 MB/),
  ).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Kestrel' })).toBeVisible();
});

test(
  'a plan for a date that does not exist is refused with a sentence',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/next');
    await page.getByLabel('Plan for').fill('2026-02-30');
    await page.getByLabel('Plan for').press('Tab');
    await expect(page.getByText(/"2026-02-30" is not a date that exists/)).toBeVisible();
  },
);
