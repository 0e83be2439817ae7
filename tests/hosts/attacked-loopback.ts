import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach } from 'vitest';
import type { DeskLine } from '#hosts/desk-line.ts';
import { type Loopback, startLoopback } from '#hosts/loopback/loopback-server.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';
import { rawRequest } from './raw-request.ts';

// Real sockets, real bytes. The desk behind it only counts: whatever reaches it has come through.

let loopback: Loopback;
let folder: string;

/** The requests that came through to the desk. */
export const reached: string[] = [];

export const countingDesk: DeskLine = {
  ask: ({ name }) => {
    reached.push(name);
    return Promise.resolve({ ok: true, value: {} });
  },
  stop: () => {},
  listen: () => () => {},
  close: () => Promise.resolve(),
};

beforeEach(async () => {
  reached.splice(0);
  folder = temporaryFolder();
  const page = join(folder, 'page');
  mkdirSync(join(page, 'assets', 'folder.js'), { recursive: true });
  writeFileSync(join(page, 'index.html'), '<!doctype html><title>Page</title>');
  writeFileSync(join(folder, 'secret.txt'), 'secret');
  symlinkSync(join(folder, 'secret.txt'), join(page, 'link.txt'));
  symlinkSync(folder, join(page, 'up'));
  loopback = await startLoopback({ line: countingDesk, page, port: 0 });
});

afterEach(() => loopback.close());

/** The same house, that soon grows tired of callers who never finish. Only for those: a busy machine can be slow without malice. */
export async function impatientHouse(): Promise<void> {
  await loopback.close();
  const patience = { headers_ms: 150, whole_ms: 400 };
  loopback = await startLoopback({ line: countingDesk, page: pageFolder(), port: 0, patience });
}

export const pageFolder = () => join(folder, 'page');
export const house = () => loopback;
export const own = () => `127.0.0.1:${loopback.port}`;
export const raw = (bytes: string, options?: Parameters<typeof rawRequest>[2]) =>
  rawRequest(loopback.port, bytes, options);

export function head(line: string, headers: Record<string, string>): string {
  const lines = Object.entries(headers).map(([name, value]) => `${name}: ${value}\r\n`);
  return `${line} HTTP/1.1\r\n${lines.join('')}\r\n`;
}

export function postHeaders(body: string): Record<string, string> {
  return {
    Host: own(),
    Origin: `http://${own()}`,
    'Content-Type': 'application/json',
    'Content-Length': String(Buffer.byteLength(body)),
  };
}

export async function freshKey(): Promise<string> {
  const body = JSON.stringify({ ticket: new URL(loopback.address()).hash.replace('#ticket=', '') });
  const { text } = await raw(head('POST /key', { ...postHeaders(body), connection: 'close' }) + body);
  return /"key":"([^"]+)"/.exec(text)?.[1] ?? '';
}

export const asking = JSON.stringify({ ask: 'a', name: 'tasters:list', input: {} });
