import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'electron-builder';
import { packing } from '../electron-builder.config.ts';
import { buildAll } from './build.ts';
import { billOfMaterials } from './dependencies/bill-of-materials.ts';
import { inspectElectronRuntime } from './electron-runtime.ts';

// npm run package: builds the program, writes what it is made of, and packs it for this system, where Electron's runtime is at hand.

await buildAll({ quiet: true });

const root = join(import.meta.dirname, '..');
const bill = join(root, 'out', 'sidejar.cdx.json');
mkdirSync(join(root, 'out'), { recursive: true });
writeFileSync(bill, `${JSON.stringify(billOfMaterials(root, new Date()), null, 1)}\n`);
console.log(bill);

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
