import type { Notification as ElectronNotification, BrowserWindow as ElectronWindow } from 'electron';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { channels } from '#hosts/ipc/channels.ts';
import { dueNotifications } from '#shell/due-notifications.ts';
import { dueTeller, dueWords } from '#shell/tell-what-is-due.ts';
import { daysPlan } from '#tests/desk/example-trial.ts';
import { type TestDesk, temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { BrowserWindow, callsOf, forget, Notification, played } from './stand-in-electron.ts';

// The real desk on a clock that the test moves; only Electron is stood in for.

function lineOf({ desk }: TestDesk) {
  return { ask: ({ name, input }: { name: string; input: unknown }) => desk.handle(name, input) };
}

function tellerOf(test: TestDesk) {
  const shown: { title: string; body: string }[] = [];
  const tell = dueTeller({
    line: lineOf(test),
    clock: () => test.clock.now().getTime(),
    show: (words) => shown.push(words),
  });
  return { tell, shown };
}

const plan = { ...daysPlan, held: { additions: [] } };

describe('dueTeller', () => {
  test('keeps quiet about what is due already, then tells each thing once, grouped', async () => {
    const desk = await temporaryDesk();
    const { jars } = await desk.ask('trials:save', plan);
    await desk.ask('jars:start', { jars: jars.map(({ id }) => id) });
    await desk.ask('bases:start', { name: 'Old crock', volume_mL: 2000, madeAt: '2026-04-20T08:00:00Z' });
    const { tell, shown } = tellerOf(desk);
    await tell();
    expect(shown).toEqual([]);
    desk.clock.move(24.5);
    await tell();
    await tell();
    expect(shown).toHaveLength(1);
    expect(shown[0]?.body).toContain('Pull jar A');
    expect(shown[0]?.body).not.toContain('Old crock');
  });

  test('says whole sentences, for one jar, for several and for what has a name', () => {
    const of = {
      when: 'overdue',
      dueAt: '',
      trial: null,
      isSample: false,
      basis: null,
      putOff: null,
      key: '',
    } as const;
    const nobody = { jars: [], base: null, culture: null, tasting: null };
    const named = (name: string) => ({ id: name, name, isSample: false });
    const { body } = dueWords([
      { ...of, ...nobody, kind: 'stir', jars: [named('A1'), named('A2')] },
      { ...of, ...nobody, kind: 'taste', jars: [named('B')] },
      { ...of, ...nobody, kind: 'feed', culture: named('Grains') },
    ]);
    expect(body).toBe('Stir jars A1, A2\nTaste jar B\nFeed Grains');
  });

  test('tells at most once in a quarter of an hour, and then what fell due in between, together', async () => {
    const desk = await temporaryDesk();
    const made = (name: string, minutes: number) =>
      desk.ask('bases:start', { name, volume_mL: 2000, plannedHours: 1 + minutes / 60 });
    await made('One', 0);
    await made('Two', 5);
    await made('Three', 10);
    const { tell, shown } = tellerOf(desk);
    await tell();
    for (let minute = 0; minute < 90; minute += 1) {
      desk.clock.move(1 / 60);
      await tell();
    }
    expect(shown).toEqual([
      { title: 'Something is due', body: 'Strain One' },
      { title: '2 things are due', body: 'Strain Two\nStrain Three' },
    ]);
  });

  test('tells again what was seen to and falls due anew, and not what is put off', async () => {
    const desk = await temporaryDesk();
    const saved = await desk.ask('cultures:save', {
      name: 'Grains',
      kind: 'water kefir',
      refreshedAt: '2026-05-01T08:00:00Z',
      refreshDays: 1,
    });
    const { tell, shown } = tellerOf(desk);
    await tell();
    desk.clock.move(24.5);
    await tell();
    await desk.ask('today:putOff', { need: 'feed', culture: saved.culture, span: 'hour' });
    await tell();
    expect(shown).toHaveLength(1);
    desk.clock.move(1);
    await tell();
    expect(shown).toHaveLength(2);
    await desk.ask('cultures:log', { culture: saved.culture, what: 'refreshed' });
    await tell();
    expect(shown).toHaveLength(2);
    desk.clock.move(24.5);
    await tell();
    expect(shown.map(({ body }) => body)).toEqual(['Feed Grains', 'Feed Grains', 'Feed Grains']);
  });
});

describe('dueNotifications', () => {
  beforeEach(() => {
    forget();
    vi.useFakeTimers();
  });
  afterEach(() => vi.useRealTimers());

  const today = (dueAt: string) => ({
    ok: true as const,
    value: {
      now: '2026-05-01T08:00:00.000Z',
      zone: 'UTC',
      bottlesWaiting: 0,
      needs: [{ key: 'k', kind: 'strain', when: 'today', dueAt, jars: [], base: { id: 'b', name: 'Crock' } }],
    },
  });

  test('asks every minute, shows what is due, and a click brings the window to Today', async () => {
    let due = '2026-05-01T09:00:00.000Z';
    const window = new BrowserWindow({});
    const line = { ask: vi.fn(async () => today(due)) };
    dueNotifications(
      Notification as unknown as typeof ElectronNotification,
      window as unknown as ElectronWindow,
      line as never,
    );
    await vi.advanceTimersByTimeAsync(60_000);
    expect(line.ask).toHaveBeenCalledTimes(2);
    expect(callsOf('notification')).toEqual([]);
    due = '2026-05-01T07:59:00.000Z';
    await vi.advanceTimersByTimeAsync(60_000);
    expect(callsOf('notification')).toEqual([[{ title: 'Something is due', body: 'Strain Crock' }]]);
    window.isSmall = true;
    Notification.all[0]?.emit('click');
    expect(callsOf('restore')).toHaveLength(1);
    expect(callsOf('focus')).toEqual([[window]]);
    expect(window.webContents.sent).toEqual([{ channel: channels.event, message: { kind: 'menu', act: 'go:/' } }]);
    window.close();
    const before = line.ask.mock.calls.length;
    await vi.advanceTimersByTimeAsync(600_000);
    expect(line.ask).toHaveBeenCalledTimes(before);
    expect(() => Notification.all[0]?.emit('click')).not.toThrow();
  });

  test('asks nothing where the system shows no notifications', async () => {
    played.tellsNothing = true;
    const line = { ask: vi.fn() };
    dueNotifications(
      Notification as unknown as typeof ElectronNotification,
      new BrowserWindow({}) as unknown as ElectronWindow,
      line as never,
    );
    await vi.advanceTimersByTimeAsync(120_000);
    expect(line.ask).not.toHaveBeenCalled();
  });
});
