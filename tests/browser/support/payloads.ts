/** Texts that would be script if a page took them for markup, and what tells that one of them was. */
import type { Page } from '@playwright/test';

/** Ways in which text has become script in other pages (OWASP, XSS Filter Evasion Cheat Sheet, the kinds). */
export const PAYLOADS = [
  '<script>globalThis.ran=1</script>',
  '<img src=x onerror="globalThis.ran=1">',
  '"><svg onload=alert(1)>',
  "' onfocus=globalThis.ran=1 autofocus x='",
  'javascript:globalThis.ran=1',
  'javascript&colon;alert(1)',
  '{{globalThis.ran=1}}${globalThis.ran=1}{@html "<img src=x onerror=globalThis.ran=1>"}',
  '</title></style></textarea><script>globalThis.ran=1</script>',
  '<iframe srcdoc="<script>parent.ran=1</script>"></iframe>',
  '\\u003cscript\\u003eglobalThis.ran=1\\u003c/script\\u003e',
  '&lt;img src=x onerror=globalThis.ran=1&gt;',
  '<a href="javascript:globalThis.ran=1">x</a>',
  '<math><mtext><style><img src onerror=globalThis.ran=1>',
  '<object data="/taken"></object><link rel=stylesheet href=/taken>',
  '<img src=x onerror=alert(1) ', // no end, and a browser makes one
  '<details open ontoggle=globalThis.ran=1>',
  ']]><![CDATA[<script>globalThis.ran=1</script>',
  '=HYPERLINK("javascript:globalThis.ran=1","x")',
] as const;

/** Begins to watch a page; what is answered names every sign that something ran, loaded or opened. */
export async function watched(page: Page, allowed: readonly string[]): Promise<() => string[]> {
  const signs: string[] = [];
  page.on('dialog', (dialog) => {
    signs.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('popup', (opened) => signs.push(`window: ${opened.url()}`));
  page.on('request', (request) => {
    const url = request.url();
    const own = /^(?:blob|data):/.test(url) || allowed.some((base) => url.startsWith(base));
    if (!own || /\/(?:x|taken)$/.test(url)) signs.push(`request: ${url}`);
  });
  await page.exposeFunction('tellViolation', (directive: string) =>
    signs.push(`violation: ${directive}`),
  );
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) => {
      void (
        globalThis as unknown as { tellViolation: (text: string) => Promise<void> }
      ).tellViolation(effectiveDirective);
    });
  });
  return () => [...signs];
}

/** What of a payload has come to life: a flag that was set, or an element that none of ours is. */
export const alive = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const foreign =
      'iframe, object, embed, math, base, img[src="x"], link[href="/taken"], meta[http-equiv="refresh" i]';
    const handled = [...document.querySelectorAll('*')].filter((element) =>
      element.getAttributeNames().some((name) => name.startsWith('on')),
    );
    const links = [...document.querySelectorAll('[href], [src], [action]')].filter((element) =>
      ['href', 'src', 'action'].some((name) =>
        /^\s*javascript/i.test(element.getAttribute(name) ?? ''),
      ),
    );
    const scripts = [...document.scripts].filter(({ text }) => /\bran=1|alert\(1\)/.test(text));
    return [
      ...('ran' in globalThis ? ['script ran'] : []),
      ...[...document.querySelectorAll(foreign), ...handled, ...links, ...scripts].map((element) =>
        element.outerHTML.slice(0, 80),
      ),
    ];
  });

/** Whether a text stands on the page, letter for letter but for blanks: as words, or in a field. */
export const shows = (page: Page, text: string): Promise<boolean> =>
  page.evaluate((wanted) => {
    const squeezed = (some: string): string => some.replaceAll(/\s+/g, ' ').trim();
    const fields = [...document.querySelectorAll<HTMLInputElement>('main :is(input, textarea)')];
    const texts = [
      ...[...document.querySelectorAll('main, header, dialog')].map((part) => part.textContent),
      ...fields.map((field) => field.value),
    ];
    return texts.some((some) => squeezed(some).includes(squeezed(wanted)));
  }, text);

/** Lines are at most 80 characters, and a file with a longer one would be refused for that alone. */
export const line = (payload: string): string => payload.slice(0, 80).trim();

const subject = { reference: 'Patient/p' };
/** A child in FHIR whose every text is a payload, and what else is put beside it. */
export const bundleWith = (payload: string, more: object[] = []) => ({
  resourceType: 'Bundle',
  type: 'collection',
  entry: [
    {
      resource: {
        resourceType: 'Patient',
        id: 'p',
        birthDate: '2026-01-05',
        name: [{ text: line(payload) }],
        meta: { tag: [{ system: 'urn:tidemark:tag', display: line(payload) }] },
      },
    },
    {
      resource: {
        resourceType: 'Observation',
        subject,
        code: { coding: [{ system: 'http://loinc.org', code: '11884-4' }] },
        valueQuantity: { value: 36, code: 'wk' },
      },
    },
    {
      resource: {
        resourceType: 'Observation',
        subject,
        effectiveDateTime: '2026-05-18',
        performer: [{ display: line(payload) }],
        code: { coding: [{ system: 'urn:tidemark:reflex', code: 'moro' }] },
        bodySite: { coding: [{ system: 'urn:tidemark:side', code: 'left' }] },
        valueCodeableConcept: { coding: [{ system: 'urn:tidemark:response', code: 'weak' }] },
        note: [{ text: payload }],
      },
    },
    ...more.map((resource) => ({ resource })),
  ],
});
