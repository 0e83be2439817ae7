import { opendirSync, realpathSync, statSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';
import type { Handlers } from '../handler.ts';

type Near = ValueOf<'kitchens:near'>;
type Folder = Near['folders'][number];
type NearKitchen = Folder['kitchens'][number];

/** What is looked at in one folder, and what is told of it: a folder of downloads may hold a hundred thousand files. */
const mostEntries = 20_000;
const mostLooked = 5_000;
const mostTold = 40;

let usual: readonly string[] = [];
let hasDialog = false;

/** Where kitchens mostly lie beside the open one's own folder, and whether the host has the system's dialog. Until told: nowhere. */
export function lookForKitchensIn(folders: readonly string[], dialog: boolean): void {
  usual = folders;
  hasDialog = dialog;
}

function isKitchenName(name: string): boolean {
  return name.length > '.sidejar'.length && name.toLowerCase().endsWith('.sidejar') && name.isWellFormed();
}

/** Names in a folder that are a kitchen's; null when it may not be read, undefined when there is none. */
function namesIn(folder: string): string[] | null | undefined {
  const names: string[] = [];
  try {
    const entries = opendirSync(folder);
    try {
      for (let looked = 0; looked < mostEntries; looked += 1) {
        const entry = entries.readSync();
        if (entry === null) break;
        if (isKitchenName(entry.name)) names.push(entry.name);
      }
    } finally {
      entries.closeSync();
    }
    return names;
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : '';
    return code === 'ENOENT' || code === 'ENOTDIR' ? undefined : null;
  }
}

/** What stands there, seen from outside; null for what is no file, leads nowhere, or may not be looked at. */
function seen(file: string): NearKitchen | null {
  try {
    const about = statSync(file);
    if (!about.isFile()) return null;
    return { file, name: basename(file), bytes: about.size, at: about.mtime.toISOString() };
  } catch {
    return null;
  }
}

function trueName(place: string): string {
  try {
    return realpathSync(place);
  } catch {
    return place;
  }
}

function folderOf(folder: string, open: string): Folder | null {
  const names = namesIn(folder);
  if (names === undefined) return null;
  if (names === null) return { folder, isReadable: false, kitchens: [], more: 0 };
  const kitchens = names
    .slice(0, mostLooked)
    .flatMap((name) => seen(join(folder, name)) ?? [])
    .filter(({ file }) => trueName(file) !== open)
    .sort((a, b) => b.at.localeCompare(a.at) || a.name.localeCompare(b.name));
  const more = Math.max(0, kitchens.length - mostTold) + Math.max(0, names.length - mostLooked);
  return { folder, isReadable: true, kitchens: kitchens.slice(0, mostTold), more };
}

/** The folders of kitchens, each once, by whatever name it goes. */
function foldersNear(kitchenFile: string): string[] {
  const seenAlready = new Set<string>();
  return [dirname(resolve(kitchenFile)), ...usual.map((folder) => resolve(folder))].filter((folder) => {
    const name = trueName(folder);
    if (seenAlready.has(name)) return false;
    seenAlready.add(name);
    return true;
  });
}

export const nearKitchenHandlers: Handlers<'kitchens:near' | 'kitchens:choose' | 'kitchen:openNear'> = {
  'kitchens:near'(kitchen) {
    const open = trueName(resolve(kitchen.file));
    return { dialog: hasDialog, folders: foldersNear(kitchen.file).flatMap((folder) => folderOf(folder, open) ?? []) };
  },
  // The host, which has the dialog, does the rest.
  'kitchens:choose': () => ({ file: null }),
  'kitchen:openNear'(kitchen, { file }) {
    const place = resolve(file);
    const isNear = foldersNear(kitchen.file).some((folder) => folder === dirname(place));
    if (isNear && isKitchenName(basename(place)) && seen(place) !== null) return { file: place };
    throw new Failure('store-missing', phrase`There is no kitchen’s file of this name in the folders near at hand.`, [
      'file',
    ]);
  },
};
