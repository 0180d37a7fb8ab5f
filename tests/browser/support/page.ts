/** The page under test: opened on a fixed day, and not one error or warning in its console. */
import { expect, test as base, type Page } from '@playwright/test';

/** What the test runner itself says in the console where it holds the service worker off. */
const HELD_OFF = 'Service Worker registration blocked by Playwright';

/** The day on which every test takes place. */
export const TODAY = '2026-06-08';

/** Gathers the errors and warnings of a window's console, and what it throws. */
export function listen(page: Page, heard: string[]): void {
  page.on('console', (message) => {
    const text = message.text();
    if (['error', 'warning'].includes(message.type()) && text !== HELD_OFF) heard.push(text);
  });
  page.on('pageerror', (error) => heard.push(error.message));
}

export const test = base.extend<{ quiet: undefined }>({
  quiet: [
    async ({ page }, use) => {
      const heard: string[] = [];
      listen(page, heard);
      await page.clock.setFixedTime(new Date(`${TODAY}T10:00:00`));
      await use(undefined);
      expect(heard).toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };

/**
 * Waits until the page shows what its address names, in its own letters. A goto settles as soon as the
 * address has changed; the page follows.
 */
export async function arrived(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const main = document.querySelector('main');
    // an address that names a visit by its number leads to the one that names its id
    const title = /^#\/visits\/\d+(?:\/|$)/.test(location.hash) ? 'h2' : 'h1, h2';
    return main?.dataset.address === location.hash && main.querySelector(title) !== null;
  });
  await page.evaluate(() => document.fonts.ready);
}

/** Goes to a page by its hash, as an address that is typed in: within the page where one is open. */
export async function open(page: Page, hash: string): Promise<void> {
  await page.goto(`/${hash}`);
  await arrived(page);
}

/** The end of an address of a visit that is in the record, by its id. */
export const VISIT = /#\/visits\/[\da-f]{8}(?:-[\da-f]{4}){3}-[\da-f]{12}$/;
/** The same of its recording. */
export const RECORDING = /#\/visits\/[\da-f]{8}(?:-[\da-f]{4}){3}-[\da-f]{12}\/record$/;

/** Waits until the service worker has all of the site and answers for this page. */
export const workerAnswers = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) => {
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true });
    });
  });

/** Goes to a page by its hash as at the first visit: scripts, store and all begin anew. */
export async function openAnew(page: Page, hash: string): Promise<void> {
  await page.goto('about:blank');
  await open(page, hash);
}

/** The names in the list of what asks for attention, those gathered as fitting left out. */
export const asking = (page: Page) =>
  page.locator('section[aria-labelledby="attention"] > ul > li .name');

/** The entry of a reflex among the verdicts. */
export const verdict = (page: Page, reflex: string) =>
  page.locator(`li[data-reflex="${reflex}"] > button`);

export const chart = (page: Page) => page.locator('#chart');

/** Shows more about a child in the list: its tags and what can be done with it. */
export const more = (page: Page, label: string): Promise<void> =>
  page.getByRole('button', { name: `More about ${label}`, exact: true }).click();

/** The labels in the list of children, in their order. */
export const listed = (page: Page) => page.locator('.rows .name');

/** Fills the form of a new child and adds it. */
export async function addChild(
  page: Page,
  child: { label: string; born: string; gestation: string; dating?: string },
): Promise<void> {
  await open(page, '#/children/new');
  await page.getByLabel('Name or code').fill(child.label);
  await page.getByLabel('Birth date').fill(child.born);
  await page.getByRole('textbox', { name: 'Gestation at birth' }).fill(child.gestation);
  if (child.dating) await page.getByRole('radio', { name: child.dating }).check();
  await page.getByRole('button', { name: 'Add child' }).click();
}

/** Chooses a reflex by typing and gives the response of each side. */
export async function addFinding(
  page: Page,
  typed: string,
  name: string,
  responses: Readonly<Record<string, string>>,
): Promise<void> {
  await page.getByRole('combobox', { name: 'Reflex or reaction' }).fill(typed);
  await page.getByRole('option', { name }).click();
  for (const [side, response] of Object.entries(responses))
    await page.getByRole('radio', { name: `${side}: ${response}`, exact: true }).check();
  await page.getByRole('button', { name: 'Done' }).click();
}

/** Lets a clinic's sheet of findings fall on the page, as from a folder. */
export async function dropSheet(page: Page, name: string, text: string): Promise<void> {
  await open(page, '#/children');
  const carried = await page.evaluateHandle(
    ([called = '', content = '']) => {
      const data = new DataTransfer();
      data.items.add(new File([content], called, { type: 'text/csv' }));
      return data;
    },
    [name, text],
  );
  await page.dispatchEvent('body', 'drop', { dataTransfer: carried });
  await expect(page.getByRole('heading', { name: 'A sheet of findings' })).toBeVisible();
}

/** Opens the file of a child with a few findings, as it was saved elsewhere. */
export async function openFew(page: Page, label: string, family?: object): Promise<void> {
  const finding = (side: string) => ({
    reflex: 'moro',
    side,
    response: 'elicited',
    state: 'quiet-alert',
    note: '',
  });
  const record = {
    format: 'tidemark-case',
    version: 1,
    child: { label, born: '2026-03-04', gestation: '33w1d', dating: 'last-period' },
    visits: [
      {
        on: '2026-05-18',
        examiner: 'PT 1',
        note: '',
        findings: [finding('left'), finding('right')],
      },
    ],
    ...(family ? { family } : {}),
  };
  await open(page, '#/children');
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({
      name: `${label}.json`,
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(record)),
    });
  await expect(page.getByRole('heading', { name: label })).toBeVisible();
}
