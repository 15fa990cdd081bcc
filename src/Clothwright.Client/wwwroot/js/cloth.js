// The cloth panel: a cloth thread by thread, at true size, nearer or farther, face or back, lying flat or tilted. The first pick lies at the weaver's hand.
import { painter, withoutGraphics } from './cloth-gl.js';
import { paintFlat } from './cloth-flat.js';
import { WINDOW, tilted } from './cloth-light.js';
import { fit, themeColour } from './rows.js';
import { pixelsPerCentimetre } from './true-size.js';

const MARGIN = 22;
const DEVICE_PIXELS = 2;
const THREAD_PIXELS = 18;
/** Across a room: as large as it looks from three metres when the screen stands at sixty centimetres. */
const ROOM = 0.6 / 3;
const SLOW_MILLISECONDS = 24;
const HOPELESS_MILLISECONDS = 500;
const SETTLE_MILLISECONDS = 140;
const STEEPEST_TILT = 75;
/** @type {[number, number, number]} Undyed linen, as on paper. */
const BEHIND = [0.9215820, 0.8796224, 0.7758222];

/** @typedef {import('./cloth-places.js').Cloth} Cloth */
/**
 * @typedef {object} View
 * @property {HTMLElement} canvas
 * @property {Cloth | null} cloth
 * @property {string} distance threads, hand or room
 * @property {number} nearer Factor by which she has come nearer.
 * @property {boolean} back
 * @property {number} left Millimetres of cloth to the left of the panel.
 * @property {number} low Millimetres of cloth below the panel.
 * @property {number} across Tilt to the side, degrees.
 * @property {number} along Tilt away, degrees.
 * @property {number} frame
 * @property {number} settle
 */

/** @type {Map<string, View>} */
const views = new Map();

/** Whether the graphics card takes longer than a frame, so that a quick picture goes before. */
let slow = false;
let timed = 0;

/**
 * @param {string} id
 * @returns {View}
 */
function viewOf(id) {
  const canvas = /** @type {HTMLCanvasElement} */ (document.getElementById(id));
  let view = views.get(id);
  if (view?.canvas === canvas) return view;
  const isNew = !view;
  view = { canvas, cloth: null, distance: 'hand', nearer: 1, back: false, left: 0, low: 0, across: 0, along: 0, frame: 0, settle: 0 };
  views.set(id, view);
  new ResizeObserver(() => ask(id)).observe(canvas);
  listen(id, canvas.parentElement ?? canvas, view);
  if (!isNew) return view;
  document.addEventListener('clothwright-theme', () => ask(id));
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => ask(id));
  return view;
}

/**
 * @param {string} id
 * @param {HTMLElement} holder
 * @param {View} view
 */
function listen(id, holder, view) {
  /** @param {number} right @param {number} up CSS pixels. */
  const move = (right, up) => {
    const scale = view.cloth ? scaleOf(view, view.cloth) : 1;
    view.left = Math.max(0, view.left + right / scale);
    view.low = Math.max(0, view.low + up / scale);
    ask(id);
  };
  /** @param {number} factor */
  const nearer = factor => {
    view.nearer = Math.min(16, Math.max(1 / 8, view.nearer * factor));
    ask(id);
  };
  /** Where the cloth and the pointer were when the drag began. */
  let held = { across: 0, along: 0, x: 0, y: 0 };
  holder.addEventListener('keydown', event => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const step = event.shiftKey ? 150 : 38;
    /** @type {Record<string, () => void>} */
    const keys = {
      ArrowLeft: () => move(-step, 0),
      ArrowRight: () => move(step, 0),
      ArrowUp: () => move(0, step),
      ArrowDown: () => move(0, -step),
      '+': () => nearer(1.25),
      '=': () => nearer(1.25),
      '-': () => nearer(0.8),
      Home: () => { view.left = 0; view.low = 0; view.nearer = 1; ask(id); },
    };
    if (!keys[event.key]) return;
    event.preventDefault();
    keys[event.key]();
  });
  holder.addEventListener('wheel', event => {
    if (!event.ctrlKey) return;
    event.preventDefault();
    nearer(Math.exp(-event.deltaY / 200));
  }, { passive: false });
  holder.addEventListener('pointerdown', event => {
    if (event.pointerType === 'touch') return;
    holder.setPointerCapture(event.pointerId);
    holder.dataset.moving = event.shiftKey ? 'tilt' : 'along';
    held = { across: view.across, along: view.along, x: event.clientX, y: event.clientY };
  });
  holder.addEventListener('pointermove', event => {
    if (holder.dataset.moving === 'along') move(-event.movementX, event.movementY);
    if (holder.dataset.moving !== 'tilt') return;
    view.across = clampTilt(held.across + (event.clientX - held.x) / 3);
    view.along = clampTilt(held.along - (event.clientY - held.y) / 3);
    slide(holder, view);
    ask(id);
  });
  for (const end of ['pointerup', 'pointercancel']) holder.addEventListener(end, () => delete holder.dataset.moving);
}

/**
 * Moves the sliders of the panel along with a drag, as if she had moved them.
 * @param {HTMLElement} holder
 * @param {View} view
 */
function slide(holder, view) {
  const sliders = holder.parentElement?.querySelectorAll('.cloth-tilt input') ?? [];
  [view.across, view.along].forEach((degrees, i) => {
    const slider = /** @type {HTMLInputElement | undefined} */ (sliders[i]);
    if (!slider || Number(slider.value) === Math.round(degrees)) return;
    slider.value = String(Math.round(degrees));
    slider.dispatchEvent(new Event('input', { bubbles: true }));
  });
}

/** @param {number} degrees */
const clampTilt = degrees => Math.min(STEEPEST_TILT, Math.max(-STEEPEST_TILT, degrees));

/**
 * Shows a cloth on a canvas.
 * @param {string} id
 * @param {{ slice(): Uint8Array }} rows
 * @param {number} ends
 * @param {number} picks
 * @param {{ slice(): Float64Array }} looks
 * @param {{ slice(): Float64Array }} lustres
 * @param {{ slice(): Float64Array }} lights
 * @param {{ slice(): Float64Array }} stretches
 * @param {{ slice(): Float64Array }} endRound
 * @param {{ slice(): Float64Array }} pickRound
 * @param {{ slice(): Uint8Array }} sharedEnds
 * @param {{ slice(): Uint8Array }} sharedPicks
 * @param {{ slice(): Float64Array }} measures
 * @param {boolean} customary
 */
export function showCloth(id, rows, ends, picks, looks, lustres, lights, stretches, endRound, pickRound, sharedEnds, sharedPicks, measures, customary) {
  viewOf(id).cloth = clothOf(
    rows.slice(), ends, picks, looks.slice(), lustres.slice(), lights.slice(), stretches.slice(), endRound.slice(), pickRound.slice(),
    sharedEnds.slice(), sharedPicks.slice(), measures.slice(), customary);
  draw(id, false);
}

/**
 * Shows another weave of the threads that a canvas shows already: nothing else of the cloth has changed.
 * @param {string} id
 * @param {{ slice(): Uint8Array }} rows
 * @param {number} ends
 * @param {number} picks
 */
export function showWeave(id, rows, ends, picks) {
  const view = viewOf(id);
  if (!view.cloth) return;
  view.cloth = { ...view.cloth, rows: rows.slice(), ends, picks };
  draw(id, false);
}

/**
 * A cloth of plain numbers.
 * @param {Uint8Array} rows
 * @param {number} ends
 * @param {number} picks
 * @param {Float64Array} looks
 * @param {Float64Array} lustres
 * @param {Float64Array} lights
 * @param {Float64Array} stretches
 * @param {Float64Array} endRound
 * @param {Float64Array} pickRound
 * @param {Uint8Array} sharedEnds
 * @param {Uint8Array} sharedPicks
 * @param {Float64Array} measures
 * @param {boolean} customary
 * @returns {Cloth}
 */
export function clothOf(rows, ends, picks, looks, lustres, lights, stretches, endRound, pickRound, sharedEnds, sharedPicks, measures, customary) {
  const [endsPerCentimetre, picksPerCentimetre, width, length, warpHeight, weftHeight, thickness, warpSteepest, weftSteepest] = measures;
  return {
    rows, ends, picks, looks, lustres, lights, stretches, endRound, pickRound, sharedEnds, sharedPicks,
    endsPerCentimetre, picksPerCentimetre, width, length, warpHeight, weftHeight, thickness, warpSteepest, weftSteepest, customary,
  };
}

/**
 * Looks at a cloth from another distance or side, or tilts it.
 * @param {string} id
 * @param {string} distance threads, hand or room
 * @param {boolean} back
 * @param {number} across Tilt to the side, degrees.
 * @param {number} along Tilt away, degrees.
 */
export function viewCloth(id, distance, back, across, along) {
  const view = viewOf(id);
  if (view.distance !== distance) view.nearer = 1;
  Object.assign(view, { distance, back, across: clampTilt(across), along: clampTilt(along) });
  ask(id);
}

/**
 * Asks for a picture in the next frame; however often, one is drawn.
 * @param {string} id
 */
function ask(id) {
  const view = views.get(id);
  if (!view || view.frame) return;
  view.frame = requestAnimationFrame(() => {
    view.frame = 0;
    draw(id, false);
  });
}

/**
 * CSS pixels in a millimetre of cloth.
 * @param {View} view
 * @param {Cloth} cloth
 */
function scaleOf(view, cloth) {
  const actual = pixelsPerCentimetre() / 10;
  if (view.distance === 'room') return actual * ROOM * view.nearer;
  if (view.distance === 'hand') return actual * view.nearer;
  return Math.max(4 * actual, THREAD_PIXELS * Math.min(cloth.endsPerCentimetre, cloth.picksPerCentimetre) / 10) * view.nearer;
}

/**
 * @param {string} id
 * @param {boolean} settled Whether nothing has changed for a while, so that there is time to paint finely.
 */
function draw(id, settled) {
  const view = views.get(id);
  const canvas = /** @type {HTMLCanvasElement | null} */ (document.getElementById(id));
  if (!view?.cloth || !canvas || canvas.clientWidth === 0) return;
  clearTimeout(view.settle);
  const { cloth } = view;
  const ratio = fit(canvas, DEVICE_PIXELS);
  const context = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  const margin = Math.round(MARGIN * ratio);
  const scale = scaleOf(view, cloth) * ratio;
  context.fillStyle = themeColour('--page');
  context.fillRect(0, 0, canvas.width, canvas.height);
  const room = { width: canvas.width - margin, height: canvas.height - margin };
  view.left = Math.min(view.left, Math.max(0, cloth.width - room.width / scale));
  view.low = Math.min(view.low, Math.max(0, cloth.length - room.height / scale));
  const width = Math.min(room.width, Math.ceil((cloth.width - view.left) * scale));
  const height = Math.min(room.height, Math.ceil((cloth.length - view.low) * scale));
  if (width > 0 && height > 0) {
    const across = view.across * Math.PI / 180, along = view.along * Math.PI / 180;
    /** @type {import('./cloth-gl.js').Look} */
    const look = { back: view.back, left: view.left, low: view.low, perPixel: 1 / scale, width, height, lighting: tilted(WINDOW, across, along), behind: BEHIND };
    paint(id, view, cloth, look, context, margin, room.height, settled, Math.cos(across), Math.cos(along));
  }
  if (view.across === 0 && view.along === 0) ticks(context, cloth, view, margin, width, room.height, scale, ratio);
}

/**
 * @param {string} id
 * @param {View} view
 * @param {Cloth} cloth
 * @param {import('./cloth-gl.js').Look} look
 * @param {CanvasRenderingContext2D} context
 * @param {number} margin
 * @param {number} foot Height of the panel above its ticks.
 * @param {boolean} settled
 * @param {number} narrow What is left of its width when tilted.
 * @param {number} low What is left of its height when tilted.
 */
function paint(id, view, cloth, look, context, margin, foot, settled, narrow, low) {
  const card = painter();
  const able = card !== null && card.fits(cloth);
  // A tilted cloth is turned about its middle.
  const right = margin + look.width * (1 - narrow) / 2, top = foot - look.height + look.height * (1 - low) / 2;
  if (card && able && (settled || !slow)) {
    const begun = performance.now();
    card.paint(cloth, look);
    context.drawImage(card.canvas, 0, card.canvas.height - look.height, look.width, look.height, right, top, look.width * narrow, look.height * low);
    if (timed++ < 4) {
      card.pixels(1, 1);
      const took = performance.now() - begun;
      slow = took > SLOW_MILLISECONDS;
      if (timed > 1 && took > HOPELESS_MILLISECONDS) withoutGraphics();
    }
    return;
  }
  const coarse = able ? 2 : 1;
  const quick = { ...look, perPixel: look.perPixel * coarse, width: Math.ceil(look.width / coarse), height: Math.ceil(look.height / coarse) };
  const image = paintFlat(cloth, quick);
  const sheet = sheetOf(quick.width, quick.height);
  /** @type {CanvasRenderingContext2D} */ (sheet.getContext('2d')).putImageData(image, 0, 0);
  context.drawImage(sheet, 0, 0, quick.width, quick.height, right, top + (look.height - quick.height * coarse) * low, quick.width * coarse * narrow, quick.height * coarse * low);
  if (able) view.settle = setTimeout(() => draw(id, true), SETTLE_MILLISECONDS);
}

/** @type {HTMLCanvasElement | undefined} */
let sheet;

/**
 * A canvas out of sight, at least this large.
 * @param {number} width
 * @param {number} height
 */
function sheetOf(width, height) {
  sheet ??= document.createElement('canvas');
  if (sheet.width < width) sheet.width = width;
  if (sheet.height < height) sheet.height = height;
  return sheet;
}

/**
 * Ticks every centimetre, or inch, along the lower and left edge.
 * @param {CanvasRenderingContext2D} context
 * @param {Cloth} cloth
 * @param {View} view
 * @param {number} margin
 * @param {number} width
 * @param {number} height
 * @param {number} scale Canvas pixels in a millimetre.
 * @param {number} ratio
 */
function ticks(context, cloth, view, margin, width, height, scale, ratio) {
  const unit = cloth.customary ? 25.4 : 10;
  const step = [1, 2, 5, 10, 20, 50].find(s => s * unit * scale > 26 * ratio) ?? 100;
  context.fillStyle = themeColour('--ink');
  context.font = `${11 * ratio}px "Open Sans", sans-serif`;
  context.textBaseline = 'top';
  const thin = Math.max(1, Math.round(ratio));
  for (let n = Math.ceil(view.left / unit / step) * step; (n * unit - view.left) * scale <= width; n += step) {
    const x = margin + Math.round((n * unit - view.left) * scale);
    context.fillRect(x, height, thin, 5 * ratio);
    context.textAlign = 'center';
    context.fillText(String(n), x, height + 6 * ratio);
  }
  context.textBaseline = 'middle';
  for (let n = Math.ceil(view.low / unit / step) * step; (n * unit - view.low) * scale <= height && n * unit <= cloth.length + 1; n += step) {
    const y = height - Math.round((n * unit - view.low) * scale);
    context.fillRect(margin - 5 * ratio, y, 5 * ratio, thin);
    if (n === 0) continue;
    context.textAlign = 'right';
    context.fillText(String(n), margin - 7 * ratio, Math.max(7 * ratio, y));
  }
}
