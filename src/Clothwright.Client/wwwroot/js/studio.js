// Requests to the studio's server, and word between the tabs of this browser.

const patience = 20_000;

/**
 * Asks the server. Nothing throws: a server that does not answer has status 0.
 * @param {string} method
 * @param {string} address
 * @param {string} body Empty for none.
 * @param {string} version The version that the request is based on: a number, `*` for something new, empty for none.
 * @returns {Promise<string>} JSON of status, version and text.
 */
export async function ask(method, address, body, version) {
  /** @type {Record<string, string>} */
  const headers = {};
  if (body) headers['Content-Type'] = 'application/json';
  if (version === '*') headers['If-None-Match'] = '*';
  else if (version) headers[method === 'GET' ? 'If-None-Match' : 'If-Match'] = `"${version}"`;
  try {
    const response = await fetch(address, { method, headers, body: body || undefined, cache: 'no-store', signal: AbortSignal.timeout(patience) });
    const tag = /^"(\d+)"$/.exec(response.headers.get('ETag') ?? '');
    return JSON.stringify({ status: response.status, version: tag ? Number(tag[1]) : 0, text: await response.text() });
  } catch {
    return JSON.stringify({ status: 0, version: 0, text: '' });
  }
}

/** @type {BroadcastChannel | null} */
let channel = null;

/**
 * Tells the other tabs that a worksheet was changed or sent.
 * @param {string} sheet
 */
export function tellTabs(sheet) {
  channel?.postMessage(sheet);
}

/**
 * Listens to other tabs, and to signs that the server may be there again or hold something new.
 * @param {(sheet: string) => void} heard Called with a worksheet that another tab changed; with nothing when the page is looked at again or the network is back.
 */
export function listen(heard) {
  try {
    channel = new BroadcastChannel('clothwright');
    channel.onmessage = message => heard(String(message.data));
  } catch { /* this tab hears of others when it writes */ }
  addEventListener('online', () => heard(''));
  addEventListener('focus', () => heard(''));
  document.addEventListener('visibilitychange', () => { if (!document.hidden) heard(''); });
}

/**
 * A moment in words, in the language of the page.
 * @param {string} moment As ISO 8601.
 * @returns {string}
 */
export function momentText(moment) {
  return new Intl.DateTimeFormat(document.documentElement.lang || 'en', { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(moment));
}

/**
 * Sends a file to be read. Nothing throws: a server that does not answer has status 0.
 * @param {string} address
 * @param {string} file Its bytes as base64.
 * @returns {Promise<string>} JSON of status, version and text.
 */
export async function askWithFile(address, file) {
  try {
    const body = Uint8Array.from(atob(file), letter => letter.charCodeAt(0));
    const response = await fetch(address, { method: 'POST', headers: { 'Content-Type': 'application/octet-stream' }, body, signal: AbortSignal.timeout(patience) });
    return JSON.stringify({ status: response.status, version: 0, text: await response.text() });
  } catch {
    return JSON.stringify({ status: 0, version: 0, text: '' });
  }
}
