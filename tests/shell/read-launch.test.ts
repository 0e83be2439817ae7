import { mkdtempSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, test, vi } from 'vitest';
import { defaultStore } from '#hosts/default-store.ts';
import { shareDataFolder } from '#shell/data-folders.ts';
import { kitchenFile } from '#shell/kitchen-file.ts';
import { readLaunch } from '#shell/read-launch.ts';

describe('readLaunch', () => {
  test('opens the usual kitchen when nothing is asked for', () => {
    expect(readLaunch([], '/home/ada')).toEqual({ ask: null, store: null });
    expect(readLaunch(['.', '--inspect=0', '--enable-logging'], '/home/ada')).toEqual({ ask: null, store: null });
  });

  test.each([
    [['--store', 'cellar.sidejar']],
    [['--store=cellar.sidejar']],
    [['--no-sandbox', '.', '--store', 'cellar.sidejar']],
  ])('%j names a kitchen from the folder the program was started in', (words) => {
    expect(readLaunch(words, '/home/ada')).toEqual({ ask: null, store: resolve('/home/ada', 'cellar.sidejar') });
  });

  test('leaves an absolute kitchen as it is', () => {
    const file = resolve('/srv/cellar.sidejar');
    expect(readLaunch(['--store', file], '/home/ada')).toEqual({ ask: null, store: file });
  });

  test.each([[['--ask', 'store:check']], [['--ask=store:check']]])('%j asks one request', (words) => {
    expect(readLaunch(words, '/')).toEqual({ ask: 'store:check', store: null });
  });

  test.each([
    [['--ask']],
    [['--ask=']],
    [['--ask', '--store', 'x']],
    [['--store']],
    [['--store=']],
    [['--store', '--ask']],
  ])('%j says what is missing', (words) => {
    expect(readLaunch(words, '/')).toMatchObject({ problem: expect.stringMatching(/^--(ask|store) needs /) });
  });
});

describe('kitchenFile', () => {
  test('is the kitchen asked for', () => {
    expect(kitchenFile({ getPath: () => '/nowhere' }, '/srv/cellar.sidejar')).toBe('/srv/cellar.sidejar');
  });

  // One program, one kitchen: the window must open what the command line opens.
  test.each(['linux', 'darwin', 'win32'] as const)(
    'on %s, is otherwise the kitchen that every host opens',
    (platform) => {
      const home = mkdtempSync(join(tmpdir(), 'data-folders-'));
      const environment = { XDG_DATA_HOME: join(home, 'xdg'), APPDATA: join(home, 'roaming'), HOME: home };
      vi.stubEnv('HOME', home);
      const paths = new Map<string, string>();
      shareDataFolder({ setPath: (name, path) => void paths.set(name, path) }, platform, environment);
      const userData = paths.get('userData') ?? '';
      expect(kitchenFile({ getPath: () => userData }, null)).toBe(defaultStore(platform, environment));
      vi.unstubAllEnvs();
      expect(statSync(userData).isDirectory()).toBe(true);
      expect(statSync(paths.get('sessionData') ?? '').isDirectory()).toBe(true);
      expect(paths.get('sessionData')).not.toBe(userData);
    },
  );
});
