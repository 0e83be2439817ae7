import { createHash } from 'node:crypto';
import { mkdirSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Files that are as large as photos and take no room, by hash in a folder beside the kitchen. */
export function sparsePhotos(file: string, count: number): void {
  for (let photo = 0; photo < count; photo += 1) {
    const hash = createHash('sha256').update(String(photo)).digest('hex');
    const folder = `${file}.photos`;
    mkdirSync(folder, { recursive: true });
    const path = join(folder, `${hash}.jpg`);
    writeFileSync(path, '');
    truncateSync(path, 3_000_000);
  }
}
