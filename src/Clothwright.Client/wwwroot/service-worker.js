// Keeps the page in the browser, so that it opens while the studio's server is away. A version of the page is kept whole or
// not at all, and each window gets all its files from one version: this one, or the server's own where that has become another.

const worker = /** @type {any} */ (self);
worker.importScripts('service-worker-assets.js');

/** @type {{ version: string, assets: { url: string, hash: string }[] }} */
const page = worker.assetsManifest;
const keptAs = `clothwright ${page.version}`;
// Windows that were given another version than the one kept here: the name of that version by the window's id.
const windows = 'clothwright windows';
const patience = 1500;
const atOnce = 2;

/** @type {Map<string, string>} Hashes by path. */
const files = new Map(page.assets.filter(a => !/\.(md|txt|pdb)$/.test(a.url)).map(a => [new URL(a.url, worker.location.href).pathname, a.hash]));

worker.addEventListener('install', (/** @type {any} */ event) => event.waitUntil(keepAll()));
worker.addEventListener('activate', (/** @type {any} */ event) => event.waitUntil(begin()));
worker.addEventListener('message', (/** @type {any} */ event) => event.waitUntil(takeOver()));
worker.addEventListener('fetch', (/** @type {any} */ event) => {
  const address = new URL(event.request.url);
  if (event.request.method !== 'GET' || address.origin !== worker.location.origin || /^\/api(\/|$)/.test(address.pathname)) return;
  if (event.request.mode === 'navigate') {
    if (!address.pathname.split('/').at(-1)?.includes('.')) event.respondWith(open(event));
  } else if (files.has(address.pathname)) {
    event.respondWith(file(event, address.pathname));
  }
});

/** Takes every file of this version, a few at a time: the page's own requests go before. */
async function keepAll() {
  const cache = await caches.open(keptAs);
  const wanted = [...files];
  const take = async () => {
    for (let next = wanted.pop(); next; next = wanted.pop()) {
      const [path, hash] = next;
      if (!await cache.match(path)) await cache.add(new Request(path, { integrity: hash, cache: 'no-cache' }));
    }
  };
  await Promise.all(Array.from({ length: atOnce }, take));
}

/** Gives earlier versions up; no window uses them any more. */
async function begin() {
  for (const name of await caches.keys()) {
    if (name.startsWith('clothwright ') && name !== keptAs) await caches.delete(name);
  }
  await worker.clients.claim();
}

/** Goes to work at once where every window was given this version by the server. */
async function takeOver() {
  const given = await caches.open(windows);
  for (const client of await worker.clients.matchAll({ type: 'window', includeUncontrolled: true })) {
    if (await (await given.match(`/${client.id}`))?.text() !== page.version) return;
  }
  await worker.skipWaiting();
}

/**
 * A window is opened: with this version where the server has the same or is away, with the server's where it has another.
 * @param {any} event
 * @returns {Promise<Response>}
 */
async function open(event) {
  const served = await servedVersion();
  if (served === page.version) return file(event, '/index.html');
  await (await caches.open(windows)).put(`/${event.resultingClientId}`, new Response(served));
  return fetch(event.request);
}

/** @returns {Promise<string>} The version that the server has; this one where it is away, empty where it is no server of this page. */
async function servedVersion() {
  try {
    const answer = await fetch('/service-worker-assets.js', { cache: 'no-cache', signal: AbortSignal.timeout(patience) });
    if (answer.status >= 500) return page.version;
    return answer.ok ? /"version": "([^"]+)"/.exec(await answer.text())?.[1] ?? '' : '';
  } catch {
    return page.version;
  }
}

/**
 * @param {any} event
 * @param {string} path
 * @returns {Promise<Response>}
 */
async function file(event, path) {
  if (event.clientId && await (await caches.open(windows)).match(`/${event.clientId}`)) return fetch(event.request);
  // Where the browser has thrown the file away, the hash still holds another version off.
  return await (await caches.open(keptAs)).match(path) ?? fetch(path, { integrity: files.get(path) });
}
