import type { IncomingMessage } from 'node:http';

/** Why a request is turned away, as an HTTP status; null lets it pass. */
export type Refusal = 400 | 403 | 405 | 411 | 413 | 415 | 417 | 421 | 431 | null;

interface Door {
  readonly method: 'GET' | 'POST';
}

const doors: Readonly<Record<string, Door>> = {
  '/key': { method: 'POST' },
  '/ask': { method: 'POST' },
  '/stop': { method: 'POST' },
  '/events': { method: 'GET' },
};

/** A browser sends a dozen. */
const mostHeaders = 64;

/** Headers that decide who may enter: one that comes twice means two readers may read it two ways. */
const once: ReadonlySet<string> = new Set([
  'host',
  'origin',
  'content-length',
  'content-type',
  'transfer-encoding',
  'sec-fetch-site',
  'x-sidejar-key',
]);

function comesTwice(rawHeaders: readonly string[]): boolean {
  const seen = new Set<string>();
  for (let at = 0; at < rawHeaders.length; at += 2) {
    const name = (rawHeaders[at] ?? '').toLowerCase();
    if (once.has(name) && seen.has(name)) return true;
    seen.add(name);
  }
  return false;
}

/** A body comes with its length and to a door that reads one; anything else could hide a second request in it. */
function bodyRefusal(request: IncomingMessage, door: Door | undefined): Refusal {
  const { 'content-length': length, 'transfer-encoding': encoding } = request.headers;
  if (encoding !== undefined) return 411;
  if (door?.method === 'POST') return length === undefined ? 411 : null;
  return length === undefined || length === '0' ? null : 413;
}

/**
 * Looks at a request before anything reads it.
 *
 * The Host must be this server's own (a rebound name is not); an Origin, when sent, must be the page's own, and a POST must send
 * one; a browser that says where the request comes from must say "here". Paths other than the doors are files of the page, read only.
 */
export function refusal(request: IncomingMessage, port: number): Refusal {
  if (request.rawHeaders.length > 2 * mostHeaders) return 431;
  if (comesTwice(request.rawHeaders)) return 400;
  const hosts = [`127.0.0.1:${port}`, `localhost:${port}`];
  const { host, origin } = request.headers;
  if (host === undefined || !hosts.includes(host)) return 421;
  // A path alone: an address with its own host, as proxies get, could say another one than Host does.
  if (!pathOf(request).startsWith('/')) return 400;
  const isOwn = origin !== undefined && hosts.some((own) => origin === `http://${own}`);
  if (origin !== undefined && !isOwn) return 403;
  const site = request.headers['sec-fetch-site'];
  const path = pathOf(request);
  const door = Object.hasOwn(doors, path) ? doors[path] : undefined;
  // Opening the address from elsewhere is a navigation to the page, never a request to a door.
  if (door !== undefined && site !== undefined && site !== 'same-origin') return 403;
  if (request.method !== (door?.method ?? 'GET')) return 405;
  if (request.headers.expect !== undefined) return 417;
  if (request.headers.upgrade !== undefined) return 400;
  if (door?.method === 'POST') {
    if (!isOwn) return 403;
    if (request.headers['content-type'] !== 'application/json') return 415;
  }
  return bodyRefusal(request, door);
}

/** The path as it came, still encoded, without its query. */
export function pathOf(request: IncomingMessage): string {
  return (request.url ?? '').split('?')[0] ?? '';
}

/** The key that a request brings. */
export function keyOf(request: IncomingMessage): unknown {
  return request.headers['x-sidejar-key'];
}
