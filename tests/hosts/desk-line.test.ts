import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { openDeskLine } from '#hosts/desk-line.ts';
import type { AskedWays, DeskEvent } from '#shared/carriage.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';

const worker = new URL(inject('deskWorker'));
const open = (store = join(temporaryFolder(), 'k.sidejar')) => openDeskLine({ worker, store });

describe('openDeskLine({ worker, store })', () => {
  it('answers each request with the decimal mark that it asks for, and with a point where it asks for none', async () => {
    const line = open();
    const tooSweet = (ask: string, ways?: AskedWays) =>
      line.ask({
        ask,
        name: 'ferment:convert',
        input: { brix: 99, temperature_C: 20 },
        ...(ways === undefined ? {} : { ways }),
      });
    const answers = await Promise.all([
      tooSweet('a', { language: 'en', decimal: ',' }),
      tooSweet('b'),
      tooSweet('c', { language: 'en', decimal: ',' }),
    ]);
    expect(answers.map((answer) => /67.1/.exec(JSON.stringify(answer))?.[0])).toEqual(['67,1', '67.1', '67,1']);
    await line.close();
  });

  it('carries progress of a long request and the change event after it', async () => {
    const line = open();
    const events: DeskEvent[] = [];
    line.listen((event) => events.push(event));
    expect((await line.ask({ ask: 'a', name: 'kitchen:sample', input: {} })).ok).toBe(true);
    const progress = events.filter((event) => event.kind === 'progress');
    expect(progress.map(({ ask, done, total }) => `${ask} ${done}/${total}`)).toEqual([
      'a 1/5',
      'a 2/5',
      'a 3/5',
      'a 4/5',
      'a 5/5',
    ]);
    expect(events.at(-1)).toMatchObject({ kind: 'changed' });
    await line.close();
  });

  it('stops a long request that is deep in its work; nothing of it is kept', async () => {
    const line = open();
    await line.ask({ ask: 's', name: 'kitchen:sample', input: {} });
    const tastings = await line.ask({ ask: 'l', name: 'tastings:list', input: {} });
    const list = (tastings as { value: { tastings: { id: string; closedAt: string | null }[] } }).value.tastings;
    const tasting = list.find(({ closedAt }) => closedAt === null)?.id;
    const rows = Array.from({ length: 200_000 }, () => 'Nobody,999,5').join('\n');
    // Told to stop as soon as it tells that it is under way.
    line.listen((event) => {
      if (event.kind === 'progress' && event.ask === 'i') line.stop('i');
    });
    const running = line.ask({
      ask: 'i',
      name: 'scores:import',
      input: { tasting, table: `taster,sample,tang\n${rows}` },
    });
    expect(await running).toMatchObject({ ok: false, error: { code: 'stopped' } });
    expect(await line.ask({ ask: 'c', name: 'store:check', input: {} })).toMatchObject({
      ok: true,
      value: { ok: true },
    });
    await line.close();
  });

  it('tries a kitchen again that could not be opened before', async () => {
    const store = join(temporaryFolder(), 'k.sidejar');
    writeFileSync(
      store,
      'not yet a kitchen, and longer than one hundred bytes so that its header can be read: '.repeat(3),
    );
    const line = open(store);
    expect(await line.ask({ ask: 'a', name: 'trials:list', input: {} })).toMatchObject({
      error: { code: 'store-not-a-kitchen' },
    });
    rmSync(store);
    expect(await line.ask({ ask: 'b', name: 'trials:list', input: {} })).toEqual({ ok: true, value: { trials: [] } });
    await line.close();
  });

  it('a kitchen that can’t be opened answers every request with the reason', async () => {
    const line = open(temporaryFolder());
    const answer = await line.ask({ ask: 'a', name: 'trials:list', input: {} });
    expect(answer).toMatchObject({ ok: false, error: { code: 'store-not-a-kitchen' } });
    // What only computes needs no kitchen, and makes no file.
    const converted = await line.ask({ ask: 'c', name: 'ferment:convert', input: { brix: 10 } });
    expect(converted).toMatchObject({ ok: true, value: { brix: 10 } });
    await line.close();
    expect(await line.ask({ ask: 'b', name: 'trials:list', input: {} })).toMatchObject({ ok: false });
  });
});
