/** Kept safe, in a real browser: what is saved is said, two windows, a full disk, the bin, backups. */
import { accessibilityFaults } from '../support/accessibility.ts';
import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { noteOf, PLOVER, setNote, standing } from '../support/keep.ts';
import { addChild, expect, listed, open, test } from '../support/page.ts';

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

test('a change says when it is saved, and is there after a reload', async ({ page }) => {
  await open(page, '#/children');
  await expect(standing(page)).toBeHidden();
  await addChild(page, PLOVER);
  await expect(standing(page)).toHaveText('Saved');
  await standing(page).click();
  await expect(page.getByRole('heading', { name: 'Storage and backup', level: 1 })).toBeVisible();
  await expect(page.getByText('All changes are saved.')).toBeVisible();
  await expect(page.getByText(/The browser has (not )?promised/)).toBeVisible();
  await page.reload();
  await open(page, '#/children');
  await expect(listed(page)).toHaveText(['Kestrel', 'Plover']);
});

test(
  'two windows on one child: each sees the other, and what both changed is asked about',
  { tag: '@thorough' },
  async ({ page }) => {
    const other = await second(page);
    await open(page, '#/visits/3');
    await open(other, '#/visits/2');
    await setNote(page, 'from the first window');
    await expect(standing(page)).toHaveText('Saved');
    await setNote(other, 'from the second window');
    await expect(standing(other)).toHaveText('Saved');
    await open(other, '#/visits/3');
    await expect(noteOf(other)).toHaveValue('from the first window');
    await open(page, '#/visits/2');
    await expect(noteOf(page)).toHaveValue('from the second window');
    await other.close();
  },
);

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

test('two windows whose edits clash: both are kept, and what is chosen in one holds in both', async ({
  page,
}) => {
  const other = await second(page);
  await open(page, '#/visits/3');
  await open(other, '#/visits/3');
  // neither window has seen what the other writes when it writes itself
  const letGo = await holdStore(page);
  await setNote(page, 'quiet all through');
  await setNote(other, 'cried from the third minute');
  for (const window of [page, other]) await expect(standing(window)).toHaveText('Saving…');
  await letGo();
  const asked = '1 record was changed differently in two windows: choose';
  for (const window of [page, other]) {
    await expect(standing(window)).toHaveText('Saved');
    await expect(window.getByRole('link', { name: asked })).toBeVisible();
  }

  await other.getByRole('link', { name: asked }).click();
  await expect(other.getByRole('heading', { name: 'Which is right for Kestrel?' })).toBeVisible();
  const point = other.getByRole('group', { name: /^Visit of 11 May 2026.*: note$/ });
  await expect(point.getByRole('radio', { name: /saved first$/ })).toBeChecked();
  expect(await accessibilityFaults(other)).toEqual([]);
  const chosen = point.locator('label', { hasText: 'saved second' });
  const text = (await chosen.innerText()).replace(/\s*saved second$/, '');
  expect(['quiet all through', 'cried from the third minute']).toContain(text);
  // until it is chosen, the record says what was saved first
  await expect(noteOf(page)).not.toHaveValue(text);
  await chosen.getByRole('radio').check();
  await other.getByRole('button', { name: 'Keep selected' }).click();
  for (const window of [page, other])
    await expect(window.getByRole('link', { name: asked })).toBeHidden();
  await expect(noteOf(page)).toHaveValue(text);
  await open(other, '#/visits/3');
  await expect(noteOf(other)).toHaveValue(text);
  await page.reload();
  await expect(noteOf(page)).toHaveValue(text);
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
  await expect(noteOf(page)).toHaveValue('not to be lost');
});

/**
 * Fills the room of this origin, from another store than Tidemark's, until the browser takes not even
 * half a kilobyte more. Runs in the page; answers the bytes it was let write.
 */
async function fillUp(): Promise<number> {
  const store = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open('something-else', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('blocks');
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error!);
  });
  let filled = 0;
  for (let size = 2 ** 16, key = 0; size >= 512 && key < 1000; key++) {
    const isTaken = await new Promise<boolean>((resolve) => {
      const writing = store.transaction('blocks', 'readwrite');
      writing
        .objectStore('blocks')
        .put(crypto.getRandomValues(new Uint8Array(65_536)).slice(0, size), key);
      writing.oncomplete = () => resolve(true);
      writing.onabort = () => resolve(false);
    });
    if (isTaken) filled += size;
    else size /= 2;
  }
  store.close();
  return filled;
}

test(
  'a full disk by the browser’s own quota: said with a way out, nothing confirmed is lost, it goes on',
  { tag: '@thorough' },
  async ({ page, baseURL }) => {
    // the copy for use without a network counts against the same room, and how much of it is in by the
    // time the room is reckoned is chance: only the store is counted here
    await page.context().addInitScript(() => {
      ServiceWorkerContainer.prototype.register = () => new Promise(() => undefined);
    });
    const browser = await page.context().newCDPSession(page);
    const { origin } = new URL(baseURL!);
    // the browser itself counts what is written against this many bytes, and refuses beyond; it is set
    // before the store is opened, since room that was found once is not counted anew for a while
    await browser.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 4_000_000 });
    await open(page, '#/visits/3');
    const note = noteOf(page);
    await setNote(page, 'before the quota');
    await expect(standing(page)).toHaveText('Saved');
    await page.reload();
    await expect(note).toHaveValue('before the quota');
    // how many bytes a record takes is the browser's own affair, so the room is filled by something else
    const filled = await page.evaluate(fillUp);
    expect(filled).toBeGreaterThan(0);
    const refused = 'x'.repeat(3900);
    await setNote(page, refused);
    await expect(standing(page)).toHaveText('Not saved');
    await expect(page.getByText('Not saved: the browser has no room left.')).toBeVisible();
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save everything to a file' }).click();
    expect(await readFile(await (await saving).path(), 'utf8')).toContain(refused);

    // another window, opened while there is no room, has what was confirmed last
    const other = await second(page);
    await open(other, '#/visits/3');
    await expect(noteOf(other)).toHaveValue('before the quota');
    await other.close();

    await browser.send('Storage.overrideQuotaForOrigin', { origin });
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(standing(page)).toHaveText('Saved');
    await page.reload();
    await expect(note).toHaveValue(refused);
    await setNote(page, 'after the quota');
    await expect(standing(page)).toHaveText('Saved');
    await page.reload();
    await expect(note).toHaveValue('after the quota');
  },
);

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

test(
  'an older page that holds the store is said, and the page goes on once it has gone',
  { tag: '@thorough' },
  async ({ page }) => {
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
    await expect(page.getByText('No child is saved here.')).toBeVisible();
  },
);

test(
  'a newer page takes the store over: this one says so and loses nothing',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/visits/3');
    const other = await second(page);
    await other.goto('/icon.svg');
    await other.evaluate(
      () =>
        new Promise<void>((resolve) => {
          const opening = indexedDB.open('tidemark-children', 1000);
          opening.onsuccess = () => {
            opening.result.close();
            resolve();
          };
        }),
    );
    await expect(
      page.getByText('a newer Tidemark has been opened in another window'),
    ).toBeVisible();
    await setNote(page, 'written too late');
    await expect(standing(page)).toHaveText('Not saved');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save everything to a file' }).click();
    expect(await readFile(await (await saving).path(), 'utf8')).toContain('written too late');
    await page.reload();
    await expect(page.getByText('Shown, not changed')).toBeVisible();
    await open(page, '#/children');
    await expect(listed(page)).toHaveText(['Kestrel']);
  },
);
