/** The one file, opened from a folder as from a memory stick: the main job, with no server at all. */
import { copyFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from '@playwright/test';
import { addFinding, asking, arrived, expect, test as base, verdict } from '../support/page.ts';
import { goTo } from '../support/places.ts';
import { PAGES } from '../support/pages.ts';

const BUILT = resolve('dist-single/tidemark.html');

/** The file alone in a folder with a space in its name, and not one request but for it. */
const test = base.extend<{ file: string }>({
  file: async ({ context }, use) => {
    const stick = mkdtempSync(join(tmpdir(), 'a stick '));
    copyFileSync(BUILT, join(stick, 'tidemark.html'));
    const address = pathToFileURL(join(stick, 'tidemark.html')).href;
    const others: string[] = [];
    context.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(address) && !/^(?:data|blob):/.test(url)) others.push(url);
    });
    await use(address);
    expect(others).toEqual([]);
    rmSync(stick, { recursive: true });
  },
});

const go = async (page: Page, file: string, hash: string): Promise<void> => {
  await page.goto(`${file}${hash}`);
  await arrived(page);
};

test('the demo child, a child of one’s own, a visit, its verdict, and all of it after a reload', async ({
  page,
  file,
}) => {
  await go(page, file, '#/');
  await expect(asking(page)).toHaveText(['Crossed extension', 'Asymmetrical tonic neck', 'Moro']);
  await verdict(page, 'moro').click();
  await expect(page.locator('#ground-moro')).toContainText('Pitfalls');

  await goTo(page, 'Children');
  await page.locator('#main').getByRole('link', { name: 'New child' }).click();
  await page.getByLabel('Name or code').fill('Plover');
  await page.getByLabel('Birth date').fill('2026-01-04');
  await page.getByRole('textbox', { name: 'Gestation at birth' }).fill('33w1d');
  await page.getByRole('button', { name: 'Add child' }).click();
  await page.getByLabel('Visit date').fill('2026-06-08');
  await page.getByLabel('State of the infant').first().selectOption('quiet alert');
  await addFinding(page, 'crossed', 'Crossed extension', { left: 'elicited', right: 'elicited' });
  await page.getByRole('button', { name: 'See the verdicts' }).click();
  await expect(asking(page)).toHaveText(['Crossed extension']);

  await page.reload();
  await expect(page.getByRole('heading', { name: 'Plover' })).toBeVisible();
  await expect(asking(page)).toHaveText(['Crossed extension']);
  // no other program's records are near, whatever else was opened from a folder
  const names = await page.evaluate(async () =>
    (await indexedDB.databases()).map(({ name }) => name),
  );
  expect(names).toContain('tidemark-children');
  for (const name of names) expect(name).toMatch(/^tidemark-/);
});

test(
  'a case is saved to a file and opened again, in another copy of Tidemark',
  { tag: '@thorough' },
  async ({ page, file }) => {
    await go(page, file, '#/children');
    await page.getByRole('button', { name: 'More about Kestrel', exact: true }).click();
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save to a case file Kestrel' }).click();
    const saved = await readFile(await (await saving).path());
    await page.getByRole('button', { name: 'Remove Kestrel' }).click();
    await expect(page.getByText('No child is saved here.')).toBeVisible();
    await page.getByLabel('Open a case file').setInputFiles({
      name: 'kestrel.tidemark.json',
      mimeType: 'application/json',
      buffer: saved,
    });
    await expect(asking(page)).toHaveText(['Crossed extension', 'Asymmetrical tonic neck', 'Moro']);
  },
);

test('every page opens, in its own letters', { tag: '@thorough' }, async ({ page, file }) => {
  for (const hash of PAGES) {
    await go(page, file, hash);
    if (!/nowhere|incoming/.test(hash)) await expect(page.locator('.lost'), hash).toHaveCount(0);
  }
  const faces = await page.evaluate(async () => {
    await document.fonts.ready;
    // stand-ins are faces of the machine, for the time until the letters are there
    return [...document.fonts]
      .filter(({ family }) => !family.includes('stand-in'))
      .map(({ family, status }) => `${family} ${status}`);
  });
  expect(faces.map((face) => face.replaceAll('"', '')).sort()).toEqual([
    'Source Sans 3 loaded',
    'Source Serif 4 loaded',
  ]);
});

test(
  'a talk and the speaker’s window go in step',
  { tag: '@thorough' },
  async ({ page, context, file }) => {
    await go(page, file, '#/stage/first-year?step=1');
    const opening = context.waitForEvent('page');
    await page.keyboard.press('s');
    const speaker = await opening;
    await expect(speaker.getByText('Step 1 of 9')).toBeVisible();
    await speaker.getByRole('button', { name: 'Next step' }).click();
    await expect(page.locator('footer .place > span').last()).toHaveText('2 of 9');
    await page.keyboard.press('End');
    await expect(speaker.getByText('Step 9 of 9')).toBeVisible();
  },
);

test(
  'a picture is taken away with its letters, and the report can be printed',
  { tag: '@thorough' },
  async ({ page, file }) => {
    await go(page, file, '#/');
    await page
      .getByRole('button', { name: /^Export figure/ })
      .first()
      .click();
    const taking = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    const drawn = await readFile(await (await taking).path(), 'utf8');
    expect(drawn).toContain('@font-face');
    await go(page, file, '#/report');
    const paper = await page.pdf();
    expect(paper.subarray(0, 5).toString()).toBe('%PDF-');
  },
);

test(
  'its policy admits the script within and nothing else',
  { tag: '@thorough' },
  async ({ context, file }) => {
    const html = readFileSync(BUILT, 'utf8');
    const policy = /http-equiv="content-security-policy" content="([^"]*)"/.exec(html)?.[1] ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("connect-src 'none'");
    expect(policy).toMatch(/script-src 'sha256-[^']+'(?:;|$)/);
    expect(policy).not.toMatch(/'self'|unsafe-inline|unsafe-eval|https?:/);
    // a window of its own: its console is told of the refusal
    const page = await context.newPage();
    await go(page, file, '#/about');
    const ran = await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'window.broughtIn = true';
      const told = new Promise<string>((say) => {
        document.addEventListener('securitypolicyviolation', (event) =>
          say(event.effectiveDirective),
        );
      });
      document.head.append(script);
      return told.then((directive) => ({ directive, broughtIn: 'broughtIn' in window }));
    });
    expect(ran).toEqual({ directive: 'script-src-elem', broughtIn: false });
  },
);
