import type { IncomingMessage } from 'node:http';

/** Why a request is turned away, as an HTTP status; null lets it pass. */
export type Refusal = 403 | 404 | 405 | 415 | 421 | null;

interface Door {
  readonly method: 'GET' | 'POST';
}

const doors: Readonly<Record<string, Door>> = {
  '/key': { method: 'POST' },
  '/ask': { method: 'POST' },
  '/stop': { method: 'POST' },
  '/events': { method: 'GET' },
};

/**
 * Looks at a request before anything reads it.
 *
 * The Host must be this server's own (a rebound name is not); an Origin, when sent, must be the page's own, and a POST must send
 * one; a browser that says where the request comes from must say "here". Paths other than the doors are files of the page, read only.
 */
export function refusal(request: IncomingMessage, port: number): Refusal {
  const hosts = [`127.0.0.1:${port}`, `localhost:${port}`];
  const { host, origin } = request.headers;
  if (host === undefined || !hosts.includes(host)) return 421;
  const isOwn = origin !== undefined && hosts.some((own) => origin === `http://${own}`);
  if (origin !== undefined && !isOwn) return 403;
  const site = request.headers['sec-fetch-site'];
  const path = pathOf(request);
  const door = Object.hasOwn(doors, path) ? doors[path] : undefined;
  // Opening the address from elsewhere is a navigation to the page, never a request to a door.
  if (door !== undefined && site !== undefined && site !== 'same-origin') return 403;
  if (request.method !== (door?.method ?? 'GET')) return 405;
  if (door?.method === 'POST') {
    if (!isOwn) return 403;
    if (request.headers['content-type'] !== 'application/json') return 415;
  }
  return null;
}

/** The path as it came, still encoded, without its query. */
export function pathOf(request: IncomingMessage): string {
  return (request.url ?? '').split('?')[0] ?? '';
}

/** The key that a request brings. */
export function keyOf(request: IncomingMessage): unknown {
  return request.headers['x-sidejar-key'];
}
