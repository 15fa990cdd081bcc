// Paints the part of a draft that is seen. The cloth is written pixel by pixel into one picture, so that its cost goes by the window, not by
// the draft; threads finer than a pixel are mixed in it.
import { CLOTH, THREADING, TIE_UP, TREADS, WARP_COLOURS, WEFT_COLOURS } from './draft-plane.js';

/** @typedef {import('./draft-plane.js').Plane} Plane */
/** @typedef {import('./draft-plane.js').Box} Box */

/**
 * @typedef {object} Draft
 * @property {Uint8Array} rows Packed rows of one repeat of the cloth.
 * @property {number} ends Of one repeat.
 * @property {number} picks
 * @property {Uint32Array} threading Shafts of each end, two words a set, the lower first.
 * @property {Uint32Array} tieUp
 * @property {Uint32Array} treads Treadles, or shafts lifted, of each pick.
 * @property {Int32Array} endColours 0xRRGGBB of each end shown.
 * @property {Int32Array} pickColours
 * @property {boolean} inYarns Whether the cloth is drawn in the colours of its yarns.
 * @property {boolean} numbers Whether cells hold numbers.
 * @property {boolean} sketched Whether the cloth is not what the treads weave, so that like treads do not stand for like picks.
 */

/** @typedef {{ ink: string, page: string, rule: string, soft: string, warp: string, weft: string, alarm: string, mark: string }} Inks */

const MOST_SAMPLES = 4;
const FADE = 0.45;

/** @param {string} colour @returns {[number, number, number]} */
function channels(colour) {
  const n = parseInt(colour.slice(1), 16);
  return colour.length === 4
    ? [((n >> 8) & 15) * 17, ((n >> 4) & 15) * 17, (n & 15) * 17]
    : [(n >> 16) & 255, (n >> 8) & 255, n & 255];
}

/** @param {Uint32Array} sets @param {number} index @param {number} number */
export function holds(sets, index, number) {
  return number <= 32 ? (sets[2 * index] >>> (number - 1)) & 1 : (sets[2 * index + 1] >>> (number - 33)) & 1;
}

/** Colours of the threads as red, green, blue one after the other. */
class ThreadColours {
  /** @param {number} threads @param {Int32Array} own @param {boolean} inYarns @param {string} plain */
  constructor(threads, own, inYarns, plain) {
    const [r, g, b] = channels(plain);
    this.values = new Uint8Array(threads * 3);
    for (let t = 0; t < threads; t++) {
      const colour = inYarns && own.length ? own[t % own.length] : (r << 16) | (g << 8) | b;
      this.values[3 * t] = colour >> 16;
      this.values[3 * t + 1] = colour >> 8;
      this.values[3 * t + 2] = colour;
    }
  }
}

/**
 * Writes the cloth into a picture.
 * @param {Plane} plane
 * @param {Draft} draft
 * @param {number} ratio
 * @param {Inks} inks
 * @returns {ImageData}
 */
function clothPicture(plane, draft, ratio, inks) {
  const box = plane.cloth;
  const w = Math.max(1, Math.round(box.w * ratio)), h = Math.max(1, Math.round(box.h * ratio));
  const picture = new ImageData(w, h);
  const pixels = new Uint32Array(picture.data.buffer);
  const [pr, pg, pb] = channels(inks.page);
  const blank = 0xff000000 | (pb << 16) | (pg << 8) | pr;
  pixels.fill(blank);
  const warp = new ThreadColours(plane.ends, draft.endColours, draft.inYarns, inks.warp).values;
  const weft = new ThreadColours(plane.picks, draft.pickColours, draft.inYarns, inks.weft).values;
  const size = plane.cell * ratio;
  const lined = size >= 5;
  const perPick = ((draft.ends + 63) >> 6) * 8;

  // For each column of pixels the ends seen in it, for each row the picks.
  /** @param {number} count @param {number} first @param {boolean} reversed @param {number} threads */
  const spread = (count, first, reversed, threads) => {
    const from = new Int32Array(count), to = new Int32Array(count);
    for (let i = 0; i < count; i++) {
      const at = reversed ? count - 1 - i : i;
      const start = first + i / size, end = first + (i + 1) / size;
      from[at] = Math.floor(start + 1e-6);
      to[at] = Math.max(from[at] + 1, Math.floor(end + 1e-6));
      if (lined && Math.floor(end + 1e-6) > from[at]) from[at] = -1;
      if (from[at] >= threads) from[at] = -1;
      to[at] = Math.min(to[at], threads);
    }
    return { from, to };
  };
  const across = spread(w, plane.left, plane.endsFromRight, plane.ends);
  const along = spread(h, plane.low, !plane.firstPickAtTop, plane.picks);

  // Sums over the ends of each column, kept for every kind of pick.
  /** @type {Map<string, { red: Float32Array, green: Float32Array, blue: Float32Array, under: Float32Array }>} */
  const kinds = new Map();
  const endStep = Math.max(1, Math.floor(1 / size / MOST_SAMPLES));
  const pickStep = Math.max(1, Math.floor(1 / size / MOST_SAMPLES));
  const seen = new Float32Array(w);
  for (let x = 0; x < w; x++) for (let e = across.from[x]; e >= 0 && e < across.to[x]; e += endStep) seen[x]++;

  /** @param {number} pick Of one repeat. */
  const sums = pick => {
    const key = draft.sketched ? `${pick}` : `${draft.treads[2 * pick]} ${draft.treads[2 * pick + 1]}`;
    let kind = kinds.get(key);
    if (kind) return kind;
    const channel = () => new Float32Array(draft.inYarns ? w : 0);
    kind = { red: channel(), green: channel(), blue: channel(), under: new Float32Array(w) };
    const { red, green, blue, under } = kind;
    const row = pick * perPick;
    const { from, to } = across;
    if (!draft.inYarns) {
      for (let x = 0; x < w; x++) {
        for (let e = from[x]; e >= 0 && e < to[x]; e += endStep) {
          const end = e % draft.ends;
          under[x] += 1 - ((draft.rows[row + (end >> 3)] >> (end & 7)) & 1);
        }
      }
      kinds.set(key, kind);
      return kind;
    }
    for (let x = 0; x < w; x++) {
      for (let e = from[x]; e >= 0 && e < to[x]; e += endStep) {
        const end = e % draft.ends;
        if ((draft.rows[row + (end >> 3)] >> (end & 7)) & 1) {
          red[x] += warp[3 * e];
          green[x] += warp[3 * e + 1];
          blue[x] += warp[3 * e + 2];
        } else {
          under[x]++;
        }
      }
    }
    kinds.set(key, kind);
    return kind;
  };

  // In ink there are two colours only: their mixtures are made beforehand, sound and faded.
  const mixtures = new Uint32Array(512);
  const [wr, wg, wb] = channels(inks.warp), [fr, fg, fb] = channels(inks.weft);
  for (let i = 0; i < 512; i++) {
    const share = (i & 255) / 255, fade = i > 255 ? FADE : 0;
    /** @param {number} over @param {number} under @param {number} paper */
    const mixed = (over, under, paper) => { const c = over + (under - over) * share; return Math.round(c + (paper - c) * fade); };
    mixtures[i] = (255 << 24) | (mixed(wb, fb, pb) << 16) | (mixed(wg, fg, pg) << 8) | mixed(wr, fr, pr);
  }

  let made = -1, madeFrom = -1, madeTo = -1;
  const under = new Float32Array(w);
  const total = { red: new Float32Array(w), green: new Float32Array(w), blue: new Float32Array(w) };
  for (let y = 0; y < h; y++) {
    const from = along.from[y], to = along.to[y];
    if (from < 0) continue;
    if (made >= 0 && from === madeFrom && to === madeTo) {
      pixels.copyWithin(y * w, made * w, made * w + w);
      continue;
    }
    const pale = from >= draft.picks;
    let picks = 0;
    if (!draft.inYarns) {
      under.fill(0);
      for (let p = from; p < to; p += pickStep, picks++) {
        const kind = sums(p % draft.picks).under;
        for (let x = 0; x < w; x++) under[x] += kind[x];
      }
      for (let x = 0, at = y * w; x < w; x++, at++) {
        const crossings = seen[x] * picks;
        if (crossings > 0) pixels[at] = mixtures[Math.round(255 * under[x] / crossings) + (pale || across.from[x] >= draft.ends ? 256 : 0)];
      }
      [made, madeFrom, madeTo] = [y, from, to];
      continue;
    }
    total.red.fill(0);
    total.green.fill(0);
    total.blue.fill(0);
    for (let p = from; p < to; p += pickStep) {
      const { red, green, blue, under } = sums(p % draft.picks);
      const r = weft[3 * p], g = weft[3 * p + 1], b = weft[3 * p + 2];
      for (let x = 0; x < w; x++) {
        total.red[x] += red[x] + under[x] * r;
        total.green[x] += green[x] + under[x] * g;
        total.blue[x] += blue[x] + under[x] * b;
      }
      picks++;
    }
    for (let x = 0, at = y * w; x < w; x++, at++) {
      const crossings = seen[x] * picks;
      if (crossings === 0) continue;
      let r = total.red[x] / crossings, g = total.green[x] / crossings, b = total.blue[x] / crossings;
      if (pale || across.from[x] >= draft.ends) {
        r += (pr - r) * FADE;
        g += (pg - g) * FADE;
        b += (pb - b) * FADE;
      }
      pixels[at] = 0xff000000 | (b << 16) | (g << 8) | r;
    }
    [made, madeFrom, madeTo] = [y, from, to];
  }
  return picture;
}

/**
 * Paints everything.
 * @param {CanvasRenderingContext2D} context
 * @param {Plane} plane
 * @param {Draft} draft
 * @param {number} ratio Device pixels in one CSS pixel.
 * @param {Inks} inks
 */
export function paintDraft(context, plane, draft, ratio, inks) {
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.fillStyle = inks.page;
  context.fillRect(0, 0, context.canvas.width, context.canvas.height);
  const cloth = plane.cloth;
  context.putImageData(clothPicture(plane, draft, ratio, inks), Math.round(cloth.x * ratio), Math.round(cloth.y * ratio));
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  paintCells(context, plane, draft, inks);
  paintColours(context, plane, draft);
  paintNumbers(context, plane, inks);
  paintRepeat(context, plane, draft, inks);
}

/** @param {CanvasRenderingContext2D} context @param {Box} box @param {() => void} paint */
function within(context, box, paint) {
  context.save();
  context.beginPath();
  context.rect(box.x, box.y, box.w, box.h);
  context.clip();
  paint();
  context.restore();
}

/** Threads that are seen, no more than one a pixel. @param {number} first @param {number} room @param {number} cell @param {number} most @returns {number[]} */
function seenThreads(first, room, cell, most) {
  const threads = [];
  const step = Math.max(1, 1 / cell);
  for (let t = Math.max(0, Math.floor(first)); t < Math.min(most, first + room / cell); t += step) threads.push(Math.floor(t));
  return threads;
}

/** @param {CanvasRenderingContext2D} context @param {Plane} plane @param {Draft} draft @param {Inks} inks */
function paintCells(context, plane, draft, inks) {
  const { cell, shaftSize, columnSize } = plane;
  const cloth = plane.cloth, threading = plane.threading, treads = plane.treads, tieUp = plane.tieUp;
  const ends = seenThreads(plane.left, cloth.w, cell, plane.ends), picks = seenThreads(plane.low, cloth.h, cell, plane.picks);

  /** @param {Box} box @param {number} columns @param {number} lines @param {(i: number) => number} x @param {(j: number) => number} y */
  const lattice = (box, columns, lines, x, y) => within(context, box, () => {
    context.strokeStyle = inks.rule;
    context.lineWidth = 1;
    context.beginPath();
    for (let i = 0; i <= columns; i++) { const at = Math.round(x(i)) + 0.5; context.moveTo(at, box.y); context.lineTo(at, box.y + box.h); }
    for (let j = 0; j <= lines; j++) { const at = Math.round(y(j)) + 0.5; context.moveTo(box.x, at); context.lineTo(box.x + box.w, at); }
    context.stroke();
    context.strokeRect(box.x + 0.5, box.y + 0.5, box.w - 1, box.h - 1);
  });
  // No further than there are threads.
  const first = ends[0] ?? 0, firstPick = picks[0] ?? 0;
  const acrossFrom = Math.max(cloth.x, plane.x(0, plane.ends, cloth)), acrossTo = Math.min(cloth.x + cloth.w, plane.x(0, plane.ends, cloth) + plane.ends * cell);
  const alongFrom = Math.max(cloth.y, plane.y(0, plane.picks, cloth)), alongTo = Math.min(cloth.y + cloth.h, plane.y(0, plane.picks, cloth) + plane.picks * cell);
  lattice({ ...threading, x: acrossFrom, w: acrossTo - acrossFrom }, cell < 5 ? -1 : ends.length, plane.shafts, i => plane.x(first + i, 0, cloth), j => threading.y + j * shaftSize);
  lattice({ ...treads, y: alongFrom, h: alongTo - alongFrom }, plane.columns, cell < 5 ? -1 : picks.length, i => treads.x + i * columnSize, j => plane.y(firstPick + j, 0, cloth));
  if (plane.tied) lattice(tieUp, plane.columns, plane.shafts, i => tieUp.x + i * columnSize, j => tieUp.y + j * shaftSize);

  /** @param {number} x @param {number} y @param {number} w @param {number} h @param {number} number @param {boolean} pale */
  const mark = (x, y, w, h, number, pale) => {
    context.globalAlpha = pale ? 1 - FADE : 1;
    context.fillStyle = inks.ink;
    if (draft.numbers && Math.min(w, h) >= 9) {
      context.font = `600 ${Math.min(14, Math.min(h, number > 9 ? w * 0.8 : w) - 1)}px "Open Sans", sans-serif`;
      context.fillText(String(number), x + w / 2, y + h / 2 + 0.5);
    } else {
      const inset = Math.min(w, h) >= 6 ? 1.5 : 0;
      context.fillRect(x + inset, y + inset, Math.max(1, w - 2 * inset), Math.max(1, h - 2 * inset));
    }
  };
  within(context, threading, () => {
    for (const end of ends) {
      for (let shaft = 1; shaft <= plane.shafts; shaft++) {
        if (holds(draft.threading, end % draft.ends, shaft)) mark(plane.x(end, 1, cloth), plane.shaftY(shaft, threading), Math.max(1, cell), shaftSize, shaft, end >= draft.ends);
      }
    }
  });
  within(context, treads, () => {
    for (const pick of picks) {
      for (let column = 1; column <= plane.columns; column++) {
        if (holds(draft.treads, pick % draft.picks, column)) mark(plane.columnX(column, treads), plane.y(pick, 1, cloth), columnSize, Math.max(1, cell), column, pick >= draft.picks);
      }
    }
  });
  for (let treadle = 1; plane.tied && treadle <= plane.columns; treadle++) {
    for (let shaft = 1; shaft <= plane.shafts; shaft++) {
      if (holds(draft.tieUp, treadle - 1, shaft)) mark(plane.columnX(treadle, tieUp), plane.shaftY(shaft, tieUp), columnSize, shaftSize, shaft, false);
    }
  }
  context.globalAlpha = 1;
}

/** @param {CanvasRenderingContext2D} context @param {Plane} plane @param {Draft} draft */
function paintColours(context, plane, draft) {
  const cloth = plane.cloth;
  /** @param {number} part @param {Int32Array} colours @param {number[]} threads */
  const strip = (part, colours, threads) => {
    if (colours.length === 0) return;
    within(context, part === WARP_COLOURS ? plane.warpColours : plane.weftColours, () => {
      for (const thread of threads) {
        const { x, y, w, h } = plane.boxOf({ part, thread, number: 0 });
        context.fillStyle = `#${colours[thread % colours.length].toString(16).padStart(6, '0')}`;
        context.fillRect(x, y, Math.max(1, part === WARP_COLOURS && plane.cell >= 5 ? w - 1 : w), Math.max(1, part === WEFT_COLOURS && plane.cell >= 5 ? h - 1 : h));
      }
    });
  };
  strip(WARP_COLOURS, draft.endColours, seenThreads(plane.left, cloth.w, plane.cell, plane.ends));
  strip(WEFT_COLOURS, draft.pickColours, seenThreads(plane.low, cloth.h, plane.cell, plane.picks));
}

/** Numbers of ends and picks between the cloth and its neighbours. @param {CanvasRenderingContext2D} context @param {Plane} plane @param {Inks} inks */
function paintNumbers(context, plane, inks) {
  const { tick, cell } = plane;
  const cloth = plane.cloth, threading = plane.threading, treads = plane.treads;
  context.fillStyle = inks.soft;
  context.font = '11px "Open Sans", sans-serif';
  const lineY = plane.threadingBelow ? (cloth.y + cloth.h + threading.y) / 2 : (threading.y + threading.h + cloth.y) / 2;
  for (let end = Math.ceil((plane.left + 1) / tick) * tick; end <= Math.min(plane.ends, plane.left + cloth.w / cell); end += tick) {
    const x = plane.x(end - 1, 1, cloth) + cell / 2;
    if (x > cloth.x + 8 && x < cloth.x + cloth.w - 8) context.fillText(String(end), x, lineY);
  }
  const lineX = plane.treadsLeft ? (treads.x + treads.w + cloth.x) / 2 : (cloth.x + cloth.w + treads.x) / 2;
  for (let pick = Math.ceil((plane.low + 1) / tick) * tick; pick <= Math.min(plane.picks, plane.low + cloth.h / cell); pick += tick) {
    const y = plane.y(pick - 1, 1, cloth) + cell / 2;
    if (y > cloth.y + 6 && y < cloth.y + cloth.h - 6) context.fillText(String(pick), lineX, y);
  }
}

/** Lines where the repeat ends. @param {CanvasRenderingContext2D} context @param {Plane} plane @param {Draft} draft @param {Inks} inks */
function paintRepeat(context, plane, draft, inks) {
  const cloth = plane.cloth;
  context.strokeStyle = inks.ink;
  context.lineWidth = 1.5;
  if (draft.ends < plane.ends) {
    for (const box of [cloth, plane.threading]) within(context, box, () => {
      const x = plane.x(draft.ends, 0, cloth), top = box === cloth ? Math.max(box.y, plane.y(0, plane.picks, cloth)) : box.y;
      const bottom = box === cloth ? Math.min(box.y + box.h, plane.y(0, plane.picks, cloth) + plane.picks * plane.cell) : box.y + box.h;
      context.beginPath(); context.moveTo(x, top); context.lineTo(x, bottom); context.stroke();
    });
  }
  if (draft.picks < plane.picks) {
    for (const box of [cloth, plane.treads]) within(context, box, () => {
      const y = plane.y(draft.picks, 0, cloth), left = box === cloth ? Math.max(box.x, plane.x(0, plane.ends, cloth)) : box.x;
      const right = box === cloth ? Math.min(box.x + box.w, plane.x(0, plane.ends, cloth) + plane.ends * plane.cell) : box.x + box.w;
      context.beginPath(); context.moveTo(left, y); context.lineTo(right, y); context.stroke();
    });
  }
}

export { CLOTH, THREADING, TIE_UP, TREADS, within };
