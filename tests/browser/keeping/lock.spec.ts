/** The lock as a user meets it: setting, opening, a wrong passphrase, idle time, other windows, the disk. */
import { readdirSync, readFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { launchOptions } from '../../support/browser.js';
import { gate, go, PASSPHRASE, setLock, test, unlock } from '../support/lock.ts';
import { addFinding, expect, listed, open, TODAY } from '../support/page.ts';

async function newChild(page: Page, label: string, born: string): Promise<void> {
  await go(page, '#/children/new');
  await page.getByLabel('Name or code').fill(label);
  await page.getByLabel('Birth date').fill(born);
  await page.getByRole('textbox', { name: 'Gestation at birth' }).fill('33w1d');
  await page.getByRole('button', { name: 'Add child' }).click();
  await expect(page.getByRole('heading', { name: label })).toBeVisible();
}

/** Every stored row of children as it lies, bytes as letters. */
const stored = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      new Promise<string>((resolve, reject) => {
        const opening = indexedDB.open('tidemark-children');
        opening.onerror = () => reject(new Error('the database did not open'));
        opening.onsuccess = () => {
          const reading = opening.result.transaction('cases').objectStore('cases').getAll();
          reading.onsuccess = () => {
            opening.result.close();
            const rows = reading.result as { id: string; body: unknown }[];
            resolve(
              rows
                .map(({ body }) =>
                  body instanceof Uint8Array
                    ? new TextDecoder('latin1').decode(body)
                    : String(body),
                )
                .join('\n'),
            );
          };
        };
      }),
  );

test('set, asked for at the start, and nothing is read before', async ({ page }) => {
  await setLock(page);
  expect(await stored(page)).not.toContain('Kestrel');
  await page.reload();
  await expect(gate(page)).toBeVisible();
  await expect(page.getByText('Kestrel')).toHaveCount(0);
  await expect(page.getByRole('navigation')).toHaveCount(0);
  await page.goto('/#/children');
  await expect(gate(page)).toBeVisible();
  await unlock(page);
  await expect(listed(page)).toHaveText(['Kestrel']);
});

test('a wrong passphrase is a sentence, waits longer each time, and harms nothing', async ({
  page,
}) => {
  await setLock(page);
  const before = await stored(page);
  await page.reload();
  for (let n = 0; n < 3; n++) {
    await unlock(page, 'two dunlins on the mud');
    await expect(page.getByText('This is not the passphrase. Nothing has changed.')).toBeVisible();
    await expect(page.getByLabel('Passphrase')).toHaveValue('');
  }
  await expect(page.getByText('the next can be tried in 1 second.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Open', exact: true })).toBeDisabled();
  await page.reload(); // no way around
  await expect(page.getByText('the next can be tried in 1 second.')).toBeVisible();
  await page.clock.setFixedTime(new Date(`${TODAY}T10:00:02`));
  await unlock(page, 'four dunlins on the mud');
  await expect(page.getByText('the next can be tried in 2 seconds.')).toBeVisible();
  expect(await stored(page)).toBe(before);
  await page.clock.setFixedTime(new Date(`${TODAY}T10:00:05`));
  await unlock(page);
  await expect(gate(page)).toHaveCount(0);
  await go(page, '#/children');
  await expect(listed(page)).toHaveText(['Kestrel']);
});

test(
  'what is changed under a lock is there after it was opened again',
  { tag: '@thorough' },
  async ({ page }) => {
    await setLock(page);
    await newChild(page, 'Plover', '2026-01-04');
    await expect(page).not.toHaveTitle(/Plover/);
    await go(page, '#/lock');
    await page.getByRole('button', { name: 'Lock now' }).click();
    await unlock(page);
    await go(page, '#/children');
    await expect(listed(page)).toHaveText(['Kestrel', 'Plover']);
    expect(await stored(page)).not.toContain('Plover');
  },
);

for (const first of ['lock', 'backup'] as const)
  test(
    `a backup made ${first === 'lock' ? 'under' : 'before'} a lock does not keep the passphrase from being asked for`,
    { tag: '@thorough' },
    async ({ page }) => {
      const backUp = async (): Promise<void> => {
        const saving = page.waitForEvent('download');
        await page.getByRole('button', { name: 'Save a backup' }).click();
        await saving;
        await expect(page.getByText(/^Last backup: /)).toBeVisible();
      };
      await open(page, '#/keeping');
      if (first === 'backup') await backUp();
      await setLock(page);
      await go(page, '#/keeping');
      if (first === 'lock') {
        // what is sealed does not leave in plain text unless that is chosen
        const encrypt = page.getByRole('checkbox', { name: 'Encrypt the backup' });
        await expect(encrypt).toBeChecked();
        await expect(page.getByRole('button', { name: 'Save a backup' })).toBeDisabled();
        await encrypt.uncheck();
        await backUp();
      }
      await page.reload();
      await unlock(page);
      await expect(gate(page)).toBeHidden();
      await go(page, '#/keeping');
      await expect(page.getByText(/^Last backup: /)).toBeVisible();
    },
  );

test(
  'a passphrase may be looked at while it is typed; one key held down is none',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/lock');
    const field = page.getByLabel('Passphrase', { exact: true });
    await field.fill('a'.repeat(15));
    await page.getByLabel('Repeat the passphrase').fill('a'.repeat(15));
    await page.getByLabel(/I have written the passphrase down/).check();
    await expect(page.getByText('It is nearly the same character throughout.')).toBeVisible();
    await expect(page.getByRole('button', { name: 'Set a lock' })).toBeDisabled();
    await expect(field).toHaveAttribute('type', 'password');
    await page.getByRole('checkbox', { name: 'Show what is typed' }).check();
    await expect(field).toHaveAttribute('type', 'text');
  },
);

test(
  'it is locked from any page, and the word of what was done has the focus',
  { tag: '@thorough' },
  async ({ page }) => {
    await setLock(page);
    await expect(page.getByText('The lock is set.')).toBeFocused();
    await go(page, '#/reflexes');
    await page.getByRole('banner').getByRole('button', { name: 'Lock' }).click();
    await expect(gate(page)).toBeVisible();
  },
);

test(
  'an encrypted backup leaves no passphrase in its fields',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/keeping');
    await page.getByRole('checkbox', { name: 'Encrypt the backup' }).check();
    const field = page.getByLabel('Passphrase of the file', { exact: true });
    await field.fill(PASSPHRASE);
    await page.getByLabel('Repeat the passphrase').fill(PASSPHRASE);
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save a backup' }).click();
    await saving;
    await expect(field).toHaveValue('');
    await expect(page.getByRole('button', { name: 'Save a backup' })).toBeDisabled();
  },
);

test(
  'an unfinished visit is sealed in the tab and comes back',
  { tag: '@thorough' },
  async ({ page }) => {
    await setLock(page);
    await go(page, '#/visits/new');
    await addFinding(page, 'moro', 'Moro reflex', { left: 'elicited' });
    await page.getByLabel('Visit date').fill('2026-13-01');
    await page.getByLabel('Visit date').press('Tab');
    await expect(page.getByText('Not saved yet')).toBeVisible();
    const draft = () => page.evaluate(() => sessionStorage.getItem('tidemark-draft') ?? '');
    await expect.poll(draft).toMatch(/^[0-9a-f]{100,}$/);
    await page.reload();
    await unlock(page);
    await expect(page.getByLabel('Visit date')).toHaveValue('2026-13-01');
    await expect(page.getByRole('button', { name: 'Change Moro reflex' })).toBeVisible();
  },
);

test(
  'a half-filled form is sealed in the tab and comes back after idle time',
  { tag: '@thorough' },
  async ({ page }) => {
    await setLock(page);
    await go(page, '#/children/new');
    await page.getByLabel('Name or code').fill('Dunlin');
    await page.getByRole('radio', { name: 'Due date' }).check();
    await page.getByLabel('Birth date').fill('2026-0');
    await page.clock.setFixedTime(new Date(`${TODAY}T11:00:00`));
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await expect(gate(page)).toBeVisible();
    const kept = await page.evaluate(() => JSON.stringify(Object.entries(sessionStorage)));
    expect(kept).toContain('tidemark-forms');
    expect(kept).not.toContain('Dunlin');
    await unlock(page);
    await expect(page.getByLabel('Name or code')).toHaveValue('Dunlin');
    await expect(page.getByLabel('Birth date')).toHaveValue('2026-0');
    await expect(page.getByRole('radio', { name: 'Due date' })).toBeChecked();
  },
);

test('it locks after idle time, and every window with it', async ({ page, context }) => {
  await setLock(page);
  const other = await context.newPage();
  await other.clock.setFixedTime(new Date(`${TODAY}T10:00:00`));
  await other.goto('/#/children');
  await unlock(other);
  await expect(listed(other)).toHaveText(['Kestrel']);
  await page.clock.setFixedTime(new Date(`${TODAY}T10:09:00`));
  await page.mouse.move(40, 40); // in use: the ten minutes begin anew, in both
  await page.clock.setFixedTime(new Date(`${TODAY}T10:18:00`));
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await expect(page.getByRole('button', { name: 'Lock now' })).toBeVisible();
  await page.clock.setFixedTime(new Date(`${TODAY}T10:19:00`));
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await expect(gate(page)).toBeVisible();
  await expect(gate(other)).toBeVisible();
});

test(
  'a talk is not broken off; the lock falls when it is left',
  { tag: '@thorough' },
  async ({ page }) => {
    await setLock(page);
    await go(page, '#/talks');
    const stage = await page.locator('a[href^="#/stage/"]').first().getAttribute('href');
    await go(page, stage!);
    await page.locator('main :is(h1, h2)').first().waitFor();
    await page.clock.setFixedTime(new Date(`${TODAY}T11:00:00`));
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await page.mouse.move(60, 60);
    await expect(page.locator('main :is(h1, h2)').first()).toBeVisible();
    await expect(gate(page)).toHaveCount(0);
    await go(page, '#/children');
    await expect(gate(page)).toBeVisible();
  },
);

test('changed and removed with the passphrase, and not without', async ({ page }) => {
  await setLock(page);
  await page.getByLabel('Current passphrase').fill('no such passphrase');
  await page.getByRole('button', { name: 'Remove the lock' }).click();
  await expect(page.getByText('This is not the passphrase.')).toBeVisible();
  await page.getByLabel('Current passphrase').fill(PASSPHRASE);
  await page.getByLabel('Passphrase', { exact: true }).fill('four dunlins on the mud');
  await page.getByLabel('Repeat the passphrase').fill('four dunlins on the mud');
  await page.getByRole('button', { name: 'Change the passphrase' }).click();
  await expect(page.getByText('The passphrase is changed.')).toBeVisible();
  await page.reload();
  await unlock(page);
  await expect(page.getByText('This is not the passphrase.')).toBeVisible();
  await unlock(page, 'four dunlins on the mud');
  await page.getByLabel('Current passphrase').fill('four dunlins on the mud');
  await page.getByRole('button', { name: 'Remove the lock' }).click();
  await expect(page.getByText('The lock is removed.')).toBeVisible();
  expect(await stored(page)).toContain('Kestrel');
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Lock', exact: true })).toBeVisible();
});

/** Every file below a folder. */
const filesIn = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesIn(path) : entry.isFile() ? [path] : [];
  });

/** The files that hold a word, in one byte or two a letter. */
function holding(folder: string, word: string): string[] {
  const forms = [Buffer.from(word, 'utf8'), Buffer.from(word, 'utf16le')];
  return filesIn(folder).filter((path) => {
    const bytes = readFileSync(path);
    return forms.some((form) => bytes.includes(form));
  });
}

/** Words that stand nowhere in the app or the browser. */
const WORDS = ['Quillfeather', 'Zephyrine', 'Brambleford', '2031-11-07'];

async function record(page: Page): Promise<void> {
  await page.clock.setFixedTime(new Date('2031-12-08T10:00:00'));
  await newChild(page, WORDS[0]!, '2031-11-07');
  await go(page, '#/visits/new');
  await page.getByLabel('Examiner').fill(WORDS[1]!);
  await addFinding(page, 'moro', 'Moro reflex', { left: 'elicited' });
  await page.getByLabel('Note', { exact: true }).fill(`${WORDS[2]!} was there`);
  await page.getByLabel('Note', { exact: true }).press('Tab');
  await go(page, '#/children');
  await page.getByLabel('Find', { exact: true }).fill(WORDS[0]!);
  await expect(listed(page)).toHaveText([WORDS[0]!]);
}

for (const isLocked of [true, false])
  test(
    `on the disk, ${isLocked ? 'under a lock no label, date or note is found' : 'without a lock they are found: the search works'}`,
    { tag: isLocked ? [] : '@thorough' },
    async ({ baseURL }) => {
      const folder = mkdtempSync(join(tmpdir(), 'tidemark-disk-'));
      try {
        const context = await chromium.launchPersistentContext(folder, {
          ...launchOptions(),
          ...(baseURL ? { baseURL } : {}),
        });
        const page = await context.newPage();
        await page.clock.setFixedTime(new Date('2031-12-08T10:00:00'));
        if (isLocked) await setLock(page);
        else await open(page, '#/');
        await record(page);
        if (isLocked) {
          await go(page, '#/lock');
          await page.getByRole('button', { name: 'Lock now' }).click();
          await expect(gate(page)).toBeVisible();
        }
        await context.close();
        const found = WORDS.filter((word) => holding(folder, word).length > 0);
        expect(found).toEqual(isLocked ? [] : WORDS);
      } finally {
        rmSync(folder, { recursive: true, force: true });
      }
    },
  );
