// Files that are dropped on the page or chosen in it.

/** The largest file that is read, in bytes: no draft or picture of one is larger. */
const most = 8 * 1024 * 1024;

/** @type {((name: string, bytes: string) => void) | null} */
let taker = null;

/**
 * Gives a file to the page as base64; of one that is too large, only its name.
 * @param {File} file
 */
async function give(file) {
  if (file.size > most) {
    taker?.(file.name, '');
    return;
  }
  const bytes = new Uint8Array(await file.arrayBuffer());
  let text = '';
  for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  taker?.(file.name, btoa(text));
}

/**
 * Takes every file dropped anywhere on the page from now on.
 * @param {(name: string, bytes: string) => void} take Called with name and bytes as base64; no bytes where the file is too large.
 */
export function takeFiles(take) {
  if (!taker) {
    document.addEventListener('dragover', event => {
      if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
    });
    document.addEventListener('drop', event => {
      const file = event.dataTransfer?.files[0];
      if (!file) return;
      event.preventDefault();
      void give(file);
    });
  }
  taker = take;
}

/**
 * Reads the file chosen in a field, as if it had been dropped.
 * @param {string} id Id of the field.
 */
export function takeChosen(id) {
  const field = document.getElementById(id);
  if (field instanceof HTMLInputElement && field.files?.[0]) void give(field.files[0]).then(() => { field.value = ''; });
}
