/** How the built pages are written out: as a website, and as one file that needs no server. */
import { createHash } from 'node:crypto';
import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import adapterStatic from '@sveltejs/adapter-static';

/** Where the website goes, and the build that may ask a server; a test builds another version elsewhere. */
const SITE =
  process.env.SITE_DIR ?? (process.argv.includes('connected') ? 'dist-connected' : 'dist');
const SINGLE = 'dist-single';
const FILE = 'tidemark.html';
/** How the finished page of a website names its scripts. */
const RELATIVE = 'import("./_app/';

/** The CSP source expression that admits exactly this inline script. @param {string} text */
const hashOf = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** The page's inline script, which its policy must admit by its hash. @param {string} html */
function bootOf(html) {
  const boot = /<script>([\s\S]*?)<\/script>/.exec(html)?.[1];
  if (!boot || !html.includes(hashOf(boot)))
    throw new Error('boot script or its CSP hash not found in the built page');
  return boot;
}

/**
 * With the hash router the built page names its scripts by absolute path. Tidemark must also run
 * from a sub-folder, so the paths are made relative and the boot script's hash is renewed.
 */
export const website = {
  name: 'website',
  /** @param {import('@sveltejs/kit').Builder} builder */
  async adapt(builder) {
    await adapterStatic({ pages: SITE, assets: SITE }).adapt(builder);
    const page = join(SITE, 'index.html');
    const html = readFileSync(page, 'utf8');
    const boot = bootOf(html);
    const relative = boot
      .replaceAll('import("/_app/', RELATIVE)
      .replace("'/service-worker.js'", "'./service-worker.js'");
    writeFileSync(
      page,
      html
        .replace(boot, () => relative)
        .replace(hashOf(boot), hashOf(relative))
        .replaceAll('href="/_app/', 'href="./_app/'),
    );
  },
};

/**
 * The policy of a page that has nothing beside it: from a folder, "self" would be every file near it.
 * @param {string} policy
 */
const onlyWithin = (policy) =>
  policy.replace("default-src 'self'", "default-src 'none'").replaceAll(" 'self'", '');

/**
 * One file with scripts, styles, letters and sign inside. A website of the same version that was built
 * before gets a copy, and its page a mark by which it knows that the file can be had.
 */
export const singleFile = {
  name: 'single-file',
  /** @param {import('@sveltejs/kit').Builder} builder */
  async adapt(builder) {
    const file = join(SINGLE, FILE);
    builder.rimraf(SINGLE);
    mkdirSync(SINGLE, { recursive: true });
    await builder.generateFallback(file);
    const sign = readFileSync('static/icon.svg').toString('base64');
    const html = readFileSync(file, 'utf8')
      .replace(/\s*<link rel="(manifest|apple-touch-icon)"[^>]*>/g, '')
      .replace('href="./icon.svg"', `href="data:image/svg+xml;base64,${sign}"`)
      .replace(/(?<=http-equiv="content-security-policy" content=")[^"]*/, onlyWithin);
    bootOf(html);
    const outside = /(?:src|href)="(?!data:|#)[^"]*"/.exec(html.replace(/<script>[\s\S]*/, ''));
    if (outside) throw new Error(`the single file refers to something outside: ${outside[0]}`);
    writeFileSync(file, html);
    offer(file, builder.config.kit.version.name);
  },
};

const MARK = `<meta name="tidemark-file" content="./${FILE}" />`;

/** @param {string} file @param {string} version */
function offer(file, version) {
  if (!isBuilt(SITE, version)) return;
  copyFileSync(file, join(SITE, FILE));
  const page = join(SITE, 'index.html');
  const html = readFileSync(page, 'utf8');
  if (!html.includes(MARK)) writeFileSync(page, html.replace('</head>', `  ${MARK}\n  </head>`));
}

/**
 * Whether a website of a version is in a folder, whole: its page is written last.
 * @param {string} folder @param {string} version
 */
export function isBuilt(folder, version) {
  const page = join(folder, 'index.html');
  const told = join(folder, '_app', 'version.json');
  return (
    existsSync(page) &&
    existsSync(told) &&
    JSON.parse(readFileSync(told, 'utf8')).version === version &&
    readFileSync(page, 'utf8').includes(RELATIVE)
  );
}

/**
 * Whether the one file of a version is in its folder and beside the website: the mark in that one's page is
 * written last.
 * @param {string} site @param {string} single folders @param {string} version
 */
export function isOffered(site, single, version) {
  const files = [join(site, FILE), join(single, FILE)];
  if (!isBuilt(site, version) || !files.every(existsSync)) return false;
  const [offered, own] = files.map((file) => readFileSync(file, 'utf8'));
  return offered === own && readFileSync(join(site, 'index.html'), 'utf8').includes(MARK);
}
