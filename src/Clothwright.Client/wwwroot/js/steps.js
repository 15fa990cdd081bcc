// The steps of each worksheet, one whole document a step, in the browser's own database.
// Where the database is closed to the page (private windows), the steps live until the page is closed.

/** @typedef {{ place: number, last: number }} Position */

/** @type {Promise<IDBDatabase | null> | null} */
let opening = null;

/** @type {Map<string, string | Position>} */
const memory = new Map();

/** @returns {Promise<IDBDatabase | null>} */
function database() {
  opening ??= new Promise(done => {
    try {
      const request = indexedDB.open('clothwright', 1);
      request.onupgradeneeded = () => {
        request.result.createObjectStore('steps');
        request.result.createObjectStore('places');
      };
      request.onsuccess = () => done(request.result);
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
function answer(request) {
  return new Promise((done, fail) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => fail(request.error);
  });
}

/**
 * @param {IDBTransaction} transaction
 * @returns {Promise<void>}
 */
function completed(transaction) {
  return new Promise((done, fail) => {
    transaction.oncomplete = () => done();
    transaction.onabort = transaction.onerror = () => fail(transaction.error);
  });
}

/**
 * @param {string} sheet
 * @returns {Promise<string>} JSON of the place shown and the last step; -1 when nothing is kept.
 */
export async function openSteps(sheet) {
  const db = await database();
  const kept = db
    ? await answer(db.transaction('places').objectStore('places').get(sheet))
    : memory.get(`place ${sheet}`);
  return JSON.stringify(kept ?? { place: -1, last: -1 });
}

/**
 * @param {string} sheet
 * @param {number} step
 * @returns {Promise<string>}
 */
export async function readStep(sheet, step) {
  const db = await database();
  return db
    ? answer(db.transaction('steps').objectStore('steps').get([sheet, step]))
    : /** @type {string} */ (memory.get(`${sheet} ${step}`));
}

/**
 * Keeps a step and gives up those after it.
 * @param {string} sheet
 * @param {number} step
 * @param {string} json
 */
export async function keepStep(sheet, step, json) {
  const db = await database();
  if (!db) {
    memory.set(`${sheet} ${step}`, json);
    memory.set(`place ${sheet}`, { place: step, last: step });
    return;
  }
  const transaction = db.transaction(['steps', 'places'], 'readwrite');
  transaction.objectStore('steps').delete(IDBKeyRange.bound([sheet, step + 1], [sheet, Infinity]));
  transaction.objectStore('steps').put(json, [sheet, step]);
  transaction.objectStore('places').put({ place: step, last: step }, sheet);
  await completed(transaction);
}

/**
 * Remembers which step is shown.
 * @param {string} sheet
 * @param {number} place
 */
export async function keepPlace(sheet, place) {
  const db = await database();
  if (!db) {
    const kept = /** @type {Position} */ (memory.get(`place ${sheet}`));
    memory.set(`place ${sheet}`, { ...kept, place });
    return;
  }
  const transaction = db.transaction('places', 'readwrite');
  const places = transaction.objectStore('places');
  const kept = await answer(places.get(sheet));
  places.put({ ...kept, place }, sheet);
  await completed(transaction);
}
