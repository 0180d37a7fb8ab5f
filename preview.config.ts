import { existsSync, readFileSync, statSync } from 'node:fs';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { defineConfig, type Plugin } from 'vite';

const SITE = process.env.SITE_DIR ?? 'dist';
const BASE = process.env.BASE ?? '/';

/** What is sent as gzip, as static servers do; letters and pictures are packed already. */
const PACKED: Readonly<Record<string, string>> = {
  '.css': 'text/css;charset=utf-8',
  '.html': 'text/html;charset=utf-8',
  '.js': 'text/javascript;charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain;charset=utf-8',
  '.webmanifest': 'application/manifest+json',
};

/** Vite's own preview packs nothing. A file is packed once, and again when it has changed. */
function packing(): Plugin {
  const kept = new Map<string, { changed: number; bytes: Buffer }>();
  const packed = (file: string): Buffer => {
    const changed = statSync(file).mtimeMs;
    const before = kept.get(file);
    if (before?.changed === changed) return before.bytes;
    const bytes = gzipSync(readFileSync(file), { level: 9 });
    kept.set(file, { changed, bytes });
    return bytes;
  };
  return {
    name: 'packing',
    configurePreviewServer({ middlewares }) {
      middlewares.use((request, response, next) => {
        const { pathname } = new URL(request.url ?? '/', 'http://localhost');
        const path = pathname.startsWith(BASE) ? pathname.slice(BASE.length) : undefined;
        const file = path === undefined ? undefined : join(SITE, path || 'index.html');
        const type = file && PACKED[extname(file)];
        const takes = /\bgzip\b/.test(request.headers['accept-encoding']?.toString() ?? '');
        if (request.method !== 'GET' || !takes || !type || !existsSync(file)) {
          next();
          return;
        }
        response.writeHead(200, {
          'content-type': type,
          'content-encoding': 'gzip',
          'cache-control': 'no-cache',
          vary: 'accept-encoding',
        });
        response.end(packed(file));
      });
    },
  };
}

/** Serves the built folder as any static server would. Kit's own preview serves another tree. */
export default defineConfig({
  base: BASE,
  appType: 'mpa',
  plugins: [packing()],
  build: { outDir: SITE },
  preview: { port: Number(process.env.PORT ?? 4173), host: '127.0.0.1', strictPort: true },
});
