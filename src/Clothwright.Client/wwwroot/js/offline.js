// Has the page kept in the browser by its service worker, once it stands; no part of it waits for this.

const rest = 2000;

/** Only where the browser trusts the address: on this machine, or by https. */
export function keepPage() {
  if (!('serviceWorker' in navigator)) return;
  setTimeout(() => { keep().catch(() => { /* it opens while the server is there */ }); }, rest);
}

async function keep() {
  const kept = await navigator.serviceWorker.register('/service-worker.js', { updateViaCache: 'none' });
  follow(kept.waiting);
  follow(kept.installing);
  kept.addEventListener('updatefound', () => follow(kept.installing));
}

/**
 * A newer version that is kept whole may go to work as soon as no window shows an older one; it knows best whether that is so.
 * @param {ServiceWorker | null} newer
 */
function follow(newer) {
  if (!newer) return;
  const tell = () => { if (newer.state === 'installed' && navigator.serviceWorker.controller) newer.postMessage('stand in'); };
  newer.addEventListener('statechange', tell);
  tell();
}
