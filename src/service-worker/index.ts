/** Keeps the whole of Tidemark on the machine, so that it opens with no network. */
import { build, files, prerendered, version } from '$service-worker';

const worker = globalThis as unknown as ServiceWorkerGlobalScope;
const ROOT = new URL('./', worker.location.href);
/** Caches belong to the whole server: another folder of it may hold another Tidemark. */
const PREFIX = `tidemark-${ROOT.pathname}-`;
const CACHE = PREFIX + version;
/** Marks, within a cache, that its version was in use. */
const SERVED = new URL('./served', ROOT).href;

const ours = async (): Promise<string[]> =>
  (await caches.keys()).filter((key) => key.startsWith(PREFIX));

/** Fetches all of this version; what comes half is thrown away, and the version before stays. */
async function keepAll(): Promise<void> {
  const isNew = !(await caches.has(CACHE));
  const cache = await caches.open(CACHE);
  // names under "immutable" change with their content; the rest must not come from a browser's memory
  const fresh = [ROOT.href, ...files, ...prerendered].map(
    (address) => new Request(address, { cache: 'reload' }),
  );
  try {
    await cache.addAll([...fresh, ...new Set(build)]);
  } catch (error) {
    if (isNew) await caches.delete(CACHE);
    throw error;
  }
}

/**
 * Takes over. The version that was in use before is kept: its pages may still be open, and fetch
 * their parts only when these are looked at. Anything older goes.
 */
async function takeOver(): Promise<void> {
  let before: string | undefined;
  for (const key of await ours())
    if (key !== CACHE && (await (await caches.open(key)).match(SERVED))) before = key;
  for (const key of await ours()) if (key !== CACHE && key !== before) await caches.delete(key);
  await (await caches.open(CACHE)).put(SERVED, new Response(version));
  await worker.clients.claim();
}

/** A part of this version, or of the one before. A server's Vary header must not hide a kept file. */
async function part(request: Request): Promise<Response> {
  for (const key of [CACHE, ...(await ours()).filter((other) => other !== CACHE)]) {
    const kept = await (await caches.open(key)).match(request, { ignoreVary: true });
    if (kept) return kept;
  }
  return fetch(request);
}

async function page(): Promise<Response> {
  const cache = await caches.open(CACHE);
  return (await cache.match(ROOT.href, { ignoreVary: true })) ?? fetch(ROOT.href);
}

worker.addEventListener('install', (event) => {
  event.waitUntil(keepAll());
});
worker.addEventListener('activate', (event) => {
  event.waitUntil(takeOver());
});
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== worker.location.origin) return;
  if (request.mode !== 'navigate') event.respondWith(part(request));
  // there is one page; any other address, such as that of the single file, is the server's
  else if ([ROOT.pathname, `${ROOT.pathname}index.html`].includes(pathname))
    event.respondWith(page());
});
// only when the user has said so: open pages belong to the version before
worker.addEventListener('message', ({ data }) => {
  if (data === 'use-now') void worker.skipWaiting();
});
