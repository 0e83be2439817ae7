import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { nearFolders } from '#hosts/near-folders.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';

describe('nearFolders(platform, env, home)', () => {
  it('is the data folder, home, desktop, documents and downloads', () => {
    expect(nearFolders('darwin', {}, '/Users/ana').slice(1)).toEqual([
      '/Users/ana',
      '/Users/ana/Desktop',
      '/Users/ana/Documents',
      '/Users/ana/Downloads',
    ]);
    expect(nearFolders('linux', { XDG_DATA_HOME: '/data' }, '/nowhere')[0]).toBe('/data/sidejar');
  });

  it('on Linux also as the desktop calls them, in home or elsewhere, each once', () => {
    const home = temporaryFolder();
    mkdirSync(join(home, '.config'));
    writeFileSync(
      join(home, '.config', 'user-dirs.dirs'),
      [
        '# written by a desktop',
        'XDG_DESKTOP_DIR="$HOME/Schreibtisch"',
        'XDG_DOCUMENTS_DIR="/srv/papers"',
        'XDG_DOWNLOAD_DIR="$HOME/Downloads"',
        'XDG_MUSIC_DIR="$HOME/Musik"',
        'XDG_DESKTOP_DIR=$(rm -rf /)',
      ].join('\n'),
    );
    expect(nearFolders('linux', {}, home).slice(1)).toEqual([
      home,
      join(home, 'Desktop'),
      join(home, 'Documents'),
      join(home, 'Downloads'),
      join(home, 'Schreibtisch'),
      '/srv/papers',
    ]);
  });
});
