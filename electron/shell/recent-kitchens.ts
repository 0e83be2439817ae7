import { readFileSync, renameSync, writeFileSync } from 'node:fs';

/** How many kitchens the menu remembers. */
const most = 8;

/** The kitchens opened last, the latest first, kept in one small file of the user's data folder. */
export interface RecentKitchens {
  list(): readonly string[];
  add(store: string): void;
}

function readList(file: string): string[] {
  try {
    const stored: unknown = JSON.parse(readFileSync(file, 'utf8'));
    return Array.isArray(stored) ? stored.filter((each) => typeof each === 'string').slice(0, most) : [];
  } catch {
    return [];
  }
}

/** @param file where to keep it; it need not exist yet */
export function recentKitchens(file: string): RecentKitchens {
  let known = readList(file);
  return {
    list: () => known,
    add(store) {
      known = [store, ...known.filter((each) => each !== store)].slice(0, most);
      try {
        writeFileSync(`${file}.new`, JSON.stringify(known));
        renameSync(`${file}.new`, file);
      } catch {
        // A full or read-only disk costs only the list, and must not keep a kitchen from opening.
      }
    },
  };
}
