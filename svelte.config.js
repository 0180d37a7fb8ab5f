import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';
import { singleFile, website } from './adapters.js';
import { versionName } from './version.js';

const serving = process.argv.includes('dev'); // hot reload needs a socket; a built page opens none
const single = process.argv.includes('single'); // vite build --mode single
/** The connected build may ask a FHIR server; the usual ones connect to nothing (vite build --mode connected). */
const connected = process.argv.includes('connected');
/** Any server by https, and one on this very machine. */
const SERVERS = /** @type {const} */ (['https:', 'http://localhost:*', 'http://127.0.0.1:*']);

/** @type {import('@sveltejs/kit').Config} */
export default {
  preprocess: vitePreprocess(),
  compilerOptions: {
    runes: ({ filename }) => (filename.includes('node_modules') ? undefined : true),
  },
  kit: {
    adapter: single ? singleFile : website,
    router: { type: 'hash' },
    output: { bundleStrategy: single ? 'inline' : 'split' },
    serviceWorker: { register: !single },
    version: { name: versionName() },
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
        'connect-src': serving ? ['self', 'ws:'] : connected ? [...SERVERS] : ['none'],
        // files are read apart from the page; what comes as a blob is held to this very policy
        'worker-src': ['self', 'blob:'],
        'object-src': ['none'],
        'base-uri': ['none'],
        'form-action': ['none'],
      },
    },
  },
};
