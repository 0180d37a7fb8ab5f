import { defineConfig } from 'vite';

/** The command line as one file without dependencies, so that the built package needs nothing. */
export default defineConfig({
  publicDir: false,
  ssr: { noExternal: true },
  build: {
    ssr: 'src/cli/main.ts',
    outDir: 'dist-cli',
    target: 'node20',
    rolldownOptions: {
      checks: { bundlerTimings: false },
      output: { entryFileNames: 'tidemark.js', banner: '#!/usr/bin/env node' },
    },
  },
});
