import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import type { DeskLine } from '#hosts/desk-line.ts';
import { lineToCome } from '#hosts/line-to-come.ts';
import { type Loopback, startLoopback } from '#hosts/loopback/loopback-server.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';

// The window is opened before page and desk are built: whoever comes early waits.

let loopback: Loopback | null = null;
afterEach(() => loopback?.close());

async function house(built: Promise<DeskLine>): Promise<string> {
  const page = temporaryFolder();
  mkdirSync(join(page, 'assets'));
  writeFileSync(join(page, 'index.html'), '<!doctype html><title>Old</title>');
  loopback = await startLoopback({ line: lineToCome(built), page, built, port: 0 });
  return page;
}

const address = () => `http://127.0.0.1:${loopback?.port}/`;

describe('a page that is still being built', () => {
  it('is waited for, and read as it is then', async () => {
    const built = Promise.withResolvers<DeskLine>();
    const page = await house(built.promise);
    let hasCome = false;
    const coming = fetch(address()).then(async (response) => {
      hasCome = true;
      return `${response.status} ${await response.text()}`;
    });
    await new Promise((pass) => setTimeout(pass, 100));
    expect(hasCome).toBe(false);
    writeFileSync(join(page, 'index.html'), '<!doctype html><title>New</title>');
    built.resolve({
      ask: async () => ({ ok: true, value: {} }),
      stop: () => {},
      listen: () => () => {},
      close: async () => {},
    });
    expect(await coming).toBe('200 <!doctype html><title>New</title>');
  });

  it('that can’t be built is answered with a refusal, not with what lay there', async () => {
    const built = Promise.reject(new Error('The build failed.'));
    await house(built);
    const response = await fetch(address());
    expect(response.status).toBe(400);
    expect(await response.text()).not.toContain('Old');
  });
});
