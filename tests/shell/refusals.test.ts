import { EventEmitter } from 'node:events';
import type { App, Session, WebRequest } from 'electron';
import { describe, expect, test } from 'vitest';
import { refuseCertificates } from '#shell/refuse-certificates.ts';
import { isOutside, refuseNetwork } from '#shell/refuse-network.ts';
import { refusePermissions } from '#shell/refuse-permissions.ts';

type Words = Parameters<Session['setPermissionRequestHandler']>[0] & {};
type Check = Parameters<Session['setPermissionCheckHandler']>[0] & {};

function handlersOf() {
  const found = new Map<string, (...words: never[]) => unknown>();
  const keep = (name: string) => (handler: unknown) => void found.set(name, handler as () => unknown);
  refusePermissions({
    setPermissionRequestHandler: keep('request'),
    setPermissionCheckHandler: keep('check'),
    setDevicePermissionHandler: keep('device'),
    setDisplayMediaRequestHandler: keep('display'),
    setBluetoothPairingHandler: keep('bluetooth'),
  });
  return found;
}

function asked(permission: string, requestingUrl = 'app://sidejar/', isMainFrame = true): boolean | null {
  let granted: boolean | null = null;
  const request = handlersOf().get('request') as unknown as Words;
  request({} as never, permission as never, (answer) => (granted = answer), { requestingUrl, isMainFrame } as never);
  return granted;
}

function checked(permission: string, origin = 'app://sidejar/', isMainFrame = true): boolean {
  const check = handlersOf().get('check') as unknown as Check;
  return check(null, permission as never, origin, { isMainFrame } as never);
}

const refused = [
  'clipboard-read',
  'deprecated-sync-clipboard-read',
  'display-capture',
  'fileSystem',
  'fullscreen',
  'geolocation',
  'hid',
  'idle-detection',
  'local-fonts',
  'local-network-access',
  'media',
  'midi',
  'midiSysex',
  'notifications',
  'openExternal',
  'pointerLock',
  'serial',
  'storage-access',
  'usb',
  'unknown',
  'a-permission-of-next-year',
];

describe('refusePermissions', () => {
  test.each(refused)('refuses %s, asked for or looked up', (permission) => {
    expect(asked(permission)).toBe(false);
    expect(checked(permission)).toBe(false);
  });

  test('lets the page itself write to the clipboard, for copying charts', () => {
    expect(asked('clipboard-sanitized-write')).toBe(true);
    expect(checked('clipboard-sanitized-write')).toBe(true);
  });

  test('refuses even that to frames and other origins', () => {
    expect(asked('clipboard-sanitized-write', 'https://example.com/')).toBe(false);
    expect(asked('clipboard-sanitized-write', 'app://sidejar/', false)).toBe(false);
    expect(checked('clipboard-sanitized-write', 'https://example.com')).toBe(false);
    expect(checked('clipboard-sanitized-write', 'app://sidejar/', false)).toBe(false);
  });

  test('refuses devices, screen capture and pairing', () => {
    const found = handlersOf();
    expect(found.get('device')?.()).toBe(false);
    const answers: unknown[] = [];
    (found.get('display') as (request: unknown, answer: (value: unknown) => void) => void)({}, (value) =>
      answers.push(value),
    );
    (found.get('bluetooth') as (request: unknown, answer: (value: unknown) => void) => void)({}, (value) =>
      answers.push(value),
    );
    expect(answers).toEqual([null, { confirmed: false }]);
  });
});

describe('refuseNetwork', () => {
  test.each([
    'https://example.com/',
    'http://127.0.0.1:1/',
    'ws://example.com/',
    'wss://example.com/',
    'ftp://example.com/',
    'file:///etc/hosts',
    'nonsense',
  ])('%s lies outside and is not asked', (url) => {
    let cancelled: boolean | undefined;
    const request = {
      onBeforeRequest(listener: (details: { url: string }, answer: (response: { cancel?: boolean }) => void) => void) {
        listener({ url }, (response) => {
          cancelled = response.cancel;
        });
      },
    } as unknown as WebRequest;
    refuseNetwork(request);
    expect(cancelled).toBe(true);
  });

  test.each([
    'app://sidejar/index.html',
    'blob:app://sidejar/1',
    'data:text/plain,x',
    'devtools://devtools/bundled/x.html',
  ])('%s stays inside', (url) => {
    expect(isOutside(url)).toBe(false);
  });
});

describe('refuseCertificates', () => {
  test('trusts no certificate that failed, and hands out none of the user’s', () => {
    const app = new EventEmitter();
    refuseCertificates(app as unknown as App);
    let prevented = 0;
    const event = { preventDefault: () => prevented++ };
    const answers: unknown[][] = [];
    const answer = (...words: unknown[]) => answers.push(words);
    app.emit('certificate-error', event, {}, 'https://x', 'net::ERR', {}, answer);
    app.emit('select-client-certificate', event, {}, 'https://x', [{}], answer);
    expect([prevented, answers]).toEqual([2, [[false], []]]);
  });
});
