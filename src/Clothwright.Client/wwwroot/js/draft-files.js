// Files of drafts: dropped or chosen ones read, pictures turned into tones, made ones saved.

/** @type {{ name: string, bytes: Uint8Array } | null} */
let taken = null;

/** @type {{ width: number, height: number, tones: Uint8Array } | null} */
let picture = null;

/**
 * Takes a file dropped on an element, or chosen with a field.
 * @param {HTMLElement} holder
 * @param {HTMLInputElement | null} field
 * @param {(words: string) => void} tell Told "file" when it is read.
 */
export function listenForFiles(holder, field, tell) {
  /** @param {File | undefined} file */
  const take = async file => {
    if (!file) return;
    taken = { name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) };
    picture = await tonesOf(file);
    tell('file');
  };
  holder.addEventListener('dragover', event => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    holder.dataset.dropping = '';
  });
  holder.addEventListener('dragleave', () => delete holder.dataset.dropping);
  holder.addEventListener('drop', event => {
    delete holder.dataset.dropping;
    if (!event.dataTransfer?.files.length) return;
    event.preventDefault();
    take(event.dataTransfer.files[0]);
  });
  field?.addEventListener('change', () => {
    take(field.files?.[0]);
    field.value = '';
  });
}

/** @returns {string} */
export const takenName = () => taken?.name ?? '';

/** @returns {Uint8Array} */
export const takenBytes = () => taken?.bytes ?? new Uint8Array();

/** @returns {number} Width of the picture in pixels; 0 if the file is none. */
export const pictureWidth = () => picture?.width ?? 0;

/** @returns {Uint8Array} Its tones, row after row, 0 is black. */
export const pictureTones = () => picture?.tones ?? new Uint8Array();

/** @param {File} file */
async function tonesOf(file) {
  const head = new Uint8Array(await file.slice(0, 4).arrayBuffer());
  const known = (head[0] === 0x89 && head[1] === 0x50) || (head[0] === 0xff && head[1] === 0xd8) || (head[0] === 0x47 && head[1] === 0x49) || (head[0] === 0x42 && head[1] === 0x4d) || (head[0] === 0x52 && head[1] === 0x49);
  if (!known) return null;
  try {
    const image = await createImageBitmap(file);
    const canvas = new OffscreenCanvas(image.width, image.height);
    const context = /** @type {OffscreenCanvasRenderingContext2D} */ (canvas.getContext('2d'));
    context.fillStyle = '#fff';
    context.fillRect(0, 0, image.width, image.height);
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, image.width, image.height);
    const tones = new Uint8Array(image.width * image.height);
    // Weights of ITU-R BT.601, as customary for a quick grey; only the order of two tones matters here.
    for (let i = 0; i < tones.length; i++) tones[i] = (299 * data[4 * i] + 587 * data[4 * i + 1] + 114 * data[4 * i + 2] + 500) / 1000;
    return { width: image.width, height: image.height, tones };
  } catch {
    return null;
  }
}

/**
 * Saves a text under a name.
 * @param {string} name
 * @param {string} type
 * @param {string} text
 */
export function saveText(name, type, text) {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
