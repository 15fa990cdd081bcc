// The cloth without the graphics card: threads as shaded bands, quickly. Used where there is no WebGL2, and while a slow card is still painting.
import { PER_LOOK } from './cloth-light.js';
import { faceCells, layPlaces, sameThreads, samples } from './cloth-places.js';

/** @typedef {import('./cloth-places.js').Cloth} Cloth */

const FEWEST_PIXELS = 1.6;
const MOST_POINTS = 3;

/** @typedef {import('./cloth-places.js').Places} Places */
/** @typedef {ReturnType<typeof points>} Line */

/** @type {WeakMap<Float64Array, { ends: Places, picks: Places, colours: Uint8ClampedArray }>} By the looks: cloths of the same threads share them. */
const known = new WeakMap();

/** @type {WeakMap<Cloth, Map<boolean, import('./cloth-places.js').Cells>>} */
const sides = new WeakMap();

/** @type {{ cloth: Cloth, view: string, x: Line, y: Line, image: ImageData } | null} The picture painted last. */
let last = null;

/** @param {Cloth} cloth */
function laid(cloth) {
  let made = known.get(cloth.looks);
  if (made) return made;
  const count = cloth.looks.length / PER_LOOK;
  const colours = new Uint8ClampedArray(count * 3);
  for (let i = 0; i < count; i++) {
    for (let part = 0; part < 3; part++) {
      const light = cloth.looks[i * PER_LOOK + part];
      colours[i * 3 + part] = 255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055);
    }
  }
  made = {
    ends: layPlaces(cloth.looks, cloth.endRound, cloth.sharedEnds, cloth.endsPerCentimetre, cloth.width),
    picks: layPlaces(cloth.looks, cloth.pickRound, cloth.sharedPicks, cloth.picksPerCentimetre, cloth.length),
    colours,
  };
  known.set(cloth.looks, made);
  return made;
}

/**
 * @param {Cloth} cloth
 * @param {boolean} back
 */
function sideOf(cloth, back) {
  let both = sides.get(cloth);
  if (!both) sides.set(cloth, both = new Map());
  let cells = both.get(back);
  if (!cells) both.set(back, cells = faceCells(cloth, back));
  return cells;
}

/**
 * Paints a view. Where only the weave has changed since the last picture of the same view, only what has changed is painted.
 * @param {Cloth} cloth
 * @param {import('./cloth-gl.js').Look} look
 * @returns {ImageData} Good until the next picture.
 */
export function paintFlat(cloth, look) {
  const { ends, picks, colours } = laid(cloth);
  const cells = sideOf(cloth, look.back);
  const fine = Math.min(MOST_POINTS, Math.max(1, Math.ceil(FEWEST_PIXELS * look.perPixel / Math.min(ends.pitch, picks.pitch))));
  const view = [look.back, look.left, look.low, look.perPixel, look.width, look.height, look.behind].join();
  const before = last?.view === view && sameThreads(last.cloth, cloth) && last.cloth.ends === cloth.ends && last.cloth.picks === cloth.picks && !cells.packed ? last : null;
  const x = before?.x ?? points(cloth, ends, cloth.endRound, look.left, look.perPixel / fine, look.width * fine, cloth.width, look.back, cells.columns);
  const y = before?.y ?? points(cloth, picks, cloth.pickRound, look.low, look.perPixel / fine, look.height * fine, cloth.length, false, 1);
  const image = before?.image ?? new ImageData(look.width, look.height);
  const change = before && changed(before.cloth, cloth);
  const columns = runs(look.width, x.column, fine, change?.ends ?? null);
  const rows = runs(look.height, y.place, fine, change?.picks ?? null);
  const sheet = { data: image.data, width: look.width, height: look.height, fine, behind: look.behind.map(light => 255 * 0.8 * light ** (1 / 2.4)), turned: look.back ? 1 : 0 };
  for (const [from, to] of columns) {
    for (const [first, end] of rows) paintPart(cloth, cells, colours, x, y, sheet, from, to, first, end);
  }
  last = { cloth, view, x, y, image };
  return image;
}

/**
 * Which ends, or which picks, weave otherwise; of the two the one of which fewer do, none of the other.
 * @param {Cloth} one
 * @param {Cloth} other
 * @returns {{ ends: Uint8Array | null, picks: Uint8Array | null }}
 */
function changed(one, other) {
  const perPick = ((other.ends + 63) >> 6) * 2;
  const a = new Uint32Array(one.rows.buffer, one.rows.byteOffset, one.rows.length >> 2);
  const b = new Uint32Array(other.rows.buffer, other.rows.byteOffset, other.rows.length >> 2);
  const any = new Uint32Array(perPick);
  const picks = new Uint8Array(other.picks), ends = new Uint8Array(other.ends);
  let changedPicks = 0, changedEnds = 0;
  for (let pick = 0, at = 0; pick < other.picks; pick++) {
    let differs = 0;
    for (let word = 0; word < perPick; word++, at++) {
      const difference = a[at] ^ b[at];
      any[word] |= difference;
      differs |= difference;
    }
    if (differs !== 0) changedPicks += picks[pick] = 1;
  }
  for (let end = 0; end < other.ends; end++) changedEnds += ends[end] = (any[end >> 5] >>> (end & 31)) & 1;
  return changedEnds * other.picks <= changedPicks * other.ends ? { ends, picks: null } : { ends: null, picks };
}

/**
 * Runs of neighbouring pixels that show certain threads.
 * @param {number} count Pixels in the line.
 * @param {Int32Array} threads Threads at the points of the line; below 0 for none.
 * @param {number} fine Points in a pixel.
 * @param {Uint8Array | null} those 1 for each thread that is wanted; null for all pixels.
 * @returns {[number, number][]}
 */
function runs(count, threads, fine, those) {
  if (!those) return [[0, count]];
  /** @type {[number, number][]} */
  const found = [];
  for (let pixel = 0; pixel < count; pixel++) {
    let wanted = 0;
    for (let point = pixel * fine; point < (pixel + 1) * fine; point++) {
      if (threads[point] >= 0) wanted |= those[threads[point] % those.length];
    }
    if (wanted === 0) continue;
    const run = found.at(-1);
    if (run?.[1] === pixel) run[1]++;
    else found.push([pixel, pixel + 1]);
  }
  return found;
}

/**
 * Paints the pixels of some columns and rows.
 * @param {Cloth} cloth
 * @param {import('./cloth-places.js').Cells} cells
 * @param {Uint8ClampedArray} colours
 * @param {Line} x
 * @param {Line} y
 * @param {{ data: Uint8ClampedArray, width: number, height: number, fine: number, behind: number[], turned: number }} sheet
 * @param {number} from
 * @param {number} to
 * @param {number} first
 * @param {number} end
 */
function paintPart(cloth, cells, colours, x, y, sheet, from, to, first, end) {
  const { data, width, height, fine, behind, turned } = sheet;
  const { packed, columns, rows } = cells;
  const across = width * fine, along = height * fine;
  const many = 1 / (fine * fine);
  const perPick = ((cloth.ends + 63) >> 6) * 8;
  const sums = new Float32Array((to - from) * 3);
  for (let j = first; j < end; j++) {
    sums.fill(0);
    for (let k = 0; k < fine; k++) {
      const row = j * fine + k;
      const place = y.place[row];
      const r = place < 0 ? 0 : place % rows;
      for (let at = 0, column = from * fine; column < to * fine; column++) {
        const c = x.column[column];
        if (c >= 0 && place >= 0) {
          const cell = packed ? packed[r * columns + c] : ((cloth.rows[r * perPick + (c >> 3)] >> (c & 7)) & 1) ^ turned;
          const warp = x.light[column], weft = y.light[row];
          const top = cell & 1;
          let light = top ? warp : weft;
          let isWarp = top > 0;
          if (light === 0) {
            light = (top ? weft : warp) * 0.62;
            isWarp = !isWarp;
          }
          if (light === 0) {
            sums[at] += behind[0];
            sums[at + 1] += behind[1];
            sums[at + 2] += behind[2];
          } else {
            const colour = isWarp ? x.look[column + across * ((cell >> 1) & 3)] : y.look[row + along * ((cell >> 3) & 3)];
            if (top === (isWarp ? 1 : 0)) light *= isWarp ? y.dip[row] : x.dip[column];
            sums[at] += colours[colour] * light;
            sums[at + 1] += colours[colour + 1] * light;
            sums[at + 2] += colours[colour + 2] * light;
          }
        } else {
          sums[at] += behind[0];
          sums[at + 1] += behind[1];
          sums[at + 2] += behind[2];
        }
        if ((column + 1) % fine === 0) at += 3;
      }
    }
    // The first row of points lies lowest.
    let pixel = ((height - 1 - j) * width + from) * 4;
    for (let at = 0; at < sums.length; at += 3, pixel += 4) {
      data[pixel] = sums[at] * many;
      data[pixel + 1] = sums[at + 1] * many;
      data[pixel + 2] = sums[at + 2] * many;
      data[pixel + 3] = 255;
    }
  }
}

/**
 * For each point of a line: its place, its column in the weave, light across its thread (0 in a gap), shade along the crossing, and where the colours of the threads at its place begin.
 * @param {Cloth} cloth
 * @param {import('./cloth-places.js').Places} places
 * @param {Float64Array} round
 * @param {number} start
 * @param {number} step
 * @param {number} count
 * @param {number} extent
 * @param {boolean} turned
 * @param {number} columns Places in one repeat of the weave.
 */
function points(cloth, places, round, start, step, count, extent, turned, columns) {
  const one = new Float32Array(count * 4), two = new Float32Array(count * 4);
  samples(places, start, step, count, extent, turned, one, two);
  const isWarp = round === cloth.endRound;
  const shared = isWarp ? cloth.sharedEnds : cloth.sharedPicks;
  const most = shared.length ? 4 : 1;
  const place = new Int32Array(count), column = new Int32Array(count), light = new Float32Array(count), dip = new Float32Array(count), look = new Int32Array(count * most);
  const length = round.length / 3;
  for (let i = 0; i < count; i++) {
    place[i] = one[i * 4];
    column[i] = place[i] < 0 ? -1 : place[i] % columns;
    if (place[i] < 0) continue;
    const thread = one[i * 4 + 2];
    for (let k = 0; k < most; k++) {
      const at = ((thread + k) % length) * 3;
      look[i + count * k] = (round[at + 1] >= 0 && two[i * 4 + 3] >= round[at + 2] ? round[at + 1] : round[at]) * 3;
    }
    const v = one[i * 4 + 3] / (cloth.looks[round[(thread % length) * 3] * PER_LOOK + 3] / 2);
    light[i] = Math.abs(v) < 1 ? 1.16 - 0.42 * v * v : 0;
    dip[i] = 1 - 0.5 * two[i * 4];
  }
  return { place, column, light, dip, look };
}
