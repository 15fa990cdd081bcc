// Where the threads of a cloth lie, and what the points of a picture hit: reckoned as the program does it for print.
import { PER_LOOK } from './cloth-light.js';

/**
 * @typedef {object} Cloth
 * @property {Uint8Array} rows Packed rows of the drawdown.
 * @property {number} ends Ends of the drawdown.
 * @property {number} picks
 * @property {Float64Array} looks
 * @property {Float64Array} lustres
 * @property {Float64Array} lights
 * @property {Float64Array} stretches
 * @property {Float64Array} endRound Look, look after the clasp or −1, place of the clasp, of each end of a round.
 * @property {Float64Array} pickRound
 * @property {Uint8Array} sharedEnds 1 where an end shares the place of the one before it.
 * @property {Uint8Array} sharedPicks
 * @property {number} endsPerCentimetre
 * @property {number} picksPerCentimetre
 * @property {number} width Millimetres.
 * @property {number} length Millimetres.
 * @property {number} warpHeight
 * @property {number} weftHeight
 * @property {number} thickness
 * @property {number} warpSteepest
 * @property {number} weftSteepest
 * @property {boolean} customary
 */

/**
 * @typedef {object} Places
 * @property {Float64Array} edges Millimetres, one more than places.
 * @property {Int32Array} first First thread of each place.
 * @property {number} count
 * @property {number} threads
 * @property {number} pitch
 * @property {number} meanWidth Mean width of a thread that has a place of its own.
 */

/**
 * @param {Uint8Array} shared
 * @param {number} thread
 */
const isShared = (shared, thread) => shared.length > 0 && thread % shared.length !== 0 && shared[thread % shared.length] > 0;

/**
 * @param {Float64Array} looks
 * @param {Float64Array} round
 * @param {Uint8Array} shared
 * @param {number} perCentimetre
 * @param {number} extent Millimetres to fill.
 * @returns {Places}
 */
export function layPlaces(looks, round, shared, perCentimetre, extent) {
  const threads = round.length / 3;
  let alone = 1;
  if (shared.length) {
    let own = 0;
    for (let i = 0; i < shared.length; i++) own += isShared(shared, i) ? 0 : 1;
    alone = own / shared.length;
  }
  const pitch = 10 / (perCentimetre * alone);
  let sum = 0, own = 0;
  for (let i = 0; i < threads; i++) {
    if (isShared(shared, i)) continue;
    sum += looks[round[i * 3] * PER_LOOK + 3];
    own++;
  }
  const edges = [0], first = [];
  let at = 0;
  for (let thread = 0; at < extent || first.length === 0; thread++) {
    if (isShared(shared, thread)) continue;
    first.push(thread);
    at += looks[round[(thread % threads) * 3] * PER_LOOK + 20];
    edges.push(at);
  }
  return {
    edges: Float64Array.from(edges),
    first: Int32Array.from(first),
    count: first.length,
    threads: first[first.length - 1] + Math.max(1, shared.length),
    pitch,
    meanWidth: sum / own,
  };
}

/**
 * @param {Places} places
 * @param {number} millimetres
 */
function placeAt(places, millimetres) {
  const { edges } = places;
  let low = 0, high = places.count;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (edges[middle] <= millimetres) low = middle;
    else high = middle - 1;
  }
  return Math.min(Math.max(low, 0), places.count - 1);
}

/**
 * Points along one direction, eight numbers each: place, neighbour, thread, offset; rise, slope, seen, cloth.
 * @param {Places} places
 * @param {number} start
 * @param {number} perPoint
 * @param {number} count
 * @param {number} extent
 * @param {boolean} turned
 * @param {Float32Array} one First four numbers of each point.
 * @param {Float32Array} two Last four.
 */
export function samples(places, start, perPoint, count, extent, turned, one, two) {
  for (let i = 0; i < count; i++) {
    const seen = start + (i + 0.5) * perPoint;
    const cloth = turned ? extent - seen : seen;
    const at = i * 4;
    two[at + 2] = seen;
    two[at + 3] = cloth;
    if (seen < 0 || seen >= extent) {
      one[at] = -1;
      continue;
    }
    const place = placeAt(places, cloth);
    const width = places.edges[place + 1] - places.edges[place];
    const offset = cloth - (places.edges[place] + places.edges[place + 1]) / 2;
    const side = offset < 0 ? -1 : 1;
    const t = Math.min(0.5, Math.abs(offset) / width);
    one[at] = place;
    one[at + 1] = place + side;
    one[at + 2] = places.first[place];
    one[at + 3] = turned ? -offset : offset;
    two[at] = (1 - Math.cos(Math.PI * t)) / 2;
    two[at + 1] = Math.sin(Math.PI * t) * (turned ? -side : side);
  }
}

/**
 * Places that each pixel covers: from, to, middle in millimetres, share of the pixel on the cloth.
 * @param {Places} places
 * @param {number} start
 * @param {number} perPixel
 * @param {number} count
 * @param {number} extent
 * @param {boolean} turned
 * @param {Float32Array} out
 */
export function spans(places, start, perPixel, count, extent, turned, out) {
  /** @param {number} millimetres */
  const coordinate = millimetres => {
    const place = placeAt(places, millimetres);
    const width = places.edges[place + 1] - places.edges[place];
    return place + Math.min(1, Math.max(0, (millimetres - places.edges[place]) / width));
  };
  for (let i = 0; i < count; i++) {
    let low = Math.min(extent, Math.max(0, start + i * perPixel));
    let high = Math.min(extent, Math.max(0, start + (i + 1) * perPixel));
    out[i * 4 + 3] = (high - low) / perPixel;
    if (turned) [low, high] = [extent - high, extent - low];
    out[i * 4] = coordinate(low);
    out[i * 4 + 1] = coordinate(high);
    out[i * 4 + 2] = (low + high) / 2;
  }
}

/**
 * Every thread, eight numbers each: look, look after the clasp or −1, place of the clasp, phase of its stretches; their way, and nothing.
 * @param {Float64Array} looks
 * @param {Float64Array} round
 * @param {number} count
 * @param {number} extent
 * @param {Float32Array} out
 * @param {number} offset Number to begin at.
 */
export function everyThread(looks, round, count, extent, out, offset) {
  const length = round.length / 3;
  for (let i = 0; i < count; i++) {
    const at = (i % length) * 3, to = offset + i * 8;
    const look = round[at];
    const perMillimetre = looks[look * PER_LOOK + 10];
    const alike = looks[look * PER_LOOK + 19] > 0;
    const back = !alike && i % 2 === 1;
    const along = alike ? 0 : (i + (back ? 1 : 0)) * extent * perMillimetre;
    out[to] = look;
    out[to + 1] = round[at + 1];
    out[to + 2] = round[at + 2];
    out[to + 3] = along - Math.floor(along);
    out[to + 4] = back ? -1 : 1;
  }
}

/**
 * @typedef {object} Cells
 * @property {number} columns
 * @property {number} rows
 * @property {Uint8Array | null} packed Null where every thread has a place of its own.
 * @property {(column: number, row: number) => number} cell
 */

/**
 * @param {number} n
 * @param {number} m
 */
const wrapped = (n, m) => ((n % m) + m) % m;

/**
 * Whether two cloths differ in their weave alone: one was made from the other.
 * @param {Cloth} one
 * @param {Cloth} other
 */
export const sameThreads = (one, other) => one.looks === other.looks && one.endRound === other.endRound && one.pickRound === other.pickRound;

/**
 * One side place by place: bit 0 warp on top, bits 1 and 2 which end of its place is seen, bits 3 and 4 which pick.
 * @param {Cloth} cloth
 * @param {boolean} back
 * @returns {Cells}
 */
export function faceCells(cloth, back) {
  const perPick = ((cloth.ends + 63) >> 6) * 8;
  const turned = back ? 1 : 0;
  /** @param {number} pick @param {number} end */
  const up = (pick, end) => ((cloth.rows[pick * perPick + (end >> 3)] >> (end & 7)) & 1) ^ turned;
  if (!cloth.sharedEnds.length && !cloth.sharedPicks.length) {
    return { columns: cloth.ends, rows: cloth.picks, packed: null, cell: (c, r) => up(wrapped(r, cloth.picks), wrapped(c, cloth.ends)) };
  }
  const columns = stacks(cloth.sharedEnds, cloth.ends), rows = stacks(cloth.sharedPicks, cloth.picks);
  const packed = new Uint8Array(columns.length * rows.length);
  /** @param {number} pick @param {number} end */
  const warpUp = (pick, end) => up(pick % cloth.picks, end % cloth.ends);
  for (let r = 0; r < rows.length; r++) {
    for (let c = 0; c < columns.length; c++) {
      const end = topmost(columns[c], rows, r, (e, p) => warpUp(p, e) > 0);
      const pick = topmost(rows[r], columns, c, (p, e) => warpUp(p, e) === 0);
      packed[r * columns.length + c] = warpUp(rows[r][pick], columns[c][end]) | end << 1 | pick << 3;
    }
  }
  return {
    columns: columns.length,
    rows: rows.length,
    packed,
    cell: (c, r) => packed[wrapped(r, rows.length) * columns.length + wrapped(c, columns.length)],
  };
}

/**
 * The thread that lies over most of those crossing here; between equals the one that lies over more around; then the later, which floats.
 * @param {number[]} stack
 * @param {number[][]} crossing
 * @param {number} here
 * @param {(own: number, other: number) => boolean} over
 */
function topmost(stack, crossing, here, over) {
  let best = 0, most = -1, mostAround = -1;
  for (let i = 0; i < stack.length && stack.length > 1; i++) {
    const own = crossing[here].reduce((n, t) => n + (over(stack[i], t) ? 1 : 0), 0);
    let around = -i;
    if (own > 0) {
      around = 0;
      for (let d = -2; d <= 2; d++) for (const t of crossing[wrapped(here + d, crossing.length)]) around += over(stack[i], t) ? 1 : 0;
    }
    if (own > most || (own === most && around >= mostAround)) [best, most, mostAround] = [i, own, around];
  }
  return best;
}

/**
 * @param {Uint8Array} shared
 * @param {number} threads
 */
function stacks(shared, threads) {
  /** @type {(a: number, b: number) => number} */
  const gcd = (a, b) => b === 0 ? a : gcd(b, a % b);
  const round = shared.length ? threads * shared.length / gcd(threads, shared.length) : threads;
  /** @type {number[][]} */
  const made = [];
  for (let thread = 0; thread < round; thread++) {
    if (isShared(shared, thread)) made[made.length - 1].push(thread);
    else made.push([thread]);
  }
  return made;
}
