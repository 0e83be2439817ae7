import type { IpcRenderer } from 'electron';
import type { Bridge, DeskEvent } from '#shared/carriage.ts';
import type { Envelope } from '#shared/failure.ts';
import { channels } from './channels.ts';

const unanswered: Envelope<never> = {
  ok: false,
  error: { code: 'internal', message: 'The window could not reach the desk. Close the program and start it again.' },
};

/**
 * The bridge as the preload script offers it: ask, stop, listen, and nothing of Electron behind them.
 *
 * Events are heard once and handed on without Electron's event object. `keep` sees each first and may keep it.
 *
 * @param ipc Electron's `ipcRenderer`
 * @param keep returns true for an event that is dealt with already
 */
export function pageBridge(
  ipc: Pick<IpcRenderer, 'invoke' | 'on'>,
  keep: (event: DeskEvent) => boolean = () => false,
): Bridge {
  const listeners = new Set<{ hear(event: DeskEvent): void }>();
  ipc.on(channels.event, (_event, told: DeskEvent) => {
    if (keep(told)) return;
    for (const { hear } of listeners) hear(told);
  });
  return {
    async ask({ ask, name, input, ways }) {
      try {
        return await ipc.invoke(channels.ask, { ask, name, input, ...(ways === undefined ? {} : { ways }) });
      } catch {
        return unanswered;
      }
    },
    stop(ask) {
      // A stop has no answer: the request itself settles as `stopped`.
      void ipc.invoke(channels.stop, ask).catch(() => undefined);
    },
    listen(listener) {
      const entry = { hear: listener };
      listeners.add(entry);
      return () => {
        listeners.delete(entry);
      };
    },
  };
}
