import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { App } from 'electron';
import { dataFolder } from '#hosts/default-store.ts';

/**
 * Puts the user's data where every host of the workbench looks for it, and Chromium's own files in a folder below.
 *
 * Must come before Electron is ready, and before the lock of the single instance, which lies there too.
 */
export function shareDataFolder(
  app: Pick<App, 'setPath'>,
  platform: NodeJS.Platform,
  environment: Readonly<Record<string, string | undefined>>,
): void {
  const folder = dataFolder(platform, environment);
  const session = join(folder, 'window');
  // Electron refuses a folder that is not there yet.
  mkdirSync(session, { recursive: true });
  app.setPath('userData', folder);
  app.setPath('sessionData', session);
}
