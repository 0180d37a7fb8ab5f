/** Many children at once: copies of the invented ones, each moved by a few days and numbered. */
import type { Page } from '@playwright/test';
import { addDays } from '../../../src/lib/age/civil.ts';
import { ATLAS } from '../../../src/lib/atlas/atlas.ts';
import { caseText } from '../../../src/lib/case/raw.ts';
import { examplesOn, WRITTEN_FOR } from '../../../src/lib/examples/examples.ts';

interface Row {
  id: string;
  rev: string;
  body: string;
}

/** As many rows of the database, the last dates of all of them on or before the day of the tests. */
export function manyRows(count: number): Row[] {
  const rows: Row[] = [];
  for (let round = 0; rows.length < count; round++)
    for (const { record } of examplesOn(addDays(WRITTEN_FOR, -3 * round), ATLAS)) {
      const number = rows.length + 1;
      if (number > count) break;
      const label = `${record.child.label} ${number}`;
      const text = caseText({ ...record, archived: false, child: { ...record.child, label } });
      rows.push({ id: `many-${number}`, rev: `seeded ${number}`, body: text });
    }
  return rows;
}

/** Puts rows into the database that the page has made, and leaves it: what is opened next reads them. */
export async function seedMany(page: Page, rows: readonly Row[]): Promise<void> {
  await page.goto('/#/about');
  await page.waitForFunction(async () => {
    const known = await indexedDB.databases();
    // opened before it is listed, it would be made anew without its tables; it is listed before it has them
    if (!known.some(({ name, version = 0 }) => name === 'tidemark-children' && version >= 10))
      return false;
    return new Promise<boolean>((resolve) => {
      const opening = indexedDB.open('tidemark-children');
      opening.onerror = () => resolve(false);
      opening.onsuccess = () => {
        const has = opening.result.objectStoreNames.contains('cases');
        opening.result.close();
        resolve(has);
      };
    });
  });
  await page.evaluate(
    (given) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('tidemark-children');
        opening.onerror = () => reject(new Error('the database did not open'));
        opening.onsuccess = () => {
          const writing = opening.result.transaction('cases', 'readwrite');
          writing.onabort = () => reject(new Error('the rows were not written'));
          for (const row of given) writing.objectStore('cases').put(row);
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    rows,
  );
  await page.goto('about:blank');
}
