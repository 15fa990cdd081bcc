// Light on threads: the same formulas as the program's own, so that the page and a printed picture show the same cloth.

/** @typedef {[number, number, number]} Direction x along the weft, y along the warp, z off the face. */
/** @typedef {{ lamp: Direction, eye: Direction }} Lighting */

export const TABLE = 128;
export const PER_LOOK = 24;
export const FAR_PARTS = 16;
export const EXPOSURE_PARTS = 5;
const PER_LUSTRE = 8;
const ROUNDNESS = 0.95;
const CORRELATION = 20 * Math.PI / 180;
const AMBIENT = Math.fround(0.35);
const KEY = Math.fround(0.65);
const RIM_SHARE = Math.fround(0.35);

/**
 * @param {number} x
 * @param {number} y
 * @param {number} z
 * @returns {Direction}
 */
export function unit(x, y, z) {
  const long = Math.sqrt(x * x + y * y + z * z);
  return [x * (1 / long), y * (1 / long), z * (1 / long)];
}

/** @type {Lighting} A window at the far left, seen from straight above. */
export const WINDOW = { lamp: unit(-0.55, 0.6, 0.95), eye: [0, 0, 1] };

/**
 * Lamp and eye over a tilted cloth.
 * @param {Lighting} lighting
 * @param {number} across Radians by which the right edge is turned away.
 * @param {number} along Radians by which the far edge is turned away.
 * @returns {Lighting}
 */
export function tilted(lighting, across, along) {
  const sx = Math.sin(across), cx = Math.cos(across), sy = Math.sin(along), cy = Math.cos(along);
  /** @param {Direction} d @returns {Direction} */
  const turn = d => {
    const x = d[0] * cx - d[2] * sx, z = d[0] * sx + d[2] * cx;
    return [x, d[1] * cy - z * sy, d[1] * sy + z * cy];
  };
  return { lamp: turn(lighting.lamp), eye: turn(lighting.eye) };
}

/**
 * @param {number} width
 * @param {number} angle
 */
const gaussian = (width, angle) => Math.exp(-angle * angle / (2 * width * width)) / (width * Math.sqrt(2 * Math.PI));

/**
 * @param {number} value
 * @param {number} low
 * @param {number} high
 */
const clamp = (value, low, high) => Math.min(high, Math.max(low, value));

/**
 * Body and gloss of one point of a thread.
 * @param {Float64Array} lustres
 * @param {number} lustre Its number.
 * @param {boolean} warp
 * @param {Lighting} lighting
 * @param {number} twist Slant of its fibres, radians.
 * @param {number} tilt Rise of the thread, radians.
 * @param {number} across −1 to 1.
 * @param {Float64Array} out Body, gloss and rim are written here.
 */
function shade(lustres, lustre, warp, lighting, twist, tilt, across, out) {
  const at = lustre * PER_LUSTRE;
  const [lx, ly, lz] = lighting.lamp, [vx, vy, vz] = lighting.eye;
  const sinTilt = Math.sin(tilt), cosTilt = Math.cos(tilt);
  const sin = ROUNDNESS * across, cos = Math.sqrt(1 - sin * sin);
  // Along the thread, its crown, and aside.
  const ax = warp ? 0 : cosTilt, ay = warp ? cosTilt : 0, az = sinTilt;
  const cx = warp ? 0 : -sinTilt, cy = warp ? -sinTilt : 0, cz = cosTilt;
  const bx = warp ? 1 : 0, by = warp ? 0 : 1;
  const nx = cx * cos + bx * sin, ny = cy * cos + by * sin, nz = cz * cos;
  const facing = nx * vx + ny * vy + nz * vz;
  out[2] = (1 - clamp(facing, 0, 1)) ** 3;
  if (lustres[at + 6] > 0) {
    const rim = (1 - Math.max(facing, 0)) ** 1.5;
    out[0] = (0.5 + 0.5 * (nx * lx + ny * ly + nz * lz)) * (0.35 + 0.65 * rim);
    out[1] = 0;
    return;
  }
  const sinTwist = Math.sin(warp ? twist : -twist), cosTwist = Math.cos(twist);
  const tx = ax * cosTwist + (bx * cos - cx * sin) * sinTwist;
  const ty = ay * cosTwist + (by * cos - cy * sin) * sinTwist;
  const tz = az * cosTwist - cz * sin * sinTwist;
  const sinIn = clamp(tx * lx + ty * ly + tz * lz, -0.9999, 0.9999);
  const sinOut = clamp(tx * vx + ty * vy + tz * vz, -0.9999, 0.9999);
  const angleIn = Math.asin(sinIn), angleOut = Math.asin(sinOut);
  const cosIn = Math.cos(angleIn), cosOut = Math.cos(angleOut);
  const ix = (lx - tx * sinIn) / cosIn, iy = (ly - ty * sinIn) / cosIn, iz = (lz - tz * sinIn) / cosIn;
  const ox = (vx - tx * sinOut) / cosOut, oy = (vy - ty * sinOut) / cosOut, oz = (vz - tz * sinOut) / cosOut;
  const round = Math.acos(clamp(ix * ox + iy * oy + iz * oz, -1, 1));
  const lit = Math.max(nx * ix + ny * iy + nz * iz, 0), seen = Math.max(nx * ox + ny * oy + nz * oz, 0);
  const correlated = Math.exp(-round * round / (2 * CORRELATION * CORRELATION));
  const both = (1 - correlated) * lit * seen + correlated * Math.min(lit, seen);
  const half = (angleIn + angleOut) / 2;
  const cosDifference = Math.cos((angleIn - angleOut) / 2), cosHalfRound = Math.cos(round / 2);
  const reflectance = lustres[at + 3], even = lustres[at + 2];
  const fresnel = reflectance + (1 - reflectance) * (1 - cosDifference * cosHalfRound) ** 5;
  const common = cosIn * both / Math.max(cosDifference * cosDifference, 0.05);
  out[0] = (1 - fresnel) * (1 - fresnel) * ((1 - even) * gaussian(lustres[at + 1], half) + even) / (cosIn + cosOut) * common * lustres[at + 5];
  out[1] = fresnel * cosHalfRound * gaussian(lustres[at], half) * common;
}

/** @type {Map<string, number>} */
const references = new Map();

/**
 * Mean body light in plain cloth under a ring of lamps.
 * @param {Float64Array} lustres
 * @param {number} lustre
 */
function reference(lustres, lustre) {
  const key = lustres.subarray(lustre * PER_LUSTRE, (lustre + 1) * PER_LUSTRE).join();
  const known = references.get(key);
  if (known !== undefined) return known;
  const out = new Float64Array(3);
  let sum = 0;
  for (let lamp = 0; lamp < 24; lamp++) {
    const turn = 2 * Math.PI * lamp / 24;
    /** @type {Lighting} */
    const lighting = { lamp: unit(Math.cos(turn), Math.sin(turn), 1), eye: [0, 0, 1] };
    for (let i = 0; i < 16; i++) {
      for (let j = 0; j < 16; j++) {
        shade(lustres, lustre, true, lighting, 0, Math.PI / 6 * (2 * (i + 0.5) / 16 - 1), 2 * (j + 0.5) / 16 - 1, out);
        sum += out[0];
      }
    }
  }
  references.set(key, sum / (24 * 16 * 16));
  return sum / (24 * 16 * 16);
}

/** @type {Map<string, Float32Array>} */
const tables = new Map();

/**
 * A table of light over rise and place across the thread: body over its reference, gloss, rim, nothing.
 * @param {Float64Array} lustres
 * @param {number} lustre
 * @param {boolean} warp
 * @param {number} twist
 * @param {number} steepest
 * @param {Lighting} lighting
 * @returns {Float32Array}
 */
function lightTable(lustres, lustre, warp, twist, steepest, lighting) {
  const key = [lustres.subarray(lustre * PER_LUSTRE, (lustre + 1) * PER_LUSTRE).join(), warp, twist, steepest, lighting.lamp, lighting.eye].join('|');
  const known = tables.get(key);
  if (known) return known;
  const mean = reference(lustres, lustre);
  const values = new Float32Array(TABLE * TABLE * 4);
  const out = new Float64Array(3);
  let at = 0;
  for (let row = 0; row < TABLE; row++) {
    const tilt = Math.atan((2 * row / (TABLE - 1) - 1) * steepest);
    for (let column = 0; column < TABLE; column++) {
      shade(lustres, lustre, warp, lighting, twist, tilt, 2 * column / (TABLE - 1) - 1, out);
      values[at] = out[0] / mean;
      values[at + 1] = out[1];
      values[at + 2] = out[2];
      at += 4;
    }
  }
  if (tables.size > 48) tables.delete(/** @type {string} */ (tables.keys().next().value));
  tables.set(key, values);
  return values;
}

/**
 * Tables of every light of a cloth.
 * @param {import('./cloth-places.js').Cloth} cloth
 * @param {Lighting} lighting
 * @returns {Float32Array[]}
 */
export function lightTables(cloth, lighting) {
  const made = [];
  for (let i = 0; i < cloth.lights.length; i += 3) {
    const warp = cloth.lights[i] === 0;
    made.push(lightTable(cloth.lustres, cloth.lights[i + 1], warp, cloth.lights[i + 2], warp ? cloth.warpSteepest : cloth.weftSteepest, lighting));
  }
  return made;
}

/**
 * @param {number} from
 * @param {number} to
 * @param {number} value
 */
export function smooth(from, to, value) {
  const t = clamp((value - from) / (to - from), 0, 1);
  return t * t * (3 - 2 * t);
}

const found = new Float64Array(3);

/**
 * @param {Float32Array} table
 * @param {number} slope
 * @param {number} across
 */
function lookUp(table, slope, across) {
  const y = (slope * 0.5 + 0.5) * (TABLE - 1), x = (across * 0.5 + 0.5) * (TABLE - 1);
  const row = Math.min(Math.floor(y), TABLE - 2), column = Math.min(Math.floor(x), TABLE - 2);
  const v = y - row, u = x - column;
  const low = (row * TABLE + column) * 4, high = low + TABLE * 4;
  for (let part = 0; part < 3; part++) {
    const a = table[low + part] + (table[low + 4 + part] - table[low + part]) * u;
    const b = table[high + part] + (table[high + 4 + part] - table[high + part]) * u;
    found[part] = a + (b - a) * v;
  }
}

const STATES = 6;
const ACROSS = 24;
const ALONG = 12;
const FINE = 200;
const MEAN_GROOVE = 0.75 + 0.25 * (0.5 * 0.5 + 0.5);

/**
 * Share of a look's width that covers at a place across it.
 * @param {Float64Array} looks
 * @param {number} at Its first number.
 * @param {number} across
 */
function coverAt(looks, at, across) {
  const fuzz = looks[at + 5];
  return fuzz > 0 ? 1 - smooth(1 - 0.7 * fuzz, 1 + 0.7 * fuzz, Math.abs(across)) : Math.abs(across) < 1 ? 1 : 0;
}

/**
 * Means of every look from afar: cover, then body and gloss of each state of half a crossing.
 * @param {import('./cloth-places.js').Cloth} cloth
 * @param {Float32Array[]} lights
 * @param {import('./cloth-places.js').Places} ends
 * @param {import('./cloth-places.js').Places} picks
 */
export function farLight(cloth, lights, ends, picks) {
  const { looks } = cloth;
  const count = looks.length / PER_LOOK;
  const far = new Float32Array(count * FAR_PARTS);
  for (let number = 0; number < count; number++) {
    const at = number * PER_LOOK;
    const warp = cloth.lights[looks[at + 15] * 3] === 0;
    const other = warp ? picks : ends;
    const place = Math.max(looks[at + 3], looks[at + 20]);
    const gap = 1 - Math.min(1, other.meanWidth / other.pitch);
    const crimp = warp ? cloth.warpHeight : cloth.weftHeight;
    const table = lights[looks[at + 15]];
    const entry = number * FAR_PARTS;
    if (looks[at + 5] <= 0) far[entry] = Math.min(1, looks[at + 3] / place);
    else {
      let sum = 0;
      for (let i = 0; i < FINE; i++) sum += coverAt(looks, at, (i + 0.5) / FINE * place / looks[at + 3]);
      far[entry] = sum / FINE;
    }
    const reach = Math.min(place / looks[at + 3], 1 + 0.7 * looks[at + 5]);
    for (let state = 0; state < STATES; state++) {
      const here = state < 3 ? 1 : 0;
      const turn = state % 3;
      const next = turn === 0 ? here : 1 - here;
      const side = turn === 1 ? -1 : 1;
      const from = state < 3 ? 0 : 0.5 * (1 - Math.max(gap, 0.05));
      let body = 0, gloss = 0, weight = 0;
      for (let j = 0; j < ALONG; j++) {
        const t = from + (0.5 - from) * (j + 0.5) / ALONG;
        const rise = (1 - Math.cos(Math.PI * t)) / 2;
        const slope = (next - here) * Math.sin(Math.PI * t) * side;
        for (let i = 0; i < ACROSS; i++) {
          const across = ((i + 0.5) / ACROSS * 2 - 1) * reach;
          const cover = coverAt(looks, at, across);
          if (cover <= 0) continue;
          const bulge = Math.sqrt(Math.max(0, 1 - across * across));
          const height = (here + (next - here) * rise - 0.5) * crimp + looks[at + 4] * 0.5 * bulge;
          let shadow = 0.4 + 0.6 * smooth(-0.35, 0.5, height / cloth.thickness);
          shadow += (1 - shadow) * looks[at + 5] * 0.5;
          if (looks[at + 8] !== 0) shadow *= MEAN_GROOVE;
          lookUp(table, slope, clamp(across, -1, 1));
          body += cover * (shadow * (AMBIENT + KEY * found[0]) + looks[at + 5] * found[2] * RIM_SHARE);
          gloss += cover * KEY * shadow * found[1];
          weight += cover;
        }
      }
      far[entry + 1 + 2 * state] = weight > 0 ? body / weight : 0;
      far[entry + 2 + 2 * state] = weight > 0 ? gloss / weight : 0;
    }
  }
  return far;
}

/**
 * What each look's colour is multiplied with, the gloss taken off before, and the colour of its gloss.
 * @param {import('./cloth-places.js').Cloth} cloth
 * @param {(column: number, row: number) => number} cell
 * @param {number} columns
 * @param {number} rows
 * @param {Float32Array} far Means in the usual light.
 * @param {boolean} turned
 */
export function exposure(cloth, cell, columns, rows, far, turned) {
  const right = turned ? -1 : 1;
  const warp = new Float64Array(STATES), weft = new Float64Array(STATES);
  /** @param {number} above @param {number} next @param {number} side */
  const state = (above, next, side) => (above > 0 ? 0 : 3) + (next === above ? 0 : side);
  /** @param {number} column @param {number} row @param {number} end */
  const warpUp = (column, row, end) => { const c = cell(column, row); return ((c >> 1) & 3) === end ? c & 1 : 0; };
  /** @param {number} column @param {number} row @param {number} pick */
  const weftUp = (column, row, pick) => { const c = cell(column, row); return ((c >> 3) & 3) === pick ? 1 - (c & 1) : 0; };
  for (let row = 0; row < Math.min(48, rows); row++) {
    for (let column = 0; column < Math.min(48, columns); column++) {
      const here = cell(column, row), up = here & 1, end = (here >> 1) & 3, pick = (here >> 3) & 3;
      warp[state(up, warpUp(column, row - 1, end), 1)]++;
      warp[state(up, warpUp(column, row + 1, end), 2)]++;
      weft[state(1 - up, weftUp(column - right, row, pick), 1)]++;
      weft[state(1 - up, weftUp(column + right, row, pick), 2)]++;
    }
  }
  /** @param {Float64Array} round */
  const meanCover = round => {
    let sum = 0;
    for (let i = 0; i < round.length; i += 3) sum += far[round[i] * FAR_PARTS];
    return sum / (round.length / 3);
  };
  const warpGap = 1 - meanCover(cloth.endRound), weftGap = 1 - meanCover(cloth.pickRound);
  const { looks } = cloth;
  const count = looks.length / PER_LOOK;
  const made = new Float32Array(count * EXPOSURE_PARTS);
  for (let number = 0; number < count; number++) {
    const at = number * PER_LOOK;
    const isWarp = cloth.lights[looks[at + 15] * 3] === 0;
    const states = isWarp ? warp : weft, gap = isWarp ? weftGap : warpGap;
    let body = 0, gloss = 0, weight = 0;
    for (let s = 0; s < STATES; s++) {
      const share = states[s] * (s < 3 ? 1 : gap);
      body += share * far[number * FAR_PARTS + 1 + 2 * s];
      gloss += share * far[number * FAR_PARTS + 2 + 2 * s];
      weight += share;
    }
    if (weight <= 0) [body, gloss, weight] = [far[number * FAR_PARTS + 1], far[number * FAR_PARTS + 2], 1];
    made[number * EXPOSURE_PARTS] = weight / body;
    made[number * EXPOSURE_PARTS + 1] = gloss / weight;
    const taken = made[number * EXPOSURE_PARTS + 1];
    for (let part = 0; part < 3; part++) {
      const tint = looks[at + 12 + part];
      made[number * EXPOSURE_PARTS + 2 + part] = Math.min(tint, Math.max(0.5 * tint, 0.95 * looks[at + part] / Math.max(taken, 1e-6)));
    }
  }
  return made;
}
