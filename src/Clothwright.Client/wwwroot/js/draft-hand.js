// Pointer, pen, touch, wheel and keys on a draft. What is under them is told to the page in words with blanks between:
// "press PART THREAD NUMBER EXTEND", "over THREAD NUMBER THREAD NUMBER …", "lift", "drop", "point PART THREAD NUMBER", "key NAME SHIFT CONTROL".

/** @typedef {import('./draft-plane.js').Place} Place */
/** @typedef {import('./draft-plane.js').Plane} Plane */

/**
 * @typedef {object} Hand
 * @property {Plane} plane
 * @property {'draw' | 'mark' | 'move'} mode What dragging does.
 * @property {boolean} drawing Whether a stroke is being made.
 * @property {boolean} wide Whether the draft has the page's whole width, so that the wheel moves it.
 * @property {() => void} again Paints anew.
 * @property {(words: string) => void} tell
 */

const KEYS = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'PageUp', 'PageDown', ' ', 'Enter', 'Delete', 'Backspace', 'Insert', 'Escape'];
const TAP = 6;

/** @param {HTMLElement} holder @param {HTMLCanvasElement} canvas @param {Hand} hand */
export function listen(holder, canvas, hand) {
  /** @type {Map<number, { x: number, y: number }>} */
  const pointers = new Map();
  /** @type {Place | null} */
  let last = null;
  /** @type {{ x: number, y: number } | null} */
  let began = null;
  let pinch = 0;

  // Where the canvas lay when a stroke began: sentences above it may grow while the stroke goes on.
  /** @type {DOMRect | null} */
  let frame = null;

  /** @param {MouseEvent} event */
  const at = event => {
    const box = frame ?? canvas.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const middle = () => {
    const all = [...pointers.values()];
    return { x: all.reduce((s, p) => s + p.x, 0) / all.length, y: all.reduce((s, p) => s + p.y, 0) / all.length };
  };
  const distance = () => {
    const [a, b] = [...pointers.values()];
    return Math.hypot(a.x - b.x, a.y - b.y);
  };

  canvas.addEventListener('pointerdown', event => {
    if (event.button !== 0 && event.button !== 1) return;
    holder.focus({ preventScroll: true });
    canvas.setPointerCapture(event.pointerId);
    frame ??= canvas.getBoundingClientRect();
    pointers.set(event.pointerId, at(event));
    event.preventDefault();
    if (pointers.size === 2) {
      if (last) hand.tell('drop');
      last = null;
      hand.drawing = false;
      pinch = distance();
      return;
    }
    began = at(event);
    if (hand.mode === 'move' || event.button === 1 || event.altKey) return;
    last = hand.plane.placeAt(began.x, began.y);
    hand.drawing = last !== null;
    if (last) hand.tell(`press ${last.part} ${last.thread} ${last.number} ${event.shiftKey ? 1 : 0}`);
  });

  canvas.addEventListener('pointermove', event => {
    const before = pointers.get(event.pointerId);
    if (!before) return;
    const old = pointers.size === 2 ? middle() : before;
    const now = at(event);
    pointers.set(event.pointerId, now);
    if (pointers.size === 2) {
      const centre = middle(), apart = distance();
      hand.plane.pull(centre.x - old.x, centre.y - old.y);
      if (pinch > 0) hand.plane.zoom(hand.plane.cell * apart / pinch, centre.x, centre.y);
      pinch = apart;
      hand.again();
    } else if (last) {
      const places = event.getCoalescedEvents?.() ?? [];
      const passed = (places.length ? places : [event]).flatMap(e => step(at(e)));
      if (passed.length) hand.tell(`over ${passed.map(p => `${p.thread} ${p.number}`).join(' ')}`);
    } else {
      hand.plane.pull(now.x - old.x, now.y - old.y);
      hand.again();
    }
  });

  /** The places from the last one to a point, none of them left out. @param {{ x: number, y: number }} point @returns {Place[]} */
  const step = point => {
    if (!last) return [];
    const place = hand.plane.placeAt(point.x, point.y, last.part);
    if (!place) return [];
    const steps = Math.max(Math.abs(place.thread - last.thread), Math.abs(place.number - last.number));
    const from = last;
    last = place;
    return Array.from({ length: steps }, (_, i) => ({
      part: place.part,
      thread: Math.round(from.thread + (place.thread - from.thread) * (i + 1) / steps),
      number: Math.round(from.number + (place.number - from.number) * (i + 1) / steps),
    }));
  };

  for (const end of ['pointerup', 'pointercancel']) {
    canvas.addEventListener(end, event => {
      const point = at(/** @type {PointerEvent} */ (event));
      if (!pointers.delete(/** @type {PointerEvent} */ (event).pointerId)) return;
      if (last) {
        // The stroke ends where the pen was lifted, whether or not it was seen on the way there.
        const passed = end === 'pointerup' ? step(point) : [];
        if (passed.length) hand.tell(`over ${passed.map(p => `${p.thread} ${p.number}`).join(' ')}`);
        hand.drawing = false;
        hand.tell(end === 'pointerup' ? 'lift' : 'drop');
        hand.again();
        last = null;
      } else if (began && pointers.size === 0 && Math.hypot(point.x - began.x, point.y - began.y) < TAP) {
        const place = hand.plane.placeAt(point.x, point.y);
        if (place) hand.tell(`point ${place.part} ${place.thread} ${place.number}`);
      }
      began = null;
      pinch = 0;
      if (pointers.size === 0) frame = null;
    });
  }

  canvas.addEventListener('wheel', event => {
    const point = at(event);
    if (event.ctrlKey || event.metaKey) {
      hand.plane.zoom(hand.plane.cell * Math.exp(-event.deltaY / 300), point.x, point.y);
    } else if (hand.wide || document.activeElement === holder) {
      const [dx, dy] = event.shiftKey && event.deltaX === 0 ? [event.deltaY, 0] : [event.deltaX, event.deltaY];
      hand.plane.pull(-dx, -dy);
    } else {
      return;
    }
    event.preventDefault();
    hand.again();
  }, { passive: false });

  holder.addEventListener('keydown', event => {
    const control = event.ctrlKey || event.metaKey;
    if (event.altKey || event.target !== holder) return;
    const known = control
      ? ['a', 'c', 'v', 'x', 'Home', 'End', 'ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'].includes(event.key)
      : KEYS.includes(event.key) || /^[0-9a-z+\-.]$/.test(event.key);
    if (!known) return;
    event.preventDefault();
    const { plane } = hand;
    const { x, y, w, h } = plane.cloth;
    if (event.key === '+') plane.zoom(plane.cell * 1.4, x + w / 2, y + h / 2);
    else if (event.key === '-') plane.zoom(plane.cell / 1.4, x + w / 2, y + h / 2);
    else if (event.key === '.') plane.whole();
    else { hand.tell(`key ${event.key === ' ' ? 'Space' : event.key} ${event.shiftKey ? 1 : 0} ${control ? 1 : 0}`); return; }
    hand.again();
  });
}
