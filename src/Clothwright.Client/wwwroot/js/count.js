// @ts-check
/** The photograph on the counting page: opened, shown with marks and grid, handed out as pixels. Nothing leaves the device. */

const MOST_SHOWN = 1400;

/** @type {ImageBitmap | null} */
let photo = null;
let shownWidth = 0;
let shownHeight = 0;

/** @param {string} id @returns {HTMLCanvasElement} */
const canvasOf = id => /** @type {HTMLCanvasElement} */ (document.getElementById(id));

/**
 * @param {string} field
 * @param {string} canvas
 * @returns {Promise<string>}
 */
export async function openPhoto(field, canvas) {
  const input = /** @type {HTMLInputElement} */ (document.getElementById(field));
  const file = input.files && input.files[0];
  if (!file) return "";
  let opened;
  try {
    opened = await createImageBitmap(file);
  } catch {
    return "";
  }
  if (photo) photo.close();
  photo = opened;
  const scale = Math.min(1, MOST_SHOWN / Math.max(photo.width, photo.height));
  shownWidth = Math.round(photo.width * scale);
  shownHeight = Math.round(photo.height * scale);
  const sheet = canvasOf(canvas);
  sheet.width = shownWidth;
  sheet.height = shownHeight;
  return `${shownWidth},${shownHeight}`;
}

/**
 * @param {string} canvas
 * @param {{slice(): Float64Array}} marks
 * @param {{slice(): Float64Array}} square
 * @param {{slice(): Float64Array}} ends
 * @param {{slice(): Float64Array}} picks
 */
export function showPhoto(canvas, marks, square, ends, picks) {
  const pen = canvasOf(canvas).getContext("2d");
  if (!pen || !photo) return;
  pen.drawImage(photo, 0, 0, shownWidth, shownHeight);
  const [x, y, side] = square.slice();
  outlined(pen, () => pen.strokeRect(x - side / 2, y - side / 2, side, side));
  ticks(pen, ends.slice(), false);
  ticks(pen, picks.slice(), true);
  const places = marks.slice();
  for (let i = 0; i + 1 < places.length; i += 2) {
    outlined(pen, () => {
      pen.beginPath();
      pen.arc(places[i], places[i + 1], 9, 0, 2 * Math.PI);
      pen.moveTo(places[i] - 15, places[i + 1]);
      pen.lineTo(places[i] + 15, places[i + 1]);
      pen.moveTo(places[i], places[i + 1] - 15);
      pen.lineTo(places[i], places[i + 1] + 15);
      pen.stroke();
    });
  }
}

/** A pale line under a dark one is seen on any cloth. @param {CanvasRenderingContext2D} pen @param {() => void} draw */
function outlined(pen, draw) {
  pen.lineWidth = 5;
  pen.strokeStyle = "#f6f1e7";
  draw();
  pen.lineWidth = 2;
  pen.strokeStyle = "#23272c";
  draw();
}

/** @param {CanvasRenderingContext2D} pen @param {Float64Array} places @param {boolean} level */
function ticks(pen, places, level) {
  pen.lineWidth = 1.5;
  pen.strokeStyle = level ? "#f1cf8f" : "#8fe0ff";
  pen.beginPath();
  for (let i = 0; i + 1 < places.length; i += 2) {
    const reach = 7;
    pen.moveTo(places[i] - (level ? reach : 0), places[i + 1] - (level ? 0 : reach));
    pen.lineTo(places[i] + (level ? reach : 0), places[i + 1] + (level ? 0 : reach));
  }
  pen.stroke();
}

/** @param {string} canvas @returns {number} */
export function shownScale(canvas) {
  const sheet = canvasOf(canvas);
  return sheet.width / (sheet.getBoundingClientRect().width || 1);
}

/** @returns {number} */
export function fineness() {
  return photo && shownWidth ? photo.width / shownWidth : 1;
}

/**
 * @param {number} left
 * @param {number} top
 * @param {number} side
 * @param {number} pixels
 * @returns {Uint8Array}
 */
export function photoPixels(left, top, side, pixels) {
  const sheet = document.createElement("canvas");
  sheet.width = pixels;
  sheet.height = pixels;
  const pen = sheet.getContext("2d", { willReadFrequently: true });
  if (!pen || !photo) return new Uint8Array(pixels * pixels * 4);
  const fine = fineness();
  pen.imageSmoothingQuality = "high";
  pen.drawImage(photo, left * fine, top * fine, side * fine, side * fine, 0, 0, pixels, pixels);
  return new Uint8Array(pen.getImageData(0, 0, pixels, pixels).data.buffer);
}
