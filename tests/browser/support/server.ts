/** A small web server over a built folder, which a test can kill, or give another version to serve. */
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

export class SiteServer {
  /** What is served now; another folder is another version. */
  folder: string;
  #server: Server | undefined;
  #port = 0;

  constructor(folder: string) {
    this.folder = folder;
  }

  get address(): string {
    return `http://127.0.0.1:${this.#port}`;
  }

  /** Begins to answer; after a kill, at the same address. */
  async start(): Promise<void> {
    const server = createServer((request, response) => {
      const path = normalize(new URL(request.url ?? '/', 'http://localhost').pathname);
      const file = join(this.folder, path.endsWith('/') ? `${path}index.html` : path);
      if (!existsSync(file) || !statSync(file).isFile()) return void response.writeHead(404).end();
      response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'text/plain' });
      createReadStream(file).pipe(response);
    });
    this.#server = server;
    await new Promise<void>((resolve) => {
      server.listen(this.#port, '127.0.0.1', resolve);
    });
    const at = server.address();
    if (at && typeof at === 'object') this.#port = at.port;
  }

  /** Ends it, with every connection: what is asked for now fails. */
  async kill(): Promise<void> {
    const server = this.#server;
    if (!server) return;
    this.#server = undefined;
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
  }
}
