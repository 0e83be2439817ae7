import { readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { dataFolder } from './default-store.ts';

type Environment = Readonly<Record<string, string | undefined>>;

const named = ['XDG_DESKTOP_DIR', 'XDG_DOCUMENTS_DIR', 'XDG_DOWNLOAD_DIR'];

/** The folders as a Linux desktop calls them in its own language: `user-dirs.dirs` of xdg-user-dirs, a line a folder. */
function ownNames(env: Environment, home: string): string[] {
  try {
    const text = readFileSync(join(env.XDG_CONFIG_HOME ?? join(home, '.config'), 'user-dirs.dirs'), 'utf8');
    return [...text.matchAll(/^(XDG_\w+_DIR)="(\$HOME)?(\/[^"\n]*)"$/gm)].flatMap(([, name = '', inHome, path = '']) =>
      named.includes(name) ? [inHome === undefined ? path : join(home, path)] : [],
    );
  } catch {
    return [];
  }
}

/** Where kitchens' files mostly lie on this machine: the data folder, home, desktop, documents and downloads. */
export function nearFolders(platform: NodeJS.Platform, env: Environment, home = homedir()): string[] {
  const usual = ['Desktop', 'Documents', 'Downloads'].map((name) => join(home, name));
  const own = platform === 'win32' || platform === 'darwin' ? [] : ownNames(env, home);
  return [...new Set([dataFolder(platform, env), home, ...usual, ...own])];
}
