// A draft as it stands at the loom: threading beyond the fell (top), first pick at the weaver's hand (bottom), tie-up in the corner and
// treadling, or the lift plan, to the right; or one of the ways round that books use. Painted whole or in part, worked on by hand.
import { fit, themeColour } from './rows.js';
import { Plane } from './draft-plane.js';
import { paintDraft } from './draft-paint.js';
import { paintMarks } from './draft-marks.js';
import { listen } from './draft-hand.js';
import { listenForFiles } from './draft-files.js';

export { saveText, takenName, takenBytes, pictureWidth, pictureTones } from './draft-files.js';

/** @typedef {import('./draft-paint.js').Draft} Draft */
/** @typedef {import('./draft-marks.js').Marks} Marks */
/** @typedef {import('./draft-hand.js').Hand} Hand */

/** @typedef {{ canvas: HTMLCanvasElement, plane: Plane, draft: Draft | null, marks: Marks, hand: Hand, due: number, shown: string, outgrown: boolean }} Sheet */

/** @type {Map<string, Sheet>} */
const sheets = new Map();
/** @type {number[]} */
let frames = [];

/**
 * Lays a draft's paper out on a canvas.
 * @param {string} id
 * @param {string} field Id of the field that chooses files; empty for a draft that is only looked at.
 * @param {(words: string) => void} tell Told what the hand does.
 */
export function openDraft(id, field, tell) {
  const canvas = /** @type {HTMLCanvasElement} */ (document.getElementById(id));
  const holder = /** @type {HTMLElement} */ (canvas.parentElement);
  const plane = new Plane();
  plane.snug = !field;
  /** @type {Sheet} */
  const sheet = {
    canvas,
    plane,
    draft: null,
    marks: { cursor: null, marked: null, spots: [], focused: false },
    hand: { plane, mode: 'draw', wide: false, drawing: false, again: () => later(sheet), tell },
    due: 0,
    shown: '',
    outgrown: false,
  };
  sheets.set(id, sheet);
  new ResizeObserver(() => resize(sheet)).observe(holder);
  document.addEventListener('clothwright-theme', () => later(sheet));
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => later(sheet));
  if (!field) return;
  listen(holder, canvas, sheet.hand);
  listenForFiles(holder, /** @type {HTMLInputElement | null} */ (document.getElementById(field)), tell);
  for (const kind of ['focus', 'blur']) holder.addEventListener(kind, () => { sheet.marks.focused = kind === 'focus'; later(sheet); });
}

/** @param {Sheet} sheet */
function resize(sheet) {
  const { plane, canvas } = sheet;
  if (canvas.clientWidth === 0) return;
  const whole = plane.cell === 0 || plane.cell <= plane.leastCell + 1e-6;
  plane.width = canvas.clientWidth;
  plane.height = canvas.clientHeight;
  if (whole) plane.whole(plane.snug ? 4 : 9);
  plane.keepInside();
  later(sheet);
}

/** @param {Sheet} sheet */
function fitWhole(sheet) {
  sheet.outgrown = false;
  sheet.plane.whole(sheet.plane.snug ? 4 : 9);
}

/** @param {Sheet} sheet */
function later(sheet) {
  sheet.due ||= requestAnimationFrame(() => paint(sheet));
}

/** @param {Sheet} sheet */
function paint(sheet) {
  sheet.due = 0;
  const { canvas, plane, draft } = sheet;
  if (!draft || canvas.clientWidth === 0 || !canvas.isConnected) return;
  const start = performance.now();
  plane.width = canvas.clientWidth;
  plane.height = canvas.clientHeight;
  if (plane.cell === 0 || (sheet.outgrown && !sheet.hand.drawing)) fitWhole(sheet);
  const ratio = fit(canvas);
  const context = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  const inks = {
    ink: themeColour('--ink'), page: themeColour('--page'), rule: themeColour('--rule'), soft: themeColour('--soft'),
    warp: themeColour('--woad'), weft: themeColour('--thread'), alarm: themeColour('--madder'), mark: themeColour('--woad'),
  };
  paintDraft(context, plane, draft, ratio, inks);
  paintMarks(context, plane, sheet.marks, inks, draft);
  frames.push(performance.now() - start);
  if (frames.length > 400) frames = frames.slice(-200);
}

/** Times of the last frames in milliseconds. @returns {number[]} */
export const paintTimes = () => frames;

/**
 * Shows a draft.
 * @param {string} id
 * @param {{ slice(): Uint8Array }} rows Packed rows of one repeat.
 * @param {{ slice(): Int32Array }} sizes Ends and picks of one repeat, ends and picks shown, shafts, columns beside the cloth, whether tied up, way round,
 *   whether in the colours of the yarns, whether in numbers, whether the cloth is not what the draft weaves.
 * @param {{ slice(): Uint8Array }} threading Eight bytes a set, the lowest first.
 * @param {{ slice(): Uint8Array }} tieUp
 * @param {{ slice(): Uint8Array }} treads
 * @param {{ slice(): Int32Array }} endColours
 * @param {{ slice(): Int32Array }} pickColours
 */
export function showDraft(id, rows, sizes, threading, tieUp, treads, endColours, pickColours) {
  const sheet = sheets.get(id);
  if (!sheet) return;
  const { plane } = sheet;
  const [ends, picks, shownEnds, shownPicks, shafts, columns, tied, way, inYarns, numbers, sketched] = sizes.slice();
  const whole = plane.cell <= plane.leastCell + 1e-6;
  /** @param {{ slice(): Uint8Array }} sets */
  const words = sets => new Uint32Array(sets.slice().buffer);
  sheet.draft = {
    rows: rows.slice(), ends, picks, threading: words(threading), tieUp: words(tieUp), treads: words(treads),
    endColours: endColours.slice(), pickColours: pickColours.slice(), inYarns: inYarns === 1, numbers: numbers === 1, sketched: sketched === 1,
  };
  Object.assign(plane, { ends: shownEnds, picks: shownPicks, shafts, columns: Math.max(1, columns), tied: tied === 1 });
  plane.turn(way);
  const shown = `${shownEnds} ${shownPicks} ${shafts} ${columns}`;
  // Under a stroke the paper stays where it is, or the cells would slip away from the pen.
  if (shown !== sheet.shown && whole) sheet.outgrown = true;
  sheet.shown = shown;
  if (sheet.outgrown && !sheet.hand.drawing && plane.cell > 0) fitWhole(sheet);
  plane.keepInside();
  later(sheet);
}

/**
 * Lays marks over a draft.
 * @param {string} id
 * @param {{ slice(): Int32Array }} cursor Part, thread, number; empty for none.
 * @param {{ slice(): Int32Array }} marked Part, first thread, threads; in the cloth also first pick and picks; empty for none.
 * @param {{ slice(): Int32Array }} spots Six numbers each.
 * @param {boolean} reveal Whether the cursor is brought into sight.
 */
export function markDraft(id, cursor, marked, spots, reveal) {
  const sheet = sheets.get(id);
  if (!sheet) return;
  const [part, thread, number] = cursor.slice();
  const [markedPart, first, count, firstPick, picks] = marked.slice();
  const numbers = spots.slice();
  sheet.marks.cursor = part === undefined ? null : { part, thread, number };
  sheet.marks.marked = markedPart === undefined ? null : { part: markedPart, first, count, firstPick: firstPick ?? 0, picks: picks ?? 0 };
  sheet.marks.spots = Array.from({ length: numbers.length / 6 }, (_, i) => /** @type {import('./draft-marks.js').Spot} */ ([...numbers.subarray(6 * i, 6 * i + 6)]));
  if (reveal && sheet.marks.cursor) sheet.plane.reveal(sheet.marks.cursor);
  later(sheet);
}

/**
 * What dragging does, and whether the draft has the page's whole width.
 * @param {string} id
 * @param {'draw' | 'mark' | 'move'} mode
 * @param {boolean} wide
 */
export function handDraft(id, mode, wide) {
  const sheet = sheets.get(id);
  if (!sheet) return;
  sheet.hand.mode = mode;
  sheet.hand.wide = wide;
}

/**
 * Looks at a draft from nearer or further.
 * @param {string} id
 * @param {number} times Larger than 1 is nearer; 0 is the whole cloth.
 */
export function nearDraft(id, times) {
  const sheet = sheets.get(id);
  if (!sheet) return;
  const { plane } = sheet;
  const { x, y, w, h } = plane.cloth;
  if (times === 0) plane.whole();
  else plane.zoom(plane.cell * times, x + w / 2, y + h / 2);
  later(sheet);
}

/** Brings a crossing into sight. @param {string} id @param {number} end @param {number} pick */
export function lookAt(id, end, pick) {
  const sheet = sheets.get(id);
  if (!sheet) return;
  const { plane } = sheet;
  if (plane.cell < 10) plane.zoom(14, 0, 0);
  plane.reveal({ part: 3, thread: end, number: pick });
  later(sheet);
}

/** Threads that are in sight, for the keys that go a page on. @param {string} id @returns {number} */
export function pageOf(id) {
  const plane = sheets.get(id)?.plane;
  return plane ? Math.max(1, Math.floor(Math.min(plane.cloth.w, plane.cloth.h) / plane.cell) - 1) : 1;
}

/** Where a place lies in the window: its middle, in CSS pixels. @param {string} id @param {number} part @param {number} thread @param {number} number @returns {number[]} */
export function middleOf(id, part, thread, number) {
  const sheet = /** @type {Sheet} */ (sheets.get(id));
  const box = sheet.canvas.getBoundingClientRect();
  const { x, y, w, h } = sheet.plane.boxOf({ part, thread, number });
  return [box.left + x + w / 2, box.top + y + h / 2];
}

/**
 * Times of painting a draft over and over: whole, pulled along and zoomed through.
 * @param {string} id
 * @param {number} times
 * @returns {string} Medians in milliseconds with blanks between: whole cloth, pulled along at single threads, zooming.
 */
export function timePainting(id, times) {
  const sheet = /** @type {Sheet} */ (sheets.get(id));
  const { plane } = sheet;
  /** @param {(i: number) => void} move */
  const median = move => {
    const taken = Array.from({ length: times }, (_, i) => {
      move(i);
      const start = performance.now();
      paint(sheet);
      return performance.now() - start;
    }).sort((a, b) => a - b);
    return taken[times >> 1];
  };
  const whole = median(() => plane.whole());
  plane.zoom(14, 0, 0);
  const pulled = median(i => plane.pull(i % 2 ? 90 : -120, i % 2 ? -70 : 110));
  const zoomed = median(i => { const { x, y, w, h } = plane.cloth; plane.zoom(plane.leastCell * Math.pow(40, i / times), x + w / 2, y + h / 2); });
  return [whole, pulled, zoomed].map(t => t.toFixed(2)).join(' ');
}
