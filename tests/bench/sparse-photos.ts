import { createHash } from 'node:crypto';
import { mkdirSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** The size of a sparse photo. */
export const sparseBytes = 3_000_000;

/** The made-up hash of the photo of that number: the files hold nothing but zeros. */
export function sparseHash(number: number): string {
  return createHash('sha256').update(String(number)).digest('hex');
}

/** Files that are as large as photos and take no room, by hash in a folder beside the kitchen. */
export function sparsePhotos(file: string, count: number): void {
  const folder = `${file}.photos`;
  mkdirSync(folder, { recursive: true });
  for (let photo = 0; photo < count; photo += 1) {
    const path = join(folder, `${sparseHash(photo)}.jpg`);
    writeFileSync(path, '');
    truncateSync(path, sparseBytes);
  }
}
