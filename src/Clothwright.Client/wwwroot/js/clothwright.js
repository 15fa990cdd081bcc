// What the page needs from the browser beyond markup. Plain JavaScript, typed by JSDoc.
export { showCloth, showWeave, viewCloth } from './cloth.js';
export { isMeasured, keepPixelsPerCentimetre, pixelsPerCentimetre } from './true-size.js';
export { openSteps, readStep, keepStep, keepPlace } from './steps.js';
export { readCopy, keepCopy, listCopies, lastSheet, useSheet, isFirstVisit, endFirstVisit } from './copies.js';
export { ask, askWithFile, tellTabs, listen, momentText } from './studio.js';
export { takeFiles, takeChosen } from './files.js';
export { keepPage } from './offline.js';

/**
 * Moves the focus to an element once it stands in the page.
 * @param {string} id
 */
export function focusOn(id) {
  const element = document.getElementById(id);
  if (element) element.focus({ preventScroll: false });
}

/** @returns {string} `light`, `dark`, or empty when the system decides. */
export function theme() {
  return document.documentElement.dataset.theme ?? '';
}

/**
 * Uses a theme from now on.
 * @param {string} name `light`, `dark`, or empty to follow the system.
 */
export function useTheme(name) {
  if (name) document.documentElement.dataset.theme = name;
  else delete document.documentElement.dataset.theme;
  try {
    if (name) localStorage.setItem('clothwright.theme', name);
    else localStorage.removeItem('clothwright.theme');
  } catch { /* not kept: the theme holds until the page is closed */ }
  document.dispatchEvent(new CustomEvent('clothwright-theme'));
}

/** @returns {string} The units that she last chose in this browser; empty for none. */
export function units() {
  try { return localStorage.getItem('clothwright.units') ?? ''; } catch { return ''; }
}

/** @param {string} units The units that she chose. */
export function keepUnits(units) {
  try { localStorage.setItem('clothwright.units', units); } catch { /* not kept: they hold until the page is closed */ }
}

/** @returns {string} The language she chose and those of her browser, the most wanted first, with commas between. */
export function languages() {
  return [document.documentElement.dataset.language, ...navigator.languages].filter(Boolean).join(',');
}

/**
 * Uses a language from now on; the page is laid out anew in it.
 * @param {string} language Its two-letter code.
 */
export function useLanguage(language) {
  try { localStorage.setItem('clothwright.language', language); } catch { return; /* cannot be kept, so it cannot be used after the reload */ }
  location.reload();
}

/** @param {string} language Two-letter code of the language that the page is laid out in. */
export function speak(language) {
  document.documentElement.lang = language;
}

/** @returns {number} Milliseconds on a clock that only goes forward. */
export function now() {
  return performance.now();
}

/** @returns {Promise<void>} Done when the next frame has been painted. */
export function afterPaint() {
  return new Promise(done => requestAnimationFrame(() => setTimeout(done, 0)));
}

// Undo and redo are the worksheet's: a field's own undo would go back letter by letter beside it.
document.addEventListener('keydown', event => {
  if ((event.ctrlKey || event.metaKey) && !event.altKey && ['z', 'y'].includes(event.key.toLowerCase())) event.preventDefault();
});
