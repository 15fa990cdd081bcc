// Paints cloths with WebGL2. One context serves every panel of the page; what it paints is copied onto their canvases.
import { EXPOSURE_PARTS, FAR_PARTS, PER_LOOK, TABLE, WINDOW, exposure, farLight, lightTables, smooth } from './cloth-light.js';
import { everyThread, faceCells, layPlaces, sameThreads, samples, spans } from './cloth-places.js';
import { FRAGMENT, VERTEX } from './cloth-shaders.js';
import { asSeen, tiltedWidths } from './cloth-tilt.js';

/** @typedef {import('./cloth-places.js').Cloth} Cloth */
/**
 * @typedef {object} Look
 * @property {boolean} back
 * @property {number} left Millimetres of cloth to the left, as seen.
 * @property {number} low
 * @property {number} perPixel Millimetres of cloth in a pixel.
 * @property {number} width Pixels.
 * @property {number} height
 * @property {import('./cloth-light.js').Lighting} lighting
 * @property {[number, number, number]} behind Linear light.
 */

const NEAR_FROM = 2;
const FAR_UP_TO = 1.2;
const FEW_PIXELS = 8;
const UNITS = ['uCells', 'uLines', 'uThreads', 'uPlaces', 'uLooks', 'uStretches', 'uLights', 'uFar'];

/** @type {Painter | null | undefined} */
let shared;

/**
 * The painter of the page; null where there is no WebGL2, where it is only imitated, or where it has been lost.
 * @returns {Painter | null}
 */
export function painter() {
  if (shared !== undefined) return shared;
  try {
    // A card that the processor imitates is slower than the processor by itself: then there is none.
    shared = Painter.open({ failIfMajorPerformanceCaveat: true });
  } catch (error) {
    console.info('The cloth is painted without the graphics card:', error);
    shared = null;
  }
  return shared;
}

/** Paints without WebGL2 from now on, as where there is none. */
export function withoutGraphics() {
  shared = null;
}

export class Painter {
  /**
   * @param {HTMLCanvasElement} canvas
   * @param {WebGL2RenderingContext} gl
   * @param {WebGLProgram} program
   */
  constructor(canvas, gl, program) {
    this.canvas = canvas;
    this.gl = gl;
    this.limit = /** @type {number} */ (gl.getParameter(gl.MAX_TEXTURE_SIZE));
    /** @type {Map<string, WebGLUniformLocation | null>} */
    this.places = new Map();
    this.program = program;
    this.textures = UNITS.map(() => /** @type {WebGLTexture} */ (gl.createTexture()));
    /** @type {Cloth | null} */
    this.cloth = null;
    this.side = '';
    this.lit = '';
    this.adapted = false;
    /** @type {Float32Array | null} */
    this.usual = null;
    this.exposed = new Float32Array(0);
    this.tilt = '';
    this.words = false;
    /** @type {import('./cloth-places.js').Places} */
    this.ends = { edges: new Float64Array(0), first: new Int32Array(0), count: 0, threads: 0, pitch: 1, meanWidth: 1 };
    this.picks = this.ends;
    /** @type {import('./cloth-places.js').Cells} */
    this.cells = { columns: 0, rows: 0, packed: null, cell: () => 0 };
    gl.useProgram(program);
    UNITS.forEach((name, unit) => {
      gl.activeTexture(gl.TEXTURE0 + unit);
      gl.bindTexture(gl.TEXTURE_2D, this.textures[unit]);
      for (const filter of [gl.TEXTURE_MIN_FILTER, gl.TEXTURE_MAG_FILTER]) gl.texParameteri(gl.TEXTURE_2D, filter, gl.NEAREST);
      gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_WRAP_S, gl.CLAMP_TO_EDGE);
      gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_WRAP_T, gl.CLAMP_TO_EDGE);
      gl.uniform1i(this.at(name), unit);
    });
    gl.pixelStorei(gl.UNPACK_ALIGNMENT, 1);
    gl.bindVertexArray(gl.createVertexArray());
  }

  /**
   * @param {WebGLContextAttributes} [wish]
   * @returns {Painter | null}
   */
  static open(wish = {}) {
    const canvas = document.createElement('canvas');
    const gl = canvas.getContext('webgl2', { ...wish, alpha: false, antialias: false, depth: false, stencil: false, preserveDrawingBuffer: true });
    if (!gl) return null;
    const program = /** @type {WebGLProgram} */ (gl.createProgram());
    for (const [kind, text] of /** @type {[number, string][]} */ ([[gl.VERTEX_SHADER, VERTEX], [gl.FRAGMENT_SHADER, FRAGMENT]])) {
      const shader = /** @type {WebGLShader} */ (gl.createShader(kind));
      gl.shaderSource(shader, text);
      gl.compileShader(shader);
      if (!gl.getShaderParameter(shader, gl.COMPILE_STATUS)) throw new Error(gl.getShaderInfoLog(shader) ?? 'shader');
      gl.attachShader(program, shader);
    }
    gl.linkProgram(program);
    if (!gl.getProgramParameter(program, gl.LINK_STATUS)) throw new Error(gl.getProgramInfoLog(program) ?? 'program');
    canvas.addEventListener('webglcontextlost', () => { shared = null; document.dispatchEvent(new CustomEvent('clothwright-theme')); });
    return new Painter(canvas, gl, program);
  }

  /**
   * Whether a cloth fits the textures of this card.
   * @param {Cloth} cloth
   */
  fits(cloth) {
    return cloth.picks <= this.limit && cloth.ends <= this.limit && cloth.looks.length / PER_LOOK <= this.limit && cloth.lights.length / 3 * TABLE <= this.limit;
  }

  /** @param {string} name */
  at(name) {
    if (!this.places.has(name)) this.places.set(name, this.gl.getUniformLocation(this.program, name));
    return this.places.get(name) ?? null;
  }

  /**
   * @param {string} name
   * @param {number} width Texels, four numbers each.
   * @param {number} height
   * @param {Float32Array} values
   */
  numbers(name, width, height, values) {
    const { gl } = this;
    gl.activeTexture(gl.TEXTURE0 + UNITS.indexOf(name));
    gl.texImage2D(gl.TEXTURE_2D, 0, gl.RGBA32F, width, height, 0, gl.RGBA, gl.FLOAT, values);
  }

  /**
   * Paints a view; the canvas of this painter then holds it in its lower left corner.
   * @param {Cloth} cloth
   * @param {Look} look
   */
  paint(cloth, look) {
    const { gl, canvas } = this;
    if (canvas.width < look.width || canvas.height < look.height) {
      canvas.width = Math.max(canvas.width, look.width);
      canvas.height = Math.max(canvas.height, look.height);
    }
    this.take(cloth, look.back);
    this.light(cloth, look);
    const pixels = Math.min(this.ends.pitch, this.picks.pitch) / look.perPixel;
    const near = smooth(FAR_UP_TO, NEAR_FROM, pixels);
    const fine = pixels >= FEW_PIXELS ? 2 : 3;
    this.lines(cloth, look, fine);
    gl.uniform1f(this.at('uNear'), near);
    gl.uniform1i(this.at('uFine'), fine);
    gl.uniform1f(this.at('uStreaks'), Math.min(1, Math.max(0, (pixels - 8) / 14)));
    gl.uniform3fv(this.at('uBehind'), look.behind);
    gl.viewport(0, 0, look.width, look.height);
    gl.enable(gl.SCISSOR_TEST);
    gl.scissor(0, 0, look.width, look.height);
    gl.drawArrays(gl.TRIANGLES, 0, 3);
  }

  /**
   * The pixels painted last, from the upper left, four bytes each.
   * @param {number} width
   * @param {number} height
   */
  pixels(width, height) {
    const { gl } = this;
    const bytes = new Uint8Array(width * height * 4);
    gl.readPixels(0, 0, width, height, gl.RGBA, gl.UNSIGNED_BYTE, bytes);
    const turned = new Uint8Array(bytes.length);
    for (let y = 0; y < height; y++) turned.set(bytes.subarray(y * width * 4, (y + 1) * width * 4), (height - 1 - y) * width * 4);
    return turned;
  }

  /**
   * Takes a cloth, once for each of its sides.
   * @param {Cloth} cloth
   * @param {boolean} back
   */
  take(cloth, back) {
    const { gl } = this;
    if (this.cloth === cloth && this.side === String(back)) return;
    const fresh = this.cloth !== cloth;
    const threads = !this.cloth || !sameThreads(this.cloth, cloth);
    this.cloth = cloth;
    this.side = String(back);
    this.adapted = false;
    this.cells = faceCells(cloth, back);
    gl.activeTexture(gl.TEXTURE0);
    if (this.cells.packed) gl.texImage2D(gl.TEXTURE_2D, 0, gl.R8UI, this.cells.columns, this.cells.rows, 0, gl.RED_INTEGER, gl.UNSIGNED_BYTE, this.cells.packed);
    else if (fresh || this.words === false) {
      const words = ((cloth.ends + 63) >> 6) * 2;
      gl.texImage2D(gl.TEXTURE_2D, 0, gl.R32UI, words, cloth.picks, 0, gl.RED_INTEGER, gl.UNSIGNED_INT, new Uint32Array(cloth.rows.buffer, cloth.rows.byteOffset, words * cloth.picks));
    }
    this.words = !this.cells.packed;
    gl.uniform1i(this.at('uWords'), this.words ? 1 : 0);
    gl.uniform2i(this.at('uRepeat'), this.cells.columns, this.cells.rows);
    gl.uniform1ui(this.at('uBack'), back ? 1 : 0);
    gl.uniform1i(this.at('uTurned'), back ? 1 : 0);
    gl.uniform3f(this.at('uHeights'), cloth.warpHeight, cloth.weftHeight, cloth.thickness);
    if (!threads) return;
    this.lit = '';
    this.usual = null;
    this.ends = layPlaces(cloth.looks, cloth.endRound, cloth.sharedEnds, cloth.endsPerCentimetre, cloth.width);
    this.picks = layPlaces(cloth.looks, cloth.pickRound, cloth.sharedPicks, cloth.picksPerCentimetre, cloth.length);
    this.threads(cloth);
    const rows = Math.max(1, cloth.stretches.length / 768);
    const stretches = new Float32Array(rows * 1024);
    for (let i = 0; i < cloth.stretches.length / 3; i++) stretches.set(cloth.stretches.subarray(i * 3, i * 3 + 3), i * 4);
    this.numbers('uStretches', 256, rows, stretches);
  }

  /** @param {Cloth} cloth */
  threads(cloth) {
    const { ends, picks, gl } = this;
    const count = ends.threads + picks.threads;
    const threads = new Float32Array(Math.ceil(count / 512) * 512 * 8);
    everyThread(cloth.looks, cloth.endRound, ends.threads, cloth.length, threads, 0);
    everyThread(cloth.looks, cloth.pickRound, picks.threads, cloth.width, threads, ends.threads * 8);
    this.numbers('uThreads', 1024, threads.length / 4096, threads);
    gl.uniform1i(this.at('uFirstPick'), ends.threads);
    const places = new Float32Array(Math.ceil((ends.count + picks.count) / 1024) * 4096);
    [ends, picks].forEach((set, second) => {
      for (let i = 0, at = second * ends.count * 4; i < set.count; i++, at += 4) {
        places[at] = set.first[i];
        places[at + 1] = set.edges[i + 1] - set.edges[i];
      }
    });
    this.numbers('uPlaces', 1024, places.length / 4096, places);
    gl.uniform1i(this.at('uFirstRow'), ends.count);
  }

  /**
   * @param {Cloth} cloth
   * @param {Look} look
   */
  light(cloth, look) {
    const key = [look.lighting.lamp, look.lighting.eye].join();
    const { ends, picks, cells } = this;
    if (this.lit === key && this.adapted) return;
    const widths = tiltedWidths(cloth, cells, ends, picks, look.lighting.eye, look.back);
    const tilt = widths.join();
    const isFresh = this.lit !== key || this.tilt !== tilt;
    const seen = asSeen(cloth, widths);
    const tables = isFresh ? lightTables(cloth, look.lighting) : [];
    const far = isFresh ? farLight(seen, tables, { ...ends, meanWidth: ends.meanWidth * widths[0] }, { ...picks, meanWidth: picks.meanWidth * widths[1] }) : null;
    this.usual ??= far && key === [WINDOW.lamp, WINDOW.eye].join() ? far : farLight(cloth, lightTables(cloth, WINDOW), ends, picks);
    if (!this.adapted) this.exposed = exposure(cloth, cells.cell, cells.columns, cells.rows, this.usual, look.back);
    if (!this.adapted || this.tilt !== tilt) this.see(seen, this.exposed);
    this.tilt = tilt;
    if (!far) return;
    this.lit = key;
    const all = new Float32Array(tables.length * TABLE * TABLE * 4);
    tables.forEach((table, i) => all.set(table, i * TABLE * TABLE * 4));
    this.numbers('uLights', TABLE, TABLE * tables.length, all);
    this.numbers('uFar', FAR_PARTS / 4, far.length / FAR_PARTS, far);
  }

  /**
   * Takes what the eye makes of the yarns in this weave.
   * @param {Cloth} cloth
   * @param {Float32Array} adapted
   */
  see(cloth, adapted) {
    this.adapted = true;
    const count = cloth.looks.length / PER_LOOK;
    const looks = new Float32Array(count * 28);
    for (let number = 0; number < count; number++) {
      looks.set(cloth.looks.subarray(number * PER_LOOK, (number + 1) * PER_LOOK), number * 28);
      looks.set(adapted.subarray(number * EXPOSURE_PARTS + 2, number * EXPOSURE_PARTS + 5), number * 28 + 12);
      looks.set(adapted.subarray(number * EXPOSURE_PARTS, number * EXPOSURE_PARTS + 2), number * 28 + 24);
    }
    this.numbers('uLooks', 7, count, looks);
  }

  /**
   * @param {Cloth} cloth
   * @param {Look} look
   * @param {number} fine
   */
  lines(cloth, look, fine) {
    const long = Math.max(look.width, look.height) * fine;
    const lines = new Float32Array(long * 4 * 6);
    /** @param {number} row */
    const line = row => lines.subarray(row * long * 4, (row + 1) * long * 4);
    samples(this.ends, look.left, look.perPixel / fine, look.width * fine, cloth.width, look.back, line(0), line(1));
    samples(this.picks, look.low, look.perPixel / fine, look.height * fine, cloth.length, false, line(2), line(3));
    spans(this.ends, look.left, look.perPixel, look.width, cloth.width, look.back, line(4));
    spans(this.picks, look.low, look.perPixel, look.height, cloth.length, false, line(5));
    this.numbers('uLines', long, 6, lines);
  }
}
