import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import adapterStatic from '@sveltejs/adapter-static';
import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';

const serving = process.argv.includes('dev'); // hot reload needs a socket; a built page opens none
const PAGE = 'dist/index.html';

/** The CSP source expression that admits exactly this inline script. @param {string} text */
const hashOf = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/**
 * With the hash router the built page names its scripts by absolute path. Tidemark must also run
 * from a sub-folder, so the paths are made relative and the boot script's hash is renewed.
 */
const website = {
  name: 'website',
  /** @param {import('@sveltejs/kit').Builder} builder */
  async adapt(builder) {
    await adapterStatic({ pages: 'dist', assets: 'dist' }).adapt(builder);
    const html = readFileSync(PAGE, 'utf8');
    const boot = /<script>([\s\S]*?)<\/script>/.exec(html)?.[1];
    if (!boot || !html.includes(hashOf(boot)))
      throw new Error('boot script or its CSP hash not found in the built page');
    const relative = boot
      .replaceAll('import("/_app/', 'import("./_app/')
      .replace("'/service-worker.js'", "'./service-worker.js'");
    writeFileSync(
      PAGE,
      html
        .replace(boot, () => relative)
        .replace(hashOf(boot), hashOf(relative))
        .replaceAll('href="/_app/', 'href="./_app/'),
    );
  },
};

/** @type {import('@sveltejs/kit').Config} */
export default {
  preprocess: vitePreprocess(),
  compilerOptions: {
    runes: ({ filename }) => (filename.includes('node_modules') ? undefined : true),
  },
  kit: {
    adapter: website,
    router: { type: 'hash' },
    version: { name: process.env.APP_VERSION ?? process.env.npm_package_version ?? 'dev' },
    typescript: {
      config: (/** @type {{ include: string[] }} */ config) => {
        config.include.push('../*.ts', '../tests/**/*.ts', '../tests/**/*.svelte');
      },
    },
    csp: {
      mode: 'hash',
      directives: {
        'default-src': ['self'],
        'script-src': ['self'],
        'style-src': ['self'],
        'style-src-attr': ['unsafe-hashes', 'sha256-S8qMpvofolR8Mpjy4kQvEm7m1q8clzU4dfDH0AmvZjo='], // the route announcer's one attribute
        'img-src': ['self', 'data:', 'blob:'],
        'font-src': ['self', 'data:'],
        'connect-src': serving ? ['self', 'ws:'] : ['none'],
        'object-src': ['none'],
        'base-uri': ['none'],
        'form-action': ['none'],
      },
    },
  },
};
