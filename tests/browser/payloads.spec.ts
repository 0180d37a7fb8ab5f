/**
 * Script in what comes from outside: by every kind of file, and looked at on the pages that show it.
 * It is refused with a sentence, or stands there as the text it is; nothing runs, loads or opens.
 */
import { test as loud, type Page } from '@playwright/test';
import { Encrypter } from 'age-encryption';
import Papa from 'papaparse';
import { expect, open, test } from './support/page.ts';
import { alive, bundleWith, line, PAYLOADS, shows, watched } from './support/payloads.ts';

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

const caseWith = (payload: string): object => ({
  format: 'tidemark-case',
  version: 1,
  child: { label: line(payload), born: '2026-01-04', gestation: '39w0d' },
  visits: [
    {
      on: '2026-03-01',
      examiner: line(payload),
      note: payload,
      findings: [{ reflex: 'moro', side: 'left', response: 'weak', note: payload }],
    },
  ],
  tags: [line(payload)],
  question: payload,
  decisions: [{ on: '2026-03-02', text: payload, who: line(payload), by: '2026-04-01' }],
  family: {
    calledName: line(payload),
    clinic: { name: line(payload), phone: line(payload) },
    pages: [
      { visit: '', edits: [{ key: 'closing', language: 'en', text: payload, over: payload }] },
    ],
  },
});

const talkWith = (payload: string): object => ({
  format: 'tidemark-talk',
  version: 1,
  title: payload.slice(0, 160),
  about: payload,
  steps: [
    {
      caption: payload.slice(0, 160),
      note: payload,
      lanes: ['moro'],
      ageDays: 300,
      fromDays: 200,
      toDays: 500,
    },
  ],
});

const ownWith = (payload: string): object => ({
  format: 'tidemark-own',
  version: 1,
  kind: 'source',
  name: payload,
  tier: 'textbook',
  on: true,
  rows: [{ reflex: 'Moro reflex', appears: '28 wk', integrates: '4-6 mo', note: payload }],
});

/** Entries under ids of their own, so that those of one backup do not stand for those of the next. */
const backupWith = (payload: string, n = PAYLOADS.findIndex((one) => one === payload)) => ({
  format: 'tidemark-backup',
  version: 1,
  at: '2026-06-01T10:00:00.000Z',
  items: [
    { table: 'cases', id: `child-${n}`, text: JSON.stringify(caseWith(payload)) },
    { table: 'talks', id: `talk-${n}`, text: JSON.stringify(talkWith(payload)) },
    { table: 'own', id: `own-${n}`, text: JSON.stringify(ownWith(payload)) },
  ],
  small: { 'tidemark-settings': payload, 'tidemark-sheets': JSON.stringify([{ name: payload }]) },
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

/** Looks through a sheet that holds a payload, keeps its mapping under that name, and adds what can be. */
async function sheetTaken(page: Page, payload: string, rows: string[][]): Promise<boolean> {
  await open(page, '#/children');
  await pickCase(page, file(payload, 'csv', Papa.unparse(rows)));
  expect(await refusedOrAt(page, /^#\/incoming/)).toBe(false);
  await page.getByRole('heading', { name: 'What would be added' }).waitFor();
  expect(await shows(page, payload)).toBe(true);
  await page.getByLabel('Keep this mapping as').fill(line(payload));
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
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

/** Looks at pages on each of which the text has to stand as it is. */
async function stands(page: Page, hashes: readonly string[], text: string): Promise<void> {
  for (const hash of hashes) {
    await open(page, hash);
    await expect.poll(() => shows(page, text), `${text} on ${hash}`).toBe(true);
    expect(await alive(page), hash).toEqual([]);
  }
}

/** What is no markup is nowhere refused: it has to stand there as text. */
const PLAIN = [
  "' onfocus=globalThis.ran=1 autofocus x='",
  '&lt;img src=x onerror=globalThis.ran=1&gt;',
  '\\u003cscript\\u003eglobalThis.ran=1\\u003c/script\\u003e',
];

/** The ways in: each takes a payload and answers whether it stood somewhere as the text it is. */
const WAYS: Readonly<Record<string, (page: Page, payload: string) => Promise<boolean>>> = {
  'a case file': async (page, payload) => {
    await open(page, '#/children');
    await pickCase(page, file(payload, 'json', caseWith(payload)));
    if (await refusedOrAt(page, /^#\/$/)) return false;
    await stands(page, RECORD, line(payload));
    await look(page, MORE);
    return true;
  },
  'an encrypted case file': async (page, payload) => {
    await open(page, '#/children');
    await pickCase(page, file(payload, 'json.age', await sealed(caseWith(payload))));
    await unseal(page);
    if (await refusedOrAt(page, /^#\/$/)) return false;
    await stands(page, ['#/', '#/report'], line(payload));
    return true;
  },
  'a FHIR bundle': async (page, payload) => {
    await open(page, '#/children');
    await pickCase(page, file(payload, 'fhir.json', bundleWith(payload)));
    if (await refusedOrAt(page, /^#\/incoming/)) return false;
    await page.getByRole('button', { name: 'Take over' }).waitFor();
    expect(await shows(page, line(payload))).toBe(true);
    expect(await alive(page)).toEqual([]);
    await page.getByRole('button', { name: 'Take over' }).click();
    await page.waitForURL(/#\/$/);
    await stands(page, ['#/', '#/report', '#/visits/1'], line(payload));
    return true;
  },
  'what a FHIR bundle holds beside': async (page, payload) => {
    await open(page, '#/children');
    const kinds = [
      { resourceType: payload },
      { resourceType: 'Observation', code: { text: payload } },
    ];
    await pickCase(page, file(payload, 'fhir.json', bundleWith('Plover', kinds)));
    expect(await refusedOrAt(page, /^#\/incoming/)).toBe(false);
    await page.getByRole('button', { name: 'Take over' }).waitFor();
    expect(await alive(page)).toEqual([]);
    // what was left out is named by its kind, cut to sixty characters
    return shows(page, payload.slice(0, 60));
  },
  "a clinic's sheet": async (page, payload) => {
    const rows = [
      ['Child', 'Date', 'Reflex', 'Side', 'Result', 'State', 'By', 'Note', payload],
      ['Kestrel', '2026-05-18', payload, 'l', 'present', '', 'PT 1', '', ''],
      ['Kestrel', '2026-05-18', 'Moro', payload, payload, payload, 'PT 1', '', ''],
      ['Kestrel', '2026-05-18', 'Moro', 'l', 'present', '', 'PT 1', payload, ''],
      [payload, payload, 'Moro', 'l', 'present', '', payload, payload, ''],
    ];
    return sheetTaken(page, payload, rows);
  },
  "a clinic's sheet of visits": async (page, payload) => {
    const rows = [
      ['Child', 'Date', 'State', 'By', 'Note', 'Moro L', 'Moro R', payload, payload],
      ['Kestrel', '2026-05-18', '', 'PT 1', payload, 'present', payload, payload, ''],
      ['Kestrel', '2026-05-19', payload, payload, payload, 'present', '', '', ''],
      [payload, payload, '', '', '', 'present', 'present', '', ''],
    ];
    return sheetTaken(page, payload, rows);
  },
  'a table of one’s own': async (page, payload) => {
    await open(page, '#/own');
    await page.getByLabel('Open a CSV file').setInputFiles(
      file(
        payload,
        'csv',
        Papa.unparse([
          ['reflex', 'appears', 'integrates', 'note'],
          ['Moro reflex', '28 wk', '4 mo', payload],
          [payload, payload, payload, ''],
        ]),
      ),
    );
    await page.waitForURL(/#\/own\/source\/new/);
    await page.getByLabel('Note, row 1').waitFor();
    expect(await shows(page, payload)).toBe(true);
    expect(await alive(page)).toEqual([]);
    await page.getByRole('button', { name: 'Take part from now on' }).click();
    expect(await alive(page)).toEqual([]);
    return true;
  },
  'a talk file': async (page, payload) => {
    await open(page, '#/about'); // what was said of the one before has gone
    await open(page, '#/talks');
    await page
      .getByLabel('Open a talk file')
      .setInputFiles(file(payload, 'talk.json', talkWith(payload)));
    const title = payload.slice(0, 160);
    const own = page
      .locator('section[aria-labelledby="own"] h3')
      .getByRole('link', { name: title, exact: true });
    await expect(own.or(page.getByRole('alert')).first()).toBeVisible();
    expect(await alive(page)).toEqual([]);
    if ((await own.count()) === 0) return false;
    const at = (await own.getAttribute('href')) ?? '';
    const stage = at.replace('talks', 'stage');
    await stands(page, ['#/talks', at, stage, `${stage}/speaker`], title);
    await look(page, ['#/chart']);
    return true;
  },
  'a backup': async (page, payload) => {
    await open(page, '#/about');
    await open(page, '#/keeping');
    await page
      .getByLabel('Open a backup')
      .setInputFiles(file(payload, 'json', backupWith(payload)));
    return takeBackup(page, payload);
  },
  'an encrypted backup': async (page, payload) => {
    await open(page, '#/about');
    await open(page, '#/keeping');
    await page
      .getByLabel('Open a backup')
      .setInputFiles(file(payload, 'json.age', await sealed(backupWith(payload))));
    await unseal(page);
    return takeBackup(page, payload);
  },
  'an address': async (page, payload) => {
    const said = encodeURIComponent(payload);
    const n = PAYLOADS.findIndex((one) => one === payload);
    const all = [
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
    // each address takes a third of them, and each payload comes by four addresses
    for (const hash of all.filter((_, index) => (index + n) % 3 === 0)) {
      await page.goto(`/${hash}`);
      await page.locator('main').waitFor();
      expect(await alive(page), hash).toEqual([]);
    }
    return false;
  },
};

/** What a backup holds is looked through, taken, and looked at. */
async function takeBackup(page: Page, payload: string): Promise<boolean> {
  await page.getByText(/\d new, \d changed, \d the same/).waitFor();
  expect(await shows(page, payload)).toBe(true);
  expect(await alive(page)).toEqual([]);
  await page.getByRole('button', { name: 'Take what is chosen' }).click();
  await expect(page.getByText(/entr(?:y|ies) taken from the backup/)).toBeVisible();
  await page.locator('[data-standing="saved"]').waitFor();
  // a source of one's own may have any name that was once given to it
  await stands(page, ['#/own'], payload);
  await look(page, ['#/sources', '#/settings', '#/reflexes/moro']);
  // the record and the talk beside it came in where their own readers took them
  if (PLAIN.includes(payload)) await stands(page, ['#/talks', '#/children'], payload);
  return true;
}

for (const [way, enter] of Object.entries(WAYS))
  test(`script that comes in by ${way} is refused, or shown as the text it is`, async ({
    page,
    baseURL,
  }) => {
    test.slow(); // every payload comes in, is taken, and is looked for on page after page
    const signs = await watched(page, [baseURL!]);
    for (const payload of PAYLOADS) {
      const shown = await enter(page, payload);
      if (way !== 'an address' && PLAIN.includes(payload)) expect(shown, payload).toBe(true);
      expect(await alive(page), payload).toEqual([]);
      expect(signs(), payload).toEqual([]);
    }
  });
