// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { channels } from '#hosts/ipc/channels.ts';
import { type Bridge, bridgeName, type DeskEvent } from '#shared/carriage.ts';
import { handDroppedKitchens } from '#shell/dropped-kitchen.ts';
import { callsOf, forget, ipcRenderer, webUtils } from '#tests/shell/stand-in-electron.ts';

vi.mock('electron', () => import('#tests/shell/stand-in-electron.ts'));

await import('../electron/preload.ts');
const exposures = callsOf('expose');
const bridge = exposures[0]?.[1] as Bridge;

beforeEach(() => {
  document.body.innerHTML =
    '<input id="name"><input id="fixed" readonly><input id="box" type="checkbox"><textarea id="note"></textarea><button id="go"></button>';
  document.execCommand = vi.fn(() => true);
});
afterEach(forget);

describe('the preload script', () => {
  test('gives the page ask, stop and listen under the bridge’s name, once, and nothing else', () => {
    expect(exposures.map(([name]) => name)).toEqual([bridgeName]);
    expect(Object.keys(bridge).sort()).toEqual(['ask', 'listen', 'stop']);
  });

  test('carries a request to the main process', async () => {
    await bridge.ask({ ask: 'a', name: 'kitchen:open', input: {} });
    expect(callsOf('invoke')).toEqual([[channels.ask, { ask: 'a', name: 'kitchen:open', input: {} }]]);
  });

  function told(act: string, focused: string | null): DeskEvent[] {
    const heard: DeskEvent[] = [];
    const stopListening = bridge.listen((event) => heard.push(event));
    if (focused !== null) document.getElementById(focused)?.focus();
    ipcRenderer.emit(channels.event, { sender: {} }, { kind: 'menu', act });
    stopListening();
    return heard;
  }

  test.each(['name', 'note'])('undoes in the text field #%s that has the focus, without telling the page', (id) => {
    expect(told('undo', id)).toEqual([]);
    expect(document.execCommand).toHaveBeenCalledWith('undo');
    expect(told('redo', id)).toEqual([]);
    expect(document.execCommand).toHaveBeenCalledWith('redo');
  });

  test.each([null, 'go', 'box', 'fixed'])('tells the page of undo when the focus is on %s', (id) => {
    expect(told('undo', id)).toEqual([{ kind: 'menu', act: 'undo' }]);
    expect(document.execCommand).not.toHaveBeenCalled();
  });

  test('goes to a screen wherever the focus is', () => {
    expect(told('go:/trials', 'name')).toEqual([{ kind: 'menu', act: 'go:/trials' }]);
  });

  test('hands a kitchen’s file that a hand has dropped to the main process; all else is the page’s', () => {
    const heard: ((event: unknown) => void)[] = [];
    handDroppedKitchens(
      { addEventListener: (_: string, hear: (event: unknown) => void) => heard.push(hear) } as unknown as Window,
      ipcRenderer,
      webUtils as unknown as Parameters<typeof handDroppedKitchens>[2],
    );
    const drop = (isTrusted: boolean, ...names: string[]) => {
      const preventDefault = vi.fn();
      heard[0]?.({ isTrusted, preventDefault, dataTransfer: { files: names.map((name) => ({ name })) } });
      return preventDefault.mock.calls.length > 0;
    };
    expect(drop(true, 'scores.csv')).toBe(false);
    expect(drop(false, 'stall.sidejar')).toBe(false);
    expect(callsOf('invoke')).toEqual([]);
    expect(drop(true, 'stall.sidejar', 'notes.txt')).toBe(true);
    expect(callsOf('invoke')).toEqual([[channels.dropped, '/home/me/stall.sidejar']]);
  });
});
