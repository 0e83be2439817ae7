import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { openDeskLine } from '#hosts/desk-line.ts';
import type { DeskEvent } from '#shared/carriage.ts';
import type { Envelope } from '#shared/failure.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';

const worker = new URL(inject('deskWorker'));

type Line = ReturnType<typeof openDeskLine>;
let asked = 0;

function ask(line: Line, name: string, input: unknown): Promise<Envelope<unknown>> {
  asked += 1;
  return line.ask({ ask: `a${asked}`, name, input });
}

async function answered(line: Line, name: string, input: unknown): Promise<Record<string, unknown>> {
  const envelope = await ask(line, name, input);
  if (!envelope.ok) throw new Error(JSON.stringify(envelope.error));
  return envelope.value as Record<string, unknown>;
}

/** A kitchen called "First", a backup of it restored beside it, and then another name for the first. */
async function restored(line: Line): Promise<string> {
  await answered(line, 'kitchen:change', { name: 'First' });
  const { file } = await answered(line, 'store:backup', {});
  const made = await answered(line, 'backups:restore', { name: String(file).split(/[\\/]/).at(-1) });
  await answered(line, 'kitchen:change', { name: 'First, changed since' });
  return String(made.file);
}

const nameOf = (file: string) => file.split(/[\\/]/).at(-1) ?? '';

describe('kitchen:openBeside', () => {
  it('in place: the restored kitchen answers from then on, every window reads all again, and the first stays as it was', async () => {
    const store = join(temporaryFolder(), 'k.sidejar');
    const moved: string[] = [];
    const line = openDeskLine({ worker, store, beside: 'in-place', onMoved: (file) => moved.push(file) });
    const file = await restored(line);
    expect(dirname(file)).toBe(dirname(store));
    const events: DeskEvent[] = [];
    line.listen((event) => events.push(event));
    expect(await answered(line, 'kitchen:openBeside', { name: nameOf(file) })).toEqual({ file });
    expect(moved).toEqual([file]);
    expect(await answered(line, 'kitchen:open', {})).toMatchObject({ name: 'First', file });
    expect(events).toContainEqual({ kind: 'changed', step: 0, tables: ['another kitchen'] });
    // What goes into a thread of its own goes to the new kitchen too, and what is written is written there.
    await answered(line, 'kitchen:change', { name: 'Second' });
    expect(await answered(line, 'store:check', {})).toMatchObject({ ok: true });
    await answered(line, 'kitchen:openBeside', { name: nameOf(store) });
    expect(await answered(line, 'kitchen:open', {})).toMatchObject({ name: 'First, changed since', file: store });
    await line.close();
  });

  it('where the host has windows: the file is handed to it, and this kitchen stays', async () => {
    const store = join(temporaryFolder(), 'k.sidejar');
    const opened: string[] = [];
    const line = openDeskLine({ worker, store, beside: (file) => opened.push(file) });
    const file = await restored(line);
    await answered(line, 'kitchen:openBeside', { name: nameOf(file) });
    expect(opened).toEqual([file]);
    expect(await answered(line, 'kitchen:open', {})).toMatchObject({ name: 'First, changed since' });
    await line.close();
  });

  it('what is no kitchen, not there, elsewhere, or where there are no windows: refused, and this kitchen stays', async () => {
    const store = join(temporaryFolder(), 'k.sidejar');
    const line = openDeskLine({ worker, store, beside: 'in-place' });
    await answered(line, 'kitchen:change', { name: 'First' });
    writeFileSync(join(dirname(store), 'strange.sidejar'), 'no kitchen at all, '.repeat(20));
    const refused = async (name: string) => {
      const envelope = await ask(line, 'kitchen:openBeside', { name });
      return envelope.ok ? 'opened' : envelope.error.code;
    };
    expect(await refused('strange.sidejar')).toBe('store-not-a-kitchen');
    expect(await refused('missing.sidejar')).toBe('store-missing');
    expect(await refused('../k.sidejar')).toBe('invalid-input');
    expect(await refused('..\\k.sidejar')).toBe('invalid-input');
    expect(await refused('k.txt')).toBe('invalid-input');
    expect(await answered(line, 'kitchen:open', {})).toMatchObject({ name: 'First' });
    await line.close();
    const alone = openDeskLine({ worker, store });
    expect(await ask(alone, 'kitchen:openBeside', { name: 'k.sidejar' })).toMatchObject({ error: { code: 'refused' } });
    await alone.close();
  });
});

describe('kitchen:openNear', () => {
  it('in place: a kitchen of a folder near at hand is opened, and what is no kitchen is refused with this one still there', async () => {
    const store = join(temporaryFolder(), 'k.sidejar');
    const near = temporaryFolder();
    const other = join(near, 'other.sidejar');
    const line = openDeskLine({ worker, store: other, near: [] });
    await answered(line, 'kitchen:change', { name: 'Other' });
    await line.close();
    const own = openDeskLine({ worker, store, near: [near], beside: 'in-place' });
    await answered(own, 'kitchen:change', { name: 'First' });
    writeFileSync(join(near, 'strange.sidejar'), 'no kitchen at all, '.repeat(20));
    expect(await answered(own, 'kitchens:near', {})).toMatchObject({ dialog: false });
    expect(await ask(own, 'kitchen:openNear', { file: join(near, 'strange.sidejar') })).toMatchObject({
      error: { code: 'store-not-a-kitchen' },
    });
    expect(await answered(own, 'kitchen:open', {})).toMatchObject({ name: 'First' });
    await answered(own, 'kitchen:openNear', { file: other });
    expect(await answered(own, 'kitchen:open', {})).toMatchObject({ name: 'Other', file: other });
    await own.close();
  });
});

describe('kitchens:choose', () => {
  it('asks the host’s dialog where there is one, and is refused where there is none', async () => {
    const store = join(temporaryFolder(), 'k.sidejar');
    const answers = ['/elsewhere/c.sidejar', null];
    const line = openDeskLine({ worker, store, near: [], choose: async () => answers.shift() ?? null });
    expect(await answered(line, 'kitchens:near', {})).toMatchObject({ dialog: true });
    expect(await answered(line, 'kitchens:choose', {})).toEqual({ file: '/elsewhere/c.sidejar' });
    expect(await answered(line, 'kitchens:choose', {})).toEqual({ file: null });
    await line.close();
    const alone = openDeskLine({ worker, store, near: [] });
    expect(await ask(alone, 'kitchens:choose', {})).toMatchObject({ error: { code: 'refused' } });
    await alone.close();
  });
});

describe('a request that cannot be carried', () => {
  it('fails at once, and its mark is free again', async () => {
    const line = openDeskLine({ worker, store: join(temporaryFolder(), 'k.sidejar') });
    await expect(line.ask({ ask: 'x', name: 'kitchen:open', input: { not: () => 'data' } })).rejects.toThrow(/clone/);
    expect(await line.ask({ ask: 'x', name: 'kitchen:open', input: {} })).toMatchObject({ ok: true });
    await line.close();
  });
});
