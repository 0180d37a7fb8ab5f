/** A build is skipped only where it is whole and of these very sources. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { isBuilt, isOffered } from '../adapters.js';

let folder: string;
const site = (): string => join(folder, 'site');
const single = (): string => join(folder, 'single');

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tidemark-built-'));
  mkdirSync(join(site(), '_app'), { recursive: true });
  mkdirSync(single());
});

afterEach(() => {
  rmSync(folder, { recursive: true });
});

const MARK = '<meta name="tidemark-file" content="./tidemark.html" />';
const page = (head: string, from: string): void => {
  writeFileSync(join(site(), 'index.html'), `${head}<script>import("${from}")</script>`);
};
const named = (version: string): void => {
  writeFileSync(join(site(), '_app/version.json'), JSON.stringify({ version }));
};

test('a website is there once its page is, in its last form and of this version', () => {
  expect(isBuilt(site(), '1-a')).toBe(false);
  named('1-a');
  expect(isBuilt(site(), '1-a')).toBe(false);
  page('', '/_app/start.js'); // as the framework leaves it
  expect(isBuilt(site(), '1-a')).toBe(false);
  page('', './_app/start.js');
  expect(isBuilt(site(), '1-a')).toBe(true);
  expect(isBuilt(site(), '1-b')).toBe(false);
});

test('one file is there once the website offers the same', () => {
  named('1-a');
  page(MARK, './_app/start.js');
  const offered = (): boolean => isOffered(site(), single(), '1-a');
  expect(offered()).toBe(false);
  writeFileSync(join(single(), 'tidemark.html'), 'one');
  expect(offered()).toBe(false);
  writeFileSync(join(site(), 'tidemark.html'), 'of before');
  expect(offered()).toBe(false);
  writeFileSync(join(site(), 'tidemark.html'), 'one');
  expect(offered()).toBe(true);
  expect(isOffered(site(), single(), '1-b')).toBe(false);
  page('', './_app/start.js'); // built anew since
  expect(offered()).toBe(false);
});
