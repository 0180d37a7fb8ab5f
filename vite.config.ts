import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vite';

export default defineConfig(({ mode }) => ({
  plugins: [sveltekit()],
  // in the usual build whatever hangs on it falls away
  define: { __CONNECTED__: JSON.stringify(mode === 'connected') },
  build: {
    // fonts stay files of their own, so that the first script stays small; one file has all inside
    assetsInlineLimit: mode === 'single' ? Number.MAX_SAFE_INTEGER : 0,
    chunkSizeWarningLimit: mode === 'single' ? Number.MAX_SAFE_INTEGER : 500,
    rolldownOptions: {
      // a file of words does nothing by being loaded: a page has those it says, and no others
      treeshake: { moduleSideEffects: [{ test: /src\/lib\/words\//, sideEffects: false }] },
      checks: { bundlerTimings: false, emptyImportMeta: mode !== 'single' },
    },
  },
}));
