import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { openDeskLine } from '#hosts/desk-line.ts';
import { sqliteDriver } from '#store/sqlite-driver.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';

const worker = new URL('../../electron/desk/desk-worker.ts', import.meta.url);

describe('two programs on one kitchen', () => {
  it('each is told within a second which tables the other wrote to', async () => {
    const store = join(temporaryFolder(), 'k.sidejar');
    const [one, other] = [openDeskLine({ worker, store }), openDeskLine({ worker, store })];
    await one.ask({ ask: 'a', name: 'kitchen:open', input: {} });
    await other.ask({ ask: 'b', name: 'kitchen:open', input: {} });
    for (const [number, [writer, reader]] of [
      [one, other],
      [other, one],
    ].entries()) {
      const heard = new Promise<{ tables: readonly string[]; after_ms: number }>((resolve) => {
        let start = Number.NaN;
        const deafen = reader?.listen((event) => {
          if (event.kind !== 'changed' || !event.tables.includes('tasters')) return;
          deafen?.();
          resolve({ tables: event.tables, after_ms: performance.now() - start });
        });
        void writer
          ?.ask({ ask: `w${number}`, name: 'tasters:save', input: { name: `Taster ${number}` } })
          .then(({ ok }) => {
            expect(ok).toBe(true);
            start = performance.now();
          });
      });
      const { tables, after_ms } = await heard;
      expect(tables).toEqual(['tasters']);
      // NaN: heard even before the writer itself was.
      expect(Number.isNaN(after_ms) ? 0 : after_ms).toBeLessThan(1000);
    }
    await one.close();
    await other.close();
  });

  it('a busy kitchen is waited for, and the write stands once it is free', async () => {
    const store = join(temporaryFolder(), 'k.sidejar');
    const line = openDeskLine({ worker, store });
    await line.ask({ ask: 'a', name: 'kitchen:open', input: {} });
    const Database = sqliteDriver();
    const busy = new Database(store);
    busy.exec('BEGIN IMMEDIATE');
    let isSettled = false;
    const writing = line.ask({ ask: 'w', name: 'tasters:save', input: { name: 'Patient' } }).then((envelope) => {
      isSettled = true;
      return envelope;
    });
    await pause(600);
    expect(isSettled).toBe(false);
    busy.exec('COMMIT');
    expect(await writing).toMatchObject({ ok: true });
    expect(busy.prepare('SELECT name FROM tasters').pluck().all()).toEqual(['Patient']);
    busy.close();
    await line.close();
  });
});
