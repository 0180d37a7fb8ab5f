/**
 * Script in what comes from outside: by every kind of file, and looked at on the pages that show it.
 * It is refused with a sentence, or shown as the text it is; nothing runs, loads or opens. One file holds
 * all payloads that a reader keeps, another all that it refuses; which is which is tried reader by reader
 * in tests/store/payloads.test.ts. The thorough run brings in each payload by itself.
 */
import { test as loud, type Page } from '@playwright/test';
import { Encrypter } from 'age-encryption';
import Papa from 'papaparse';
import {
  backupWith,
  bundleWith,
  caseWith,
  HOSTILE,
  line,
  PAYLOADS,
  PLAIN,
  resourcesWith,
  talkWith,
} from '../../support/payloads.ts';
import { expect, open, openAnew, test } from '../support/page.ts';
import { alive, shows, watched } from '../support/payloads.ts';

loud('what is watched for is seen: markup put into a page by hand', async ({ page, baseURL }) => {
  const signs = await watched(page, [baseURL!]);
  await open(page, '#/about');
  expect(await alive(page)).toEqual([]);
  await page.evaluate(() => {
    const place = document.createElement('div');
    place.innerHTML =
      '<img src=x onerror="globalThis.ran=1"><a href=" JavaScript:1">x</a><link rel=stylesheet href=/taken>';
    document.body.append(place);
  });
  await expect.poll(signs).toEqual(expect.arrayContaining([`request: ${baseURL}/x`]));
  await expect.poll(() => signs().some((sign) => /violation: script-src/.test(sign))).toBe(true);
  expect((await alive(page)).length).toBeGreaterThanOrEqual(3);
  await page.evaluate(() => alert('seen'));
  expect(signs()).toContain('dialog: seen');
});

/** A file as an input takes it. Its name is a payload too, as far as a name can be. */
const file = (payload: string, ending: string, content: object | string | Uint8Array) => ({
  name: `${payload.replaceAll('/', '\u2044')}.${ending}`,
  mimeType: 'application/octet-stream',
  buffer:
    content instanceof Uint8Array
      ? Buffer.from(content)
      : Buffer.from(typeof content === 'string' ? content : JSON.stringify(content)),
});

const PASSPHRASE = 'three dunlins on the mud';

/** Closed with little work: what is tried is what lies within. */
function sealed(content: object): Promise<Uint8Array> {
  const encrypter = new Encrypter();
  encrypter.setPassphrase(PASSPHRASE);
  encrypter.setScryptWorkFactor(2);
  return encrypter.encrypt(JSON.stringify(content));
}

async function unseal(page: Page): Promise<void> {
  const ask = page.getByRole('dialog');
  await ask.getByLabel('Passphrase of the file').fill(PASSPHRASE);
  expect(await alive(page)).toEqual([]);
  await ask.getByRole('button', { name: 'Open the file' }).click();
  await expect(ask).toHaveCount(0);
}

const pickCase = (page: Page, given: ReturnType<typeof file>): Promise<void> =>
  page.getByLabel('Open a case file').setInputFiles(given);

const REFUSED = 'The file was not opened; nothing has changed.';

/** Waits until a file was refused, or has led to another page. */
async function refusedOrAt(page: Page, hash: RegExp): Promise<boolean> {
  const refused = page.getByText(REFUSED);
  await expect
    .poll(async () => (await refused.count()) > 0 || hash.test(new URL(page.url()).hash))
    .toBe(true);
  return (await refused.count()) > 0;
}

/** Looks through a sheet that holds payloads, keeps its mapping under such a name, and adds what can be. */
async function addSheet(
  page: Page,
  payloads: readonly string[],
  rows: string[][],
): Promise<boolean> {
  await open(page, '#/children');
  await pickCase(page, file(payloads[0]!, 'csv', Papa.unparse(rows)));
  expect(await refusedOrAt(page, /^#\/incoming/)).toBe(false);
  await page.getByRole('heading', { name: 'To be added' }).waitFor();
  for (const payload of payloads) expect(await shows(page, payload), payload).toBe(true);
  await page.getByLabel('Save this mapping as').fill(line(payloads[0]!));
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  expect(await alive(page)).toEqual([]);
  const add = page.getByRole('button', { name: /^Add \d+ finding/ });
  if ((await add.count()) === 0) return true;
  await add.click();
  await page.waitForURL(/#\/visits$/);
  await look(page, ['#/visits', '#/visits/4', '#/report', '#/table']);
  return true;
}

/** Pages of a record that show its label or its notes, and more that might. */
const RECORD = ['#/', '#/table', '#/report', '#/visits/1', '#/child', '#/children'];
const MORE = ['#/visits/1/record', '#/course', '#/next', '#/family', '#/share'];

/** Looks at pages on which nothing may have come to life. */
async function look(page: Page, hashes: readonly string[]): Promise<void> {
  for (const hash of hashes) {
    await open(page, hash);
    expect(await alive(page), hash).toEqual([]);
  }
}

/** Looks at pages on each of which texts have to be shown as they are. */
async function showsOn(
  page: Page,
  hashes: readonly string[],
  texts: readonly string[],
): Promise<void> {
  for (const hash of hashes) {
    await open(page, hash);
    for (const text of texts)
      await expect.poll(() => shows(page, text), `${text} on ${hash}`).toBe(true);
    expect(await alive(page), hash).toEqual([]);
  }
}

/** A record whose first text is the child's label, once it is open. */
async function lookAtRecord(page: Page, payloads: readonly string[]): Promise<void> {
  await showsOn(page, RECORD, [line(payloads[0]!)]);
  await showsOn(page, ['#/report'], payloads);
  for (const n of payloads.keys()) await showsOn(page, [`#/visits/${n + 1}`], [payloads[n]!]);
  await look(page, MORE);
}

/** What a backup holds is looked through, taken, and looked at. */
async function takeBackup(page: Page, payloads: readonly string[]): Promise<boolean> {
  await page.getByText(/\d new, \d changed, \d the same/).waitFor();
  for (const payload of payloads) expect(await shows(page, payload), payload).toBe(true);
  expect(await alive(page)).toEqual([]);
  await page.getByRole('button', { name: 'Restore selected' }).click();
  await expect(page.getByText(/entr(?:y|ies) restored from the backup/)).toBeVisible();
  await page.locator('[data-standing="saved"]').waitFor();
  // a source of one's own may have any name that was once given to it
  await showsOn(page, ['#/own'], payloads);
  await look(page, ['#/sources', '#/settings', '#/reflexes/moro']);
  // the record and the talk beside it came in where their own readers took them
  await showsOn(
    page,
    ['#/talks', '#/children'],
    payloads.filter((payload) => PLAIN.includes(payload)),
  );
  return true;
}

/** The ways in: each takes payloads and answers whether they were shown somewhere as the texts they are. */
const WAYS: Readonly<
  Record<string, (page: Page, payloads: readonly string[]) => Promise<boolean>>
> = {
  'a case file': async (page, payloads) => {
    await open(page, '#/children');
    await pickCase(page, file(payloads[0]!, 'json', caseWith(payloads)));
    if (await refusedOrAt(page, /^#\/$/)) return false;
    await lookAtRecord(page, payloads);
    return true;
  },
  'an encrypted case file': async (page, payloads) => {
    await open(page, '#/children');
    await pickCase(page, file(payloads[0]!, 'json.age', await sealed(caseWith(payloads))));
    await unseal(page);
    if (await refusedOrAt(page, /^#\/$/)) return false;
    await showsOn(page, ['#/', '#/report'], [line(payloads[0]!)]);
    return true;
  },
  'a FHIR bundle': async (page, payloads) => {
    await open(page, '#/children');
    await pickCase(page, file(payloads[0]!, 'fhir.json', bundleWith(payloads)));
    if (await refusedOrAt(page, /^#\/incoming/)) return false;
    await page.getByRole('button', { name: 'Save', exact: true }).waitFor();
    for (const payload of payloads) expect(await shows(page, line(payload)), payload).toBe(true);
    expect(await alive(page)).toEqual([]);
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.waitForURL(/#\/(?:children)?$/);
    await showsOn(page, ['#/children'], payloads.map(line));
    await look(page, ['#/', '#/report', '#/visits/1']);
    return true;
  },
  'what a FHIR bundle holds beside': async (page, payloads) => {
    await open(page, '#/children');
    const bundle = bundleWith(['Plover'], resourcesWith(payloads));
    await pickCase(page, file(payloads[0]!, 'fhir.json', bundle));
    expect(await refusedOrAt(page, /^#\/incoming/)).toBe(false);
    await page.getByRole('button', { name: 'Save', exact: true }).waitFor();
    expect(await alive(page)).toEqual([]);
    // what was left out is named by its kind, cut to sixty characters
    return shows(page, payloads[0]!.slice(0, 60));
  },
  "a clinic's sheet": (page, payloads) =>
    addSheet(page, payloads, [
      ['Child', 'Date', 'Reflex', 'Side', 'Result', 'State', 'By', 'Note', payloads[0]!],
      ...payloads.flatMap((payload) => [
        ['Kestrel', '2026-05-18', payload, 'l', 'present', '', 'PT 1', '', ''],
        ['Kestrel', '2026-05-18', 'Moro', payload, payload, payload, 'PT 1', '', ''],
        ['Kestrel', '2026-05-18', 'Moro', 'l', 'present', '', 'PT 1', payload, ''],
        [payload, payload, 'Moro', 'l', 'present', '', payload, payload, ''],
      ]),
    ]),
  "a clinic's sheet of visits": (page, payloads) =>
    addSheet(page, payloads, [
      ['Child', 'Date', 'State', 'By', 'Note', 'Moro L', 'Moro R', payloads[0]!, payloads[0]!],
      ...payloads.flatMap((payload) => [
        ['Kestrel', '2026-05-18', '', 'PT 1', payload, 'present', payload, payload, ''],
        ['Kestrel', '2026-05-19', payload, payload, payload, 'present', '', '', ''],
        [payload, payload, '', '', '', 'present', 'present', '', ''],
      ]),
    ]),
  'a table of one’s own': async (page, payloads) => {
    await open(page, '#/own');
    const rows = payloads.flatMap((payload) => [
      ['Moro reflex', '28 wk', '4 mo', payload],
      [payload, payload, payload, ''],
    ]);
    const table = Papa.unparse([['reflex', 'appears', 'integrates', 'note'], ...rows]);
    await page.getByLabel('Open a CSV file').setInputFiles(file(payloads[0]!, 'csv', table));
    await page.waitForURL(/#\/own\/source\/new/);
    await page.getByLabel('Note, row 1', { exact: true }).waitFor();
    for (const payload of payloads) expect(await shows(page, payload), payload).toBe(true);
    expect(await alive(page)).toEqual([]);
    await page.getByRole('button', { name: 'Save and use' }).click();
    expect(await alive(page)).toEqual([]);
    return true;
  },
  'a talk file': async (page, payloads) => {
    await open(page, '#/about'); // what was said of the one before has gone
    await open(page, '#/talks');
    await page
      .getByLabel('Open a talk file')
      .setInputFiles(file(payloads[0]!, 'talk.json', talkWith(payloads)));
    const title = payloads[0]!.slice(0, 160).trim();
    const own = page
      .locator('section[aria-labelledby="own"] h3')
      .getByRole('link', { name: title, exact: true });
    await expect(own.or(page.getByRole('alert')).first()).toBeVisible();
    expect(await alive(page)).toEqual([]);
    if ((await own.count()) === 0) return false;
    const at = (await own.getAttribute('href')) ?? '';
    const stage = at.replace('talks', 'stage');
    await showsOn(page, ['#/talks', at, stage, `${stage}/speaker`], [title]);
    await look(
      page,
      payloads.map((_, n) => `${stage}?step=${n + 1}`),
    );
    await look(page, ['#/chart']);
    return true;
  },
  'a backup': async (page, payloads) => {
    await open(page, '#/about');
    await open(page, '#/keeping');
    await page
      .getByLabel('Open a backup')
      .setInputFiles(file(payloads[0]!, 'json', backupWith(payloads)));
    return takeBackup(page, payloads);
  },
  'an encrypted backup': async (page, payloads) => {
    await open(page, '#/about');
    await open(page, '#/keeping');
    await page
      .getByLabel('Open a backup')
      .setInputFiles(file(payloads[0]!, 'json.age', await sealed(backupWith(payloads))));
    await unseal(page);
    return takeBackup(page, payloads);
  },
};

/** The two files of one's own that hold all there is; how the others are read is also tried in tests/store. */
const EVERYDAY = ['a case file', 'a backup'];

for (const [way, enter] of Object.entries(WAYS)) {
  const title = `script that comes in by ${way} is refused, or shown as the text it is`;

  test(title, { tag: EVERYDAY.includes(way) ? [] : '@thorough' }, async ({ page, baseURL }) => {
    const signs = await watched(page, [baseURL!]);
    expect(await enter(page, PLAIN)).toBe(true);
    await enter(page, HOSTILE);
    expect(await alive(page)).toEqual([]);
    expect(signs()).toEqual([]);
  });

  test(`${title}, each by itself`, { tag: '@thorough' }, async ({ page, baseURL }) => {
    test.slow(); // every payload comes in, is taken, and is looked for on page after page
    const signs = await watched(page, [baseURL!]);
    for (const payload of PAYLOADS) {
      await openAnew(page, '#/about'); // what was said of the one before is gone
      const isShown = await enter(page, [payload]);
      if (PLAIN.includes(payload)) expect(isShown, payload).toBe(true);
      expect(await alive(page), payload).toEqual([]);
      expect(signs(), payload).toEqual([]);
    }
  });
}

/** Addresses that hold a text. */
const addresses = (payload: string): string[] => {
  const said = encodeURIComponent(payload);
  return [
    `#/reflexes/${said}`,
    `#/compare/moro/${said}`,
    `#/children?find=${said}&tag=${said}&sort=${said}`,
    `#/axis?reflexes=${said}&age=${said}`,
    `#/visits/${said}`,
    `#/talks/${said}`,
    `#/own/source/${said}`,
    `#/own/reflex/${said}`,
    `#/quiz?set=${said}`,
    `#/show?talk=${said}`,
    `#/${said}`,
  ];
};

test(
  'script in an address does nothing, at the first visit and within the page',
  { tag: '@thorough' },
  async ({ page, baseURL }) => {
    const signs = await watched(page, [baseURL!]);
    for (const [n, payload] of PAYLOADS.entries())
      for (const [index, hash] of addresses(payload).entries()) {
        // each address takes a third of them; each payload is a first visit by one
        if ((index + n) % 3 !== 0) continue;
        await (index === n % 11 ? openAnew : open)(page, hash);
        expect(await alive(page), hash).toEqual([]);
      }
    expect(signs()).toEqual([]);
  },
);
