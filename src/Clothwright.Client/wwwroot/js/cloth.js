// The cloth panel: a cloth thread by thread, at true size or nearer, face or back. The first pick lies at the weaver's hand.
import { fit, reader, themeColour } from './rows.js';

const PIXELS_PER_CENTIMETRE = 96 / 2.54;
const MARGIN = 22;
const FEWEST_PIXELS = 1.6;

/**
 * @typedef {object} Cloth
 * @property {(pick: number, end: number) => boolean} warpOnTop
 * @property {number} ends
 * @property {number} picks
 * @property {Float64Array} endLooks Red, green, blue, width in centimetres of each end.
 * @property {Float64Array} pickLooks
 * @property {number} endsPerCentimetre
 * @property {number} picksPerCentimetre
 * @property {number} width Centimetres; 0 when any width will do.
 * @property {boolean} customary
 */

/**
 * @typedef {object} View
 * @property {Cloth | null} cloth
 * @property {number} zoom 1 is true size.
 * @property {boolean} back
 * @property {number} left Centimetres of cloth to the left of the panel.
 * @property {number} low Centimetres of cloth below the panel.
 */

/** @type {Map<string, View>} */
const views = new Map();

/**
 * @param {string} id
 * @returns {View}
 */
function viewOf(id) {
  let view = views.get(id);
  if (view) return view;
  view = { cloth: null, zoom: 1, back: false, left: 0, low: 0 };
  views.set(id, view);
  const canvas = /** @type {HTMLCanvasElement} */ (document.getElementById(id));
  const holder = canvas.parentElement ?? canvas;
  new ResizeObserver(() => draw(id)).observe(canvas);
  document.addEventListener('clothwright-theme', () => draw(id));
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => draw(id));
  listen(id, holder, view);
  return view;
}

/**
 * @param {string} id
 * @param {HTMLElement} holder
 * @param {View} view
 */
function listen(id, holder, view) {
  /** @param {number} right @param {number} up Centimetres on the screen. */
  const move = (right, up) => {
    view.left = Math.max(0, view.left + right / view.zoom);
    view.low = Math.max(0, view.low + up / view.zoom);
    draw(id);
  };
  holder.addEventListener('keydown', event => {
    const step = event.shiftKey ? 4 : 1;
    /** @type {Record<string, () => void>} */
    const keys = {
      ArrowLeft: () => move(-step, 0),
      ArrowRight: () => move(step, 0),
      ArrowUp: () => move(0, step),
      ArrowDown: () => move(0, -step),
      Home: () => { view.left = 0; view.low = 0; draw(id); },
    };
    if (!keys[event.key] || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    keys[event.key]();
  });
  holder.addEventListener('pointerdown', event => {
    if (event.pointerType === 'touch') return;
    holder.setPointerCapture(event.pointerId);
    holder.dataset.moving = '';
  });
  holder.addEventListener('pointermove', event => {
    if (holder.dataset.moving === undefined) return;
    move(-event.movementX / PIXELS_PER_CENTIMETRE, event.movementY / PIXELS_PER_CENTIMETRE);
  });
  for (const end of ['pointerup', 'pointercancel']) holder.addEventListener(end, () => delete holder.dataset.moving);
}

/**
 * Shows a cloth on a canvas.
 * @param {string} id
 * @param {{ slice(): Uint8Array }} rows
 * @param {number} ends
 * @param {number} picks
 * @param {{ slice(): Float64Array }} endLooks
 * @param {{ slice(): Float64Array }} pickLooks
 * @param {number} endsPerCentimetre
 * @param {number} picksPerCentimetre
 * @param {number} width
 * @param {boolean} customary
 */
export function showCloth(id, rows, ends, picks, endLooks, pickLooks, endsPerCentimetre, picksPerCentimetre, width, customary) {
  viewOf(id).cloth = {
    warpOnTop: reader(rows.slice(), ends),
    ends,
    picks,
    endLooks: endLooks.slice(),
    pickLooks: pickLooks.slice(),
    endsPerCentimetre,
    picksPerCentimetre,
    width,
    customary,
  };
  draw(id);
}

/**
 * Looks at a cloth from another distance or side.
 * @param {string} id
 * @param {number} zoom
 * @param {boolean} back
 */
export function viewCloth(id, zoom, back) {
  const view = viewOf(id);
  view.zoom = zoom;
  view.back = back;
  draw(id);
}

/**
 * For each pixel along one direction: its thread, how far across the thread it lies (-1 to 1, beyond: between threads), how far along the crossing.
 * @param {number} pixels
 * @param {number} start Centimetres of cloth at pixel 0.
 * @param {number} perPixel Centimetres of cloth in a pixel.
 * @param {number} perCentimetre Threads in a centimetre.
 * @param {Float64Array} looks
 */
function along(pixels, start, perPixel, perCentimetre, looks) {
  const threads = looks.length / 4;
  const thread = new Int32Array(pixels);
  const across = new Float32Array(pixels);
  const within = new Float32Array(pixels);
  for (let i = 0; i < pixels; i++) {
    const at = (start + (i + 0.5) * perPixel) * perCentimetre;
    const number = Math.floor(at);
    const inside = at - number;
    thread[i] = number;
    within[i] = inside;
    const share = Math.min(1, looks[(((number % threads) + threads) % threads) * 4 + 3] * perCentimetre);
    across[i] = (inside * 2 - 1) / Math.max(share, 0.2);
  }
  return { thread, across, within };
}

/** @param {number} n @param {number} m */
const wrapped = (n, m) => ((n % m) + m) % m;

/** @param {string} id */
function draw(id) {
  const view = views.get(id);
  const canvas = /** @type {HTMLCanvasElement | null} */ (document.getElementById(id));
  if (!view?.cloth || !canvas || canvas.clientWidth === 0) return;
  const cloth = view.cloth;
  const ratio = fit(canvas);
  const context = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  const margin = Math.round(MARGIN * ratio);
  const perCentimetre = PIXELS_PER_CENTIMETRE * ratio * view.zoom;
  context.fillStyle = themeColour('--page');
  context.fillRect(0, 0, canvas.width, canvas.height);
  let width = canvas.width - margin;
  const height = canvas.height - margin;
  if (cloth.width > 0) {
    const shown = width / perCentimetre;
    view.left = Math.min(view.left, Math.max(0, cloth.width - shown));
    width = Math.min(width, Math.ceil((cloth.width - view.left) * perCentimetre));
  }
  if (width > 0 && height > 0) context.putImageData(picture(cloth, view, width, height, perCentimetre), margin, 0);
  ticks(context, cloth, view, margin, width, height, perCentimetre, ratio);
}

/**
 * @param {Cloth} cloth
 * @param {View} view
 * @param {number} width
 * @param {number} height
 * @param {number} perCentimetre
 * @returns {ImageData}
 */
function picture(cloth, view, width, height, perCentimetre) {
  const threadPixels = perCentimetre / Math.max(cloth.endsPerCentimetre, cloth.picksPerCentimetre);
  const fine = Math.min(4, Math.max(1, Math.ceil(FEWEST_PIXELS / threadPixels)));
  const w = width * fine;
  const h = height * fine;
  const perPixel = 1 / (perCentimetre * fine);
  // Turned over side to side, the last end comes first and what was below is on top.
  const start = view.back ? (cloth.width || cloth.endLooks.length / 4 / cloth.endsPerCentimetre) - view.left : view.left;
  const x = along(w, start, view.back ? -perPixel : perPixel, cloth.endsPerCentimetre, cloth.endLooks);
  const y = along(h, view.low + h * perPixel, -perPixel, cloth.picksPerCentimetre, cloth.pickLooks);
  const endLooks = cloth.endLooks.length / 4;
  const pickLooks = cloth.pickLooks.length / 4;
  const sums = fine > 1 ? new Float32Array(width * height * 3) : null;
  const image = new ImageData(width, height);
  const data = image.data;
  const columns = new Int32Array(w);
  const colours = new Int32Array(w);
  for (let i = 0; i < w; i++) {
    columns[i] = wrapped(x.thread[i], cloth.ends);
    colours[i] = wrapped(x.thread[i], endLooks) * 4;
  }
  for (let j = 0; j < h; j++) {
    const pick = wrapped(y.thread[j], cloth.picks);
    const below = wrapped(pick - 1, cloth.picks);
    const above = wrapped(pick + 1, cloth.picks);
    const weft = wrapped(y.thread[j], pickLooks) * 4;
    const weftAcross = Math.abs(y.across[j]);
    const row = ((j / fine) | 0) * width;
    for (let i = 0; i < w; i++) {
      const end = columns[i];
      const warpAcross = Math.abs(x.across[i]);
      let warpTop = cloth.warpOnTop(pick, end);
      if (view.back) warpTop = !warpTop;
      const inWarp = warpAcross < 1;
      const inWeft = weftAcross < 1;
      let light = 0.38;
      let from = cloth.pickLooks;
      let at = weft;
      if (warpTop ? inWarp : inWarp && !inWeft) {
        from = cloth.endLooks;
        at = colours[i];
        light = warpTop
          ? shade(warpAcross) * dip(y.within[j], cloth.warpOnTop(below, end) === view.back, cloth.warpOnTop(above, end) === view.back)
          : 0.62 * shade(warpAcross);
      } else if (inWeft) {
        const left = wrapped(end - 1, cloth.ends);
        const right = wrapped(end + 1, cloth.ends);
        light = warpTop
          ? 0.62 * shade(weftAcross)
          : shade(weftAcross) * dip(x.within[i], cloth.warpOnTop(pick, left) !== view.back, cloth.warpOnTop(pick, right) !== view.back);
      }
      const r = Math.min(255, from[at] * light);
      const g = Math.min(255, from[at + 1] * light);
      const b = Math.min(255, from[at + 2] * light);
      if (sums) {
        const s = (row + ((i / fine) | 0)) * 3;
        sums[s] += r;
        sums[s + 1] += g;
        sums[s + 2] += b;
      } else {
        const d = (row + i) * 4;
        data[d] = r;
        data[d + 1] = g;
        data[d + 2] = b;
        data[d + 3] = 255;
      }
    }
  }
  if (sums) {
    const many = fine * fine;
    for (let p = 0; p < width * height; p++) {
      data[p * 4] = sums[p * 3] / many;
      data[p * 4 + 1] = sums[p * 3 + 1] / many;
      data[p * 4 + 2] = sums[p * 3 + 2] / many;
      data[p * 4 + 3] = 255;
    }
  }
  return image;
}

/**
 * Light on a round thread.
 * @param {number} across 0 in the middle, 1 at its edge.
 */
function shade(across) {
  return 1.2 - 0.42 * across * across;
}

/**
 * A thread darkens where it goes under its neighbour.
 * @param {number} within 0 to 1 along the crossing.
 * @param {boolean} before Whether it is below at the crossing before.
 * @param {boolean} after
 */
function dip(within, before, after) {
  let light = 1;
  if (before && within < 0.4) light -= (0.4 - within) * 0.65;
  if (after && within > 0.6) light -= (within - 0.6) * 0.65;
  return light;
}

/**
 * Ticks every centimetre, or inch, along the lower and left edge.
 * @param {CanvasRenderingContext2D} context
 * @param {Cloth} cloth
 * @param {View} view
 * @param {number} margin
 * @param {number} width
 * @param {number} height
 * @param {number} perCentimetre
 * @param {number} ratio
 */
function ticks(context, cloth, view, margin, width, height, perCentimetre, ratio) {
  const unit = cloth.customary ? 2.54 : 1;
  const step = [1, 2, 5, 10, 20].find(s => s * unit * perCentimetre > 26 * ratio) ?? 50;
  context.fillStyle = themeColour('--ink');
  context.font = `${11 * ratio}px "Open Sans", sans-serif`;
  context.textBaseline = 'top';
  const thin = Math.max(1, Math.round(ratio));
  for (let n = Math.ceil(view.left / unit / step) * step; (n * unit - view.left) * perCentimetre <= width; n += step) {
    const x = margin + Math.round((n * unit - view.left) * perCentimetre);
    context.fillRect(x, height, thin, 5 * ratio);
    context.textAlign = 'center';
    context.fillText(String(n), x, height + 6 * ratio);
  }
  context.textBaseline = 'middle';
  for (let n = Math.ceil(view.low / unit / step) * step; (n * unit - view.low) * perCentimetre <= height; n += step) {
    const y = height - Math.round((n * unit - view.low) * perCentimetre);
    context.fillRect(margin - 5 * ratio, y, 5 * ratio, thin);
    if (n === 0) continue;
    context.textAlign = 'right';
    context.fillText(String(n), margin - 7 * ratio, Math.max(7 * ratio, y));
  }
}
