// What this browser knows of the studio's copy of each worksheet: the version and document last agreed on,
// whether something here is not sent yet, and what came from elsewhere (for undo).
import { answer, completed, database } from './store.js';

/** @type {Map<string, string>} */
const memory = new Map();

/**
 * @param {string} sheet
 * @returns {Promise<string>} JSON; empty when nothing is known.
 */
export async function readCopy(sheet) {
  const db = await database();
  const kept = db ? await answer(db.transaction('copies').objectStore('copies').get(sheet)) : memory.get(sheet);
  return kept ?? '';
}

/**
 * @param {string} sheet
 * @param {string} json
 */
export async function keepCopy(sheet, json) {
  const db = await database();
  if (!db) {
    memory.set(sheet, json);
    return;
  }
  const transaction = db.transaction('copies', 'readwrite');
  transaction.objectStore('copies').put(json, sheet);
  await completed(transaction);
}

/** @returns {Promise<string>} JSON list of the ids of all worksheets that this browser holds. */
export async function listCopies() {
  const db = await database();
  const ids = db ? await answer(db.transaction('copies').objectStore('copies').getAllKeys()) : [...memory.keys()];
  return JSON.stringify(ids);
}

/** @returns {string} Id of the worksheet last worked on; empty on a first visit. */
export function lastSheet() {
  try { return localStorage.getItem('clothwright.sheet') ?? ''; } catch { return ''; }
}

/** @param {string} sheet */
export function useSheet(sheet) {
  try { localStorage.setItem('clothwright.sheet', sheet); } catch { /* the next visit begins anew */ }
}

/** @returns {boolean} Whether nobody has begun or waved off anything in this browser yet. */
export function isFirstVisit() {
  try { return localStorage.getItem('clothwright.welcomed') === null; } catch { return false; }
}

/** From now on it is no first visit any more. */
export function endFirstVisit() {
  try { localStorage.setItem('clothwright.welcomed', 'yes'); } catch { /* she is welcomed again */ }
}
