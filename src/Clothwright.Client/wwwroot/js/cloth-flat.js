// The cloth without the graphics card: threads as shaded bands, quickly. Used where there is no WebGL2, and while a slow card is still painting.
import { PER_LOOK } from './cloth-light.js';
import { faceCells, layPlaces, samples } from './cloth-places.js';

/** @typedef {import('./cloth-places.js').Cloth} Cloth */

const FEWEST_PIXELS = 1.6;
const MOST_POINTS = 3;

/** @type {WeakMap<Cloth, { ends: import('./cloth-places.js').Places, picks: import('./cloth-places.js').Places, colours: Uint8ClampedArray, sides: Map<boolean, import('./cloth-places.js').Cells> }>} */
const known = new WeakMap();

/** @param {Cloth} cloth */
function laid(cloth) {
  let made = known.get(cloth);
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
    sides: new Map(),
  };
  known.set(cloth, made);
  return made;
}

/**
 * Paints a view.
 * @param {Cloth} cloth
 * @param {import('./cloth-gl.js').Look} look
 * @returns {ImageData}
 */
export function paintFlat(cloth, look) {
  const { ends, picks, colours, sides } = laid(cloth);
  let cells = sides.get(look.back);
  if (!cells) sides.set(look.back, cells = faceCells(cloth, look.back));
  const fine = Math.min(MOST_POINTS, Math.max(1, Math.ceil(FEWEST_PIXELS * look.perPixel / Math.min(ends.pitch, picks.pitch))));
  const across = look.width * fine, along = look.height * fine;
  const x = points(cloth, ends, cloth.endRound, look.left, look.perPixel / fine, across, cloth.width, look.back);
  const y = points(cloth, picks, cloth.pickRound, look.low, look.perPixel / fine, along, cloth.length, false);
  const behind = look.behind.map(light => 255 * 0.8 * light ** (1 / 2.4));
  const sums = new Float32Array(look.width * 3);
  const image = new ImageData(look.width, look.height);
  const { data } = image;
  const many = 1 / (fine * fine);
  const perPick = ((cloth.ends + 63) >> 6) * 8;
  const turned = look.back ? 1 : 0;
  const { packed, columns, rows } = cells;
  for (let j = 0; j < look.height; j++) {
    sums.fill(0);
    for (let k = 0; k < fine; k++) {
      const row = j * fine + k;
      const place = y.place[row];
      const r = place < 0 ? 0 : place % rows;
      for (let i = 0, column = 0; column < across; column++) {
        const c = x.column[column];
        const at = i * 3;
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
        if ((column + 1) % fine === 0) i++;
      }
    }
    // The first row of points lies lowest.
    const to = (look.height - 1 - j) * look.width * 4;
    for (let i = 0; i < look.width; i++) {
      data[to + i * 4] = sums[i * 3] * many;
      data[to + i * 4 + 1] = sums[i * 3 + 1] * many;
      data[to + i * 4 + 2] = sums[i * 3 + 2] * many;
      data[to + i * 4 + 3] = 255;
    }
  }
  return image;
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
 */
function points(cloth, places, round, start, step, count, extent, turned) {
  const one = new Float32Array(count * 4), two = new Float32Array(count * 4);
  samples(places, start, step, count, extent, turned, one, two);
  const isWarp = round === cloth.endRound;
  const shared = isWarp ? cloth.sharedEnds : cloth.sharedPicks;
  const most = shared.length ? 4 : 1;
  const columns = isWarp ? (laid(cloth).sides.get(turned) ?? { columns: 1 }).columns : 1;
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
