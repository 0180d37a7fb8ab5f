/** What tells that a text was taken for markup, and that it is shown as the text it is. */
import type { Page } from '@playwright/test';

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
