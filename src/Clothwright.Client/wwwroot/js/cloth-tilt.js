// What is seen of a tilted cloth: threads hide each other, so each set is painted narrower or wider. Reckoned as the program does it for print.
import { PER_LOOK } from './cloth-light.js';

/** @typedef {import('./cloth-places.js').Cloth} Cloth */
/** @typedef {import('./cloth-places.js').Places} Places */
/** @typedef {import('./cloth-places.js').Cells} Cells */
/**
 * @typedef {object} Section Threads as bodies, in millimetres.
 * @property {number} endPitch
 * @property {number} pickPitch
 * @property {number} endWidth
 * @property {number} pickWidth
 * @property {number} endHeight
 * @property {number} pickHeight
 * @property {number} warpRise
 * @property {number} weftRise
 */

const LINES = 48;
const STEPS = 64;
const MOST_CROSSINGS = 16;

/** @param {number} index @param {number} count */
const wrapped = (index, count) => ((index % count) + count) % count;

/** @param {number} aside @param {number} width @param {number} height */
function halfHeight(aside, width, height) {
  const beyond = aside - Math.max(0, width - height) / 2;
  if (beyond <= 0) return height / 2;
  const square = height * height / 4 - beyond * beyond;
  return square > 0 ? Math.sqrt(square) : -1;
}

/**
 * @param {number} height
 * @param {number} here
 * @param {number} next
 * @param {number} along
 * @param {number} rise
 * @param {number} pitch
 * @param {number} half
 */
function isInside(height, here, next, along, rise, pitch, half) {
  const turn = Math.PI * Math.abs(along);
  const middle = (here + (next - here) * (1 - Math.cos(turn)) / 2 - 0.5) * rise;
  const slope = (next - here) * Math.PI / 2 * Math.sin(turn) * rise / pitch;
  return Math.abs(height - middle) <= half * Math.sqrt(1 + slope * slope);
}

/**
 * Which thread holds a place: 0 none, 1 an end, 2 a pick.
 * @param {Section} section
 * @param {Cells} cells
 * @param {number} x Crossings.
 * @param {number} y
 * @param {number} height
 */
function threadAt(section, cells, x, y, height) {
  const cellX = Math.floor(x), cellY = Math.floor(y);
  const column = wrapped(cellX, cells.columns), row = wrapped(cellY, cells.rows);
  const across = x - cellX - 0.5, along = y - cellY - 0.5;
  const here = cells.cell(column, row) & 1;
  const end = halfHeight(Math.abs(across) * section.endPitch, section.endWidth, section.endHeight);
  if (end > 0) {
    const next = cells.cell(column, wrapped(row + (along > 0 ? 1 : -1), cells.rows)) & 1;
    if (isInside(height, here, next, along, section.warpRise, section.pickPitch, end)) return 1;
  }
  const pick = halfHeight(Math.abs(along) * section.pickPitch, section.pickWidth, section.pickHeight);
  if (pick <= 0) return 0;
  const beside = 1 - (cells.cell(wrapped(column + (across > 0 ? 1 : -1), cells.columns), row) & 1);
  return isInside(height, 1 - here, beside, across, section.weftRise, section.endPitch, pick) ? 2 : 0;
}

/**
 * Shares of warp and weft that an eye sees which leans aside.
 * @param {Section} section
 * @param {Cells} cells
 * @param {number} acrossSlope
 * @param {number} alongSlope
 * @returns {[number, number]}
 */
function shares(section, cells, acrossSlope, alongSlope) {
  const wide = Math.min(cells.columns, MOST_CROSSINGS), high = Math.min(cells.rows, MOST_CROSSINGS);
  const top = Math.max(section.warpRise + section.endHeight, section.weftRise + section.pickHeight) / 2;
  const stride = 2 * top / STEPS;
  let warp = 0, weft = 0;
  for (let j = 0; j < LINES; j++) {
    for (let i = 0; i < LINES; i++) {
      const x = (i + 0.5) / LINES * wide, y = (j + 0.5) / LINES * high;
      for (let k = 0; k < STEPS; k++) {
        const down = (k + 0.5) * stride;
        const hit = threadAt(section, cells, x - down * acrossSlope / section.endPitch, y - down * alongSlope / section.pickPitch, top - down);
        if (hit === 0) continue;
        if (hit === 1) warp++;
        else weft++;
        break;
      }
    }
  }
  return [warp / (LINES * LINES), weft / (LINES * LINES)];
}

/** @param {number} tilted @param {number} flat */
const ratio = (tilted, flat) => flat > 1e-9 ? tilted / flat : 1;

/**
 * @param {number} up
 * @param {number} warpCover
 * @param {number} weftCover
 * @param {[number, number]} flat
 * @param {[number, number]} aside
 * @returns {[number, number]}
 */
function factors(up, warpCover, weftCover, flat, aside) {
  let warp = warpCover * (1 - (1 - up) * weftCover) * ratio(aside[0], flat[0]);
  let weft = weftCover * (1 - up * warpCover) * ratio(aside[1], flat[1]);
  const over = Math.max(1, warp + weft);
  [warp, weft] = [warp / over, weft / over];
  const square = up * (1 - up), line = 1 - up * warp - (1 - up) * weft, product = warp * weft;
  const both = square < 1e-9
    ? line > 1e-9 ? product / line : 0
    : (line - Math.sqrt(Math.max(0, line * line - 4 * square * product))) / (2 * square);
  return [ratio(Math.min(1, warp + (1 - up) * both), warpCover), ratio(Math.min(1, weft + up * both), weftCover)];
}

/**
 * Mean width and height of the threads that have a place of their own.
 * @param {Cloth} cloth
 * @param {Float64Array} round
 * @param {Uint8Array} shared
 */
function mean(cloth, round, shared) {
  let width = 0, height = 0, count = 0;
  for (let i = 0; i < round.length / 3; i++) {
    if (shared.length > 0 && i % shared.length !== 0 && shared[i % shared.length] > 0) continue;
    width += cloth.looks[round[i * 3] * PER_LOOK + 3];
    height += cloth.looks[round[i * 3] * PER_LOOK + 4];
    count++;
  }
  return [width / count, height / count];
}

/**
 * Factors of the widths of ends and picks for an eye that stands aside; 1 and 1 straight above.
 * @param {Cloth} cloth
 * @param {Cells} cells
 * @param {Places} ends
 * @param {Places} picks
 * @param {[number, number, number]} eye
 * @param {boolean} turned
 * @returns {[number, number]}
 */
export function tiltedWidths(cloth, cells, ends, picks, eye, turned) {
  if ((eye[0] === 0 && eye[1] === 0) || eye[2] <= 0) return [1, 1];
  const [endWidth, endHeight] = mean(cloth, cloth.endRound, cloth.sharedEnds);
  const [pickWidth, pickHeight] = mean(cloth, cloth.pickRound, cloth.sharedPicks);
  const section = { endPitch: ends.pitch, pickPitch: picks.pitch, endWidth, pickWidth, endHeight, pickHeight, warpRise: cloth.warpHeight, weftRise: cloth.weftHeight };
  const flat = shares(section, cells, 0, 0);
  const aside = shares(section, cells, (turned ? -eye[0] : eye[0]) / eye[2], eye[1] / eye[2]);
  const wide = Math.min(cells.columns, MOST_CROSSINGS), high = Math.min(cells.rows, MOST_CROSSINGS);
  let up = 0;
  for (let row = 0; row < high; row++) for (let column = 0; column < wide; column++) up += cells.cell(column, row) & 1;
  return factors(up / (wide * high), Math.min(1, endWidth / ends.pitch), Math.min(1, pickWidth / picks.pitch), flat, aside);
}

/**
 * The cloth with its ends and picks as wide as what is seen of them.
 * @param {Cloth} cloth
 * @param {[number, number]} widths
 * @returns {Cloth}
 */
export function asSeen(cloth, widths) {
  if (widths[0] === 1 && widths[1] === 1) return cloth;
  const looks = cloth.looks.slice();
  for (let at = 0; at < looks.length; at += PER_LOOK) looks[at + 3] *= cloth.lights[looks[at + 15] * 3] === 0 ? widths[0] : widths[1];
  return { ...cloth, looks };
}
