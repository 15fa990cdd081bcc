// How many CSS pixels make a centimetre on this screen: measured once with a bank card, kept in this browser.

const KEY = 'clothwright.pixels-per-centimetre';
const USUAL = 96 / 2.54;

/** @type {number | null} */
let measured = null;

/** @returns {number} CSS pixels in a centimetre, as measured, else as the browser supposes. */
export function pixelsPerCentimetre() {
  if (measured !== null) return measured;
  let kept = NaN;
  try {
    kept = Number.parseFloat(localStorage.getItem(KEY) ?? '');
  } catch { /* no store: as the browser supposes */ }
  measured = kept > 10 && kept < 200 ? kept : USUAL;
  return measured;
}

/** @returns {boolean} Whether this screen has been measured. */
export function isMeasured() {
  try {
    return localStorage.getItem(KEY) !== null;
  } catch {
    return measured !== null && measured !== USUAL;
  }
}

/**
 * Keeps what was measured.
 * @param {number} pixels CSS pixels in a centimetre; 0 forgets it.
 */
export function keepPixelsPerCentimetre(pixels) {
  measured = pixels > 0 ? pixels : USUAL;
  try {
    if (pixels > 0) localStorage.setItem(KEY, String(pixels));
    else localStorage.removeItem(KEY);
  } catch { /* holds until the page is closed */ }
  document.dispatchEvent(new CustomEvent('clothwright-theme'));
}
