/** No request leaves the page's own server, and nothing that is typed or opened ever runs. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test as loud, type Page } from '@playwright/test';
import { PAYLOADS } from '../../support/payloads.ts';
import { expect, open, openAnew, test } from '../support/page.ts';
import { alive } from '../support/payloads.ts';

// what is tried here is told in the console, as it should be
loud('the policy allows no connection, frame, form or base, and is kept to', async ({ page }) => {
  await open(page, '#/');
  const policy = await page
    .locator('meta[http-equiv="content-security-policy" i]')
    .getAttribute('content');
  const rules = new Map(
    (policy ?? '').split(';').map((rule) => {
      const [name = '', ...values] = rule.trim().split(/\s+/);
      return [name, values] as const;
    }),
  );
  for (const name of ['connect-src', 'object-src', 'base-uri', 'form-action'])
    expect(rules.get(name), name).toEqual(["'none'"]);
  expect(rules.get('default-src')).toEqual(["'self'"]);
  expect(rules.get('worker-src')).toEqual(["'self'", 'blob:']);
  for (const value of rules.get('script-src') ?? ['missing'])
    expect(value).toMatch(/^'(?:self|sha256-[\w+/=]+)'$/);

  // and the browser holds to it
  const blocked = await page.evaluate(async () => {
    const told: string[] = [];
    document.addEventListener('securitypolicyviolation', (event) =>
      told.push(event.effectiveDirective),
    );
    await fetch('/').catch(() => undefined);
    await fetch('https://example.invalid/').catch(() => undefined);
    const script = document.createElement('script');
    script.textContent = 'globalThis.ran = true';
    document.head.append(script);
    const image = new Image();
    await new Promise((refused) => {
      image.onerror = refused;
      image.src = 'https://example.invalid/x.png';
    });
    // what reads files apart from the page is held to the same
    const reader = new Worker(
      URL.createObjectURL(
        new Blob(["fetch(location.origin).then(() => 'went', () => 'refused').then(postMessage)"]),
      ),
    );
    const fromWorker = await new Promise((said) => {
      reader.onmessage = ({ data }) => said(data);
    });
    return { told: [...new Set(told)], ran: 'ran' in globalThis, fromWorker };
  });
  expect(blocked.fromWorker).toBe('refused');
  expect(blocked.ran).toBe(false);
  expect(blocked.told).toEqual(
    expect.arrayContaining(['connect-src', 'script-src-elem', 'img-src']),
  );
});

test('nothing in the build names another server to load from', () => {
  const files = readdirSync('dist', { recursive: true, encoding: 'utf8' });
  const loads: string[] = [];
  for (const name of files.filter((one) => /\.(?:html|css|webmanifest|js)$/.test(one))) {
    const text = readFileSync(join('dist', name), 'utf8');
    // what loads by itself; a link that a reader follows is none
    const patterns = [
      /(?:src|srcset)\s*=\s*["']?(?:https?:)?\/\//gi,
      /<link[^>]+href\s*=\s*["']?(?:https?:)?\/\//gi,
      /url\(\s*["']?(?:https?:)?\/\//gi,
      /@import\s+["'(](?:https?:)?\/\//gi,
      /import\(\s*["'`]https?:\/\//gi,
      /\b(?:fetch|EventSource|WebSocket|sendBeacon)\(\s*["'`](?:https?|wss?):/gi,
    ];
    for (const pattern of patterns)
      for (const [hit] of text.matchAll(pattern)) loads.push(`${name}: ${hit}`);
  }
  expect(files.length).toBeGreaterThan(10);
  expect(loads).toEqual([]);
});

const FIELDS =
  'main :is(textarea, input:not([type=radio], [type=checkbox], [type=file], [type=range]))';

/** Pages with fields, how many of them text is typed into, and what brings up those that are folded away. */
const TYPED: readonly { hash: string; fields: number; act?: (page: Page) => Promise<void> }[] = [
  { hash: '#/children/new', fields: 3 },
  { hash: '#/child', fields: 3 },
  { hash: '#/children', fields: 1 },
  { hash: '#/visits/3', fields: 4 },
  { hash: '#/visits/new', fields: 4 },
  { hash: '#/table', fields: 4 },
  { hash: '#/reflexes', fields: 2 },
  { hash: '#/own/source/new', fields: 5 },
  { hash: '#/own/reflex/new', fields: 4 },
  { hash: '#/settings', fields: 4 },
  { hash: '#/quiz', fields: 2 },
  { hash: '#/sheet', fields: 2 },
  { hash: '#/next', fields: 1 },
  { hash: '#/lock', fields: 2 },
  {
    hash: '#/share',
    fields: 2,
    act: (page) => page.getByRole('checkbox', { name: /^Encrypt/ }).check(),
  },
];

/** Types a text into a field; says whether the field was there. A field that refuses to be filled fails. */
async function type(page: Page, n: number, text: string): Promise<boolean> {
  const field = page.locator(FIELDS).nth(n);
  if ((await field.count()) === 0) return false; // what was typed before has closed it
  await field.fill(text);
  return true;
}

/** Where the words of a record are typed; the other pages are gone through in the thorough run. */
const RECORDS = ['#/children/new', '#/visits/3', '#/table'];

for (const isRecord of [true, false])
  test(
    `script typed into each field of ${isRecord ? 'the pages of a record' : 'the other pages'} never runs`,
    { tag: isRecord ? [] : '@thorough' },
    async ({ page }) => {
      const typed = TYPED.filter(({ hash }) => RECORDS.includes(hash) === isRecord);
      expect(typed.length).toBeGreaterThanOrEqual(RECORDS.length);
      for (const { hash, fields, act } of typed) {
        await openAnew(page, hash);
        await act?.(page);
        await expect(page.locator(FIELDS), hash).toHaveCount(fields);
        expect(
          await page.locator(FIELDS).and(page.locator(':disabled, [readonly]')).count(),
          hash,
        ).toBe(0);
        const filled = new Set<number>();
        const tried = new Set<string>();
        for (const [n, payload] of PAYLOADS.entries())
          for (let i = 0; i < fields; i++) {
            // every payload comes by every page, each field takes some of them
            if ((n + i) % 3 !== 0 && fields > 3) continue;
            if (!(await type(page, i, payload))) continue;
            filled.add(i);
            tried.add(payload);
          }
        expect(filled.size, hash).toBe(fields);
        expect(tried.size, hash).toBe(PAYLOADS.length);
        await page.keyboard.press('Tab');
        expect(await alive(page), hash).toEqual([]);
        await page.keyboard.press('Enter');
        expect(await alive(page), hash).toEqual([]);
      }
    },
  );
