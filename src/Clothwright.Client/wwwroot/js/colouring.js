// Light across a picture, for stripes that follow it. Plain JavaScript, typed by JSDoc. The picture stays in the browser.

/** Columns, or rows, into which a picture is gathered at most. */
const MOST_LINES = 512;
/** Size to which a picture is made smaller before it is read. */
const SIDE = 1024;

/** @type {number[]} */
let light = [];

/** Light of the picture read last: red, green and blue of each line, linear from 0 to 1. @returns {number[]} */
export const pictureLight = () => light;

/**
 * Reads the picture that was chosen.
 * @param {string} field Id of the field.
 * @param {boolean} upward Whether its rows are read from the bottom up; else its columns from the left.
 */
export async function readPicture(field, upward) {
  const input = /** @type {HTMLInputElement | null} */ (document.getElementById(field));
  const file = input?.files?.[0];
  if (!file) return;
  /** @type {ImageBitmap} */
  let image;
  try { image = await createImageBitmap(file); } catch { return; /* no picture: what was read before stands */ }
  const scale = Math.min(1, SIDE / Math.max(image.width, image.height));
  const width = Math.max(1, Math.round(image.width * scale)), height = Math.max(1, Math.round(image.height * scale));
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) return;
  context.drawImage(image, 0, 0, width, height);
  light = lightOf(context.getImageData(0, 0, width, height), upward);
}

/**
 * Mean light of each line of a picture.
 * @param {{ data: Uint8ClampedArray, width: number, height: number }} picture
 * @param {boolean} upward
 * @returns {number[]}
 */
export function lightOf({ data, width, height }, upward) {
  const along = upward ? height : width, beside = upward ? width : height;
  const lines = Math.min(MOST_LINES, along);
  const sums = new Float64Array(lines * 3), counts = new Float64Array(lines);
  for (let n = 0; n < along; n++) {
    const line = Math.floor(n * lines / along);
    for (let m = 0; m < beside; m++) {
      const at = 4 * (upward ? (height - 1 - n) * width + m : m * width + n);
      for (let c = 0; c < 3; c++) sums[3 * line + c] += LINEAR[data[at + c]];
      counts[line]++;
    }
  }
  return Array.from(sums, (sum, i) => sum / counts[Math.floor(i / 3)]);
}

/** Linear light of a part from 0 to 255 (IEC 61966-2-1). */
const LINEAR = Float64Array.from({ length: 256 }, (_, part) => (part <= 10 ? part / 255 / 12.92 : ((part / 255 + 0.055) / 1.055) ** 2.4));
