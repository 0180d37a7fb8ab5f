import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig, type Plugin } from 'vite';

/**
 * Parts that come whole, since one packs smaller than fifty: what every page begins with, and the chart.
 * What the named modules import comes along, unless another part has it.
 */
const PARTS = [
  { name: 'shell', priority: 2, test: /src\/routes\/\+layout\.svelte$/ },
  { name: 'chart', priority: 1, test: /src\/routes\/(?:ChartControls|ChartPane)\.svelte$/ },
];

/**
 * SvelteKit builds all pages a second time for a server, and asks that build for the page without content
 * alone, since the router works by hash. There each page is empty: the same files come out in less time. What
 * is around the pages stays, since the page names its stylesheets.
 */
const emptyOnServer: Plugin = {
  name: 'empty-on-server',
  apply: 'build',
  enforce: 'pre',
  load: {
    filter: { id: /\/src\/routes\/(?:.*\/)?\+page\.svelte$/ },
    handler: (_id, options) => (options?.ssr ? '' : undefined),
  },
};

export default defineConfig(({ mode }) => ({
  plugins: [emptyOnServer, sveltekit()],
  // in the usual build whatever hangs on it falls away
  define: { __CONNECTED__: JSON.stringify(mode === 'connected') },
  build: {
    // fonts stay files of their own, so that the first script stays small; one file has all inside
    assetsInlineLimit: mode === 'single' ? Number.MAX_SAFE_INTEGER : 0,
    chunkSizeWarningLimit: mode === 'single' ? Number.MAX_SAFE_INTEGER : 500,
    // a page names its styles beforehand and not its scripts: their names alone weighed 2 kB of the first view
    modulePreload: {
      resolveDependencies: (_file, needed) => needed.filter((name) => name.endsWith('.css')),
    },
    rolldownOptions: {
      // a file of words does nothing by being loaded: a page has those it says, and no others; and Tidemark
      // makes no custom elements
      treeshake: {
        moduleSideEffects: [
          { test: /src\/lib\/words\/|svelte\/.*\/custom-element\.js$/, sideEffects: false },
        ],
      },
      // one file has everything in it anyway
      ...(mode === 'single' ? {} : { output: { codeSplitting: { groups: PARTS } } }),
      checks: { bundlerTimings: false, emptyImportMeta: mode !== 'single' },
    },
  },
}));
