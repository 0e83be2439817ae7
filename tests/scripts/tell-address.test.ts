import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, inject, it } from 'vitest';
import { openDeskLine } from '#hosts/desk-line.ts';
import { startLoopback } from '#hosts/loopback/loopback-server.ts';
import { tellAddresses } from '#scripts/tell-address.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';

const worker = new URL(inject('deskWorker'));

describe('tellAddresses(loopback, input, output)', () => {
  it('writes an address at once and a fresh one at each Enter; only the newest still opens the page, and once', async () => {
    const folder = temporaryFolder();
    const line = openDeskLine({ worker, store: join(folder, 'k.sidejar') });
    const loopback = await startLoopback({ line, page: folder, port: 0 });
    const [keys, terminal] = [new PassThrough(), new PassThrough()];
    tellAddresses(loopback, keys, terminal);
    keys.write('\n');
    keys.write('\n');
    await pause(50);
    const told = String(terminal.read()).trim().split('\n');
    expect(told).toHaveLength(3);
    expect(new Set(told).size).toBe(3);
    const origin = `http://127.0.0.1:${loopback.port}`;
    const trade = async (address: string | undefined) => {
      const ticket = new URL(address ?? '').hash.replace('#ticket=', '');
      const body = JSON.stringify({ ticket });
      const headers = { origin, 'content-type': 'application/json' };
      return (await fetch(`${origin}/key`, { method: 'POST', headers, body })).status;
    };
    expect(await trade(told[0])).toBe(403);
    expect(await trade(told[1])).toBe(403);
    expect(await trade(told[2])).toBe(200);
    expect(await trade(told[2])).toBe(403);
    keys.end();
    await loopback.close();
    await line.close();
  });
});
