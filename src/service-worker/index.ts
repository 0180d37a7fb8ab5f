/** Keeps the whole of Tidemark on the machine, so that it opens with no network. */
import { build, files, prerendered, version } from '$service-worker';

const worker = globalThis as unknown as ServiceWorkerGlobalScope;
const PREFIX = 'tidemark-';
const CACHE = PREFIX + version;
const ROOT = new URL('./', worker.location.href).href;

async function keepAll(): Promise<void> {
  const cache = await caches.open(CACHE);
  await cache.addAll([...new Set([ROOT, ...build, ...files, ...prerendered])]);
}

async function dropOlder(): Promise<void> {
  for (const key of await caches.keys())
    if (key.startsWith(PREFIX) && key !== CACHE) await caches.delete(key);
  await worker.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(CACHE);
  const key = request.mode === 'navigate' ? ROOT : request;
  // a server's Vary header must not hide a kept file
  return (await cache.match(key, { ignoreSearch: true, ignoreVary: true })) ?? fetch(request);
}

worker.addEventListener('install', (event) => {
  event.waitUntil(keepAll());
});
worker.addEventListener('activate', (event) => {
  event.waitUntil(dropOlder());
});
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== worker.location.origin) return;
  event.respondWith(answer(request));
});
