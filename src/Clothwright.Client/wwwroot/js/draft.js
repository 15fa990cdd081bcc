// A draft as it stands at the loom: threading beyond the fell (top), first pick at the weaver's hand (bottom),
// tie-up in the corner and treadling, or the lift plan, to the right.
import { fit, reader, themeColour } from './rows.js';

/** @typedef {{ rows: Uint8Array, ends: number, picks: number, threading: Float64Array, tieUp: Float64Array, treadling: Float64Array, shafts: number }} Draft */

/** @type {Map<string, Draft>} */
const drafts = new Map();

/** @param {number} set @param {number} number */
const holds = (set, number) => Math.floor(set / 2 ** (number - 1)) % 2 === 1;

/**
 * Shows a draft on a canvas.
 * @param {string} id
 * @param {{ slice(): Uint8Array }} rows
 * @param {number} ends
 * @param {number} picks
 * @param {{ slice(): Float64Array }} threading Shafts of each end, one bit a shaft.
 * @param {{ slice(): Float64Array }} tieUp Shafts of each treadle; empty for a lift plan.
 * @param {{ slice(): Float64Array }} treadling Treadles of each pick, or the shafts it lifts.
 * @param {number} shafts
 */
export function showDraft(id, rows, ends, picks, threading, tieUp, treadling, shafts) {
  const first = !drafts.has(id);
  drafts.set(id, { rows: rows.slice(), ends, picks, threading: threading.slice(), tieUp: tieUp.slice(), treadling: treadling.slice(), shafts });
  if (first) {
    const canvas = /** @type {HTMLCanvasElement} */ (document.getElementById(id));
    new ResizeObserver(() => draw(id)).observe(canvas.parentElement ?? canvas);
    document.addEventListener('clothwright-theme', () => draw(id));
    matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => draw(id));
  }
  draw(id);
}

/** @param {string} id */
function draw(id) {
  const draft = drafts.get(id);
  const canvas = /** @type {HTMLCanvasElement | null} */ (document.getElementById(id));
  const holder = canvas?.parentElement;
  if (!draft || !canvas || !holder || holder.clientWidth === 0) return;
  const right = draft.tieUp.length || draft.shafts;
  // The threads are cut to what fits: cells of 9 to 14 pixels.
  const room = holder.clientWidth;
  const cell = Math.max(9, Math.min(14, Math.floor(room / (draft.ends + right + 3))));
  const ends = Math.max(4, Math.min(draft.ends, Math.floor(room / cell) - right - 3));
  canvas.style.width = `${(ends + right + 3) * cell}px`;
  canvas.style.height = `${(draft.picks + draft.shafts + 2) * cell}px`;
  const ratio = fit(canvas);
  const context = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  context.clearRect(0, 0, canvas.width, canvas.height);
  const ink = themeColour('--ink');
  const warp = themeColour('--woad');
  const weft = themeColour('--thread');
  const line = themeColour('--rule');
  const warpOnTop = reader(draft.rows, draft.ends);
  const top = (draft.shafts + 1) * cell;
  const side = (ends + 1) * cell;
  context.font = `600 ${cell - 1}px "Open Sans", sans-serif`;
  context.textAlign = 'center';
  context.textBaseline = 'middle';

  /** @param {number} column @param {number} y @param {string} colour */
  const box = (column, y, colour) => {
    context.fillStyle = colour;
    context.fillRect(column, y, cell - 1, cell - 1);
  };
  /** @param {number} x @param {number} y @param {string} text */
  const mark = (x, y, text) => {
    context.fillStyle = ink;
    context.fillText(text, x + cell / 2 - 0.5, y + cell / 2);
  };
  /** @param {number} x @param {number} y @param {number} columns @param {number} lines */
  const grid = (x, y, columns, lines) => {
    for (let i = 0; i < columns; i++) for (let j = 0; j < lines; j++) box(x + i * cell, y + j * cell, line);
  };

  grid(0, 0, ends, draft.shafts);
  for (let end = 0; end < ends; end++) {
    for (let shaft = 1; shaft <= draft.shafts; shaft++) {
      if (holds(draft.threading[end], shaft)) mark(end * cell, (draft.shafts - shaft) * cell, String(shaft));
    }
  }
  for (let pick = 0; pick < draft.picks; pick++) {
    const y = top + (draft.picks - 1 - pick) * cell;
    for (let end = 0; end < ends; end++) box(end * cell, y, warpOnTop(pick, end) ? warp : weft);
    grid(side, y, right, 1);
    for (let k = 1; k <= right; k++) {
      if (holds(draft.treadling[pick], k)) mark(side + (k - 1) * cell, y, String(k));
    }
  }
  if (draft.tieUp.length) {
    grid(side, 0, right, draft.shafts);
    for (let treadle = 0; treadle < right; treadle++) {
      for (let shaft = 1; shaft <= draft.shafts; shaft++) {
        if (holds(draft.tieUp[treadle], shaft)) mark(side + treadle * cell, (draft.shafts - shaft) * cell, String(shaft));
      }
    }
  }
}
