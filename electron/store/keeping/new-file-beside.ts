import { existsSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** A name beside the kitchen that no file has yet, such as `kitchen restored 2026-05-01.sidejar`. */
export function newFileBeside(kitchen: string, what: string, at: Date): string {
  const stem = join(dirname(kitchen), basename(kitchen).replace(/\.sidejar$/, ''));
  const first = `${stem} ${what} ${at.toISOString().slice(0, 10)}`;
  for (let number = 1; ; number += 1) {
    const file = `${first}${number === 1 ? '' : `, no. ${number}`}.sidejar`;
    if (!existsSync(file)) return file;
  }
}
