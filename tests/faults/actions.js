/**
 * Every action that goes on after its click, for the table of actions and ways of leaving: how the page is
 * brought to the moment before it, what is clicked or typed, and what the store holds before and after.
 */
import { caseOf } from './limits.js';

/** @typedef {import('@playwright/test').Page} Page */
/** @typedef {import('@playwright/test').Locator} Locator */
/** @typedef {{ id: string; rev: string; body: any }} StoredRow */
/** All that is stored, by table. @typedef {Record<'cases' | 'own' | 'talks' | 'bin' | 'small', StoredRow[]>} Rows */

/**
 * @typedef {object} Act
 * @property {Locator} at what is clicked, typed into or given a file
 * @property {string} [types] letters that are typed one after another, instead of a click
 * @property {{ name: string; text: string }} [file] that is given, instead of a click
 */

/**
 * `unchanged`: as before the click. `whole`: all that was asked for. `half`: a part of it.
 * @typedef {'unchanged' | 'whole' | 'half'} Found
 */

/**
 * @typedef {object} Action
 * @property {string} name
 * @property {(page: Page, show: (hash: string) => Promise<void>) => Promise<Act>} ready
 * @property {(rows: Rows, before: Rows) => Found} found
 */

/** Of the lock that stands before it is changed. */
export const PASSPHRASE = 'three dunlins on the mud';
const NEXT_PASSPHRASE = 'four curlews over the marsh';
const TYPED = 'typed quickly';

/** @param {string} label */
const caseText = (label) => caseOf(label, 2, 4000, 4);

/** @param {number} done @param {number} of @returns {Found} */
const share = (done, of) => (done === 0 ? 'unchanged' : done === of ? 'whole' : 'half');

/** @param {readonly boolean[]} parts @returns {Found} */
const parts = (...parts) => share(parts.filter(Boolean).length, parts.length);

/** @param {StoredRow[]} rows @param {string} text */
const says = (rows, text) => rows.some(({ body }) => String(body).includes(text));

/** @param {StoredRow[]} rows @param {string} id */
const has = (rows, id) => rows.some((row) => row.id === id);

/** @param {Page} page */
const saved = (page) => page.locator('[data-standing="saved"]').waitFor();

/** @param {Page} page @param {string} name */
const button = (page, name) => page.getByRole('button', { name, exact: true });

const OWN = JSON.stringify({
  format: 'tidemark-own',
  version: 1,
  kind: 'source',
  name: 'Lecture book',
  tier: 'textbook',
  on: true,
  rows: [{ reflex: 'moro', appears: '28 wk', integrates: '4-6 mo', note: '' }],
});

const TALK = JSON.stringify({
  format: 'tidemark-talk',
  version: 1,
  title: 'An invented talk',
  about: 'One step.',
  steps: [
    { caption: 'Step 1', note: '', lanes: ['moro'], ageDays: 300, fromDays: 250, toDays: 600 },
  ],
});

/** Opens a backup and waits until it can be taken. @param {Page} page @param {object[]} items */
async function laid(page, items) {
  const text = JSON.stringify({
    format: 'tidemark-backup',
    version: 1,
    at: '2026-06-08T10:00:00.000Z',
    items,
    small: {},
  });
  await page
    .getByLabel('Open a backup')
    .setInputFiles({ name: 'b.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.getByText(/new, \d+ changed/).waitFor();
}

/** Opens a file on the page of children, and what is to be looked through. @param {Page} page @param {string} name @param {string} text */
const given = (page, name, text) =>
  page
    .locator('main input[type=file]')
    .first()
    .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });

const BUNDLE = JSON.stringify({
  resourceType: 'Bundle',
  type: 'collection',
  entry: ['First', 'Second'].flatMap((name, at) => [
    {
      resource: {
        resourceType: 'Patient',
        id: `p${at}`,
        birthDate: '2026-01-05',
        name: [{ text: `Invented ${name}` }],
      },
    },
    {
      resource: {
        resourceType: 'Observation',
        status: 'final',
        subject: { reference: `Patient/p${at}` },
        code: { coding: [{ system: 'http://loinc.org', code: '11884-4' }] },
        valueQuantity: { value: 273, system: 'http://unitsofmeasure.org', code: 'd' },
      },
    },
  ]),
});

const SHEET = `Child;Born;Gestation;Date;Reflex;Side;Result;Note
Invented One;2026-01-05;39w0d;2026-02-04;Moro reflex;left;present;
Invented Two;2026-01-05;39w0d;2026-02-04;Moro reflex;right;absent;
`;

/** A source of one's own, kept. @param {Page} page @param {(hash: string) => Promise<void>} show */
async function ownSource(page, show) {
  await show('#/own');
  await page.getByLabel('Open a CSV file').setInputFiles({
    name: 'book.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from('reflex,appears,integrates,note\nMoro reflex,28 wk,3-4 mo,p. 112\n'),
  });
  await page.getByLabel('Name', { exact: true }).fill('Lecture book');
  return button(page, 'Save and use');
}

/** @param {Page} page @param {(hash: string) => Promise<void>} show */
async function ownTalk(page, show) {
  await show('#/talks');
  return page.getByRole('button', { name: /^Copy to edit: / }).first();
}

/** @param {Page} page @param {(hash: string) => Promise<void>} show */
async function lockForm(page, show) {
  await show('#/lock');
  await page.getByLabel('Passphrase', { exact: true }).fill(PASSPHRASE);
  await page.getByLabel('Repeat the passphrase').fill(PASSPHRASE);
  await page.getByLabel(/I have written the passphrase down/).check();
  return button(page, 'Set a lock');
}

/** Removes the child that is there. @param {Page} page @param {(hash: string) => Promise<void>} show */
async function remover(page, show) {
  await show('#/children');
  await button(page, 'More about Kestrel').click();
  return button(page, 'Remove Kestrel');
}

const LOCK = 'lock';
/** @param {Rows} rows */
const lockRow = (rows) => rows.small.find(({ id }) => id === LOCK);
/** @param {Rows} rows */
const invented = (rows) => rows.cases.filter(({ id }) => id.startsWith('example-')).length;

/** @type {readonly Action[]} */
export const ACTIONS = [
  {
    name: 'take a backup: new entries',
    ready: async (page, show) => {
      await show('#/keeping');
      await laid(page, [
        { table: 'cases', id: 'left-one', text: caseText('Left one') },
        { table: 'cases', id: 'left-two', text: caseText('Left two') },
        { table: 'own', id: 'own-left', text: OWN },
        { table: 'talks', id: 'talk-left', text: TALK },
      ]);
      return { at: button(page, 'Restore selected') };
    },
    found: ({ cases, own, talks }) =>
      parts(
        has(cases, 'left-one'),
        has(cases, 'left-two'),
        has(own, 'own-left'),
        has(talks, 'talk-left'),
      ),
  },
  {
    name: 'take a backup: with replacement',
    ready: async (page, show) => {
      await show('#/keeping');
      await laid(page, [{ table: 'cases', id: 'kestrel', text: caseText('Kestrel') }]);
      await page.getByRole('radio', { name: 'use the backup’s' }).check();
      return { at: button(page, 'Restore selected') };
    },
    found: ({ cases, bin }, before) =>
      parts(
        cases.find(({ id }) => id === 'kestrel')?.body !==
          before.cases.find(({ id }) => id === 'kestrel')?.body,
        // whole; the visits it lost with it lie there by themselves too
        bin.some(({ id }) => id.startsWith('cases ')),
      ),
  },
  {
    name: 'bring a child back',
    ready: async (page, show) => {
      await (await remover(page, show)).click();
      await saved(page);
      await show('#/keeping');
      return { at: button(page, 'Restore Kestrel') };
    },
    found: ({ cases, bin }) => parts(has(cases, 'kestrel'), bin.length === 0),
  },
  {
    name: 'bring a visit back',
    ready: async (page, show) => {
      await show('#/visits/2');
      await button(page, 'Remove this visit').click();
      await saved(page);
      await show('#/keeping');
      return { at: page.getByRole('button', { name: /^Restore Kestrel: visit/ }) };
    },
    found: ({ cases, bin }, before) =>
      parts(String(cases[0]?.body).length > String(before.cases[0]?.body).length, bin.length === 0),
  },
  {
    name: 'add a case file',
    ready: async (page, show) => {
      await show('#/children');
      const at = page.locator('main input[type=file]').first();
      return { at, file: { name: 'case.json', text: caseText('From a file') } };
    },
    found: ({ cases }) => parts(says(cases, 'From a file')),
  },
  {
    name: 'add a bundle',
    ready: async (page, show) => {
      await show('#/children');
      await given(page, 'bundle.json', BUNDLE);
      return { at: page.getByRole('button', { name: 'Save', exact: true }) };
    },
    found: ({ cases }) => parts(says(cases, 'Invented First'), says(cases, 'Invented Second')),
  },
  {
    name: 'add a sheet',
    ready: async (page, show) => {
      await show('#/children');
      await given(page, 'sheet.csv', SHEET);
      return { at: page.getByRole('button', { name: /^Add \d+ findings?$/ }) };
    },
    found: ({ cases }) => parts(says(cases, 'Invented One'), says(cases, 'Invented Two')),
  },
  {
    name: 'add an own source',
    ready: async (page, show) => ({ at: await ownSource(page, show) }),
    found: ({ own }) => parts(own.length === 1),
  },
  {
    name: 'change an own source',
    ready: async (page, show) => {
      await (await ownSource(page, show)).click();
      await saved(page);
      await page
        .getByRole('link', { name: /Lecture book/ })
        .first()
        .click();
      await page.getByLabel('Name', { exact: true }).fill('Another book');
      return { at: page.locator('main form button.act').first() };
    },
    found: ({ own }) => parts(says(own, 'Another book')),
  },
  {
    name: 'make a talk one’s own',
    ready: async (page, show) => ({ at: await ownTalk(page, show) }),
    found: ({ talks }) => parts(talks.length === 1),
  },
  {
    name: 'letters into a talk’s note',
    ready: async (page, show) => {
      await (await ownTalk(page, show)).click();
      await saved(page);
      return { at: page.getByLabel('Your note'), types: TYPED };
    },
    found: ({ talks }) =>
      says(talks, TYPED) ? 'whole' : says(talks, TYPED.slice(0, 5)) ? 'half' : 'unchanged',
  },
  {
    name: 'letters into a visit’s note',
    ready: async (page, show) => {
      await show('#/visits/3');
      return { at: page.getByLabel('Note', { exact: true }).first(), types: TYPED };
    },
    found: ({ cases }) =>
      says(cases, TYPED) ? 'whole' : says(cases, TYPED.slice(0, 5)) ? 'half' : 'unchanged',
  },
  {
    name: 'set a lock',
    ready: async (page, show) => ({ at: await lockForm(page, show) }),
    found: (rows) => parts(lockRow(rows) !== undefined),
  },
  {
    name: 'change a lock',
    ready: async (page, show) => {
      await (await lockForm(page, show)).click();
      await page.getByText('The lock is set.').waitFor();
      await page.getByLabel('Current passphrase').fill(PASSPHRASE);
      await page.getByLabel('Passphrase', { exact: true }).fill(NEXT_PASSPHRASE);
      await page.getByLabel('Repeat the passphrase').fill(NEXT_PASSPHRASE);
      return { at: button(page, 'Change the passphrase') };
    },
    found: (rows, before) => parts(lockRow(rows)?.body !== lockRow(before)?.body),
  },
  {
    name: 'add the invented children',
    ready: async (page, show) => {
      await show('#/children');
      return { at: button(page, 'Add sample children') };
    },
    found: (rows) => share(Math.min(invented(rows), 10), 10),
  },
  {
    name: 'clear the invented children',
    ready: async (page, show) => {
      await show('#/children');
      await button(page, 'Add sample children').click();
      await button(page, 'Remove sample children').waitFor();
      await saved(page);
      return { at: button(page, 'Remove sample children') };
    },
    found: (rows, before) => share(invented(before) - invented(rows), invented(before)),
  },
  {
    name: 'remove a child',
    ready: async (page, show) => ({ at: await remover(page, show) }),
    found: ({ cases, bin }) => parts(cases.length === 0, bin.length === 1),
  },
  {
    name: 'remove a visit',
    ready: async (page, show) => {
      await show('#/visits/2');
      return { at: button(page, 'Remove this visit') };
    },
    found: ({ cases, bin }, before) =>
      parts(String(cases[0]?.body).length < String(before.cases[0]?.body).length, bin.length === 1),
  },
];
