import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [sveltekit()],
  build: {
    assetsInlineLimit: 0, // fonts stay files of their own, so that the first script stays small
    rolldownOptions: { checks: { bundlerTimings: false } },
  },
  test: {
    environment: 'node',
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**'],
    expect: { requireAssertions: true },
    testTimeout: 120_000, // a busy machine is slow, not wrong; speed belongs to the benchmark
  },
});
