import { homedir } from 'node:os';
import { join } from 'node:path';

type Environment = Readonly<Record<string, string | undefined>>;

/** The folder where this system keeps a person's program data. */
export function dataFolder(platform: NodeJS.Platform, env: Environment): string {
  if (platform === 'win32') return join(env.APPDATA ?? join(homedir(), 'AppData', 'Roaming'), 'Sidejar');
  if (platform === 'darwin') return join(homedir(), 'Library', 'Application Support', 'Sidejar');
  return join(env.XDG_DATA_HOME ?? join(homedir(), '.local', 'share'), 'sidejar');
}

/** The kitchen that opens when none is named: the same one for every host. */
export function defaultStore(platform: NodeJS.Platform, env: Environment): string {
  return join(dataFolder(platform, env), 'kitchen.sidejar');
}
