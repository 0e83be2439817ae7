import { createHash } from 'node:crypto';
import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { basename, join } from 'node:path';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { KeptPicture } from '#shared/picture-kind.ts';
import type { Row } from './tables.ts';

// A photo's file is named by its hash and never changes: kitchens, their backups and what is restored from them may share it.

const endings: Readonly<Record<KeptPicture, string>> = { jpeg: 'jpg', png: 'png', webp: 'webp' };
const photoName = /^[0-9a-f]{64}\.(jpg|png|webp)$/;

export type Named = Pick<Row<'photos'>, 'sha256' | 'format'>;

/** The folder of a kitchen's photos: beside it, and called like it. */
export function photoFolder(kitchen: string): string {
  return `${kitchen}.photos`;
}

/** What a photo's file is called. */
export function photoFileName({ sha256, format }: Named): string {
  return `${sha256}.${endings[format as KeptPicture]}`;
}

function placeOf(kitchen: string, photo: Named): string {
  return join(photoFolder(kitchen), photoFileName(photo));
}

export function sha256Of(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

function sizeOf(place: string): number | null {
  return statSync(place, { throwIfNoEntry: false })?.size ?? null;
}

/** Whether a photo's file is where it belongs: by its name and size, without reading it. */
export function photoState(
  kitchen: string,
  photo: Named & Pick<Row<'photos'>, 'bytes'>,
): 'here' | 'missing' | 'altered' {
  const size = sizeOf(placeOf(kitchen, photo));
  if (size === null) return 'missing';
  return size === photo.bytes ? 'here' : 'altered';
}

/** Has the disk keep a new name in its folder; where a folder can't be opened (Windows) the system does that itself. */
function syncFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

function writeWhole(place: string, bytes: Uint8Array): void {
  const handle = openSync(place, 'wx');
  try {
    for (let written = 0; written < bytes.length; ) written += writeSync(handle, bytes, written);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

function isWhole(place: string, sha256: string): boolean {
  return existsSync(place) && sha256Of(readFileSync(place)) === sha256;
}

/**
 * Puts a photo's file in its place: written beside it under another name, kept by the disk, and only then named.
 *
 * A file of that hash is left as it is when it is whole; one that was altered is put right.
 *
 * @throws Failure `store-full` or `store-missing` when it can't be written there
 */
export function keepPhotoFile(kitchen: string, photo: Named, bytes: Uint8Array): void {
  const place = placeOf(kitchen, photo);
  const unfinished = `${place}.${process.pid}.unfinished`;
  try {
    if (isWhole(place, photo.sha256)) return;
    mkdirSync(photoFolder(kitchen), { recursive: true });
    rmSync(unfinished, { force: true });
    writeWhole(unfinished, bytes);
    renameSync(unfinished, place);
    syncFolder(photoFolder(kitchen));
  } catch (error) {
    rmSync(unfinished, { force: true });
    if (error instanceof Error && 'code' in error && error.code === 'ENOSPC') {
      throw new Failure('store-full', phrase`The disk is full: the photo was not added.`);
    }
    throw new Failure(
      'store-missing',
      phrase`The photo could not be written into ${basename(photoFolder(kitchen))} beside the kitchen: the folder is protected or gone.`,
    );
  }
}

/**
 * Reads a photo's file, and holds it against the hash in its name.
 *
 * @throws Failure `not-found` when the file is missing; `refused` when it is no longer the one that was added
 */
export function readPhotoFile(kitchen: string, photo: Named): Uint8Array {
  const place = placeOf(kitchen, photo);
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(place);
  } catch {
    throw new Failure(
      'not-found',
      phrase`The file of this photo is missing. It belongs into ${basename(photoFolder(kitchen))} beside the kitchen, as ${basename(place)}.`,
      ['photo'],
    );
  }
  if (sha256Of(bytes) !== photo.sha256) {
    throw new Failure(
      'refused',
      phrase`The file of this photo was altered since it was added, so it is not shown: ${basename(place)}.`,
      ['photo'],
    );
  }
  return bytes;
}

/** Lets a kitchen made from another one have its photos: by a second name for the same file, by a copy where a disk has no such names. */
export function sharePhotos(from: string, to: string): void {
  if (!existsSync(photoFolder(from))) return;
  const names = readdirSync(photoFolder(from)).filter((name) => photoName.test(name));
  if (names.length > 0) mkdirSync(photoFolder(to), { recursive: true });
  for (const name of names) {
    const [here, there] = [join(photoFolder(from), name), join(photoFolder(to), name)];
    if (existsSync(there)) continue;
    try {
      linkSync(here, there);
    } catch {
      copyFileSync(here, there);
    }
  }
}
