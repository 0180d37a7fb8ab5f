import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

/**
 * What keeps something beyond a test, as the one list of everything that can be undone, the browser's
 * database or the clock: each of these files has its modules and its worker to itself.
 */
const APART = [
  'tests/backup/backup.test.ts',
  'tests/platform/undoing.test.ts',
  'tests/repository/{library,talks,trash-findings,windows}.test.ts',
  'tests/store/{migrations,recode,store}.test.ts',
];
const BROWSER = 'tests/browser/**';

export default defineConfig({
  // modules of the app alone: what SvelteKit adds to them belongs to its pages, which are tested in a browser
  plugins: [svelte()],
  define: { __CONNECTED__: 'false' },
  resolve: { alias: { $lib: fileURLToPath(new URL('src/lib', import.meta.url)) } },
  test: {
    environment: 'node',
    pool: 'threads',
    maxWorkers: '100%', // by default one core is left over, of two
    setupFiles: process.env.FAULTS_LOG ? ['tests/faults/count.ts'] : [],
    expect: { requireAssertions: true },
    testTimeout: process.env.THOROUGH ? 600_000 : 120_000, // a busy machine is slow, not wrong; speed belongs to the benchmark
    projects: [
      {
        extends: true,
        // they share their modules, of which each is then read once and not for every file
        test: {
          name: 'shared',
          isolate: false,
          include: ['tests/**/*.test.ts'],
          exclude: [BROWSER, ...APART],
        },
      },
      { extends: true, test: { name: 'apart', include: APART } },
    ],
  },
});
