import { accessSync, constants, existsSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

type Environment = Readonly<Record<string, string | undefined>>;

const onPath = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
];

function places(platform: NodeJS.Platform, env: Environment): string[] {
  if (platform === 'darwin') {
    return ['Chromium', 'Google Chrome', 'Microsoft Edge'].map(
      (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
    );
  }
  if (platform === 'win32') {
    const programs = [env.ProgramFiles, env['ProgramFiles(x86)'], env.LOCALAPPDATA].filter(
      (folder) => folder !== undefined,
    );
    return programs.flatMap((folder) => [
      join(folder, 'Chromium', 'Application', 'chrome.exe'),
      join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
      join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
    ]);
  }
  const folders = (env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return onPath.flatMap((name) => folders.map((folder) => join(folder, name)));
}

function isExecutable(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return existsSync(file) && statSync(file).isFile();
  } catch {
    return false;
  }
}

/** An installed Chromium, Chrome or Edge; `SIDEJAR_BROWSER` names another. Null when there is none. */
export function findBrowser(
  platform: NodeJS.Platform = process.platform,
  env: Environment = process.env,
): string | null {
  const named = env.SIDEJAR_BROWSER;
  if (named !== undefined && named !== '') return isExecutable(named) ? named : null;
  return places(platform, env).find(isExecutable) ?? null;
}

/** Whether a window can appear at all. */
export function hasDisplay(platform: NodeJS.Platform = process.platform, env: Environment = process.env): boolean {
  if (platform === 'win32' || platform === 'darwin') return true;
  return Boolean(env.DISPLAY) || Boolean(env.WAYLAND_DISPLAY);
}
