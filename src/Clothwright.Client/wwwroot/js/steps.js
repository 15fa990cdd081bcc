// The steps of each worksheet, one whole document a step. Tabs share them: each write names the revision it was made on,
// and one made on an earlier revision is refused, so that no tab writes over another's step.
import { answer, completed, database } from './store.js';

/** @typedef {{ place: number, last: number, revision: number }} Position */

/** @type {Map<string, string | Position>} */
const memory = new Map();

/** @type {Position} */
const nowhere = { place: -1, last: -1, revision: 0 };

/**
 * @param {string} sheet
 * @returns {Promise<string>} JSON of the place shown, the last step and the revision; -1 when nothing is kept.
 */
export async function openSteps(sheet) {
  const db = await database();
  const kept = db
    ? await answer(db.transaction('places').objectStore('places').get(sheet))
    : memory.get(`place ${sheet}`);
  return JSON.stringify({ ...nowhere, .../** @type {object} */ (kept) });
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
 * @param {number} revision The revision that the step was made on.
 * @returns {Promise<boolean>} Whether it was kept; not where another tab wrote since.
 */
export async function keepStep(sheet, step, json, revision) {
  const next = { place: step, last: step, revision: revision + 1 };
  const db = await database();
  if (!db) {
    memory.set(`${sheet} ${step}`, json);
    memory.set(`place ${sheet}`, next);
    return true;
  }
  const transaction = db.transaction(['steps', 'places'], 'readwrite');
  const places = transaction.objectStore('places');
  const kept = await answer(places.get(sheet)) ?? nowhere;
  if ((kept.revision ?? 0) !== revision) return false;
  transaction.objectStore('steps').delete(IDBKeyRange.bound([sheet, step + 1], [sheet, Infinity]));
  transaction.objectStore('steps').put(json, [sheet, step]);
  places.put(next, sheet);
  await completed(transaction);
  return true;
}

/**
 * Remembers which step is shown.
 * @param {string} sheet
 * @param {number} place
 * @param {number} revision The revision that is shown.
 * @returns {Promise<boolean>} Whether it was kept; not where another tab wrote since.
 */
export async function keepPlace(sheet, place, revision) {
  const db = await database();
  if (!db) {
    memory.set(`place ${sheet}`, { .../** @type {Position} */ (memory.get(`place ${sheet}`)), place, revision: revision + 1 });
    return true;
  }
  const transaction = db.transaction('places', 'readwrite');
  const places = transaction.objectStore('places');
  const kept = await answer(places.get(sheet)) ?? nowhere;
  if ((kept.revision ?? 0) !== revision) return false;
  places.put({ ...kept, place, revision: revision + 1 }, sheet);
  await completed(transaction);
  return true;
}
