import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';

/** The chart on a page of its own: `npx vite --config tests/chart/gallery/vite.config.js`. */
export default defineConfig({
  root: import.meta.dirname,
  base: './',
  plugins: [svelte({ configFile: false, compilerOptions: { runes: true } })],
  build: {
    outDir: '../../../dist/gallery',
    emptyOutDir: true,
    rolldownOptions: { checks: { bundlerTimings: false } },
  },
});
