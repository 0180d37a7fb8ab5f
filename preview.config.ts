import { defineConfig } from 'vite';

/** Serves the built folder as any static server would. Kit's own preview serves another tree. */
export default defineConfig({
  base: process.env.BASE ?? '/',
  appType: 'mpa',
  build: { outDir: process.env.SITE_DIR ?? 'dist' },
  preview: { port: Number(process.env.PORT ?? 4173), host: '127.0.0.1', strictPort: true },
});
