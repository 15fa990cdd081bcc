// Where everything lies on the paper of a draft: the cloth, the threading beyond it, the treadling at its side, the tie-up in the corner,
// the colours outermost. All sizes are CSS pixels.

/** Parts of a draft, numbered as the page numbers them. */
export const THREADING = 0, TIE_UP = 1, TREADS = 2, CLOTH = 3, WARP_COLOURS = 4, WEFT_COLOURS = 5;

const COLOURS = 14;
const GAP = 18;
const MOST_CELL = 44;
const TICK_ROOM = 30;

/**
 * @typedef {object} Box
 * @property {number} x
 * @property {number} y
 * @property {number} w
 * @property {number} h
 */

/**
 * A place: a thread of a part, and in the parts of cells the number of the shaft or treadle; in the cloth the pick.
 * @typedef {{ part: number, thread: number, number: number }} Place
 */

/** The paper: sizes, what of it is seen, and where a pixel points. */
export class Plane {
  constructor() {
    this.width = 1;
    this.height = 1;
    this.cell = 0;
    this.left = 0;
    this.low = 0;
    this.ends = 1;
    this.picks = 1;
    this.shafts = 1;
    this.columns = 1;
    this.tied = true;
    this.threadingBelow = false;
    this.endsFromRight = false;
    this.treadsLeft = false;
    this.firstPickAtTop = false;
    /** Whether the paper ends where the cloth ends, as on a picture that is only looked at. */
    this.snug = false;
  }

  /** @param {number} bits As the page numbers the ways round. */
  turn(bits) {
    this.threadingBelow = (bits & 1) !== 0;
    this.endsFromRight = (bits & 2) !== 0;
    this.treadsLeft = (bits & 4) !== 0;
    this.firstPickAtTop = (bits & 8) !== 0;
  }

  /** Height of a shaft's row: that of a cell, as far as many shafts leave room. @returns {number} */
  get shaftSize() { return Math.max(3, Math.min(Math.max(10, Math.min(this.cell, 24)), (this.height * 0.42) / this.shafts)); }

  /** @returns {number} */
  get columnSize() { return Math.max(3, Math.min(Math.max(10, Math.min(this.cell, 24)), (this.width * 0.34) / this.columns)); }

  /** The cloth's box. @returns {Box} */
  get cloth() {
    const side = this.columns * this.columnSize + GAP + COLOURS + 4;
    const beyond = this.shafts * this.shaftSize + GAP + COLOURS + 4;
    const w = Math.max(1, this.width - side), h = Math.max(1, this.height - beyond);
    return {
      x: this.treadsLeft ? side : 0,
      y: this.threadingBelow ? 0 : beyond,
      w: this.snug && this.cell > 0 ? Math.min(w, this.ends * this.cell) : w,
      h: this.snug && this.cell > 0 ? Math.min(h, this.picks * this.cell) : h,
    };
  }

  /** @returns {Box} */
  get threading() {
    const cloth = this.cloth;
    const h = this.shafts * this.shaftSize;
    return { x: cloth.x, y: this.threadingBelow ? cloth.y + cloth.h + GAP : cloth.y - GAP - h, w: cloth.w, h };
  }

  /** @returns {Box} */
  get treads() {
    const cloth = this.cloth;
    const w = this.columns * this.columnSize;
    return { x: this.treadsLeft ? cloth.x - GAP - w : cloth.x + cloth.w + GAP, y: cloth.y, w, h: cloth.h };
  }

  /** @returns {Box} */
  get tieUp() {
    const { x, w } = this.treads;
    const { y, h } = this.threading;
    return { x, y, w, h };
  }

  /** @returns {Box} */
  get warpColours() {
    const box = this.threading;
    return { x: box.x, y: this.threadingBelow ? box.y + box.h + 4 : box.y - 4 - COLOURS, w: box.w, h: COLOURS };
  }

  /** @returns {Box} */
  get weftColours() {
    const box = this.treads;
    return { x: this.treadsLeft ? box.x - 4 - COLOURS : box.x + box.w + 4, y: box.y, w: COLOURS, h: box.h };
  }

  /** Smallest cell: the whole cloth is seen. @returns {number} */
  get leastCell() {
    const held = this.cell;
    this.cell = 10;
    const snug = this.snug;
    this.snug = false;
    const { w, h } = this.cloth;
    this.snug = snug;
    this.cell = held;
    return Math.min(w / this.ends, h / this.picks, MOST_CELL);
  }

  /** Shows the whole cloth, or as much of it as leaves a cell this size. @param {number} [least] */
  whole(least = 0) {
    this.cell = Math.max(this.leastCell, Math.min(least, MOST_CELL));
    this.cell = Math.min(this.cell, 22);
    this.left = 0;
    this.low = 0;
    this.keepInside();
  }

  /** @param {number} cell @param {number} x @param {number} y The point that stays where it is. */
  zoom(cell, x, y) {
    const before = this.cloth;
    const end = this.endAt(x, before), pick = this.pickAt(y, before);
    this.cell = Math.max(Math.min(this.leastCell, 4), Math.min(MOST_CELL, cell));
    const after = this.cloth;
    this.left = end - this.across(x, after) / this.cell;
    this.low = pick - this.along(y, after) / this.cell;
    this.keepInside();
  }

  /** @param {number} right @param {number} down Pixels by which the paper is pulled. */
  pull(right, down) {
    this.left -= (this.endsFromRight ? -right : right) / this.cell;
    this.low -= (this.firstPickAtTop ? down : -down) / this.cell;
    this.keepInside();
  }

  /** Brings a place into sight. @param {Place} place */
  reveal({ part, thread, number }) {
    const { w, h } = this.cloth;
    const end = part === THREADING || part === CLOTH || part === WARP_COLOURS ? thread : -1;
    const pick = part === CLOTH ? number : part === TREADS || part === WEFT_COLOURS ? thread : -1;
    if (end >= 0) this.left = Math.max(Math.min(this.left, end - 1), end + 2 - w / this.cell);
    if (pick >= 0) this.low = Math.max(Math.min(this.low, pick - 1), pick + 2 - h / this.cell);
    this.keepInside();
  }

  keepInside() {
    const { w, h } = this.cloth;
    this.left = Math.max(0, Math.min(this.left, this.ends - w / this.cell));
    this.low = Math.max(0, Math.min(this.low, this.picks - h / this.cell));
  }

  /** @param {number} x @param {Box} cloth */
  across(x, cloth) { return this.endsFromRight ? cloth.x + cloth.w - x : x - cloth.x; }

  /** @param {number} y @param {Box} cloth */
  along(y, cloth) { return this.firstPickAtTop ? y - cloth.y : cloth.y + cloth.h - y; }

  /** @param {number} x @param {Box} cloth */
  endAt(x, cloth) { return this.left + this.across(x, cloth) / this.cell; }

  /** @param {number} y @param {Box} cloth */
  pickAt(y, cloth) { return this.low + this.along(y, cloth) / this.cell; }

  /** Left edge of threads across. @param {number} end @param {number} count @param {Box} cloth */
  x(end, count, cloth) {
    const from = (end - this.left) * this.cell;
    return this.endsFromRight ? cloth.x + cloth.w - from - count * this.cell : cloth.x + from;
  }

  /** Upper edge of threads along. @param {number} pick @param {number} count @param {Box} cloth */
  y(pick, count, cloth) {
    const from = (pick - this.low) * this.cell;
    return this.firstPickAtTop ? cloth.y + from : cloth.y + cloth.h - from - count * this.cell;
  }

  /** Upper edge of a shaft's row; shaft 1 lies nearest the cloth. @param {number} shaft @param {Box} box */
  shaftY(shaft, box) { return this.threadingBelow ? box.y + (shaft - 1) * this.shaftSize : box.y + box.h - shaft * this.shaftSize; }

  /** Left edge of a column of the treadling; the first lies nearest the cloth. @param {number} column @param {Box} box */
  columnX(column, box) { return this.treadsLeft ? box.x + box.w - column * this.columnSize : box.x + (column - 1) * this.columnSize; }

  /** The box of a place. @param {Place} place @param {number} [count] Threads, from the place on. @returns {Box} */
  boxOf({ part, thread, number }, count = 1) {
    const cloth = this.cloth, cell = this.cell;
    switch (part) {
      case THREADING: return { x: this.x(thread, count, cloth), y: this.shaftY(number, this.threading), w: cell * count, h: this.shaftSize };
      case TIE_UP: return { x: this.columnX(thread + 1, this.treads), y: this.shaftY(number, this.threading), w: this.columnSize, h: this.shaftSize };
      case TREADS: return { x: this.columnX(number, this.treads), y: this.y(thread, count, cloth), w: this.columnSize, h: cell * count };
      case WARP_COLOURS: { const box = this.warpColours; return { x: this.x(thread, count, cloth), y: box.y, w: cell * count, h: box.h }; }
      case WEFT_COLOURS: { const box = this.weftColours; return { x: box.x, y: this.y(thread, count, cloth), w: box.w, h: cell * count }; }
      default: return { x: this.x(thread, 1, cloth), y: this.y(number, 1, cloth), w: cell, h: cell };
    }
  }

  /**
   * What lies at a point; in a part held on to, the nearest place of it.
   * @param {number} x
   * @param {number} y
   * @param {number | null} [held] The part in which a stroke began.
   * @returns {Place | null}
   */
  placeAt(x, y, held = null) {
    const cloth = this.cloth, threading = this.threading, treads = this.treads;
    const end = Math.floor(this.endAt(x, cloth)), pick = Math.floor(this.pickAt(y, cloth));
    const shaft = 1 + Math.floor((this.threadingBelow ? y - threading.y : threading.y + threading.h - y) / this.shaftSize);
    const column = 1 + Math.floor((this.treadsLeft ? treads.x + treads.w - x : x - treads.x) / this.columnSize);
    const part = held ?? this.partAt(x, y);
    /** @param {number} n @param {number} most */
    const kept = (n, most) => (held === null ? n : Math.max(0, Math.min(most - 1, n)));
    /** @param {number} n @param {number} most */
    const number = (n, most) => (held === null ? n : Math.max(1, Math.min(most, n)));
    const place = {
      [THREADING]: { part: THREADING, thread: kept(end, this.ends), number: number(shaft, this.shafts) },
      [TIE_UP]: { part: TIE_UP, thread: kept(column - 1, this.columns), number: number(shaft, this.shafts) },
      [TREADS]: { part: TREADS, thread: kept(pick, this.picks), number: number(column, this.columns) },
      [CLOTH]: { part: CLOTH, thread: kept(end, this.ends), number: kept(pick, this.picks) },
      [WARP_COLOURS]: { part: WARP_COLOURS, thread: kept(end, this.ends), number: 0 },
      [WEFT_COLOURS]: { part: WEFT_COLOURS, thread: kept(pick, this.picks), number: 0 },
    }[part ?? -1];
    if (!place || place.thread < 0) return null;
    const acrossFits = [THREADING, CLOTH, WARP_COLOURS].includes(place.part) ? place.thread < this.ends : true;
    const alongFits = [TREADS, WEFT_COLOURS].includes(place.part) ? place.thread < this.picks : place.part !== CLOTH || (place.number >= 0 && place.number < this.picks);
    return acrossFits && alongFits ? place : null;
  }

  /** @param {number} x @param {number} y @returns {number | null} */
  partAt(x, y) {
    /** @type {[number, Box][]} */
    const parts = [[CLOTH, this.cloth], [THREADING, this.threading], [TREADS, this.treads], [WARP_COLOURS, this.warpColours], [WEFT_COLOURS, this.weftColours]];
    if (this.tied) parts.push([TIE_UP, this.tieUp]);
    const found = parts.find(([, b]) => x >= b.x && x < b.x + b.w && y >= b.y && y < b.y + b.h);
    return found ? found[0] : null;
  }

  /** Threads from one number to the next along the edge: 1, 2, 5, 10, 20 … @returns {number} */
  get tick() {
    for (let tick = 1; ; tick *= 10) {
      for (const step of [1, 2, 5]) if (tick * step * this.cell >= TICK_ROOM) return tick * step;
    }
  }
}
