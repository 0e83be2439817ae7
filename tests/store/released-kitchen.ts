import { createHash } from 'node:crypto';
import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { onePixelJpeg } from '#tests/desk/small-pictures.ts';
import { temporaryFolder } from './temporary-kitchen.ts';

const fixtures = join(import.meta.dirname, '..', 'fixtures');

/** The kitchens as each released schema wrote them. */
export const releasedKitchens: readonly string[] = readdirSync(fixtures)
  .filter((name) => /^kitchen-of-schema-\d{4}\.sidejar(\.gz)?$/.test(name))
  .sort();

/** The kitchen unpacked, in a folder of its own, with the one photo that the later ones hold. */
export function copyOfReleased(name: string): string {
  const kept = join(fixtures, name);
  const file = join(temporaryFolder(), name.replace(/\.gz$/, ''));
  if (!name.endsWith('.gz')) {
    copyFileSync(kept, file);
    return file;
  }
  writeFileSync(file, gunzipSync(readFileSync(kept)));
  mkdirSync(`${file}.photos`);
  const hash = createHash('sha256').update(onePixelJpeg).digest('hex');
  writeFileSync(join(`${file}.photos`, `${hash}.jpg`), onePixelJpeg);
  return file;
}
