import { existsSync, mkdirSync, rmdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';

/**
 * Makes a folder and those above it that are missing, one by one: Node's own way of making them all asks for ever where a folder that
 * is there says that it is not (/proc).
 *
 * @returns the folders that were made, the uppermost first
 * @throws an error as the system's, with its code, when one can't be made or what is there is no folder
 */
export function makeFolder(folder: string): string[] {
  const missing: string[] = [];
  let there = folder;
  for (; !existsSync(there) && dirname(there) !== there; there = dirname(there)) missing.unshift(there);
  if (existsSync(there) && !statSync(there).isDirectory()) {
    throw Object.assign(new Error(`${there} is no folder`), { code: 'ENOTDIR' });
  }
  try {
    return missing.filter((each) => {
      try {
        mkdirSync(each);
        return true;
      } catch (error) {
        // Another program may have made it meanwhile.
        if (error instanceof Error && 'code' in error && error.code === 'EEXIST') return false;
        throw error;
      }
    });
  } catch (error) {
    unmakeFolders(missing);
    throw error;
  }
}

/** Takes away folders that were made for nothing; what is in use stays. */
export function unmakeFolders(made: readonly string[]): void {
  for (const each of made.toReversed()) {
    try {
      rmdirSync(each);
    } catch {
      // Not made, not empty, or gone already.
    }
  }
}
