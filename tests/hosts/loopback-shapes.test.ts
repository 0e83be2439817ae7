import { describe, expect, it } from 'vitest';
import { asking, freshKey, head, impatientHouse, own, postHeaders, raw, reached } from './attacked-loopback.ts';

// Shapes that two readers may take apart differently: RFC 9112, 6.3 and 11.2.
describe('requests hidden in requests', () => {
  const hidden = () => head('POST /ask', { ...postHeaders(asking), 'X-Sidejar-Key': 'KEY' }) + asking;

  it.each([
    ['two lengths that differ', 'Content-Length: 5\r\nContent-Length: 6\r\n'],
    ['two lengths alike', 'Content-Length: 5\r\nContent-Length: 5\r\n'],
    ['two lengths in one line', 'Content-Length: 5, 5\r\n'],
    ['a length and chunks', 'Content-Length: 5\r\nTransfer-Encoding: chunked\r\n'],
    ['chunks', 'Transfer-Encoding: chunked\r\n'],
    ['chunks under another name', 'Transfer-Encoding: xchunked\r\n'],
    ['chunks, spaced', 'Transfer-Encoding : chunked\r\n'],
    ['chunks said twice', 'Transfer-Encoding: identity\r\nTransfer-Encoding: chunked\r\n'],
    ['a length with a sign', 'Content-Length: +5\r\n'],
    ['a length below nothing', 'Content-Length: -5\r\n'],
    ['a length in hexadecimal', 'Content-Length: 0x5\r\n'],
    ['a length beyond numbers', 'Content-Length: 99999999999999999999\r\n'],
    ['no length', ''],
    ['a folded header', 'Content-Length:\r\n 5\r\n'],
    ['a bare line feed', 'Content-Length: 5\nX: y\r\n'],
    ['a NUL in a header', 'Content-Length: 5\r\nX: a\0b\r\n'],
    ['two hosts', 'Host: evil.example\r\nContent-Length: 5\r\n'],
    ['two origins', 'Origin: https://evil.example\r\nContent-Length: 5\r\n'],
    ['two keys', 'X-Sidejar-Key: x\r\nX-Sidejar-Key: KEY\r\nContent-Length: 5\r\n'],
  ])('%s: refused, closed, and what stands behind it is not answered', async (_what, lines) => {
    const key = await freshKey();
    const { 'Content-Length': _length, ...rest } = postHeaders('12345');
    const begun = head('POST /ask', { ...rest, 'X-Sidejar-Key': key }).slice(0, -2);
    const answer = await raw(`${begun}${lines}\r\n12345${hidden().replace('KEY', key)}`.replaceAll('KEY', key));
    expect(answer.status).toBeGreaterThanOrEqual(400);
    expect(answer.answers).toBe(1);
    expect(reached).toEqual([]);
  });

  it.each([
    ['a body to a page', (): string => `${head('GET /', { Host: own(), 'Content-Length': '3' })}abc`, 413],
    ['an upgrade', () => head('GET /events', { Host: own(), Connection: 'Upgrade', Upgrade: 'websocket' }), 400],
    ['leave to send a body', () => head('POST /ask', { ...postHeaders(asking), Expect: '100-continue' }), 417],
    ['another expectation', () => head('POST /ask', { ...postHeaders(asking), Expect: 'tea' }), 417],
    ['a whole address', () => head(`GET http://${own()}/`, { Host: own() }), 400],
    ['another host’s address', () => head('GET http://evil.example/', { Host: own() }), 400],
    ['no address', () => head('OPTIONS *', { Host: own() }), 400],
    ['HTTP/1.0 without a host', () => 'GET / HTTP/1.0\r\n\r\n', 421],
    ['HTTP/0.9', () => 'GET /\r\n\r\n', 421],
    ['HTTP/2 at once', () => 'PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n', 400],
    ['no HTTP at all', () => '\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03', 400],
  ])('%s is refused', async (_what, bytes, status) => {
    expect((await raw(bytes())).status).toBe(status);
  });
});

describe('too much, too slow, too long', () => {
  it('many headers, long headers and a long address are refused', async () => {
    const many = Object.fromEntries(Array.from({ length: 100 }, (_, at) => [`X-${at}`, 'a']));
    expect((await raw(head('GET /', { Host: own(), ...many }))).status).toBe(431);
    expect((await raw(head('GET /', { ...many, Host: own() }))).status).toBe(431);
    expect((await raw(head('GET /', { Host: own(), X: 'a'.repeat(20_000) }))).status).toBe(431);
    expect((await raw(head(`GET /${'a'.repeat(20_000)}`, { Host: own() }))).status).toBe(431);
  });

  it('a body larger than it may be is refused before it is read', async () => {
    const key = await freshKey();
    const headers = { ...postHeaders(''), 'X-Sidejar-Key': key, 'Content-Length': String(10 * 1024 ** 3) };
    const answer = await raw(head('POST /ask', headers), { wait_ms: 20_000 });
    expect(answer.status).toBe(413);
    expect(answer.open_ms).toBeLessThan(10_000);
  });

  it('headers that never end are cut off in time', async () => {
    await impatientHouse();
    const answer = await raw(`GET / HTTP/1.1\r\nHost: ${own()}\r\nX: `, { wait_ms: 20_000, drip: 'a' });
    expect(answer.status).toBe(408);
    expect(answer.open_ms).toBeLessThan(10_000);
  });

  it('a body that never ends, or never comes, is cut off in time', async () => {
    await impatientHouse();
    const key = await freshKey();
    const headers = { ...postHeaders(''), 'X-Sidejar-Key': key, 'Content-Length': '1000000' };
    for (const drip of ['a', undefined]) {
      const answer = await raw(`${head('POST /ask', headers)}{`, {
        wait_ms: 10_000,
        ...(drip === undefined ? {} : { drip }),
      });
      expect(answer.status).toBe(408);
      expect(answer.open_ms).toBeLessThan(9000);
    }
    expect(reached).toEqual([]);
  });

  it('a caller without a key gets no body read', async () => {
    const headers = { ...postHeaders(''), 'Content-Length': '40000000' };
    const answer = await raw(`${head('POST /ask', headers)}{`, { wait_ms: 20_000, drip: 'a'.repeat(1000) });
    expect(answer.status).toBe(403);
    expect(answer.open_ms).toBeLessThan(10_000);
  });

  it('many silent callers keep no window out for long', async () => {
    await impatientHouse();
    const silent = Array.from({ length: 200 }, () => raw('', { wait_ms: 20_000 }));
    await new Promise((resolve) => setTimeout(resolve, 50));
    let text = '';
    for (let tries = 0; tries < 50 && !text.includes('<title>'); tries += 1) {
      await new Promise((resolve) => setTimeout(resolve, 100));
      text = (await raw(head('GET /', { Host: own() }))).text;
    }
    expect(text).toContain('<title>');
    for (const { open_ms } of await Promise.all(silent)) expect(open_ms).toBeLessThan(15_000);
  });

  it('JSON that nests without end is refused, and the desk never hears of it', async () => {
    const key = await freshKey();
    for (const input of ['['.repeat(100_000), `${'{"a":'.repeat(5000)}1${'}'.repeat(5000)}`]) {
      const body = `{"ask":"a","name":"x","input":${input}}`;
      const answer = await raw(head('POST /ask', { ...postHeaders(body), 'X-Sidejar-Key': key }) + body);
      expect(answer.status).toBe(413);
    }
    expect(reached).toEqual([]);
  });
});
