// Packed rows of a drawdown: pick after pick, 64-bit words, least significant byte first, end 1 in bit 0.

/**
 * @param {Uint8Array} rows
 * @param {number} ends
 * @returns {(pick: number, end: number) => boolean} Whether the warp is on top.
 */
export function reader(rows, ends) {
  const perPick = ((ends + 63) >> 6) * 8;
  return (pick, end) => ((rows[pick * perPick + (end >> 3)] >> (end & 7)) & 1) !== 0;
}

/**
 * A colour of the theme as it stands now.
 * @param {string} name The custom property, for example `--ink`.
 * @returns {string}
 */
export function themeColour(name) {
  return getComputedStyle(document.documentElement).getPropertyValue(name).trim();
}

/**
 * Gives a canvas the pixels of its box.
 * @param {HTMLCanvasElement} canvas
 * @param {number} [most] The most device pixels to use in a CSS pixel.
 * @returns {number} Device pixels in one CSS pixel.
 */
export function fit(canvas, most = 3) {
  const ratio = Math.min(window.devicePixelRatio || 1, most);
  const width = Math.max(1, Math.round(canvas.clientWidth * ratio));
  const height = Math.max(1, Math.round(canvas.clientHeight * ratio));
  if (canvas.width !== width) canvas.width = width;
  if (canvas.height !== height) canvas.height = height;
  return ratio;
}
