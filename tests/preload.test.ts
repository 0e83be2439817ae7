// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { channels } from '#hosts/ipc/channels.ts';
import { type Bridge, bridgeName, type DeskEvent } from '#shared/carriage.ts';
import { callsOf, forget, ipcRenderer } from '#tests/shell/stand-in-electron.ts';

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
});
