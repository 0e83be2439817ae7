import { build } from 'electron-builder';
import { packing } from '../electron-builder.config.ts';
import { buildAll } from './build.ts';
import { inspectElectronRuntime } from './electron-runtime.ts';

// npm run package: builds the program and packs it for this system, where Electron's runtime is at hand.

await buildAll({ quiet: true });

const runtime = inspectElectronRuntime();
if ('lack' in runtime) {
  console.error(
    `Not packed: ${runtime.lack}. Run “npx install-electron” where it can be downloaded, or set ELECTRON_OVERRIDE_DIST_PATH to its folder.`,
  );
  process.exitCode = 1;
} else {
  const files = await build({ config: { ...packing, electronDist: runtime.dist }, publish: 'never' });
  for (const file of files) console.log(file);
}
