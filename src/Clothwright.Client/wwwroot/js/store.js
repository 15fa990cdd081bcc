// The browser's own database, shared by every tab. Where it is closed to the page (private windows), what is kept lives until the page is closed.

/** @type {Promise<IDBDatabase | null> | null} */
let opening = null;

/** @returns {Promise<IDBDatabase | null>} */
export function database() {
  opening ??= new Promise(done => {
    try {
      const request = indexedDB.open('clothwright', 2);
      request.onupgradeneeded = () => {
        for (const name of ['steps', 'places', 'copies']) {
          if (!request.result.objectStoreNames.contains(name)) request.result.createObjectStore(name);
        }
      };
      request.onsuccess = () => {
        request.result.onversionchange = () => request.result.close();
        done(request.result);
      };
      request.onerror = () => done(null);
    } catch {
      done(null);
    }
  });
  return opening;
}

/**
 * @template T
 * @param {IDBRequest<T>} request
 * @returns {Promise<T>}
 */
export function answer(request) {
  return new Promise((done, fail) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => fail(request.error);
  });
}

/**
 * @param {IDBTransaction} transaction
 * @returns {Promise<void>}
 */
export function completed(transaction) {
  return new Promise((done, fail) => {
    transaction.oncomplete = () => done();
    transaction.onabort = transaction.onerror = () => fail(transaction.error);
  });
}
