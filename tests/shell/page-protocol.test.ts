import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Protocol } from 'electron';
import { beforeAll, describe, expect, test } from 'vitest';
import { pageAddress } from '#hosts/ipc/page-address.ts';
import { pagePolicy } from '#hosts/page-policy.ts';
import { answerPage, declarePageScheme, servePage } from '#shell/page-protocol.ts';

const outer = mkdtempSync(join(tmpdir(), 'page-protocol-'));
const root = join(outer, 'page');

beforeAll(() => {
  mkdirSync(join(root, 'assets'), { recursive: true });
  writeFileSync(join(outer, 'secret.json'), '{"secret":true}');
  writeFileSync(join(root, 'index.html'), '<title>Sidejar</title>');
  writeFileSync(join(root, 'assets', 'page.js'), 'export {};');
});

const get = (url: string, method = 'GET') => answerPage(root, { method, url });

describe('answerPage', () => {
  test('serves the page’s files with their type and the whole policy', async () => {
    const response = await get('app://sidejar/assets/page.js?v=1');
    expect([response.status, await response.text()]).toEqual([200, 'export {};']);
    expect(response.headers.get('Content-Type')).toBe('text/javascript; charset=utf-8');
    for (const [name, value] of Object.entries(pagePolicy)) expect(response.headers.get(name)).toBe(value);
  });

  test('serves the start page under the address that the window opens', async () => {
    expect(await (await get(pageAddress)).text()).toContain('Sidejar');
  });

  test.each([
    'app://sidejar/../secret.json',
    'app://sidejar/%2e%2e/secret.json',
    'app://sidejar/assets/..%2f..%2fsecret.json',
    'app://sidejar/..%5csecret.json',
    'app://other/index.html',
    'https://sidejar/index.html',
    'app://sidejar/assets/missing.js',
    'app://sidejar/assets',
    'nonsense',
  ])('never shows a file from outside the page for %s', async (url) => {
    const response = await get(url);
    expect([response.status, await response.text()]).toEqual([404, '']);
    expect(response.headers.get('Content-Security-Policy')).toBe(pagePolicy['Content-Security-Policy']);
  });

  test('only reads', async () => {
    expect((await get('app://sidejar/', 'POST')).status).toBe(405);
    const head = await get('app://sidejar/', 'HEAD');
    expect([head.status, await head.text()]).toEqual([200, '']);
  });
});

describe('the page’s scheme', () => {
  test('is a secure origin of its own that does not bypass the policy', () => {
    const declared: unknown[] = [];
    declarePageScheme({ registerSchemesAsPrivileged: (schemes) => void declared.push(...schemes) });
    expect(declared).toEqual([
      { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true } },
    ]);
  });

  test('is answered from the page’s folder', async () => {
    const handlers = new Map<string, Parameters<Protocol['handle']>[1]>();
    servePage({ handle: (scheme, handler) => void handlers.set(scheme, handler) }, root);
    const response = await handlers.get('app')?.({ method: 'GET', url: 'app://sidejar/' } as Request);
    expect(await response?.text()).toContain('Sidejar');
  });
});
