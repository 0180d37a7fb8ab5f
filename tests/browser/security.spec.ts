/** No request leaves the page's own server, and nothing that is typed or opened ever runs. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test as loud } from '@playwright/test';
import { expect, open, PAGES, test } from './support/page.ts';
import { alive, PAYLOADS } from './support/payloads.ts';

const MORE = ['#/reflexes', '#/reflexes/moro', '#/order', '#/talks', '#/quiz', '#/own', '#/course'];
const SESSION = [
  ...PAGES,
  ...MORE,
  '#/table',
  '#/report',
  '#/share',
  '#/lock',
  '#/compare/moro/atnr',
];

test('in a full session no request goes anywhere but to the page’s own server', async ({
  page,
  context,
  baseURL,
}) => {
  const asked: string[] = [];
  context.on('request', (request) => asked.push(request.url()));
  page.on('websocket', (socket) => asked.push(socket.url()));
  for (const hash of SESSION) await open(page, hash);
  await open(page, '#/share');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the file' }).click();
  await saving;
  expect(asked.length).toBeGreaterThan(10);
  const foreign = asked.filter((url) => !/^(?:blob|data):/.test(url) && !url.startsWith(baseURL!));
  expect(foreign).toEqual([]);
});

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

const TYPED = [
  '#/children/new',
  '#/child',
  '#/children',
  '#/visits/3',
  '#/visits/new',
  '#/table',
  '#/reflexes',
  '#/own/source/new',
  '#/own/reflex/new',
  '#/settings',
  '#/axis',
  '#/quiz',
  '#/sheet',
  '#/next',
  '#/lock',
  '#/share',
];

for (const hash of TYPED)
  test(`script typed into every field of ${hash} never runs`, async ({ page }) => {
    await open(page, hash);
    const fields = page.locator(
      'main :is(textarea, input:not([type=radio], [type=checkbox], [type=file], [type=range]))',
    );
    const count = await fields.count();
    for (const [n, payload] of PAYLOADS.entries())
      for (let i = 0; i < count; i++) {
        // every payload comes by every page, each field takes some of them
        if ((n + i) % 3 !== 0 && count > 3) continue;
        const field = fields.nth(i);
        if (!(await field.isEditable().catch(() => false))) continue;
        await field.fill(payload, { timeout: 5000 }).catch(() => undefined); // gone with the last one
      }
    await page.keyboard.press('Tab');
    expect(await alive(page)).toEqual([]);
    await page.keyboard.press('Enter');
    expect(await alive(page)).toEqual([]);
  });
