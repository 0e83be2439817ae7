import { mkdirSync, writeFileSync } from 'node:fs';
import { request as httpRequest } from 'node:http';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, inject, it, vi } from 'vitest';
import { type DeskLine, openDeskLine } from '#hosts/desk-line.ts';
import { accessFor } from '#hosts/loopback/access.ts';
import { type Loopback, startLoopback } from '#hosts/loopback/loopback-server.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';

const worker = new URL(inject('deskWorker'));

let line: DeskLine;
let loopback: Loopback;
let deserted = 0;
const onDeserted = () => {
  deserted += 1;
};

beforeEach(async () => {
  const folder = temporaryFolder();
  const page = join(folder, 'page');
  mkdirSync(join(page, 'assets'), { recursive: true });
  writeFileSync(join(page, 'index.html'), '<!doctype html><title>Page</title>');
  writeFileSync(join(page, 'assets', 'a.js'), 'export {};');
  writeFileSync(join(folder, 'secret.txt'), 'secret');
  line = openDeskLine({ worker, store: join(folder, 'k.sidejar') });
  deserted = 0;
  loopback = await startLoopback({ line, page, port: 0, grace_ms: 60, onDeserted });
});

afterEach(async () => {
  await loopback.close();
  await line.close();
});

interface Sent {
  readonly method?: string;
  readonly path: string;
  readonly headers?: Record<string, string>;
  readonly body?: string;
}

interface Received {
  readonly status: number;
  readonly headers: Record<string, string | string[] | undefined>;
  readonly text: string;
}

/** Sends exactly these headers; `fetch` would not let a test forge Host. */
function send({ method = 'GET', path, headers = {}, body }: Sent): Promise<Received> {
  return new Promise((resolve, reject) => {
    const sent = httpRequest({ host: '127.0.0.1', port: loopback.port, method, path, headers }, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, text: Buffer.concat(parts).toString() }),
      );
    });
    sent.on('error', reject);
    sent.end(body);
  });
}

const own = () => `http://127.0.0.1:${loopback.port}`;
const post = (path: string, body: unknown, headers: Record<string, string> = {}) =>
  send({
    method: 'POST',
    path,
    headers: { origin: own(), 'content-type': 'application/json', ...headers },
    body: typeof body === 'string' ? body : JSON.stringify(body),
  });
const ticketOf = (address: string) => new URL(address).hash.replace('#ticket=', '');

async function freshKey(): Promise<string> {
  const traded = await post('/key', { ticket: ticketOf(loopback.address()) });
  return (JSON.parse(traded.text) as { key: string }).key;
}

const ask = (key: string, name: string, input: unknown = {}, headers: Record<string, string> = {}) =>
  post('/ask', { ask: `t${Math.random()}`, name, input }, { 'x-sidejar-key': key, ...headers });

describe('the loopback host', () => {
  it('trades a ticket once for a key of 128 bits or more, and answers with it', async () => {
    const ticket = ticketOf(loopback.address());
    const first = await post('/key', { ticket });
    expect(first.status).toBe(200);
    const { key } = JSON.parse(first.text) as { key: string };
    expect(Buffer.from(key, 'base64url').length * 8).toBeGreaterThanOrEqual(128);
    expect((await post('/key', { ticket })).status).toBe(403);
    const answer = await ask(key, 'tasters:list');
    expect(JSON.parse(answer.text)).toEqual({ ok: true, value: { tasters: [] } });
    expect(answer.headers['set-cookie']).toBeUndefined();
  });

  it('an earlier unused address stops working when a fresh one is made', async () => {
    const old = ticketOf(loopback.address());
    const fresh = ticketOf(loopback.address());
    expect((await post('/key', { ticket: old })).status).toBe(403);
    expect((await post('/key', { ticket: fresh })).status).toBe(200);
  });

  it('answers nobody without a key, with a wrong one, or asking by another name of this machine', async () => {
    const key = await freshKey();
    expect((await ask('', 'tasters:list')).status).toBe(403);
    expect((await ask(`${key}x`, 'tasters:list')).status).toBe(403);
    expect((await ask(key, 'tasters:list', {}, { host: `evil.example:${loopback.port}` })).status).toBe(421);
    expect((await ask(key, 'tasters:list', {}, { host: '127.0.0.1:1' })).status).toBe(421);
    expect((await ask(key, 'tasters:list', {}, { host: `localhost:${loopback.port}` })).status).toBe(200);
  });

  it('refuses requests from other pages: foreign or missing Origin, cross-site, form posts, other methods', async () => {
    const key = await freshKey();
    expect((await ask(key, 'tasters:list', {}, { origin: 'https://evil.example' })).status).toBe(403);
    expect((await ask(key, 'tasters:list', {}, { origin: 'null' })).status).toBe(403);
    const body = JSON.stringify({ ask: 'a', name: 'tasters:list', input: {} });
    const headers = { 'content-type': 'application/json', 'x-sidejar-key': key };
    expect((await send({ method: 'POST', path: '/ask', headers, body })).status).toBe(403);
    expect((await ask(key, 'tasters:list', {}, { 'sec-fetch-site': 'cross-site' })).status).toBe(403);
    expect((await ask(key, 'tasters:list', {}, { 'content-type': 'text/plain' })).status).toBe(415);
    for (const method of ['GET', 'PUT', 'DELETE', 'OPTIONS']) {
      expect((await send({ method, path: '/ask', headers: { ...headers, origin: own() } })).status).toBe(405);
    }
    expect((await send({ method: 'POST', path: '/', headers: { origin: own() } })).status).toBe(405);
  });

  it('serves only files of the built page, under a policy that starts from none', async () => {
    const page = await send({ path: '/' });
    expect(page.text).toContain('<title>Page</title>');
    expect(page.headers['content-security-policy']).toMatch(/^default-src 'none'/);
    expect(page.headers['x-content-type-options']).toBe('nosniff');
    expect(page.headers['referrer-policy']).toBe('no-referrer');
    expect(page.headers['x-frame-options']).toBe('DENY');
    expect((await send({ path: '/assets/a.js' })).headers['content-type']).toMatch(/^text\/javascript/);
    for (const path of [
      '/../secret.txt',
      '/%2e%2e/secret.txt',
      '/..%2fsecret.txt',
      '/assets/..%5c..%5csecret.txt',
      '/secret.txt',
      '/assets/none.js',
      '//secret.txt',
      '/%00.js',
    ]) {
      const reply = await send({ path });
      expect(reply.status, path).toBe(404);
      expect(reply.text, path).not.toContain('secret');
    }
  });

  it('settles ill-formed JSON and bodies beyond the limit as typed failures', async () => {
    const key = await freshKey();
    const ill = await post('/ask', '{"ask":"a","name":"x","input":NaN}', { 'x-sidejar-key': key });
    expect(ill.status).toBe(400);
    expect(JSON.parse(ill.text)).toMatchObject({ ok: false, error: { code: 'ill-formed-json' } });
    const large = await post('/key', JSON.stringify({ ticket: 'x'.repeat(10_000) }));
    expect(large.status).toBe(413);
    expect(JSON.parse(large.text)).toMatchObject({ error: { code: 'too-large' } });
    expect((await post('/ask', { name: 'x' }, { 'x-sidejar-key': key })).status).toBe(400);
  });

  it('tells every open window what changed, and notices when the last is gone', async () => {
    const key = await freshKey();
    const streamed = new Promise<string>((resolve, reject) => {
      const sent = httpRequest(
        { host: '127.0.0.1', port: loopback.port, path: '/events', headers: { 'x-sidejar-key': key } },
        (response) => {
          let text = '';
          response.on('data', (part: Buffer) => {
            text += part.toString();
            if (text.includes('data: ')) {
              sent.destroy();
              resolve(text);
            }
          });
        },
      );
      sent.on('error', reject);
      sent.end();
    });
    expect((await send({ path: '/events' })).status).toBe(403);
    await ask(key, 'tasters:save', { name: 'Taster A' });
    const event = JSON.parse(/data: (.*)/.exec(await streamed)?.[1] ?? '{}') as object;
    expect(event).toMatchObject({ kind: 'changed', tables: ['tasters'] });
    await vi.waitFor(() => expect(deserted).toBe(1), 5000);
  });
});

describe('accessFor(clock)', () => {
  it('a ticket dies after ten minutes', () => {
    let now = 0;
    const access = accessFor(() => now);
    const ticket = access.issueTicket();
    now = 10 * 60_000 + 1;
    expect(access.trade(ticket)).toBeNull();
    const next = access.issueTicket();
    expect(access.trade(next)).not.toBeNull();
    expect(access.trade(undefined)).toBeNull();
    expect(access.isKey(undefined)).toBe(false);
  });
});
