import { describe, expect, it } from 'vitest';
import type { DeskLine } from '#hosts/desk-line.ts';
import { lineToCome } from '#hosts/line-to-come.ts';
import type { DeskEvent } from '#shared/carriage.ts';

const turn = () => new Promise((resolve) => setTimeout(resolve, 0));
const changed: DeskEvent = { kind: 'changed', step: 1, tables: ['jars'] };

/** A line that notes what is asked of it. */
function desk() {
  const noted: string[] = [];
  const listeners = new Set<(event: DeskEvent) => void>();
  const line: DeskLine = {
    async ask({ name }) {
      noted.push(`ask ${name}`);
      return { ok: true, value: name };
    },
    stop: (ask) => void noted.push(`stop ${ask}`),
    listen(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    async close() {
      noted.push('close');
    },
  };
  const tell = (event: DeskEvent) => {
    for (const listener of listeners) listener(event);
  };
  return { line, noted, tell };
}

describe('lineToCome(coming)', () => {
  it('keeps requests, stops and listeners until the desk is there', async () => {
    const coming = Promise.withResolvers<DeskLine>();
    const line = lineToCome(coming.promise);
    const heard: DeskEvent[] = [];
    const left: DeskEvent[] = [];
    line.listen((event) => heard.push(event));
    line.listen((event) => left.push(event))();
    const asked = line.ask({ ask: 'a', name: 'kitchen:open', input: {} });
    line.stop('a');
    const { line: own, noted, tell } = desk();
    await turn();
    expect(noted).toEqual([]);
    coming.resolve(own);
    expect(await asked).toEqual({ ok: true, value: 'kitchen:open' });
    await turn();
    tell(changed);
    expect(heard).toEqual([changed]);
    expect(left).toEqual([]);
    await line.close();
    expect(noted).toEqual(['ask kitchen:open', 'stop a', 'close']);
  });

  it('no longer hears once the listener was taken away after the desk came', async () => {
    const { line: own, tell } = desk();
    const line = lineToCome(Promise.resolve(own));
    const heard: DeskEvent[] = [];
    const forget = line.listen((event) => heard.push(event));
    await turn();
    tell(changed);
    forget();
    tell(changed);
    expect(heard).toEqual([changed]);
  });

  it('fails every request where the desk could not be made, and still closes', async () => {
    const line = lineToCome(Promise.reject(new Error('The build failed.')));
    const forget = line.listen(() => undefined);
    line.stop('a');
    await expect(line.ask({ ask: 'a', name: 'kitchen:open', input: {} })).rejects.toThrow('The build failed.');
    forget();
    await line.close();
  });
});
