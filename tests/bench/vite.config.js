import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';

/** A static page with the real chart on it, for the benchmark only. */
export default defineConfig({
  root: `${import.meta.dirname}/page`,
  base: './',
  logLevel: 'warn',
  build: { rolldownOptions: { checks: { bundlerTimings: false } } },
  plugins: [svelte({ configFile: false, compilerOptions: { runes: true } })],
});
