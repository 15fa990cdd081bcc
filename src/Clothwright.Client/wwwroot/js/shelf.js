// What shelf and bench need from the browser: the studio's answers, files, photos. Plain JavaScript, typed by JSDoc.

const patience = 20_000;
const largestText = 4 * 1024 * 1024;

/**
 * Asks the studio's server. Nothing throws: a server that does not answer has status 0.
 * @param {string} method
 * @param {string} address
 * @param {string} body Empty for none.
 * @param {string} version The version that the request is based on: a number, `*` for something new, empty for none.
 * @returns {Promise<string>} JSON of status, version and text.
 */
export async function askStudio(method, address, body, version) {
  /** @type {Record<string, string>} */
  const headers = {};
  if (body) headers['Content-Type'] = 'application/json';
  if (version === '*') headers['If-None-Match'] = '*';
  else if (version) headers['If-Match'] = `"${version}"`;
  return send(address, { method, headers, body: body || undefined });
}

/**
 * @param {string} address
 * @param {RequestInit} request
 * @returns {Promise<string>}
 */
async function send(address, request) {
  try {
    const response = await fetch(address, { ...request, cache: 'no-store', signal: AbortSignal.timeout(patience) });
    const tag = /^"(\d+)"$/.exec(response.headers.get('ETag') ?? '');
    return JSON.stringify({ status: response.status, version: tag ? Number(tag[1]) : 0, text: await response.text() });
  } catch {
    return JSON.stringify({ status: 0, version: 0, text: '' });
  }
}

/**
 * Keeps what was last seen, for a time without the studio.
 * @param {string} name
 * @param {string} text
 */
export function keepSeen(name, text) {
  try { localStorage.setItem(`clothwright.seen.${name}`, JSON.stringify({ at: new Date().toISOString(), text })); } catch { /* no room: nothing is shown without the studio */ }
}

/**
 * @param {string} name
 * @returns {string} What was last seen, or empty.
 */
export function seen(name) {
  try { return JSON.parse(localStorage.getItem(`clothwright.seen.${name}`) ?? '{}').text ?? ''; } catch { return ''; }
}

/**
 * @param {string} name
 * @returns {string} When it was last seen, in the language of the page; or empty.
 */
export function seenAt(name) {
  try {
    const at = JSON.parse(localStorage.getItem(`clothwright.seen.${name}`) ?? '{}').at;
    return at ? new Intl.DateTimeFormat(document.documentElement.lang || 'en', { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(at)) : '';
  } catch { return ''; }
}

/**
 * Sends the photo that was chosen.
 * @param {string} field Id of the field.
 * @param {string} address
 * @returns {Promise<string>} JSON as of `askStudio`; status 1 where nothing is chosen.
 */
export async function sendPhoto(field, address) {
  const input = /** @type {HTMLInputElement | null} */ (document.getElementById(field));
  const file = input?.files?.[0];
  if (!file) return JSON.stringify({ status: 1, version: 0, text: '' });
  const answer = await send(address, { method: 'POST', headers: { 'Content-Type': file.type || 'application/octet-stream' }, body: file });
  if (input) input.value = '';
  return answer;
}

/**
 * The text of the file that was chosen: UTF-8, UTF-16 with its mark, or else Windows-1252 as older spreadsheets write it.
 * @param {string} field Id of the field.
 * @returns {Promise<string>} Empty where nothing is chosen or it is too large.
 */
export async function readText(field) {
  const input = /** @type {HTMLInputElement | null} */ (document.getElementById(field));
  const file = input?.files?.[0];
  if (!file || file.size > largestText) return '';
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try { return new TextDecoder('utf-8', { fatal: true }).decode(bytes); } catch { return new TextDecoder('windows-1252').decode(bytes); }
}

/**
 * Mean light of a spot of a photo, in linear sRGB from 0 to 1.
 * @param {string} photo Id of the picture.
 * @param {number} across Share of its width, from the left.
 * @param {number} down Share of its height, from the top.
 * @returns {string} Red, green and blue with blanks between; empty where the photo is not there yet.
 */
export function lightAt(photo, across, down) {
  const image = /** @type {HTMLImageElement | null} */ (document.getElementById(photo));
  if (!image?.naturalWidth) return '';
  const radius = Math.max(2, Math.round(Math.min(image.naturalWidth, image.naturalHeight) * 0.015));
  const side = 2 * radius + 1;
  const canvas = document.createElement('canvas');
  canvas.width = side;
  canvas.height = side;
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) return '';
  const left = Math.min(Math.max(Math.round(across * image.naturalWidth) - radius, 0), Math.max(0, image.naturalWidth - side));
  const top = Math.min(Math.max(Math.round(down * image.naturalHeight) - radius, 0), Math.max(0, image.naturalHeight - side));
  context.drawImage(image, left, top, side, side, 0, 0, side, side);
  const pixels = context.getImageData(0, 0, side, side).data;
  const sum = [0, 0, 0];
  for (let i = 0; i < pixels.length; i += 4) for (let c = 0; c < 3; c++) sum[c] += linear(pixels[i + c] / 255);
  return sum.map(s => s / (side * side)).join(' ');
}

/** @type {Uint8ClampedArray} */
let small = new Uint8ClampedArray();

/**
 * Makes a small copy of a photo, for `smallPixels`.
 * @param {string} photo Id of the picture.
 * @param {number} most Pixels along its longer side at most.
 * @returns {string} Width and height in pixels; empty where the photo is not there yet.
 */
export function smallSize(photo, most) {
  const image = /** @type {HTMLImageElement | null} */ (document.getElementById(photo));
  if (!image?.naturalWidth) return '';
  const scale = Math.min(1, most / Math.max(image.naturalWidth, image.naturalHeight));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(image.naturalWidth * scale));
  canvas.height = Math.max(1, Math.round(image.naturalHeight * scale));
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) return '';
  context.imageSmoothingQuality = 'high';
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  small = context.getImageData(0, 0, canvas.width, canvas.height).data;
  return `${canvas.width} ${canvas.height}`;
}

/** Red, green, blue and opacity of the small copy, rows from the top. @returns {Uint8Array} */
export const smallPixels = () => new Uint8Array(small.buffer);

/**
 * Where a photo was tapped, as shares of its width and height.
 * @param {string} photo Id of the picture.
 * @param {number} x From its left edge, as shown.
 * @param {number} y From its top edge, as shown.
 * @returns {string}
 */
export function placeIn(photo, x, y) {
  const image = document.getElementById(photo);
  return image ? `${x / Math.max(1, image.clientWidth)} ${y / Math.max(1, image.clientHeight)}` : '0.5 0.5';
}

/** @param {number} part */
function linear(part) {
  return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
}
