/** Kept safe, in a real browser: what is saved is said, two windows, a full disk, the bin, backups. */
import { AxeBuilder } from '@axe-core/playwright';
import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { addChild, expect, listed, more, open, test } from './support/page.ts';

const standing = (page: Page) => page.locator('[data-standing]');
const PLOVER = { label: 'Plover', born: '2026-04-01', gestation: '33w1d' };

/** Opens a window on the same store, with the same clock. */
async function second(page: Page): Promise<Page> {
  const other = await page.context().newPage();
  await other.clock.setFixedTime(new Date('2026-06-08T10:00:00'));
  return other;
}

const setFull = (page: Page, isFull: boolean): Promise<void> =>
  page.evaluate((full) => {
    (globalThis as unknown as { state: { isFull: boolean } }).state.isFull = full;
  }, isFull);

async function setNote(page: Page, text: string): Promise<void> {
  const note = page.getByLabel('Note', { exact: true }).first();
  await note.fill(text);
  await note.blur();
}

test('a change says when it is saved, and is there after a reload', async ({ page }) => {
  await open(page, '#/children');
  await expect(standing(page)).toBeHidden();
  await addChild(page, PLOVER);
  await expect(standing(page)).toHaveText('Saved');
  await standing(page).click();
  await expect(page.getByRole('heading', { name: 'Keeping and backup', level: 1 })).toBeVisible();
  await expect(page.getByText('All that was changed is saved.')).toBeVisible();
  await expect(page.getByText(/The browser has (not )?promised/)).toBeVisible();
  await page.reload();
  await open(page, '#/children');
  await expect(listed(page)).toHaveText(['Kestrel', 'Plover']);
});

test('what is removed lies in the bin, says when it goes, and comes back', async ({ page }) => {
  await open(page, '#/children');
  await more(page, 'Kestrel');
  await page.getByRole('button', { name: 'Remove Kestrel' }).click();
  await page.getByRole('link', { name: 'Bin (1)' }).click();
  await expect(page.getByText('goes for good on 8 July 2026')).toBeVisible();
  await page.reload();
  await page.getByRole('button', { name: 'Bring back Kestrel' }).click();
  await expect(page.getByText('The bin is empty.')).toBeVisible();
  await open(page, '#/children');
  await expect(listed(page)).toHaveText(['Kestrel']);
  await more(page, 'Kestrel');
  await page.getByRole('button', { name: 'Remove Kestrel' }).click();
  await open(page, '#/keeping');
  await page.getByRole('button', { name: 'Remove Kestrel for good' }).click();
  await page.getByRole('button', { name: 'Remove for good' }).click();
  await expect(page.getByText('The bin is empty.')).toBeVisible();
});

test('two windows on one child: each sees the other, and what both changed is asked about', async ({
  page,
}) => {
  const other = await second(page);
  await open(page, '#/visits/3');
  await open(other, '#/visits/2');
  await setNote(page, 'from the first window');
  await expect(standing(page)).toHaveText('Saved');
  await setNote(other, 'from the second window');
  await expect(standing(other)).toHaveText('Saved');
  await open(other, '#/visits/3');
  await expect(other.getByLabel('Note', { exact: true }).first()).toHaveValue(
    'from the first window',
  );
  await open(page, '#/visits/2');
  await expect(page.getByLabel('Note', { exact: true }).first()).toHaveValue(
    'from the second window',
  );
  await other.close();
});

/** Holds the store in a third window, so that what others write waits; the answer lets it go. */
async function holdStore(page: Page): Promise<() => Promise<void>> {
  const holder = await second(page);
  await holder.goto('/icon.svg');
  await holder.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('tidemark-children');
        opening.onerror = () => reject(new Error('the store does not open'));
        opening.onsuccess = () => {
          const writing = opening.result.transaction('cases', 'readwrite');
          // a transaction lives as long as it is asked something
          const ask = (): void => {
            writing.objectStore('cases').count().onsuccess = () => {
              resolve();
              if (!('letGo' in globalThis)) ask();
            };
          };
          ask();
        };
      }),
  );
  return async () => {
    await holder.evaluate(() => void Object.assign(globalThis, { letGo: true }));
    await holder.close();
  };
}

test('two edits that clash are both kept: what is chosen in one window holds in both', async ({
  page,
}) => {
  const other = await second(page);
  await open(page, '#/visits/3');
  await open(other, '#/visits/3');
  const noteIn = (window: Page) => window.getByLabel('Note', { exact: true }).first();
  // neither window has seen what the other writes when it writes itself
  const letGo = await holdStore(page);
  await setNote(page, 'quiet all through');
  await setNote(other, 'cried from the third minute');
  for (const window of [page, other]) await expect(standing(window)).toHaveText('Saving…');
  await letGo();
  const asked = '1 record was changed otherwise in two windows: choose';
  for (const window of [page, other]) {
    await expect(standing(window)).toHaveText('Saved');
    await expect(window.getByRole('link', { name: asked })).toBeVisible();
  }

  await other.getByRole('link', { name: asked }).click();
  await expect(other.getByRole('heading', { name: 'Which is right for Kestrel?' })).toBeVisible();
  const point = other.getByRole('group', { name: /^Visit of 11 May 2026.*: note$/ });
  await expect(point.getByRole('radio', { name: /saved first$/ })).toBeChecked();
  expect((await new AxeBuilder({ page: other }).analyze()).violations).toEqual([]);
  const chosen = point.locator('label', { hasText: 'saved second' });
  const text = (await chosen.innerText()).replace(/\s*saved second$/, '');
  expect(['quiet all through', 'cried from the third minute']).toContain(text);
  // until it is chosen, the record says what was saved first
  await expect(noteIn(page)).not.toHaveValue(text);
  await chosen.getByRole('radio').check();
  await other.getByRole('button', { name: 'Keep what is chosen' }).click();
  for (const window of [page, other])
    await expect(window.getByRole('link', { name: asked })).toBeHidden();
  await expect(noteIn(page)).toHaveValue(text);
  await open(other, '#/visits/3');
  await expect(noteIn(other)).toHaveValue(text);
  await page.reload();
  await expect(noteIn(page)).toHaveValue(text);
  await other.close();
});

test('a full disk is said with a way out, and is written once there is room', async ({ page }) => {
  await page.addInitScript(() => {
    const state = { isFull: false };
    Object.assign(globalThis, { state });
    const { prototype } = IDBObjectStore;
    // eslint-disable-next-line @typescript-eslint/unbound-method -- it is bound at each call below
    prototype.put = new Proxy(prototype.put, {
      apply(put, table, args) {
        if (state.isFull) throw new DOMException('no room', 'QuotaExceededError');
        return Reflect.apply(put, table, args) as unknown;
      },
    });
  });
  await open(page, '#/visits/3');
  await setFull(page, true);
  await setNote(page, 'not to be lost');
  await expect(standing(page)).toHaveText('Not saved');
  await expect(page.getByText('Not saved: the browser has no room left.')).toBeVisible();
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save everything to a file' }).click();
  expect(await readFile(await (await saving).path(), 'utf8')).toContain('not to be lost');
  await setFull(page, false);
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(standing(page)).toHaveText('Saved');
  await page.reload();
  await expect(page.getByLabel('Note', { exact: true }).first()).toHaveValue('not to be lost');
});

test('the browser’s own quota, used up: said with a way out, nothing confirmed is lost, and it goes on', async ({
  page,
}) => {
  await open(page, '#/visits/3');
  const note = page.getByLabel('Note', { exact: true }).first();
  await setNote(page, 'before the quota');
  await expect(standing(page)).toHaveText('Saved');
  const browser = await page.context().newCDPSession(page);
  const origin = new URL(page.url()).origin;
  const { usage = 0 } = await page.evaluate(() => navigator.storage.estimate());
  // the browser itself counts what is written against this many bytes, and refuses beyond
  await browser.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: usage + 100_000 });
  const said = ['before the quota'];
  // letters by a fixed seed, since what repeats takes less room than it has letters
  let last = 1;
  const letter = (): string => {
    last = (last * 16807) % 2147483647;
    return String.fromCharCode(97 + (last % 26));
  };
  const words = (number: number): string =>
    `${number} ${Array.from({ length: 3900 }, letter).join('')}`;
  for (let number = 1; number <= 60; number++) {
    await setNote(page, words(number));
    await expect(standing(page)).toHaveText(/^(Saved|Not saved)$/);
    if ((await standing(page).innerText()) === 'Not saved') break;
    said.push(words(number));
  }
  expect(said.length).toBeGreaterThan(1);
  await expect(page.getByText('Not saved: the browser has no room left.')).toBeVisible();
  const refused = await note.inputValue();
  expect(refused).not.toBe(said.at(-1));
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save everything to a file' }).click();
  expect(await readFile(await (await saving).path(), 'utf8')).toContain(refused.trim());

  // another window, opened while there is no room, has what was confirmed last
  const other = await second(page);
  await open(other, '#/visits/3');
  await expect(other.getByLabel('Note', { exact: true }).first()).toHaveValue(said.at(-1)!.trim());
  await other.close();

  await browser.send('Storage.overrideQuotaForOrigin', { origin });
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(standing(page)).toHaveText('Saved');
  await setNote(page, 'after the quota');
  await expect(standing(page)).toHaveText('Saved');
  await page.reload();
  await expect(note).toHaveValue('after the quota');
});

test('a browser that keeps nothing is said at once, and everything can be saved', async ({
  page,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('denied', 'SecurityError');
    };
  });
  await open(page, '#/children');
  await expect(page.getByText('Not saved: this browser keeps nothing')).toBeVisible();
  await addChild(page, PLOVER);
  await expect(standing(page)).toHaveText('Not saved');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save everything to a file' }).click();
  expect(await readFile(await (await saving).path(), 'utf8')).toContain('Plover');
});

test('an older page that holds the store is said, and the page goes on once it has gone', async ({
  page,
}) => {
  const other = await second(page);
  await other.goto('/icon.svg');
  await other.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('tidemark-children', 30);
        opening.onupgradeneeded = () => {
          for (const name of ['cases', 'own', 'talks'])
            opening.result.createObjectStore(name, { keyPath: 'id' });
        };
        // held open whatever is asked, as by a page that does not answer
        opening.onsuccess = () => {
          Object.assign(globalThis, { held: opening.result });
          resolve();
        };
      }),
  );
  await page.goto('/#/children');
  await expect(page.getByText('Waiting: Tidemark is open in another window')).toBeVisible();
  await other.close();
  await expect(page.getByText('Waiting: Tidemark is open in another window')).toBeHidden();
  await expect(page.getByText('No child is kept here.')).toBeVisible();
});

test('a newer page takes the store over: this one says so and loses nothing', async ({ page }) => {
  await open(page, '#/visits/3');
  const other = await second(page);
  await other.goto('/icon.svg');
  await other.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('tidemark-children', 50);
        opening.onsuccess = () => {
          opening.result.close();
          resolve();
        };
      }),
  );
  await expect(page.getByText('a newer Tidemark has been opened in another window')).toBeVisible();
  await setNote(page, 'written too late');
  await expect(standing(page)).toHaveText('Not saved');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save everything to a file' }).click();
  expect(await readFile(await (await saving).path(), 'utf8')).toContain('written too late');
  await page.reload();
  await expect(page.getByText('Shown, not changed')).toBeVisible();
  await open(page, '#/children');
  await expect(listed(page)).toHaveText(['Kestrel']);
});

test('a backup goes to another machine: what is new, changed and the same is shown first', async ({
  page,
  browser,
}) => {
  await addChild(page, PLOVER);
  await expect(standing(page)).toHaveText('Saved');
  await open(page, '#/keeping');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a backup' }).click();
  const download = await saving;
  expect(download.suggestedFilename()).toBe('tidemark-2026-06-08.tidemark-backup.json');
  const buffer = await readFile(await download.path());
  await expect(page.getByText('Last backup: 8 June 2026.')).toBeVisible();

  const elsewhere = await browser.newContext();
  const there = await elsewhere.newPage();
  await open(there, '#/visits/3');
  await setNote(there, 'only there');
  await open(there, '#/keeping');
  await there
    .getByLabel('Open a backup')
    .setInputFiles({ name: 'b.json', mimeType: 'application/json', buffer });
  await expect(there.getByText('1 new, 1 changed, 0 the same.')).toBeVisible();
  const kestrel = there.getByRole('radiogroup', { name: 'Kestrel' });
  await expect(kestrel.getByRole('radio', { name: 'keep mine' })).toBeChecked();
  await kestrel.getByRole('radio', { name: 'keep both' }).check();
  await there.getByRole('button', { name: 'Take what is chosen' }).click();
  await expect(there.getByText('2 entries taken from the backup.')).toBeVisible();
  await open(there, '#/children');
  await expect(listed(there)).toHaveText(['Kestrel', 'Kestrel', 'Plover']);
  await there.reload();
  await expect(listed(there)).toHaveText(['Kestrel', 'Kestrel', 'Plover']);
  await elsewhere.close();
});

test('settings and answers come with a backup, are compared, and one undo takes all of it back', async ({
  page,
  browser,
}) => {
  await open(page, '#/settings');
  await page.getByRole('radio', { name: 'dark' }).check();
  await open(page, '#/quiz');
  await page.getByRole('link', { name: 'Begin' }).click();
  await page.keyboard.press('1');
  await expect(page.getByRole('button', { name: 'Next question' })).toBeVisible();
  await open(page, '#/keeping');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a backup' }).click();
  const buffer = await readFile(await (await saving).path());
  const backup = { name: 'b.json', mimeType: 'application/json', buffer };

  const elsewhere = await browser.newContext({ baseURL: new URL(page.url()).origin });
  const there = await elsewhere.newPage();
  await there.clock.setFixedTime(new Date('2026-06-08T10:00:00'));
  await open(there, '#/keeping');
  await there.getByLabel('Open a backup').setInputFiles(backup);
  await expect(there.getByText('2 new, 0 changed, 1 the same.')).toBeVisible();
  await expect(there.getByRole('checkbox', { name: /^Settings/ })).toBeChecked();
  await expect(there.getByRole('checkbox', { name: /^Answers of the self-test/ })).toBeChecked();
  await there.getByRole('button', { name: 'Take what is chosen' }).click();
  await expect(there.locator('html')).toHaveAttribute('data-theme', 'dark');
  await there.getByRole('button', { name: 'Undo' }).click();
  await expect(there.locator('html')).toHaveAttribute('data-theme', 'system');
  await expect(there.getByText('Undone: everything is as it was before the backup')).toBeVisible();
  await there.keyboard.press('Control+Shift+z');
  await expect(there.locator('html')).toHaveAttribute('data-theme', 'dark');
  await open(there, '#/quiz');
  await expect(there.getByText(/^1 subject met so far/)).toBeVisible();

  await open(there, '#/settings');
  await there.getByRole('radio', { name: 'light' }).check();
  await open(there, '#/keeping');
  await there.getByLabel('Open a backup').setInputFiles(backup);
  await expect(there.getByText('0 new, 1 changed, 2 the same.')).toBeVisible();
  const settings = there.getByRole('radiogroup', { name: 'Settings' });
  await expect(settings.getByRole('radio')).toHaveCount(2);
  await expect(settings.getByRole('radio', { name: 'keep mine' })).toBeChecked();
  await settings.getByRole('radio', { name: 'take the backup’s' }).check();
  await there.getByRole('button', { name: 'Take what is chosen' }).click();
  await expect(there.locator('html')).toHaveAttribute('data-theme', 'dark');
  await there.reload();
  await expect(there.locator('html')).toHaveAttribute('data-theme', 'dark');
  await elsewhere.close();
});

test('one visit that was removed lies in the bin and is put back, also in another session', async ({
  page,
}) => {
  await open(page, '#/visits/2');
  await page.getByRole('button', { name: 'Remove this visit' }).click();
  await expect(standing(page)).toHaveText('Saved');
  await page.reload();
  await open(page, '#/keeping');
  await expect(page.getByText('goes for good on 8 July 2026')).toBeVisible();
  await page.getByRole('button', { name: /^Bring back Kestrel: visit of 16 March 2026/ }).click();
  await expect(page.getByText('The bin is empty.')).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(page.getByText('Undone: it is in the bin again.')).toBeVisible();
  await expect(page.getByRole('button', { name: /^Bring back Kestrel: visit/ })).toBeVisible();
  await page.keyboard.press('Control+y');
  await expect(page.getByText('The bin is empty.')).toBeVisible();
  await open(page, '#/visits');
  await page.getByRole('link', { name: '16 March 2026' }).click();
  await expect(page.getByRole('button', { name: 'Change Symmetrical tonic neck' })).toBeVisible();
});

test('forgotten answers come back with undo, and out of the bin', async ({ page }) => {
  await open(page, '#/quiz');
  await page.getByRole('link', { name: 'Begin' }).click();
  await page.keyboard.press('1');
  await open(page, '#/quiz');
  const learnt = page.getByText(/^1 subject met so far/);
  await expect(learnt).toBeVisible();
  await page.getByRole('button', { name: 'Forget all answers' }).click();
  await expect(learnt).toBeHidden();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(learnt).toBeVisible();
  await page.keyboard.press('Control+y');
  await expect(learnt).toBeHidden();
  await page.reload();
  await open(page, '#/keeping');
  await page.getByRole('button', { name: 'Bring back Answers of the self-test' }).click();
  await expect(page.getByText('The bin is empty.')).toBeVisible();
  await open(page, '#/quiz');
  await expect(learnt).toBeVisible();
});

test('a chosen folder gets backups by itself, and is known after a reload', async ({ page }) => {
  // the browser's own private folder stands in for one that a person would choose
  await page.addInitScript(() => {
    Object.assign(globalThis, {
      showDirectoryPicker: async () =>
        (await navigator.storage.getDirectory()).getDirectoryHandle('stick', { create: true }),
    });
  });
  const written = (): Promise<string> =>
    page.evaluate(async () => {
      const root = await navigator.storage.getDirectory();
      const folder = await root.getDirectoryHandle('stick', { create: true });
      const file = await folder.getFileHandle('tidemark-2026-06-08.tidemark-backup.json');
      return (await file.getFile()).text();
    });
  await open(page, '#/keeping');
  await page.getByRole('button', { name: 'Choose a folder' }).click();
  await expect(page.getByText('Backups are written to the folder “stick”.')).toBeVisible();
  await expect.poll(written).toContain('Kestrel');
  await page.reload();
  await expect(page.getByText('Backups are written to the folder “stick”.')).toBeVisible();
  await addChild(page, PLOVER);
  await expect(standing(page)).toHaveText('Saved');
  await page.evaluate(() => {
    Object.defineProperty(document, 'hidden', { value: true });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await expect.poll(written).toContain('Plover');
});

test('the page of keeping can be read and reached by everyone', async ({ page }) => {
  await open(page, '#/children');
  await more(page, 'Kestrel');
  await page.getByRole('button', { name: 'Remove Kestrel' }).click();
  await open(page, '#/keeping');
  await expect(page.getByRole('button', { name: 'Bring back Kestrel' })).toBeVisible();
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations).toEqual([]);
});
