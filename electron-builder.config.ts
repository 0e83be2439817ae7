import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Configuration } from 'electron-builder';

interface Unpacked {
  readonly appOutDir: string;
  readonly electronPlatformName: string;
}

/** An unpacked runtime still holds Electron's own sample program, which electron-builder removes only from its zip. */
async function leaveSampleBehind({ appOutDir, electronPlatformName }: Unpacked): Promise<void> {
  const inside = electronPlatformName === 'darwin' ? join('Electron.app', 'Contents', 'Resources') : 'resources';
  await rm(join(appOutDir, inside, 'default_app.asar'), { force: true });
}

/** How the installed program is packed. Used by scripts/package.ts. */
export const packing: Configuration = {
  appId: 'net.sidejar.workbench',
  productName: 'Sidejar',
  copyright: 'The Sidejar makers',
  directories: { output: 'out' },
  // Everything the page needs is in the bundle: of the dependencies only SQLite goes along, without its sources and
  // without the binaries of other systems.
  files: [
    'dist/**',
    '!dist/.built-from',
    '!dist/**/*.map',
    '!node_modules/better-sqlite3/{deps,src}/**',
    // Headers for compiling; nothing at run time.
    '!node_modules/node-addon-api/**',
    // biome-ignore lint/suspicious/noTemplateCurlyInString: electron-builder fills in the two names
    '!node_modules/better-sqlite3/prebuilds/!(${platform}-${arch}.node)',
  ],
  // A binary can't be loaded from inside an archive.
  asar: true,
  asarUnpack: ['**/*.node'],
  // SQLite comes as one binary for Node and for Electron: there is nothing to rebuild.
  npmRebuild: false,
  // Said to the deb package, which asks for a home page and a maintainer; ".invalid" is reserved by RFC 2606.
  extraMetadata: { homepage: 'https://sidejar.invalid', author: 'The Sidejar makers <makers@sidejar.invalid>' },
  afterExtract: leaveSampleBehind,
  electronFuses: {
    runAsNode: false,
    enableCookieEncryption: true,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    // The page has an origin of its own and never comes from file://.
    grantFileProtocolExtraPrivileges: false,
  },
  linux: { target: ['AppImage', 'deb'], category: 'Utility', synopsis: 'Develop the flavours of live drinks' },
  mac: { target: ['dmg'], category: 'public.app-category.food-and-drink', hardenedRuntime: true },
  win: { target: ['nsis'] },
  nsis: { oneClick: false, perMachine: false, allowToChangeInstallationDirectory: true },
  publish: null,
};
