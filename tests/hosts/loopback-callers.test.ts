import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { describe, expect, it, vi } from 'vitest';
import { startLoopback } from '#hosts/loopback/loopback-server.ts';
import {
  asking,
  countingDesk,
  freshKey,
  head,
  house,
  own,
  pageFolder,
  postHeaders,
  raw,
  reached,
} from './attacked-loopback.ts';
import { rawRequest } from './raw-request.ts';

describe('who may knock', () => {
  it('listens on 127.0.0.1 alone: no other address of this machine answers', async () => {
    const others = Object.values(networkInterfaces())
      .flatMap((all) => all ?? [])
      .map(({ address, family, scopeid }) => (family === 'IPv6' && scopeid ? `${address}%${scopeid}` : address))
      .filter((address) => address !== '127.0.0.1');
    // Another address of the loopback network, and IPv6's own, stand for a machine without a network.
    for (const host of ['127.0.0.2', '::1', ...others]) {
      const answered = await new Promise<boolean>((resolve) => {
        const socket = connect({ host, port: house().port });
        socket.setTimeout(500, () => socket.destroy());
        socket.on('connect', () => {
          socket.destroy();
          resolve(true);
        });
        socket.on('error', () => resolve(false));
        socket.on('close', () => resolve(false));
      });
      expect(answered, host).toBe(false);
    }
  });

  it('a ticket buys one key, once; key and ticket have 128 random bits or more, and none is a cookie', async () => {
    const address = new URL(house().address());
    expect(address.search + address.pathname).toBe('/');
    const ticket = address.hash.replace('#ticket=', '');
    const body = JSON.stringify({ ticket });
    const first = await raw(head('POST /key', { ...postHeaders(body), connection: 'close' }) + body);
    const second = await raw(head('POST /key', { ...postHeaders(body), connection: 'close' }) + body);
    expect([first.status, second.status]).toEqual([200, 403]);
    expect(first.text.toLowerCase()).not.toContain('set-cookie');
    const key = /"key":"([^"]+)"/.exec(first.text)?.[1] ?? '';
    for (const secret of [key, ticket]) {
      expect(secret).toMatch(/^[\w-]+$/);
      expect(Buffer.from(secret, 'base64url').length * 8).toBeGreaterThanOrEqual(128);
    }
    const keys = new Set(await Promise.all(Array.from({ length: 1 }, freshKey)));
    expect(keys.has(key)).toBe(false);
  });

  it('a key in a cookie, in the address or in the body opens nothing', async () => {
    const key = await freshKey();
    for (const [line, more] of [
      ['POST /ask', { Cookie: `key=${key}; x-sidejar-key=${key}` }],
      [`POST /ask?x-sidejar-key=${key}`, {}],
      ['POST /ask', { Authorization: `Bearer ${key}` }],
    ] as const) {
      const answer = await raw(head(line, { ...postHeaders(asking), ...more }) + asking);
      expect(answer.status, line).toBe(403);
    }
    expect(reached).toEqual([]);
    await raw(head('POST /ask', { ...postHeaders(asking), 'X-Sidejar-Key': key }) + asking);
    expect(reached).toEqual(['tasters:list']);
  });
});

// Host and Origin as RFC 9110 (7.2) and the Fetch standard (Origin, Sec-Fetch-Site) write them.
describe('names that are not ours', () => {
  it.each([
    ['a rebound name', 'evil.example'],
    ['a rebound name with our port', 'evil.example:PORT'],
    ['our number without the port', '127.0.0.1'],
    ['another port', '127.0.0.1:1'],
    ['any address', '0.0.0.0:PORT'],
    ['the number written otherwise', '2130706433:PORT'],
    ['the number shortened', '127.1:PORT'],
    ['a name that ends like ours', 'evil-127.0.0.1:PORT'],
    ['a name before ours', 'evil@127.0.0.1:PORT'],
    ['a dot behind ours', 'localhost.:PORT'],
    ['nothing', ''],
  ])('Host as %s is refused', async (_what, host) => {
    const key = await freshKey();
    const headers = { ...postHeaders(asking), 'X-Sidejar-Key': key, Host: host.replace('PORT', `${house().port}`) };
    expect([400, 421]).toContain((await raw(head('POST /ask', headers) + asking)).status);
    expect((await raw(head('GET /', { Host: headers.Host }))).text).not.toContain('<title>');
    expect(reached).toEqual([]);
  });

  it.each([
    ['a stranger', 'https://evil.example'],
    ['a page without one', 'null'],
    ['our name under https', 'https://127.0.0.1:PORT'],
    ['another port of this machine', 'http://127.0.0.1:1'],
    ['a name that begins like ours', 'http://127.0.0.1:PORT.evil.example'],
    ['two at once', 'http://127.0.0.1:PORT, https://evil.example'],
    ['nothing', ''],
  ])('Origin as %s is refused', async (_what, origin) => {
    const key = await freshKey();
    const headers = {
      ...postHeaders(asking),
      'X-Sidejar-Key': key,
      Origin: origin.replace('PORT', `${house().port}`),
    };
    expect((await raw(head('POST /ask', headers) + asking)).status).toBe(403);
    expect(reached).toEqual([]);
  });

  it('a POST without Origin, and one that the browser calls cross-site or same-site, are refused', async () => {
    const key = await freshKey();
    const { Origin: _origin, ...without } = postHeaders(asking);
    expect((await raw(head('POST /ask', { ...without, 'X-Sidejar-Key': key }) + asking)).status).toBe(403);
    for (const site of ['cross-site', 'same-site', 'none']) {
      const headers = { ...postHeaders(asking), 'X-Sidejar-Key': key, 'Sec-Fetch-Site': site };
      expect((await raw(head('POST /ask', headers) + asking)).status, site).toBe(403);
    }
    expect(reached).toEqual([]);
  });

  it.each(['text/plain', 'application/x-www-form-urlencoded', 'application/json; charset=utf-7', ''])(
    'a body called “%s” is refused: a form of another page can send no application/json',
    async (type) => {
      const key = await freshKey();
      const headers = { ...postHeaders(asking), 'X-Sidejar-Key': key, 'Content-Type': type };
      expect((await raw(head('POST /ask', headers) + asking)).status).toBe(415);
      expect(reached).toEqual([]);
    },
  );

  it.each(['GET', 'HEAD', 'PUT', 'PATCH', 'DELETE', 'OPTIONS', 'TRACE', 'CONNECT', 'PROPFIND', 'post'])(
    'method %s asks nothing',
    async (method) => {
      const key = await freshKey();
      const answer = await raw(head(`${method} /ask`, { ...postHeaders(asking), 'X-Sidejar-Key': key }) + asking);
      expect([0, 400, 405]).toContain(answer.status);
      expect(reached).toEqual([]);
    },
  );
});

describe('paths', () => {
  it.each([
    '/link.txt',
    '/up/secret.txt',
    '/up',
    '/assets/folder.js',
    '/assets',
    '/../secret.txt',
    '/..%2f..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/%252e%252e/secret.txt',
    '/%c0%ae%c0%ae/secret.txt',
    '/..%5csecret.txt',
    '/..\\secret.txt',
    '/assets/..;/..;/secret.txt',
    '/index.html%00.txt',
    '/index.html%00',
    '//127.0.0.1/secret.txt',
    '/C:/secret.txt',
    '/con.txt',
    '/NUL.html',
    '/%EF%BC%8E%EF%BC%8E/secret.txt',
  ])('%s serves nothing from outside the built page', async (path) => {
    const answer = await raw(head(`GET ${path}`, { Host: own() }));
    expect(answer.status).toBe(404);
    expect(answer.text).not.toContain('secret');
  });

  it('every answer, refusals too, carries the policy: from none, no sniffing, no framing, no referrer', async () => {
    for (const [bytes, status] of [
      [head('GET /', { Host: own() }), 200],
      [head('GET /none.js', { Host: own() }), 404],
      [head('GET /', { Host: 'evil.example' }), 421],
      [head('GET /events', { Host: own() }), 403],
    ] as const) {
      const answer = await raw(bytes);
      expect(answer.status).toBe(status);
      for (const line of [
        /^content-security-policy: default-src 'none'/im,
        /^x-content-type-options: nosniff/im,
        /^x-frame-options: DENY/im,
        /^referrer-policy: no-referrer/im,
        /frame-ancestors 'none'/i,
      ]) {
        expect(answer.text).toMatch(line);
      }
      // No other page may read an answer: nothing is shared across origins.
      expect(answer.text.toLowerCase()).not.toContain('access-control-');
    }
  });
});

describe('the last window', () => {
  it('closes the house after a grace; a reload within it does not', async () => {
    let deserted = 0;
    const lodge = await startLoopback({
      line: countingDesk,
      page: pageFolder(),
      port: 0,
      grace_ms: 300,
      onDeserted: () => {
        deserted += 1;
      },
    });
    const at = `127.0.0.1:${lodge.port}`;
    const body = JSON.stringify({ ticket: new URL(lodge.address()).hash.replace('#ticket=', '') });
    const traded = await rawRequest(
      lodge.port,
      head('POST /key', { ...postHeaders(body), Host: at, Origin: `http://${at}`, connection: 'close' }) + body,
    );
    const key = /"key":"([^"]+)"/.exec(traded.text)?.[1] ?? '';
    const look = (wait_ms: number) =>
      rawRequest(lodge.port, head('GET /events', { Host: at, 'X-Sidejar-Key': key }), { wait_ms });
    expect((await look(60)).status).toBe(200);
    expect((await look(600)).status).toBe(200);
    expect(deserted).toBe(0);
    await vi.waitFor(() => expect(deserted).toBe(1), 5000);
    await lodge.close();
  });
});
