import { type ChildProcess, spawn } from 'node:child_process';
import { lstatSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const flags = [
  '--no-first-run',
  '--no-default-browser-check',
  '--password-store=basic',
  '--test-type',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-component-extensions-with-background-pages',
  '--disable-sync',
  '--no-pings',
  '--disable-default-apps',
  '--disable-extensions',
  '--allow-browser-signin=false',
  '--disable-features=OptimizationHints,MediaRouter,Translate,AutofillServerCommunication',
  // The window reaches this machine's own page and nothing else.
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
];

export interface BrowserWindowOptions {
  readonly browser: string;
  /** The address with its ticket. It never stands on a command line, where other users could read it. */
  readonly address: string;
  /** A folder of the window's own, kept between starts. */
  readonly profile: string;
  readonly moreFlags?: readonly string[];
}

/** The first profile folder that no running window uses: two windows of one profile would be one program. */
export function freeProfile(folder: string): string {
  for (let number = 1; ; number += 1) {
    const profile = number === 1 ? folder : `${folder}-${number}`;
    const isUsed = ['SingletonLock', 'lockfile'].some((name) =>
      lstatSync(join(profile, name), { throwIfNoEntry: false }),
    );
    if (!isUsed || number === 20) return profile;
  }
}

/** Opens an app window of an installed browser on the address. The process lives as long as the window. */
export function openBrowserWindow({ browser, address, profile, moreFlags = [] }: BrowserWindowOptions): ChildProcess {
  mkdirSync(profile, { recursive: true, mode: 0o700 });
  const door = join(profile, 'open.html');
  writeFileSync(
    door,
    `<!doctype html><meta charset="utf-8"><title>Sidejar</title><script>location.replace(${JSON.stringify(address)})</script>`,
    {
      mode: 0o600,
    },
  );
  const isRoot = process.getuid?.() === 0;
  return spawn(
    browser,
    [
      `--app=${pathToFileURL(door).href}`,
      `--user-data-dir=${profile}`,
      '--window-size=1280,860',
      ...flags,
      // Chromium refuses its sandbox to the administrator.
      ...(isRoot ? ['--no-sandbox'] : []),
      ...moreFlags,
    ],
    { stdio: 'ignore' },
  );
}
