// What is laid over a draft: marked threads, the cell under the cursor, crossings painted but not yet woven, and what is the matter where.
import { CLOTH, THREADING, TIE_UP, TREADS, WARP_COLOURS, WEFT_COLOURS } from './draft-plane.js';
import { within } from './draft-paint.js';

/** @typedef {import('./draft-plane.js').Plane} Plane */
/** @typedef {import('./draft-plane.js').Place} Place */
/** @typedef {import('./draft-plane.js').Box} Box */
/** @typedef {import('./draft-paint.js').Inks} Inks */

/**
 * Numbers of one trouble's place: how it is drawn, its number in the list, first end, ends, first pick, picks.
 * @typedef {[number, number, number, number, number, number]} Spot
 */

/** Ways in which troubles are drawn, as the page numbers them. */
const FACE_FLOAT = 0, BACK_FLOAT = 1, THREAD = 2, EDGE = 3;

/**
 * @typedef {object} Marks
 * @property {Place | null} cursor
 * @property {{ part: number, first: number, count: number, firstPick: number, picks: number } | null} marked
 * @property {Spot[]} spots
 * @property {boolean} focused
 */

/** @param {CanvasRenderingContext2D} context @param {Plane} plane @param {Marks} marks @param {Inks} inks @param {{ ends: number, picks: number }} repeat */
export function paintMarks(context, plane, marks, inks, repeat) {
  paintSpots(context, plane, marks.spots, inks, repeat);
  if (marks.marked) paintMarked(context, plane, marks.marked, inks);
  if (marks.cursor) paintCursor(context, plane, marks.cursor, inks, marks.focused);
}

/** @param {Plane} plane @param {number} part @returns {Box} */
function partBox(plane, part) {
  return { [THREADING]: plane.threading, [TIE_UP]: plane.tieUp, [TREADS]: plane.treads, [WARP_COLOURS]: plane.warpColours, [WEFT_COLOURS]: plane.weftColours }[part] ?? plane.cloth;
}

/** @param {CanvasRenderingContext2D} context @param {Plane} plane @param {NonNullable<Marks['marked']>} marked @param {Inks} inks */
function paintMarked(context, plane, marked, inks) {
  const cloth = plane.cloth;
  const part = partBox(plane, marked.part);
  /** @type {Box} */
  let box;
  if (marked.part === CLOTH) {
    box = { x: plane.x(marked.first, marked.count, cloth), y: plane.y(marked.firstPick, marked.picks, cloth), w: marked.count * plane.cell, h: marked.picks * plane.cell };
  } else if (marked.part === TREADS || marked.part === WEFT_COLOURS) {
    box = { x: part.x, y: plane.y(marked.first, marked.count, cloth), w: part.w, h: marked.count * plane.cell };
  } else if (marked.part === TIE_UP) {
    const a = plane.columnX(marked.first + 1, part), b = plane.columnX(marked.first + marked.count, part);
    box = { x: Math.min(a, b), y: part.y, w: marked.count * plane.columnSize, h: part.h };
  } else {
    box = { x: plane.x(marked.first, marked.count, cloth), y: part.y, w: marked.count * plane.cell, h: part.h };
  }
  within(context, part, () => {
    context.globalAlpha = 0.22;
    context.fillStyle = inks.mark;
    context.fillRect(box.x, box.y, box.w, box.h);
    context.globalAlpha = 1;
    context.strokeStyle = inks.page;
    context.lineWidth = 4;
    context.strokeRect(box.x + 1, box.y + 1, box.w - 2, box.h - 2);
    context.strokeStyle = inks.mark;
    context.lineWidth = 2;
    context.setLineDash([5, 3]);
    context.strokeRect(box.x + 1, box.y + 1, box.w - 2, box.h - 2);
    context.setLineDash([]);
  });
}

/** @param {CanvasRenderingContext2D} context @param {Plane} plane @param {Place} cursor @param {Inks} inks @param {boolean} focused */
function paintCursor(context, plane, cursor, inks, focused) {
  const { x, y, w, h } = plane.boxOf(cursor);
  const grow = Math.max(0, (8 - Math.min(w, h)) / 2);
  within(context, partBox(plane, cursor.part), () => {
    context.lineWidth = focused ? 4.5 : 3;
    context.strokeStyle = inks.page;
    context.strokeRect(x - grow, y - grow, w + 2 * grow, h + 2 * grow);
    context.lineWidth = focused ? 2.5 : 1.5;
    context.strokeStyle = inks.ink;
    if (!focused) context.setLineDash([2, 2]);
    context.strokeRect(x - grow, y - grow, w + 2 * grow, h + 2 * grow);
    context.setLineDash([]);
  });
}

/** @param {CanvasRenderingContext2D} context @param {Plane} plane @param {Spot[]} spots @param {Inks} inks @param {{ ends: number, picks: number }} repeat */
function paintSpots(context, plane, spots, inks, repeat) {
  const cloth = plane.cloth;
  /** @type {Set<string>} */
  const numbered = new Set();
  within(context, { x: cloth.x, y: cloth.y, w: cloth.w, h: cloth.h }, () => {
    for (const [way, number, end, ends, pick, picks] of spots) {
      for (const e of ends < repeat.ends && end + ends > repeat.ends && plane.ends === repeat.ends ? [end, end - repeat.ends] : [end]) {
        for (const p of picks < repeat.picks && pick + picks > repeat.picks && plane.picks === repeat.picks ? [pick, pick - repeat.picks] : [pick]) {
          const box = { x: plane.x(e, ends, cloth), y: plane.y(p, picks, cloth), w: ends * plane.cell, h: picks * plane.cell };
          if (box.x > cloth.x + cloth.w || box.y > cloth.y + cloth.h || box.x + box.w < cloth.x || box.y + box.h < cloth.y) continue;
          paintSpot(context, plane, way, box, inks);
          const place = `${number}`;
          if (numbered.has(place) || plane.cell < 4) continue;
          numbered.add(place);
          paintBadge(context, number, Math.max(cloth.x + 9, Math.min(box.x + 9, cloth.x + cloth.w - 9)), Math.max(cloth.y + 9, Math.min(box.y + box.h / 2, cloth.y + cloth.h - 9)), inks);
        }
      }
    }
  });
}

/** @param {CanvasRenderingContext2D} context @param {Plane} plane @param {number} way @param {Box} box @param {Inks} inks */
function paintSpot(context, plane, way, { x, y, w, h }, inks) {
  context.strokeStyle = inks.alarm;
  context.fillStyle = inks.alarm;
  context.lineWidth = 2;
  if (way === EDGE) {
    // An arrow head that points at the edge end that is missed.
    const left = x < plane.cloth.x + plane.cloth.w / 2;
    const size = Math.max(7, plane.cell * 0.8), tip = left ? x : x + w, middle = y + h / 2;
    context.beginPath();
    context.moveTo(tip, middle);
    context.lineTo(tip + (left ? size : -size), middle - size / 2);
    context.lineTo(tip + (left ? size : -size), middle + size / 2);
    context.fill();
    return;
  }
  if (way === THREAD || plane.cell >= 7) {
    within(context, { x, y, w, h }, () => {
      context.lineWidth = 1.25;
      context.beginPath();
      for (let at = -h; at < w; at += 6) { context.moveTo(x + at, y + h); context.lineTo(x + at + h, y); }
      context.stroke();
    });
  }
  context.lineWidth = 2;
  context.setLineDash(way === BACK_FLOAT ? [4, 3] : []);
  context.strokeRect(x + 1, y + 1, Math.max(1, w - 2), Math.max(1, h - 2));
  context.setLineDash([]);
}

/** @param {CanvasRenderingContext2D} context @param {number} number @param {number} x @param {number} y @param {Inks} inks */
function paintBadge(context, number, x, y, inks) {
  context.fillStyle = inks.alarm;
  context.beginPath();
  context.arc(x, y, 8.5, 0, 2 * Math.PI);
  context.fill();
  context.fillStyle = inks.page;
  context.font = '600 11px "Open Sans", sans-serif';
  context.fillText(String(number), x, y + 0.5);
}

export { FACE_FLOAT, BACK_FLOAT, THREAD, EDGE };
